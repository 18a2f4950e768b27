package dev.warmlane.report.chart;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.report.InventedRoofMap;
import dev.warmlane.report.Numbers;
import dev.warmlane.units.UnitSystem;
import java.util.List;
import org.junit.jupiter.api.Test;

class RoofMapChartTest {

    private static Plot plot(boolean turning) {
        return RoofMapChart.of("roof", InventedRoofMap.of(turning), "invented", new Numbers(UnitSystem.METRIC))
                .plot();
    }

    @Test
    void roofLiesWhereItIsDescribed() {
        assertThat(plot(true).dots()).hasSize(1);
        assertThat(plot(true).dots().get(0).places()).containsExactly(new Plot.Dot(0.2, 1, 6));
    }

    @Test
    void eachSideIsLabelledWhereItLeads() {
        List<Plot.Words> words = plot(true).words();

        assertThat(words).extracting(Plot.Words::text).containsExactly("“flat” gives more", "“racks” gives more");
        // the invented line is at an albedo of a half
        assertThat(words.get(0).x()).isLessThan(0.5);
        assertThat(words.get(1).x()).isGreaterThan(0.5);
        assertThat(plot(false).words()).extracting(Plot.Words::text).containsExactly("“flat” gives more");
    }
}
