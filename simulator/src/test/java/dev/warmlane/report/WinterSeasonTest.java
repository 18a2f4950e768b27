package dev.warmlane.report;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.SampleForecasts;
import dev.warmlane.pool.OpeningSeason;
import dev.warmlane.season.Installation;
import dev.warmlane.site.Schedule;
import dev.warmlane.site.Site;
import dev.warmlane.units.UnitSystem;
import java.time.MonthDay;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Seasons that lie in the winter of their place. */
class WinterSeasonTest {

    private static final Site NORTH = SampleForecasts.MUNICIPAL.weather().site();
    private static final Site SOUTH = SampleForecasts.SOUTHERN.weather().site();

    @ParameterizedTest
    @CsvSource({
        "false, 05-15, 09-15, ''",
        "false, 09-15, 05-15, exchange the two",
        "false, 11-01, 12-31, give its dates",
        "false, 01-01, 12-31, ''",
        "false, 03-01, 05-01, ''",
        "true, 10-20, 04-10, ''",
        "true, 04-10, 10-20, give its dates"
    })
    void isTold(boolean southern, String first, String last, String told) {
        Installation built = SampleForecasts.MUNICIPAL.installation().toBuilder()
                .season(new OpeningSeason(MonthDay.parse("--" + first), MonthDay.parse("--" + last), Schedule.ALWAYS))
                .build();
        String found = LookAt.inWinter(new Numbers(UnitSystem.METRIC), built, southern ? SOUTH : NORTH)
                .orElse("");
        assertThat(found.isEmpty()).isEqualTo(told.isEmpty());
        assertThat(found).contains(told);
    }
}
