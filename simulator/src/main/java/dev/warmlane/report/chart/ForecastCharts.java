package dev.warmlane.report.chart;

import dev.warmlane.report.Subject;
import dev.warmlane.study.SeasonBand;
import dev.warmlane.study.ShadeStudy;
import java.util.Optional;

/** The charts of a forecast; each is given the name of its files. */
public final class ForecastCharts {

    private ForecastCharts() {}

    /** Every day's mean and range. */
    public static Chart season(String name, Subject subject) {
        return SeasonTemperatureChart.of(name, subject);
    }

    /** Every day's mean, between the bounds of the forecast's doubt. */
    public static Chart doubt(String name, Subject subject, SeasonBand band) {
        return DoubtChart.of(name, subject, band);
    }

    /** The pool's heat by month. */
    public static Chart balance(String name, Subject subject) {
        return PoolBalanceChart.of(name, subject);
    }

    /** Heat and gas by month; nothing for a pool with neither collectors nor a heater. */
    public static Optional<Chart> heatAndGas(String name, Subject subject) {
        return HeatAndGasChart.of(name, subject);
    }

    /** What hides the sky, and the ways of the sun. */
    public static Chart sky(String name, String title, ShadeStudy study) {
        return SkyChart.of(name, title, study);
    }

    /** Open hours by temperature; nothing for a season without open hours. */
    public static Optional<Chart> duration(String name, Subject subject) {
        return DurationChart.of(name, subject);
    }
}
