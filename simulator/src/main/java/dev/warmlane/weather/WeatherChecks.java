package dev.warmlane.weather;

/**
 * From the hours of any source, a file or a program, to a year that can be used: values that cannot be are taken out,
 * the time that irradiance belongs to is tested, short gaps are filled, humidity and the long-wave irradiance of the sky
 * are completed. What is not to be trusted is refused.
 */
final class WeatherChecks {

    private WeatherChecks() {}

    /** Works on the table in place; the year takes its columns over. */
    static WeatherYear year(HourTable table, String source, WeatherReadOptions options, Findings findings)
            throws Refusal {
        ValueChecks.check(table, options, findings);
        ClosureCheck.Result time = ClosureCheck.check(table, options, findings);
        LightChecks.check(table, time.sun(), options.centreHours() != null, findings);
        IrradianceRepair.repair(table, time.sun(), findings);
        GapFiller.fill(table, WeatherColumn.AIR, findings);
        GapFiller.fill(table, WeatherColumn.WIND, findings);
        Humidity.resolve(table, findings);
        Pressure.resolve(table, findings);
        LongWave.Result longWave = LongWave.resolve(table, time.sun(), findings);
        time = RowMoves.move(table, time, options.centreHours() != null);
        return new WeatherYear(table, source, time, longWave, findings);
    }
}
