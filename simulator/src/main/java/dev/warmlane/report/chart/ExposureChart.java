package dev.warmlane.report.chart;

import dev.warmlane.report.Subject;
import dev.warmlane.study.PoolWindBand;
import dev.warmlane.units.UnitSystem;

/**
 * Mean water temperature of every day with a band for how sheltered the pool lies from the wind, and the mean without
 * collectors.
 */
final class ExposureChart {

    static final String BAND = "from exposed to sheltered from the wind";

    private ExposureChart() {}

    static Chart of(String name, Subject subject, PoolWindBand band) {
        UnitSystem units = subject.units();
        SeasonAxis axis = new SeasonAxis(subject.forecast().with());
        WaterCurve likely = curve(band.likely(), axis, units);
        WaterCurve sheltered = curve(band.sheltered(), axis, units);
        WaterCurve exposed = curve(band.exposed(), axis, units);
        WaterCurve without = WaterCurve.of(subject.forecast().without(), axis, units);
        LinePlot plot = SeasonTemperatureChart.plot(
                axis,
                subject,
                SeasonTemperatureChart.levels(subject),
                likely.mean(),
                sheltered.mean(),
                exposed.mean(),
                without.mean());
        boolean collectors = !subject.installation().arrays().isEmpty();
        plot.band(BAND, likely.x(), exposed.mean(), sheltered.mean(), Palette.faint(Palette.SKY_BLUE, 0.45));
        SeasonTemperatureChart.levels(plot, subject);
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
                name, "How warm is the pool, day by day?", subject.settings().title(), plot);
    }

    private static WaterCurve curve(PoolWindBand.Case one, SeasonAxis axis, UnitSystem units) {
        return WaterCurve.of(one.forecast().with(), axis, units);
    }
}
