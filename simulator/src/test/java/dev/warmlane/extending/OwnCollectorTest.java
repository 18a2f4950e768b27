package dev.warmlane.extending;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.collector.CollectorForcing;
import dev.warmlane.collector.CollectorHour;
import dev.warmlane.collector.CollectorModel;
import dev.warmlane.collector.CollectorSurroundings;
import dev.warmlane.collector.HeatCurves;
import dev.warmlane.collector.MeasuredCurve;
import dev.warmlane.collector.Mounting;
import dev.warmlane.season.Installation;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Terrain;
import dev.warmlane.wind.WindProfile;
import java.util.Arrays;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** A collector by a curve of one's own. */
class OwnCollectorTest {

    private static final double ROUNDING = 1e-6;

    /** Invented numbers of a test in the open: heat over light, wind and temperatures. */
    record TestedMat(double efficiency, double still, double perWind) implements MeasuredCurve {

        @Override
        public double heatWm2(CollectorHour hour, double inletC) {
            return efficiency * hour.irradianceWm2() - (still + perWind * hour.windMs()) * (inletC - hour.airC());
        }
    }

    private static final TestedMat MAT = new TestedMat(0.82, 9, 3);

    @Test
    void givesWhatItSays() {
        CollectorForcing forcing = forcing(Mounting.FlatOnRoof.USUAL, MAT);
        double ratio = WindProfile.ratio(Terrain.SUBURBAN, Lido.ROOF.heightM()) * Lido.ROOF.windSpeedRatio();
        for (int hour = 0; hour < HourOfYear.HOURS; hour += 7) {
            double loss = 9 + 3 * ratio * Lido.WEATHER.windSpeedMs(hour);
            double sun = 0.82 * forcing.irradianceWm2(hour);
            assertThat(forcing.curves().heatWm2(hour, 17))
                    .isCloseTo(sun - loss * (17 - forcing.airC(hour)), within(ROUNDING));
            assertThat(forcing.curves().stagnationC(hour)).isCloseTo(forcing.airC(hour) + sun / loss, within(ROUNDING));
        }
    }

    /** Inner rows have the wind that their mounting says. */
    @Test
    void meetsTheWindOfItsPlace() {
        Mounting.OpenRack racks = (Mounting.OpenRack) Lido.RACKS;
        int hour = HourOfYear.of(7, 10, 12);
        double as = loss(racks, hour);
        double calmer = loss(racks.withInnerWind(0.5), hour);
        double outer = (as - 9) / 3;
        assertThat((calmer - 9) / 3).isCloseTo(outer * (1 + 4 * 0.5) / 5, within(ROUNDING));
        double above = WindProfile.ratio(
                Terrain.SUBURBAN, Lido.ROOF.heightM() + racks.rack().middleM());
        assertThat(outer)
                .isCloseTo(above * Lido.ROOF.windSpeedRatio() * Lido.WEATHER.windSpeedMs(hour), within(ROUNDING));
    }

    private static double loss(Mounting mounting, int hour) {
        return -forcing(mounting, MAT).curves().slopeWm2K(hour, 20);
    }

    /** The roof throws light at an open back; a board takes none of it. */
    @Test
    void takesTheLightOnAnOpenBack() {
        MeasuredCurve own = (hour, inletC) -> hour.modifiedWm2() - 10 * (inletC - hour.airC());
        Mounting.OpenRack racks = (Mounting.OpenRack) Lido.RACKS;
        HeatCurves open = forcing(racks.withBack(Mounting.Back.OPEN), own).curves();
        HeatCurves boarded = forcing(racks.withBack(Mounting.Back.BOARDED), own).curves();
        int noon = HourOfYear.of(7, 10, 12);
        double backWm2 = open.heatWm2(noon, 20) - boarded.heatWm2(noon, 20);
        assertThat(backWm2).isBetween(1.0, Lido.ROOF.albedo() * 1000);
        assertThatThrownBy(() -> new Mounting.Back(true, 1.5))
                .as("an open back has no board")
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void warmsAPool() {
        double[] with = Lido.waterC(with(MAT));
        double[] without = Lido.waterC(with(MAT).withoutCollectors());
        assertThat(mean(with)).isBetween(mean(without) + 1, mean(without) + 6);
    }

    @Test
    void maySayItsDryPlate() {
        MeasuredCurve own = new MeasuredCurve() {
            @Override
            public double heatWm2(CollectorHour hour, double inletC) {
                return MAT.heatWm2(hour, inletC);
            }

            @Override
            public OptionalDouble dryPlateC(CollectorHour hour) {
                return OptionalDouble.of(hour.airC() + 0.05 * hour.modifiedWm2());
            }
        };
        CollectorForcing forcing = forcing(Mounting.FlatOnRoof.USUAL, own);
        int noon = HourOfYear.of(7, 10, 12);
        double above = forcing.curves().stagnationC(noon) - forcing.airC(noon);
        assertThat(above)
                .isGreaterThan(10)
                .isLessThan(0.05 * forcing.irradianceWm2(noon))
                .isGreaterThan(0.04 * forcing.irradianceWm2(noon));
    }

    @Test
    void mustFallWithTheWater() {
        assertRefused(
                (hour, inletC) -> MAT.heatWm2(hour, inletC) + 900 * Math.exp(-Math.pow(inletC / 5 - 6, 2)),
                "it must fall");
        assertRefused((hour, inletC) -> Math.max(0, MAT.heatWm2(hour, inletC)), "must pass through no heat");
        assertRefused((hour, inletC) -> hour.airC() - inletC + (inletC < 12 ? 20 * (12 - inletC) : 0), "too sharply");
        assertRefused((hour, inletC) -> Double.NaN, "must pass through no heat");
        assertRefused((hour, inletC) -> inletC == 10 ? Double.NaN : MAT.heatWm2(hour, inletC), "a heat of NaN W/m2");
    }

    private static void assertRefused(MeasuredCurve own, String why) {
        assertThatThrownBy(() -> forcing(Mounting.FlatOnRoof.USUAL, own))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(why)
                .hasMessageContaining("01-01");
    }

    @Test
    void hasNoWordsInAFile() {
        assertThatThrownBy(() -> Lido.written(with(MAT)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("cannot hold the collector curve of \"collectors\" of one's own");
    }

    private static double mean(double[] values) {
        return Arrays.stream(values).average().orElseThrow();
    }

    private static Installation with(CollectorModel model) {
        return Lido.built().arrays(Lido.array(Mounting.FlatOnRoof.USUAL, model)).build();
    }

    private static CollectorForcing forcing(Mounting mounting, CollectorModel model) {
        CollectorSurroundings around = new CollectorSurroundings(Lido.WEATHER, Lido.ROOF, Terrain.SUBURBAN);
        return CollectorForcing.of(around, Lido.array(mounting, model));
    }
}
