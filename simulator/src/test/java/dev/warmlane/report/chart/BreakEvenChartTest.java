package dev.warmlane.report.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.report.InventedMap;
import dev.warmlane.report.Numbers;
import dev.warmlane.study.BreakEvenMap;
import dev.warmlane.units.UnitSystem;
import java.util.List;
import org.junit.jupiter.api.Test;

class BreakEvenChartTest {

    private static final BreakEvenMap MAP = InventedMap.of(true);

    private static Chart chart(UnitSystem units) {
        return BreakEvenChart.of("mounting-even", MAP, "invented", new Numbers(units));
    }

    @Test
    void daysLieWhereTheyWereAndAreAsLargeAsTheirHeat() {
        Plot plot = chart(UnitSystem.METRIC).plot();

        Plot.Dots days = plot.dots().get(0);
        assertThat(days.places())
                .as("without the one beyond the map")
                .hasSize(MAP.days().size() - 1);
        for (int i = 0; i < days.places().size(); i++) {
            BreakEvenMap.Day day = MAP.days().get(i);
            assertThat(days.places().get(i).x()).isEqualTo(day.place().windMs());
            assertThat(days.places().get(i).y()).isEqualTo(day.place().waterC());
            double radius = days.places().get(i).radius() / days.places().get(0).radius();
            assertThat(radius * radius)
                    .isCloseTo(day.heatKwh() / MAP.days().get(0).heatKwh(), within(1e-9));
        }
        assertThat(plot.dots().get(1).places())
                .containsExactly(
                        new Plot.Dot(MAP.season().windMs(), MAP.season().waterC(), 6));
    }

    @Test
    void eachSideIsLabelledWhereItLeads() {
        List<Plot.Words> words = chart(UnitSystem.METRIC).plot().words();

        assertThat(words).extracting(Plot.Words::text).containsExactly("“flat” gives more", "“racks” gives more");
        // the invented line is at 22 °C
        assertThat(words.get(0).y()).isGreaterThan(22);
        assertThat(words.get(1).y()).isLessThan(22);
    }

    @Test
    void usUnitsReachItsNumbers() {
        Plot plot = chart(UnitSystem.US).plot();

        assertThat(plot.xTitle()).contains("mph");
        assertThat(plot.y().low()).isCloseTo(50, within(1e-9));
        assertThat(plot.dots().get(1).places().get(0).y())
                .isCloseTo(32 + 1.8 * MAP.season().waterC(), within(1e-9));
    }

    @Test
    void withoutALineOneSideIsLeft() {
        Plot plot = BreakEvenChart.of("even", InventedMap.of(false), "invented", new Numbers(UnitSystem.METRIC))
                .plot();

        assertThat(plot.series()).isEmpty();
        assertThat(plot.words()).extracting(Plot.Words::text).containsExactly("“flat” gives more");
    }
}
