package dev.warmlane.weather;

import dev.warmlane.sun.SunPath;
import java.time.LocalDateTime;
import java.util.Arrays;

/**
 * From the hours of any source to a record that can be used, in the steps of {@link WeatherChecks}. What those ask of a
 * year by its months is not asked of a record, which may have none whole; the noon of clear days is, and where all parts of
 * irradiance were measured whether they agree.
 */
final class RecordChecks {

    /** Sound measurements close within 5 to 10 W/m²; half an hour of error makes about 45 (as for a year, own judgement). */
    private static final double CLOSES_WM2 = 20;

    /** 300 days hold both turns of the year somewhere, so that a first harmonic is found (own choice). */
    private static final int SWING_FROM_HOURS = 300 * 24;

    private RecordChecks() {}

    /** Works on the table in place; the record takes its columns over. */
    static WeatherRecord record(HourTable table, LocalDateTime start, String source, Findings findings) throws Refusal {
        WeatherReadOptions options = table.hours().options().reading();
        Double given = options.centreHours();
        SunPath sun = table.sun != null ? table.sun : table.sunAt(given == null ? table.centreHours : given);
        DarkStation.takeOut(table, sun, findings);
        ValueChecks.check(table, options, findings);
        if (!table.lightIsDerived) {
            closure(table, sun, findings);
        }
        LightChecks.checkRecord(table, sun, given != null, findings);
        IrradianceRepair.repair(table, sun, findings);
        GapFiller.fill(table, WeatherColumn.AIR, findings);
        GapFiller.fill(table, WeatherColumn.WIND, findings);
        Humidity.resolve(table, findings);
        Pressure.resolve(table, findings);
        LongWave.Result longWave = LongWave.resolve(table, sun, findings);
        YearlyAir air = table.hours().options().yearlyAir().orElseGet(() -> yearlyAir(table, findings));
        return new WeatherRecord(table, start, source, sun, air, longWave, findings);
    }

    /** GHI = DHI + DNI cos z over the hours with the whole sun. */
    private static void closure(HourTable table, SunPath sun, Findings findings) {
        double[] global = table.column(WeatherColumn.GLOBAL);
        double[] direct = table.column(WeatherColumn.DIRECT);
        double[] diffuse = table.column(WeatherColumn.DIFFUSE);
        double squares = 0;
        int hours = 0;
        for (int hour = 0; hour < global.length; hour++) {
            double off = diffuse[hour] + direct[hour] * sun.cosZenith(hour) - global[hour];
            if (sun.upFraction(hour) == 1 && !Double.isNaN(off)) {
                squares += off * off;
                hours++;
            }
        }
        double rms = Math.sqrt(squares / hours);
        if (rms > CLOSES_WM2) {
            findings.gravest(
                    0,
                    0,
                    "global irradiance and the sum of diffuse and beam differ by " + Occurrences.number(rms)
                            + " W/m² (root mean square): is the clock that of daylight saving time, the UTC offset wrong,"
                            + " or the label the other end of the hour?");
        }
    }

    /** Mean and first harmonic by least squares; of fewer than 300 days the mean alone. */
    private static YearlyAir yearlyAir(HourTable table, Findings findings) {
        double[] air = table.column(WeatherColumn.AIR);
        if (air.length < SWING_FROM_HOURS) {
            double mean = Arrays.stream(air).average().orElseThrow();
            findings.warning(
                    0,
                    0,
                    "the record is too short for the swing of the year, with fewer than 300 days: ground, and mains water without a temperature of its own, are"
                            + " taken as steady at its mean air, " + Occurrences.number(mean)
                            + " °C; give the yearly air of the place, from a typical year for example");
            return new YearlyAir(mean, 0, 0, 0);
        }
        return YearlyAir.fitted(air, table.hours()::ofYear);
    }
}
