package dev.warmlane.report;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.DocBlock;
import dev.warmlane.season.Installation;
import dev.warmlane.study.YearNumber;
import dev.warmlane.study.YearSeason;
import dev.warmlane.study.YearsSpread;
import dev.warmlane.study.YearsStudy;
import dev.warmlane.units.Notation;
import dev.warmlane.units.UnitSystem;
import dev.warmlane.weather.TypicalYear;
import dev.warmlane.weather.WeatherYears;
import dev.warmlane.weather.generate.MeasuredYears;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What docs/years.md says of fourteen real years, with {@code -Dmeasured.dir=}. {@code -Ddocs.write=true} writes it. Sums of
 * seasons are told, no row of a measurement.
 */
class RealYearsDocTest {

    private static final Notation PLAIN = Notation.usual(UnitSystem.METRIC);

    private static final List<YearNumber> TOLD = List.of(
            YearNumber.WATER_MEAN,
            YearNumber.WATER_MEAN_WITHOUT,
            YearNumber.DAYS_AT_COMFORT,
            YearNumber.DAYS_AT_COMFORT_WITHOUT,
            YearNumber.OPENING,
            YearNumber.DELIVERED,
            YearNumber.IRRADIATION,
            YearNumber.AIR_MEAN);

    /** The municipal pool without its heater: with one every year is at comfort. */
    private static final Installation POOL = SampleReports.MUNICIPAL.forecast().installation().toBuilder()
            .heater(null)
            .build();

    @TempDir
    private Path folder;

    @Test
    void typicalYearAndExceedanceAreThoseOfTheYears() throws IOException {
        WeatherYears years = MeasuredYears.champaign(folder);
        YearsStudy study = YearsStudy.of(POOL, years);
        TypicalYear typical = TypicalYear.of(years);
        assertThat(study.seasons()).hasSize(14);

        DocBlock.check("years.md", "typical among real", among(study, study.inWeather("typical", typical.weather())));
        DocBlock.check(
                "years.md",
                "months",
                typical.months().stream()
                        .map(month -> Integer.toString(month.calendarYear()))
                        .collect(Collectors.joining(", ", "January to December are those of ", ".\n")));
        DocBlock.check("years.md", "exceedance", exceedance(study));
    }

    private static String among(YearsStudy study, YearSeason typical) {
        YearWords words = new YearWords(study, new Numbers(UnitSystem.METRIC));
        StringBuilder rows = new StringBuilder("""
                | of the season | typical year | middle of 14 real years | off by, in standard deviations | real years with less |
                |---|---|---|---|---|
                """);
        for (YearNumber number : TOLD) {
            YearsSpread spread = study.spread(number).orElseThrow();
            double value = number.of(typical).orElseThrow();
            rows.append(String.format(
                    Locale.ROOT,
                    "| %s | %s | %s | %s | %s |\n",
                    words.name(number),
                    words.show(number, value),
                    words.show(number, spread.median()),
                    DocBlock.signed(
                            (value - spread.median())
                                    / spread.standardDeviation().orElseThrow(),
                            1),
                    PLAIN.show(study.yearsBelow(number, typical), 1)));
        }
        return rows.toString();
    }

    /** Ranks by sun beside ranks by what people ask for, and how they go together. */
    private static String exceedance(YearsStudy study) {
        List<YearNumber> asked = List.of(
                YearNumber.DAYS_AT_COMFORT,
                YearNumber.DAYS_AT_COMFORT_WITHOUT,
                YearNumber.WATER_MEAN,
                YearNumber.DELIVERED);
        StringBuilder rows = new StringBuilder("""
                | of the season | rank correlation with the sun | with the air | place, from the worst, of the year with the second least sun |
                |---|---|---|---|
                """);
        YearWords words = new YearWords(study, new Numbers(UnitSystem.METRIC));
        YearSeason dull = study.worstFirst(YearNumber.IRRADIATION).get(1);
        for (YearNumber number : asked) {
            rows.append(String.format(
                    Locale.ROOT,
                    "| %s | %s | %s | %d of %d |\n",
                    words.name(number),
                    DocBlock.signed(spearman(study, number, YearNumber.IRRADIATION), 2),
                    DocBlock.signed(spearman(study, number, YearNumber.AIR_MEAN), 2),
                    study.worstFirst(number).indexOf(dull) + 1,
                    study.seasons().size()));
        }
        return rows.toString();
    }

    /** Correlation of ranks, the mean rank for equals. */
    private static double spearman(YearsStudy study, YearNumber a, YearNumber b) {
        int n = study.seasons().size();
        double mean = n / 2.0;
        double ab = 0;
        double aa = 0;
        double bb = 0;
        for (YearSeason season : study.seasons()) {
            // itself counts half
            double x = study.yearsBelow(a, season) - mean;
            double y = study.yearsBelow(b, season) - mean;
            ab += x * y;
            aa += x * x;
            bb += y * y;
        }
        return ab / Math.sqrt(aa * bb);
    }
}
