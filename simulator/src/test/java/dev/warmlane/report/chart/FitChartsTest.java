package dev.warmlane.report.chart;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.fit.FittedPool;
import dev.warmlane.fit.FittedPool.Residual;
import dev.warmlane.fit.InventedLog;
import dev.warmlane.units.Measure;
import dev.warmlane.units.UnitSystem;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.knowm.xchart.XYSeries;

/** The chart of a fit shows every hour of the log, and the run beside it. */
class FitChartsTest {

    @Test
    void waterShowsLogAndModelInTheUnitsOfTheReport() {
        FittedPool fit = InventedLog.fitted();
        Chart chart = FitCharts.water("fit-water", fit, UnitSystem.US).orElseThrow();
        List<Residual> hours = fit.residuals();
        XYSeries logged = series(chart, FitCharts.WATER);
        XYSeries modelled = series(chart, FitCharts.MODELLED);
        assertThat(logged.getYData()).hasSameSizeAs(hours);
        assertThat(modelled.getYData().length)
                .isBetween(fit.run().hours() - 3, fit.run().hours());
        for (int i = 0; i < hours.size(); i++) {
            assertThat(logged.getYData()[i])
                    .isEqualTo(
                            Measure.TEMPERATURE.in(UnitSystem.US, hours.get(i).loggedC()));
        }
        assertThat(modelled.getYData()[7])
                .isEqualTo(Measure.TEMPERATURE.in(UnitSystem.US, fit.run().waterC(7)));
        // both begin on the first day of the log and end with its fortieth
        assertThat(logged.getXData()[0]).isBetween(0.0, 1.0);
        assertThat(Arrays.stream(logged.getXData()).max().orElseThrow()).isBetween(39.0, 41.0);
        assertThat(modelled.getXData()[24] - modelled.getXData()[0]).isEqualTo(1);
    }

    private static XYSeries series(Chart chart, String name) {
        return chart.plot().series().stream()
                .map(XYSeries.class::cast)
                .filter(one -> one.getName().equals(name))
                .findFirst()
                .orElseThrow();
    }
}
