package dev.warmlane.report;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.SampleForecasts;
import dev.warmlane.heater.Boiler;
import dev.warmlane.heater.Fuel;
import dev.warmlane.report.write.TextWriter;
import dev.warmlane.season.Installation;
import dev.warmlane.season.WarmDays;
import dev.warmlane.study.MountingBands;
import dev.warmlane.study.MountingOption;
import dev.warmlane.study.MountingResult;
import dev.warmlane.study.MountingStudy;
import dev.warmlane.units.Measure;
import dev.warmlane.units.UnitSystem;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
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
        // tents are behind whatever is uncertain
        List<MountingResult> ranked = ranked(CLUB.mountings().sameArea()).stream()
                .filter(one -> !one.option().name().contains("tents"))
                .toList();
        MountingResult best = ranked.get(0);
        MountingResult last = ranked.get(ranked.size() - 1);
        double heat = best.deliveredKwh() / last.deliveredKwh() - 1;
        double gas = best.season().gas().replacedKwh() / last.season().gas().replacedKwh() - 1;
        assertThat(Math.min(heat, gas)).isGreaterThan(MountingLead.NONE_BELOW);

        assertThat(words(List.of(best, last)))
                .startsWith("“" + best.option().name() + "” leads “"
                        + last.option().name() + "”, the next, by " + NUMBERS.show(Measure.SHARE, heat) + " in heat (")
                .contains(" and " + NUMBERS.show(Measure.SHARE, gas) + " in gas displaced (", " behind to ", " ahead)")
                .contains("the heater gives nothing on "
                        + WarmDays.of(best.forecast()).withoutHeater() + " days with “"
                        + best.option().name() + "”, on "
                        + WarmDays.of(last.forecast()).withoutHeater() + " with “"
                        + last.option().name() + "”.")
                // which the heater holds with and without collectors
                .doesNotContain("80.0 °F");
    }

    @Test
    void daysAtComfortAreToldWhereTheCollectorsMakeThem() {
        List<MountingResult> ranked = ranked(SampleStudies.MUNICIPAL.mountings().sameArea());
        MountingResult best = ranked.get(0);

        assertThat(MountingLead.of(ranked, SampleStudies.MUNICIPAL.bands(), new Numbers(UnitSystem.METRIC))
                        .orElseThrow()
                        .words())
                .contains("“" + best.option().name() + "” is at 24.0 °C on "
                        + best.season().comfort().daysAtComfort() + " days")
                .doesNotContain("the heater gives nothing");
    }

    @Test
    void daysThatSayNothingAreInNoTableAndAskedAbout() {
        String text = TextWriter.full(MountingReport.of(CLUB.mountings(), Optional.empty(), CLUB.described()));

        assertThat(text.lines().filter(line -> line.startsWith("  mounting ") && line.contains("delivered")))
                .hasSize(2)
                .allSatisfy(line -> assertThat(line).contains("heater").doesNotContain("comfort"));
        assertThat(text.replaceAll("\\s+", " "))
                .contains(
                        "The heater is set to 82.0 °F, so that the pool is meant to be at 80.0 °F with and without collectors:"
                                + " days at comfort say nothing of them. To count the days that they make, give a comfort above the set point");
        assertThat(TextWriter.full(MountingReport.of(
                        SampleStudies.MUNICIPAL.mountings(), Optional.empty(), SampleStudies.MUNICIPAL.described())))
                .doesNotContain("say nothing of them");
    }

    @Test
    void aPoolThatHardlyNeedsCollectorsIsToldSo() {
        Installation mild = SampleForecasts.MUNICIPAL.installation().toBuilder()
                .heater(new Boiler(Fuel.NATURAL_GAS, 0.85, 250, 12))
                .build();
        MountingStudy study = MountingStudy.of(
                mild,
                SampleForecasts.MUNICIPAL.weather(),
                List.of(MountingOption.flat("flat"), MountingOption.racks("racks", 30, 180)));

        assertThat(new MountingAnswer(study, new MountingBands(study), new Numbers(UnitSystem.METRIC)).sentences())
                .contains("this pool hardly needs them");
        assertThat(new MountingAnswer(CLUB.mountings(), CLUB.bands(), NUMBERS).sentences())
                .doesNotContain("hardly needs");
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
        assertThat(new MountingAnswer(CLUB.mountings(), CLUB.bands(), new Numbers(CLUB.units())).sentences())
                .startsWith("With the same area ")
                .contains(" With all that fits the roof ");
    }

    private static String words(List<MountingResult> ranked) {
        return MountingLead.of(ranked, CLUB.bands(), NUMBERS).orElseThrow().words();
    }
}
