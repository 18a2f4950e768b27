package dev.warmlane.report;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.study.MountingResult;
import dev.warmlane.units.Measure;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Which mounting leads is said first, by heat, gas and days, and a small lead is called none. */
class MountingLeadTest {

    private static final SampleStudies CLUB = SampleStudies.CLUB;
    private static final Numbers NUMBERS = new Numbers(CLUB.units());

    private static List<MountingResult> ranked(List<MountingResult> results) {
        return results.stream()
                .sorted(Comparator.comparingDouble(MountingResult::deliveredKwh).reversed())
                .toList();
    }

    @Test
    void leadIsInHeatGasAndDays() {
        List<MountingResult> ranked = ranked(CLUB.mountings().sameArea());
        MountingResult best = ranked.get(0);
        MountingResult last = ranked.get(ranked.size() - 1);
        double heat = best.deliveredKwh() / last.deliveredKwh() - 1;
        double gas = best.season().gas().replacedKwh() / last.season().gas().replacedKwh() - 1;
        assertThat(Math.min(heat, gas)).isGreaterThan(MountingLead.NONE_BELOW);

        assertThat(words(List.of(best, last)))
                .startsWith("“" + best.option().name() + "” leads “"
                        + last.option().name() + "”, the next, by " + NUMBERS.show(Measure.SHARE, heat)
                        + " in heat and " + NUMBERS.show(Measure.SHARE, gas) + " in gas displaced; ")
                .contains(best.season().comfort().daysAtComfort() + " days");
    }

    @Test
    void lessThanTwoPercentIsNoLead() {
        MountingResult one = CLUB.mountings().sameArea().get(0);

        assertThat(words(List.of(one, one))).startsWith("none leads: ").contains("less than 2 % in heat and in gas");
    }

    @Test
    void moreHeatWithLessGasDependsOnWhatIsWanted() {
        // the most that fits against the same area, ranked the wrong way round: less heat and less gas
        MountingResult little = CLUB.mountings().sameArea().get(0);
        MountingResult much = CLUB.mountings().sameRoof().get(0);
        assertThat(much.deliveredKwh()).isGreaterThan(little.deliveredKwh());

        assertThat(words(List.of(little, much))).contains("it depends on what is wanted: ", " more gas");
    }

    @Test
    void conclusionStandsFirst() {
        assertThat(new MountingAnswer(CLUB.mountings(), new Numbers(CLUB.units())).sentences())
                .startsWith("With the same area ")
                .contains(" With all that fits the roof ");
    }

    private static String words(List<MountingResult> ranked) {
        return MountingLead.of(ranked, CLUB.mountings(), NUMBERS).orElseThrow().words();
    }
}
