package dev.warmlane.report;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.SampleForecasts;
import dev.warmlane.heater.Boiler;
import dev.warmlane.heater.Fuel;
import dev.warmlane.report.write.TextWriter;
import dev.warmlane.scenario.Letterhead;
import dev.warmlane.scenario.ReportSettings;
import dev.warmlane.season.Installation;
import dev.warmlane.study.AreaRange;
import dev.warmlane.study.AreaStudy;
import dev.warmlane.study.AreaWorth;
import dev.warmlane.study.DatesStudy;
import dev.warmlane.study.ExposureStudy;
import dev.warmlane.study.MountingStudy;
import dev.warmlane.study.Runs;
import dev.warmlane.study.SeasonBands;
import dev.warmlane.study.SensitivityStudy;
import dev.warmlane.study.SharedForcing;
import dev.warmlane.units.Notation;
import dev.warmlane.units.UnitSystem;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What studies say where it depends on what they found. */
class StudyWordsTest {

    @Test
    void aPoolThatHardlyNeedsCollectorsIsToldSoInEveryStudyOfIt() {
        Installation mild = SampleForecasts.MUNICIPAL.installation().toBuilder()
                .heater(new Boiler(Fuel.NATURAL_GAS, 0.85, 250, 12))
                .build();
        SharedForcing forcing = new SharedForcing(SampleForecasts.MUNICIPAL.weather());
        Runs runs = Runs.onAllCores();
        Subject described = Subject.of(SampleForecasts.municipal(mild), new ReportSettings("Mild", UnitSystem.METRIC));

        assertThat(new SensitivityAnswer(
                                ExposureStudy.of(mild, forcing, runs),
                                SensitivityStudy.of(mild, forcing, runs),
                                mild,
                                new Numbers(UnitSystem.METRIC))
                        .sentences())
                .contains("this pool hardly needs them");
        assertThat(TextWriter.brief(DatesReport.of(DatesStudy.of(mild, 1, forcing, runs), described))
                        .replaceAll("\\s+", " "))
                .contains("this pool hardly needs them");
        SampleStudies heated = SampleStudies.MUNICIPAL;
        assertThat(TextWriter.brief(heated.sensitivityReport()) + TextWriter.brief(heated.datesReport()))
                .doesNotContain("hardly needs");
    }

    @Test
    void theFirstOfTheMountingsIsSetAgainstTheOthersUnlessAPairWasChosen() {
        MountingStudy study = SampleStudies.MUNICIPAL.mountings();
        String other = study.sameArea().get(1).option().name();

        assertThat(against(MountingWhy.of(new Numbers(UnitSystem.METRIC), study, Optional.of(other))))
                .contains("against “" + other + "”")
                .contains(study.sameArea().get(0).option().name());
        assertThat(against(MountingWhy.of(new Numbers(UnitSystem.METRIC), study, Optional.empty())))
                .contains("against “" + study.sameArea().get(0).option().name() + "”");
    }

    private static String against(List<Section> why) {
        return TextWriter.full(new Report(
                "r", "why", "", Letterhead.NONE, Notation.usual(UnitSystem.METRIC), why.subList(0, 1), List.of()));
    }

    @Test
    void anAreaThatLosesIsNotCalledWorthMost() {
        assertThat(areasAt(5000)).contains("loses least").doesNotContain("worth most");
        assertThat(areasAt(140)).contains("worth most").doesNotContain("loses least");
    }

    /** What the roof has no room for is no number to show large, and what fits is as uncertain. */
    @Test
    void anAreaThatDoesNotFitIsNotShownLarge() {
        AreaWorth worth = worth(60, new AreaRange(200, 600, 3));
        AreaMoney money = new AreaMoney(worth, new Numbers(UnitSystem.METRIC));
        AreaWorth.Doubted fits = worth.bestThatFits().orElseThrow();
        assertThat(worth.best().design().fitsRoof()).isFalse();

        assertThat(fits.design().areaM2()).isEqualTo(200);
        Block.Figure figure = money.figure();
        assertThat(figure.meaning().replace('\u00a0', ' '))
                .contains("with 200 m²")
                .endsWith("of those that fit");
        assertThat(money.sentences().replace('\u00a0', ' '))
                .contains("of the areas in the table that fit, 200 m² are worth most, "
                        + (figure.value() + " (" + figure.range() + ")").replace('\u00a0', ' '));
    }

    private static String areasAt(double pricePerM2) {
        return TextWriter.table(
                new AreaMoney(worth(pricePerM2, new AreaRange(100, 200, 2)), new Numbers(UnitSystem.METRIC)).table());
    }

    private static AreaWorth worth(double pricePerM2, AreaRange range) {
        Installation built = SampleForecasts.MUNICIPAL.installation();
        Installation priced = built.toBuilder()
                .prices(built.prices().orElseThrow().withCollectorPerM2(pricePerM2))
                .build();
        SharedForcing forcing = new SharedForcing(SampleForecasts.MUNICIPAL.weather());
        AreaStudy study = AreaStudy.of(priced, range, forcing, Runs.onAllCores());
        return AreaWorth.of(study, new SeasonBands(forcing, Runs.onAllCores())).orElseThrow();
    }
}
