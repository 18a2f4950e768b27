package dev.warmlane.weather;

import dev.warmlane.units.Checks;
import dev.warmlane.units.Dimension;
import dev.warmlane.units.Range;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * How a {@link WeatherRecord} is made of what was measured.
 *
 * @param reading what is known better than the file says
 * @param period the part of what was measured that is taken
 * @param gapHours the longest gap that is filled, h. Gaps of up to six hours are filled by a straight line, irradiance by a
 *     straight clearness; longer ones hour by hour from the nearest day before and the nearest day after that have the
 *     hour, the nearer counting more. A longer gap is refused.
 * @param split how global irradiance is split where it alone was measured
 * @param yearlyAir mean and swing of the place's air, which ground and mains water follow; empty to take those of the
 *     record, which in fewer than 300 days knows no swing
 * @param year the year of a file whose rows have none, 1900 to 2100; empty to refuse such a file, since it may be a typical
 *     year
 */
public record RecordOptions(
        WeatherReadOptions reading,
        RecordPeriod period,
        int gapHours,
        DiffuseSplit split,
        Optional<YearlyAir> yearlyAir,
        OptionalInt year) {

    /** Range of {@link #gapHours}; beyond ten days the days before and after say nothing (own choice). */
    public static final Range GAP = Range.of("longest gap that is filled", Dimension.DURATION, "h", 0, 240);

    /** Gaps of up to six hours, split after Erbs, everything else as the file has it. */
    public static final RecordOptions USUAL = new RecordOptions(
            WeatherReadOptions.defaults(),
            RecordPeriod.ALL,
            GapFiller.LINE_AT_MOST,
            DiffuseSplit.ERBS,
            Optional.empty(),
            OptionalInt.empty());

    /** Checks the range. */
    public RecordOptions {
        GAP.check(gapHours);
        year.ifPresent(value -> Checks.within("year of the weather", value, 1900, 2100, ""));
    }

    /** The same with what is known better than the file says. */
    public RecordOptions withReading(WeatherReadOptions value) {
        return new RecordOptions(value, period, gapHours, split, yearlyAir, year);
    }

    /** The same with the part that is taken. */
    public RecordOptions withPeriod(RecordPeriod value) {
        return new RecordOptions(reading, value, gapHours, split, yearlyAir, year);
    }

    /** The same with the longest gap that is filled, h. */
    public RecordOptions withGapHours(int value) {
        return new RecordOptions(reading, period, value, split, yearlyAir, year);
    }

    /** The same with another split of global irradiance. */
    public RecordOptions withSplit(DiffuseSplit value) {
        return new RecordOptions(reading, period, gapHours, value, yearlyAir, year);
    }

    /** The same with mean and swing of the place's air, from a typical year for example. */
    public RecordOptions withYearlyAir(YearlyAir value) {
        return new RecordOptions(reading, period, gapHours, split, Optional.of(value), year);
    }

    /** The same for a file whose rows have no year. */
    public RecordOptions withYear(int value) {
        return new RecordOptions(reading, period, gapHours, split, yearlyAir, OptionalInt.of(value));
    }
}
