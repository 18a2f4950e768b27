package dev.warmlane.pool;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.site.Schedule;
import java.time.MonthDay;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OpeningSeasonTest {

    /** Days counted on a calendar of 365 days, first and last included. */
    @ParameterizedTest
    @CsvSource({
        "05-15, 09-15, 134, 124",
        "07-04, 07-04, 184, 1",
        "11-01, 03-01, 304, 121",
        "12-31, 01-01, 364, 2",
        "01-01, 12-31, 0, 365",
        "06-02, 06-01, 152, 365",
        "02-01, 02-28, 31, 28",
    })
    void lastsFromItsFirstDayToItsLast(String first, String last, int daysBefore, int days) {
        OpeningSeason season = season(first, last);
        assertThat(season.firstHour()).isEqualTo(24 * daysBefore);
        assertThat(season.days()).isEqualTo(days);
        assertThat(season.hours()).isEqualTo(24 * days);
    }

    /** A typical year has no leap day: a season that ends on it ends with 28 February, and no other 29th is shortened. */
    @Test
    void theLeapDayIsNoDay() {
        assertThat(season("02-01", "02-29").days()).isEqualTo(28);
        assertThat(season("03-01", "03-29").days()).isEqualTo(29);
        assertThat(season("02-01", "02-27").days()).isEqualTo(27);
    }

    private static OpeningSeason season(String first, String last) {
        return new OpeningSeason(MonthDay.parse("--" + first), MonthDay.parse("--" + last), Schedule.ALWAYS);
    }
}
