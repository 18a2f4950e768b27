package dev.warmlane.pool;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.physics.Constants;
import dev.warmlane.physics.WaterSurface;
import dev.warmlane.season.Demo;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.weather.WeatherYear;
import java.util.Optional;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Light of a low sun at the water: what the surface reflects and what walls above it shade. */
class WaterLightTest {

    private static final MakeUp MAKE_UP = new MakeUp(0, MainsWater.Monthly.constant(11));

    private final WeatherYear weather = Demo.weather("warm-inland");
    private final Pool pool = Pool.of(200, 1.5, new PoolSetting.Outdoor(0.3));

    /** Reflectance of a calm surface in per cent, n = 4/3: Jerlov, Marine Optics, table XVI (read). */
    // rounded to 0.1 there, and for n of 4/3
    @ParameterizedTest
    @CsvSource({
        "0, 2.0",
        "20, 2.1",
        "40, 2.4",
        "50, 3.4",
        "60, 5.9",
        "65, 8.7",
        "70, 13.3",
        "75, 21.2",
        "80, 34.9",
        "85, 58.3"
    })
    void aCalmSurfaceReflectsByTheAngle(double incidenceDeg, double percent) {
        assertThat(100 * WaterSurface.reflectance(Math.cos(Math.toRadians(incidenceDeg))))
                .isCloseTo(percent, within(0.15));
    }

    /** 0.066: Burt 1954 and others for an even sky over a calm sea, from memory. */
    @Test
    void anEvenSkyIsReflectedByAFifteenth() {
        assertThat(WaterSurface.EVEN_SKY_REFLECTANCE).isCloseTo(0.066, within(0.001));
        assertThat(WaterSurface.reflectance(0)).isEqualTo(1);
        assertThat(WaterSurface.reflectance(-0.2)).isEqualTo(1);
    }

    /** In an even sky nothing changes; a high sun brings more, a low one less. */
    @Test
    void reflexionByAngleMovesTheBeamAlone() {
        PoolForcing even = prepared(pool);
        PoolForcing byAngle = prepared(pool.withReflection(SurfaceReflection.BY_ANGLE));
        int high = 0;
        int low = 0;
        for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
            double before = sunWm2(even, hour);
            double after = sunWm2(byAngle, hour);
            double global = weather.globalHorizontalWm2(hour);
            double beam = before * (1 - weather.diffuseHorizontalWm2(hour) / global);
            double cosine = weather.sun().cosZenith(hour);
            if (global > 0 && weather.sun().isUp(hour)) {
                double kept = (1 - WaterSurface.reflectance(cosine)) / (1 - WaterSurface.EVEN_SKY_REFLECTANCE);
                assertThat(after - before).isCloseTo(beam * (kept - 1), within(1e-9));
            }
            high += cosine > 0.7 && beam > 100 && after > before ? 1 : 0;
            low += cosine > 0 && cosine < 0.3 && beam > 10 && after < before ? 1 : 0;
        }
        assertThat(high).isGreaterThan(500);
        assertThat(low).isGreaterThan(100);
    }

    /** Sun in the south at 45° over a basin that lies from east to west: the shadow is as broad as the wall is high. */
    @Test
    void theShadowOfTheRimByHand() {
        Freeboard rim = new Freeboard(0.2, 4, 1, 90, 0);
        assertThat(rim.litShare(Math.sqrt(0.5), 180)).isCloseTo(0.8, within(1e-12));
        assertThat(rim.litShare(Math.sqrt(0.5), 90)).isCloseTo(0.95, within(1e-12));
        assertThat(rim.litShare(1, 17)).isCloseTo(1, within(1e-12));
        assertThat(rim.litShare(0.05, 180)).isZero();
        assertThat(rim.litShare(-0.1, 180)).isZero();
    }

    /** Rays of an even sky through the opening, counted; a fixed seed. */
    @Test
    void theOpeningIsSeenAsRaysSeeIt() {
        Freeboard rim = new Freeboard(0.4, 3, 1.2, 0, 0);
        RandomGenerator random = new Well19937c(11);
        int rays = 400_000;
        int through = 0;
        for (int i = 0; i < rays; i++) {
            double shadow = rim.heightM() * Math.tan(Math.asin(Math.sqrt(random.nextDouble())));
            double turn = 2 * Math.PI * random.nextDouble();
            double x = rim.lengthM() * random.nextDouble() + shadow * Math.cos(turn);
            double y = rim.widthM() * random.nextDouble() + shadow * Math.sin(turn);
            through += x >= 0 && x <= rim.lengthM() && y >= 0 && y <= rim.widthM() ? 1 : 0;
        }
        // the root of 400,000 draws leaves 0.0008
        assertThat(rim.openShare()).isCloseTo(through / (double) rays, within(0.003));
    }

    /** Walls that reflect nothing and a sky of the air's temperature: light falls to what is open, long-wave stays. */
    @Test
    void aRimTakesLightAndWarmsTheSky() {
        Freeboard rim = new Freeboard(1, 20, 10, 0, 0);
        PoolForcing open = prepared(pool);
        PoolForcing rimmed = prepared(pool.withFreeboard(rim));
        PoolFlows flows = new PoolFlows();
        for (int hour = 0; hour < HourOfYear.HOURS; hour += 7) {
            assertThat(sunWm2(rimmed, hour)).isLessThanOrEqualTo(sunWm2(open, hour) + 1e-9);
            open.evaluate(hour, 22, 1, flows);
            double sky = flows.wm2(Flow.LONG_WAVE);
            rimmed.evaluate(hour, 22, 1, flows);
            double air = Constants.blackBody(weather.airTemperatureC(hour));
            assertThat(flows.wm2(Flow.LONG_WAVE) - sky)
                    .isCloseTo(
                            Pool.WATER_EMITTANCE * (1 - rim.openShare()) * (air - weather.skyLongWaveWm2(hour)),
                            within(1e-9));
        }
    }

    @Test
    void aRimOfAnotherSizeThanTheWaterIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> pool.withFreeboard(new Freeboard(0.2, 20, 12, 0, 0.4)))
                .withMessageContaining("length times width");
    }

    private PoolForcing prepared(Pool of) {
        return PoolForcing.of(of, Optional.empty(), Bathers.NONE, MAKE_UP, weather);
    }

    private static double sunWm2(PoolForcing forcing, int hour) {
        PoolFlows flows = new PoolFlows();
        forcing.evaluate(hour, 22, 1, flows);
        return flows.wm2(Flow.SUN);
    }
}
