package dev.warmlane.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class ScheduleRulesTest {

    @Test
    void keepsItsRules() {
        Schedule schedule = Schedule.builder(0.2)
                .monthly(11, 2, 20, 8, 1)
                .daily(12, 13, 0.5)
                .build();

        assertThat(schedule.otherwise()).isEqualTo(0.2);
        assertThat(schedule.rules())
                .isEqualTo(List.of(new Schedule.Rule(11, 2, 20, 8, 1), new Schedule.Rule(1, 12, 12, 13, 0.5)));
    }

    @Test
    void rulesRunOverMidnightAndNewYear() {
        Schedule schedule = Schedule.builder(0).monthly(11, 2, 20, 8, 1).build();

        assertThat(schedule.at(HourOfYear.of(12, 31, 20))).isEqualTo(1);
        assertThat(schedule.at(HourOfYear.of(1, 1, 7))).isEqualTo(1);
        assertThat(schedule.at(HourOfYear.of(1, 1, 8))).isZero();
        assertThat(schedule.at(HourOfYear.of(3, 1, 7))).isZero();
        assertThat(schedule.hoursPerYear()).isEqualTo((30 + 31 + 31 + 28) * 12);
    }

    @Test
    void sameSharesAreTheSameScheduleWhateverTheRules() {
        Schedule byRule = Schedule.builder(0).daily(0, 24, 1).build();

        assertThat(byRule).isEqualTo(Schedule.ALWAYS).hasSameHashCodeAs(Schedule.ALWAYS);
        assertThat(byRule).isNotEqualTo(Schedule.daily(0, 23));
    }
}
