package dev.warmlane.report.chart;

import dev.warmlane.report.ForecastReport;
import dev.warmlane.scenario.ReportSettings;
import dev.warmlane.study.PoolWindBand;

/**
 * Mean water temperature of every day with a band for how sheltered the pool lies from the wind, and the mean without
 * collectors.
 */
final class ExposureChart {

    static final String BAND = "exposed to sheltered";

    private ExposureChart() {}

    static Chart of(ForecastReport report, PoolWindBand band) {
        ReportSettings.Units units = report.units();
        SeasonAxis axis = new SeasonAxis(report.forecast().with());
        WaterCurve likely = curve(band.likely(), axis, units);
        WaterCurve sheltered = curve(band.sheltered(), axis, units);
        WaterCurve exposed = curve(band.exposed(), axis, units);
        WaterCurve without = WaterCurve.of(report.forecast().without(), axis, units);
        LinePlot plot = SeasonTemperatureChart.plot(
                axis,
                report,
                SeasonTemperatureChart.levels(report),
                likely.mean(),
                sheltered.mean(),
                exposed.mean(),
                without.mean());
        boolean collectors = !report.forecast().installation().arrays().isEmpty();
        plot.band(BAND, likely.x(), exposed.mean(), sheltered.mean(), Palette.faint(Palette.SKY_BLUE, 0.45));
        SeasonTemperatureChart.levels(plot, report);
        if (collectors) {
            plot.line(SeasonTemperatureChart.WITHOUT, without.x(), without.mean(), Palette.VERMILLION, Pen.DASHED);
        }
        plot.line(
                collectors ? SeasonTemperatureChart.WITH : "as the pool lies",
                likely.x(),
                likely.mean(),
                Palette.BLUE,
                Pen.THICK);
        return new Chart(
                "season-exposure",
                "Pool temperature, sheltered or exposed to the wind",
                report.settings().title(),
                plot);
    }

    private static WaterCurve curve(PoolWindBand.Case one, SeasonAxis axis, ReportSettings.Units units) {
        return WaterCurve.of(one.forecast().with(), axis, units);
    }
}
