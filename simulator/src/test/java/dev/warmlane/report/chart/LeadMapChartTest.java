package dev.warmlane.report.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.report.InventedMap;
import dev.warmlane.report.InventedRoofMap;
import dev.warmlane.report.Numbers;
import dev.warmlane.study.BreakEvenMap;
import dev.warmlane.units.UnitSystem;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.knowm.xchart.XYSeries;

class LeadMapChartTest {

    private static final BreakEvenMap MAP = InventedMap.of(true);

    private static Chart chart(UnitSystem units) {
        return LeadMapChart.windAndWater("mounting-even", MAP, "invented", new Numbers(units));
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
            assertThat(days.places().get(i).x()).isEqualTo(day.place().x());
            assertThat(days.places().get(i).y()).isEqualTo(day.place().y());
            double radius = days.places().get(i).radius() / days.places().get(0).radius();
            assertThat(radius * radius)
                    .isCloseTo(day.heatKwh() / MAP.days().get(0).heatKwh(), within(1e-9));
        }
        assertThat(plot.dots().get(1).places())
                .containsExactly(
                        new Plot.Dot(MAP.map().here().x(), MAP.map().here().y(), 6));
    }

    @Test
    void eachSideIsLabelledWhereItLeads() {
        List<Plot.Words> words = chart(UnitSystem.METRIC).plot().words();

        assertThat(words).extracting(Plot.Words::text).containsExactly("“flat” gives more", "“racks” gives more");
        // the invented line is at 22 °C
        assertThat(words.get(0).y()).isGreaterThan(22);
        assertThat(words.get(1).y()).isLessThan(22);
    }

    /** The invented pool's collectors stop at 30 °C, its heater keeps 23. */
    @Test
    void waterBeyondTheLimitIsShadedAndBearsNoWords() {
        Plot plot = chart(UnitSystem.METRIC).plot();
        XYSeries beyond = (XYSeries) series(plot, "above 30.0 °C, where collectors stop");
        XYSeries kept = (XYSeries) series(plot, "kept by the heater, 23.0 °C");

        assertThat(beyond.getYData()).containsOnly(30, 40);
        assertThat(kept.getYData()).containsOnly(23);
        assertThat(plot.words()).allSatisfy(words -> assertThat(words.y()).isLessThanOrEqualTo(30));
    }

    private static Object series(Plot plot, String name) {
        return plot.series().stream()
                .filter(one -> one.getName().replace('\u00a0', ' ').equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void usUnitsReachItsNumbers() {
        Plot plot = chart(UnitSystem.US).plot();

        assertThat(plot.xTitle()).contains("mph");
        assertThat(plot.y().low()).isCloseTo(50, within(1e-9));
        assertThat(plot.dots().get(1).places().get(0).y())
                .isCloseTo(32 + 1.8 * MAP.map().here().y(), within(1e-9));
    }

    @Test
    void withoutALineOneSideIsLeft() {
        Plot plot = LeadMapChart.windAndWater("even", InventedMap.of(false), "invented", new Numbers(UnitSystem.METRIC))
                .plot();

        assertThat(plot.series()).isEmpty();
        assertThat(plot.words()).extracting(Plot.Words::text).containsExactly("“flat” gives more");
    }

    private static Plot roof(boolean turning) {
        return LeadMapChart.roof("roof", InventedRoofMap.of(turning), "invented", new Numbers(UnitSystem.METRIC))
                .plot();
    }

    @Test
    void roofLiesWhereItIsDescribed() {
        assertThat(roof(true).dots()).hasSize(1);
        assertThat(roof(true).dots().get(0).places()).containsExactly(new Plot.Dot(0.2, 1, 6));
    }

    @Test
    void eachSideOfTheRoofsMapIsLabelledWhereItLeads() {
        List<Plot.Words> words = roof(true).words();

        assertThat(words).extracting(Plot.Words::text).containsExactly("“flat” gives more", "“racks” gives more");
        // the invented line is at an albedo of a half
        assertThat(words.get(0).x()).isLessThan(0.5);
        assertThat(words.get(1).x()).isGreaterThan(0.5);
        assertThat(roof(false).words()).extracting(Plot.Words::text).containsExactly("“flat” gives more");
    }
}
