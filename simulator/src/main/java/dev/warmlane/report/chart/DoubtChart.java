package dev.warmlane.report.chart;

import dev.warmlane.report.Subject;
import dev.warmlane.study.SeasonBand;
import dev.warmlane.units.UnitSystem;

/** Mean water temperature of every day between the bounds of the forecast's doubt, and the mean without collectors. */
final class DoubtChart {

    static final String BAND = "low to high, by all that is uncertain";

    private DoubtChart() {}

    static Chart of(String name, Subject subject, SeasonBand band) {
        UnitSystem units = subject.units();
        SeasonAxis axis = new SeasonAxis(subject.forecast().with());
        WaterCurve likely = WaterCurve.doubtful(subject.forecast().with(), band, axis, units);
        WaterCurve without = WaterCurve.of(subject.forecast().without(), axis, units);
        LinePlot plot = SeasonTemperatureChart.plot(
                axis,
                subject,
                SeasonTemperatureChart.levels(subject),
                likely.lowest(),
                likely.highest(),
                without.mean());
        boolean collectors = !subject.installation().arrays().isEmpty();
        plot.band(BAND, likely.x(), likely.lowest(), likely.highest(), Palette.faint(Palette.SKY_BLUE, 0.45));
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
}
