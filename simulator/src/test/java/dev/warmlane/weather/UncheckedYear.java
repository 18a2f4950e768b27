package dev.warmlane.weather;

/** Years that are no weather, such as one of a single temperature, for tests of what is made of weather. */
public final class UncheckedYear {

    private UncheckedYear() {}

    /** The columns as they stand; all of them must be given. */
    public static WeatherYear of(WeatherYear.Builder columns) {
        return columns.unchecked();
    }
}
