package dev.warmlane.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.SyntheticYear;
import dev.warmlane.collector.Absorber;
import dev.warmlane.collector.CollectorArray;
import dev.warmlane.collector.Mounting;
import dev.warmlane.pool.Flow;
import dev.warmlane.pool.MainsWater;
import dev.warmlane.pool.MakeUp;
import dev.warmlane.pool.OpeningSeason;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Schedule;
import dev.warmlane.weather.WeatherYear;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A site south of the equator is its mirror image in the north with the year turned by half. */
class MirroredSiteTest {

    /**
     * The halves of the year are not alike: from one equinox to the other it is 186 days in the north's summer and 179 in
     * the south's, so turned by 183 days the sun's height is off by up to three days.
     */
    private static final double HALF_A_YEAR = 0.02;

    /** Make-up hangs on some kelvin between mains and pool, and half a year of the mains' rule is 182.5 days. */
    private static final double MAKE_UP = 0.04;

    private static final int TURN = 183 * 24;

    @Test
    void givesTheHeatOfItsMirrorImage() {
        WeatherYear north = year(35, 0);
        WeatherYear south = year(-35, TURN);
        int first = HourOfYear.of(5, 1, 0);
        int last = HourOfYear.of(9, 30, 0);
        MakeUp makeUp = new MakeUp(1000, new MainsWater.FromAir());
        for (double azimuth : new double[] {180, 150, 90}) {
            Installation up =
                    Demo.pool(1.5).arrays(arrays(azimuth)).makeUp(makeUp).build();
            Installation down = Demo.pool(1.5)
                    // east stays east
                    .arrays(arrays(Math.floorMod((int) (180 - azimuth), 360)))
                    .makeUp(makeUp)
                    .season(new OpeningSeason(
                            HourOfYear.dateOf((first + TURN) % HourOfYear.HOURS),
                            HourOfYear.dateOf((last + TURN) % HourOfYear.HOURS),
                            Schedule.ALWAYS))
                    .build();
            SeasonLedger above = SeasonSimulator.simulate(up, SeasonForcing.of(up, north));
            SeasonLedger below = SeasonSimulator.simulate(down, SeasonForcing.of(down, south));
            assertThat(below.hours()).isEqualTo(above.hours());
            for (int array = 0; array < 3; array++) {
                double ratio = below.arrayHeatKwh(array, Periods.season(below))
                        / above.arrayHeatKwh(array, Periods.season(above));
                assertThat(ratio).isCloseTo(1, within(HALF_A_YEAR));
            }
            assertThat(below.heatKwh(Flow.MAKE_UP, Periods.season(below))
                            / above.heatKwh(Flow.MAKE_UP, Periods.season(above)))
                    .isCloseTo(1, within(MAKE_UP));
        }
    }

    private static List<CollectorArray> arrays(double azimuthDeg) {
        return List.of(
                Demo.FLAT.withAreaM2(60),
                new CollectorArray("rack", 60, new Mounting.OpenRack(30, azimuthDeg, 2, 4, 4, 0.3), Absorber.USUAL_MAT),
                new CollectorArray(
                        "pitched", 60, new Mounting.FlushOnPitchedRoof(25, azimuthDeg, 5, 0.005), Absorber.USUAL_MAT));
    }

    /** Air coldest in the middle of January in the north, with a day's rhythm; turned by some hours. */
    private static WeatherYear year(double latitudeDeg, int turned) {
        return SyntheticYear.at(latitudeDeg)
                .airC(hour -> {
                    int at = Math.floorMod(hour - turned, HourOfYear.HOURS);
                    double season = -Math.cos(2 * Math.PI * (at - 15 * 24) / HourOfYear.HOURS);
                    return 14 + 9 * season - 5 * Math.cos(2 * Math.PI * (at % 24 - 3) / 24);
                })
                .dewPointC(hour -> 8)
                .windMs(hour -> 2.5 + Math.sin(2 * Math.PI * (hour % 24) / 24))
                .build();
    }
}
