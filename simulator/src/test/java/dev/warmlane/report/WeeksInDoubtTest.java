package dev.warmlane.report;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.report.write.TextWriter;
import dev.warmlane.study.SeasonBand;
import dev.warmlane.units.Measure;
import dev.warmlane.units.UnitSystem;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The weeks say how far they are to be trusted, and the same as the csv file and the season's own range. */
class WeeksInDoubtTest {

    private static Stream<Subject> subjects() {
        return Stream.of(SampleReports.MUNICIPAL, SampleReports.CLUB, SampleReports.SOUTHERN);
    }

    @ParameterizedTest
    @MethodSource("subjects")
    void rangesAreThoseOfTheCsvFileAndHoldTheLikelyValue(Subject subject) {
        SeasonBand band = SeasonBand.of(subject.forecast());
        Table told = ForecastTables.weeks(subject);
        Table csv = ForecastTables.allOfWeeks(subject.forecast(), band, subject.units());
        String degree = subject.units() == UnitSystem.US ? "_degf" : "_degc";
        int moved = 0;
        for (int week = 0; week < csv.rows().size(); week++) {
            double low = number(csv, week, "water_mean_low" + degree);
            double likely = number(csv, week, "water_mean" + degree);
            double high = number(csv, week, "water_mean_high" + degree);
            List<String> row =
                    told.shown(told.rows().get(week), subject.numbers().notation());

            assertThat(low).isLessThanOrEqualTo(likely);
            assertThat(high).isGreaterThanOrEqualTo(likely);
            assertThat(row.get(column(told, "water_mean" + degree))).isEqualTo(shown(subject, likely));
            assertThat(row.get(column(told, "water_mean_range")))
                    .isEqualTo(
                            shown(subject, low).equals(shown(subject, high))
                                    ? ""
                                    : shown(subject, low) + " to " + shown(subject, high));
            moved += row.get(column(told, "water_mean_range")).isEmpty() ? 0 : 1;
        }
        assertThat(moved).as("weeks that something moves").isPositive();
        assertThat(TextWriter.table(told)).contains("low to");
    }

    /** The row below the weeks has the range of the headline, which comes from sums of the season and not from hours. */
    @ParameterizedTest
    @MethodSource("subjects")
    void theSeasonBelowHasTheRangeOfTheHeadline(Subject subject) {
        Table told = ForecastTables.weeks(subject);
        List<String> season = told.shown(told.totals().get(0), subject.numbers().notation());

        assertThat(season.get(column(told, "water_mean_range")))
                .isEqualTo(subject.numbers()
                        .bounds(Measure.TEMPERATURE, BandQuantity.MEAN.in(SeasonBand.of(subject.forecast()))));
    }

    private static String shown(Subject subject, double value) {
        return subject.numbers().show(value, 1);
    }

    private static int column(Table table, String csvName) {
        return table.columns().stream().map(Column::csvName).toList().indexOf(csvName);
    }

    private static double number(Table table, int row, String csvName) {
        return table.rows()
                .get(row)
                .get(column(table, csvName))
                .match(words -> Double.NaN, Cell.Value::value, empty -> Double.NaN);
    }
}
