package dev.warmlane.sun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.physics.StandardAtmosphere;
import dev.warmlane.site.Site;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Random;
import net.e175.klaus.solarpositioning.DeltaT;
import net.e175.klaus.solarpositioning.SPA;
import net.e175.klaus.solarpositioning.SolarPosition;
import org.junit.jupiter.api.Test;

/** The cubic between two times a day against the algorithm worked out for the time itself. */
class SunClockTest {

    /** The algorithm itself is good to 0.0003 degrees. */
    private static final double CUBIC_DEG = 1e-6;

    /** Near the zenith the azimuth turns fast, and says as much less. */
    private static double azimuthDeg(double zenithDeg) {
        return CUBIC_DEG / Math.max(1e-3, Math.sin(Math.toRadians(zenithDeg)));
    }

    @Test
    void isTheAlgorithmAtAnyTime() {
        Random random = new Random(34302);
        for (int place = 0; place < 20; place++) {
            Site site = new Site(
                    "somewhere",
                    -80 + 160 * random.nextDouble(),
                    -180 + 360 * random.nextDouble(),
                    3000 * random.nextDouble(),
                    random.nextInt(25) - 12);
            SunClock clock = new SunClock(site);
            for (int i = 0; i < 500; i++) {
                int year = 1950 + random.nextInt(100);
                // after February days of the year count alike in leap years; into the next year too
                double hour = 60 * 24 + random.nextInt(306 * 24) + random.nextInt(3600) / 3600.0;
                LocalDateTime local =
                        LocalDateTime.of(year, 3, 1, 0, 0).plusSeconds(Math.round((hour - 59 * 24) * 3600));
                SolarPosition published = SPA.calculateSolarPosition(
                        local.minusHours(Math.round(site.utcOffsetHours())).atZone(ZoneOffset.UTC),
                        site.latitudeDeg(),
                        site.longitudeDeg(),
                        site.elevationM(),
                        DeltaT.estimate(local.toLocalDate()),
                        10 * StandardAtmosphere.pressureKpa(site.elevationM()),
                        StandardAtmosphere.REFRACTION_AIR_C);
                SolarPosition position = clock.position(year, hour);
                assertThat(position.zenithAngle()).isCloseTo(published.zenithAngle(), within(CUBIC_DEG));
                double turned = position.azimuth() - published.azimuth();
                assertThat(turned - 360 * Math.rint(turned / 360))
                        .isCloseTo(0, within(azimuthDeg(published.zenithAngle())));
            }
        }
    }
}
