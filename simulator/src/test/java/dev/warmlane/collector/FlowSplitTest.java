package dev.warmlane.collector;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.collector.FlowSplit.Part;
import dev.warmlane.season.Demo;
import dev.warmlane.site.Terrain;
import dev.warmlane.weather.WeatherYear;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What an uneven flow costs. */
class FlowSplitTest {

    private static final FlowSplit UNEVEN =
            new FlowSplit(List.of(new Part(0.5, 0.4), new Part(0.3, 1.2), new Part(0.2, 2.2)));

    /** The plate's loss is not quite straight in its temperature; of the heat itself, not of what the split costs. */
    private static final double STRAIGHT = 0.001;

    @Test
    void anEvenFlowCostsNothing() {
        assertThat(FlowSplit.EVEN.heatShare(0.3)).isEqualTo(1);
        assertThat(new FlowSplit(List.of(new Part(0.25, 1), new Part(0.75, 1))).heatShare(0.3))
                .isCloseTo(1, within(1e-15));
    }

    /** By hand: x = 0.5, halves at 0.5 and 1.5: 0.5·(0.5(1 - e^-1) + 1.5(1 - e^(-1/3)))/(1 - e^-0.5) = 0.94196. */
    @Test
    void costsWhatTheHandFinds() {
        FlowSplit halves = new FlowSplit(List.of(new Part(0.5, 0.5), new Part(0.5, 1.5)));
        assertThat(halves.heatShare(0.5)).isCloseTo(0.94196, within(5e-5));
        assertThat(halves.heatShare(1e-4)).isCloseTo(1, within(1e-4));
        assertThat(halves.heatShare(0.6)).isLessThan(halves.heatShare(0.5));
    }

    @Test
    void neverGivesMoreThanAnEvenFlow() {
        for (double x = 0.01; x < 5; x *= 1.3) {
            assertThat(UNEVEN.heatShare(x)).isLessThan(1).isGreaterThan(0.4);
        }
    }

    /** Its parts, each computed as a collector of its own flow, give what the divided curve says, hour by hour in sum. */
    @Test
    void meetsCollectorsOfThoseFlows() {
        WeatherYear weather = Demo.weather("warm-inland");
        CollectorSurroundings around =
                new CollectorSurroundings(weather, Demo.ROOF, Terrain.SUBURBAN, CollectorPhysics.USUAL);
        CollectorForcing even = CollectorForcing.of(around, Demo.FLAT);
        CollectorForcing divided = CollectorForcing.of(around, Demo.FLAT.withSplit(UNEVEN));
        List<CollectorForcing> parts = UNEVEN.parts().stream()
                .map(part -> CollectorForcing.of(
                        around, Demo.FLAT.withFlowKgSM2(part.flowOverMean() * Demo.FLAT.flowKgSM2())))
                .toList();
        double sumEven = 0;
        double sumDivided = 0;
        double sumParts = 0;
        for (int hour = 0; hour < weather.hours(); hour++) {
            double heat = even.curves().heatWm2(hour, 25);
            if (heat > 50) {
                sumEven += heat;
                sumDivided += divided.curves().heatWm2(hour, 25);
                for (int i = 0; i < parts.size(); i++) {
                    sumParts += UNEVEN.parts().get(i).areaShare()
                            * parts.get(i).curves().heatWm2(hour, 25);
                }
            }
            assertThat(divided.curves().stagnationC(hour))
                    .isEqualTo(even.curves().stagnationC(hour));
        }
        assertThat(sumParts).isLessThan(0.985 * sumEven);
        assertThat(sumDivided).isCloseTo(sumParts, within(STRAIGHT * sumEven));
    }

    @Test
    void forcingOfAnotherDivisionIsRefused() {
        CollectorSurroundings around = new CollectorSurroundings(
                Demo.weather("cool-coast"), Demo.ROOF, Terrain.SUBURBAN, CollectorPhysics.USUAL);
        CollectorForcing even = CollectorForcing.of(around, Demo.FLAT);
        assertThat(even.differsFrom(Demo.FLAT.withSplit(UNEVEN), Demo.ROOF, Terrain.SUBURBAN, CollectorPhysics.USUAL))
                .contains("division of the flow");
    }

    @Test
    void refusesPartsThatDoNotSumUp() {
        assertThatIllegalArgumentException().isThrownBy(() -> new FlowSplit(List.of(new Part(0.5, 1))));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new FlowSplit(List.of(new Part(0.5, 1), new Part(0.5, 1.1))));
    }
}
