package dev.warmlane.scenario;

/**
 * How the reader of a report wants it.
 *
 * @param title the title
 * @param units the units of its numbers
 */
public record ReportSettings(String title, Units units) {

    /** Units of a report. */
    public enum Units {
        /** m², °C, kWh. */
        METRIC,
        /** ft², °F, therms, as is usual in the United States. */
        US
    }
}
