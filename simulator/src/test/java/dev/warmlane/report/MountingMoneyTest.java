package dev.warmlane.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.SampleForecasts;
import dev.warmlane.money.Worth;
import dev.warmlane.report.write.CsvWriter;
import dev.warmlane.report.write.TextWriter;
import dev.warmlane.season.Installation;
import dev.warmlane.study.MountingBands;
import dev.warmlane.study.MountingOption;
import dev.warmlane.study.MountingResult;
import dev.warmlane.study.MountingStudy;
import dev.warmlane.units.UnitSystem;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Mountings with their prices. */
class MountingMoneyTest {

    private static final Installation BUILT = SampleForecasts.MUNICIPAL.installation();
    private static final MountingStudy STUDY = MountingStudy.of(
            BUILT,
            SampleForecasts.MUNICIPAL.weather(),
            List.of(
                    MountingOption.flat("flat"),
                    MountingOption.racks("racks", 30, 180).pricedPerM2(900)));

    @Test
    void everyMountingIsPaidAtItsOwnPrice() {
        Worth flat = STUDY.sameArea().get(0).worth().orElseThrow();
        Worth racks = STUDY.sameArea().get(1).worth().orElseThrow();
        double fixed = BUILT.offer().fixedCost();
        assertThat(flat.investment().paid()).isCloseTo(140 * 210 + fixed, within(1e-6));
        assertThat(racks.investment().paid()).isCloseTo(900 * 210 + fixed, within(1e-6));
        assertThat(racks.energySaved()).isLessThan(flat.energySaved());
    }

    @Test
    void thePumpFollowsTheFlowOfWhatFitsTheRoof() {
        for (MountingResult result : STUDY.sameRoof()) {
            assertThat(result.forecast().installation().pipes().pumpPowerW())
                    .isCloseTo(BUILT.pipes().pumpPowerW() * result.fit().areaM2() / 210, within(1e-9));
        }
    }

    @Test
    void textAndCsvTellTheSameAndWhichPriceIsTaken() {
        Report report = MountingReport.of(STUDY, UnitSystem.METRIC);
        String text = TextWriter.full(report).replaceAll("\\s+", " ");
        String csv = CsvWriter.csv(MountingCsv.seasons(STUDY, UnitSystem.METRIC));
        Worth flat = STUDY.sameArea().get(0).worth().orElseThrow();

        assertThat(text)
                .contains(
                        "Collectors cost with “racks” 900 EUR for each m².",
                        "No price of their own is given for “flat”: the general price of 140 EUR for each m² is taken",
                        "With the same area “flat”, ",
                        "not within 40 years",
                        new Numbers(UnitSystem.METRIC).show(flat.netPresentValue(), 0));
        assertThat(csv.lines().findFirst().orElseThrow())
                .contains("paid_money", "saved_a_year_money", "net_present_value_money", "payback_years");
        assertThat(csv.lines().skip(1).findFirst().orElseThrow())
                .contains(String.valueOf(Math.round(flat.investment().paid())));
    }

    @Test
    void whereAllLoseNoneIsWorthMost() {
        MountingStudy dear = MountingStudy.of(
                BUILT,
                SampleForecasts.MUNICIPAL.weather(),
                List.of(
                        MountingOption.flat("flat").pricedPerM2(900),
                        MountingOption.racks("racks", 30, 180).pricedPerM2(900)));
        String text =
                TextWriter.full(MountingReport.of(dear, UnitSystem.METRIC)).replaceAll("\\s+", " ");

        assertThat(text).contains("loses least; the next is ").doesNotContain("worth most", "[prices]", "[money]");
        assertThat(TextWriter.full(MountingReport.of(STUDY, UnitSystem.METRIC)).replaceAll("\\s+", " "))
                .contains("is worth most; the next is ")
                .doesNotContain("loses least");
    }

    @Test
    void whatIsWorthMostStandsOnTheFirstSheetWithItsRange() {
        assertThat(new MountingAnswer(STUDY, new MountingBands(STUDY), new Numbers(UnitSystem.METRIC)).figures())
                .anySatisfy(figure -> {
                    assertThat(figure.meaning()).contains("net present value of “flat”");
                    assertThat(figure.range()).contains(" to ");
                });
    }

    /** Racks for next to nothing would be worth most, but the roof has no room for as many as the mats. */
    @Test
    void whatDoesNotFitIsNotShownAsWorthMost() {
        MountingStudy cheap = MountingStudy.of(
                BUILT.toBuilder()
                        .arrays(List.of(BUILT.arrays().get(0).withAreaM2(330)))
                        .build(),
                SampleForecasts.MUNICIPAL.weather(),
                List.of(
                        MountingOption.flat("flat").pricedPerM2(140),
                        MountingOption.racks("racks", 30, 180).pricedPerM2(1)));
        MountingResult racks = cheap.sameArea().get(1);
        assertThat(racks.fit().fits()).isFalse();
        assertThat(racks.worth().orElseThrow().netPresentValue())
                .isGreaterThan(cheap.sameRoof().get(1).worth().orElseThrow().netPresentValue());
        assertThat(new MountingAnswer(cheap, new MountingBands(cheap), new Numbers(UnitSystem.METRIC)).figures())
                .anySatisfy(figure -> assertThat(figure.meaning())
                        .isEqualTo("net present value of “racks”, the most that fits the roof, the highest"));
    }

    @Test
    void withoutAHeaterNeitherMoneyNorGasIsSpokenOf() {
        MountingStudy unheated = MountingStudy.of(
                BUILT.toBuilder().heater(null).build(),
                SampleForecasts.MUNICIPAL.weather(),
                List.of(MountingOption.flat("flat"), MountingOption.racks("racks", 30, 180)));
        String text = TextWriter.full(MountingReport.of(unheated, UnitSystem.METRIC));
        assertThat(text.replace("gas and electrical work", "")).doesNotContainPattern("\\bgas\\b");
        assertThat(text).doesNotContain("What the mountings are worth");
    }
}
