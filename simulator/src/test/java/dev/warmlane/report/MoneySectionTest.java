package dev.warmlane.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.SampleForecasts;
import dev.warmlane.money.Terms;
import dev.warmlane.money.Worth;
import dev.warmlane.report.write.HtmlWriter;
import dev.warmlane.report.write.TextWriter;
import dev.warmlane.scenario.ReportSettings;
import dev.warmlane.season.CollectorsWorth;
import dev.warmlane.season.CoverOffer;
import dev.warmlane.season.Installation;
import dev.warmlane.season.MoneySummary;
import dev.warmlane.season.Offer;
import dev.warmlane.season.Prices;
import dev.warmlane.study.AlternativesStudy;
import dev.warmlane.units.Estimate;
import dev.warmlane.units.Notation;
import dev.warmlane.units.UnitSystem;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class MoneySectionTest {

    private static final Notation PLAIN = Notation.usual(UnitSystem.METRIC);

    private static final double CENT = 0.01;

    private static Subject with(Prices prices, Offer offer) {
        Installation built = SampleForecasts.MUNICIPAL.installation().toBuilder()
                .prices(prices)
                .offer(offer)
                .build();
        return Subject.of(SampleForecasts.municipal(built), new ReportSettings("A pool", UnitSystem.METRIC));
    }

    private static String text(Subject subject) {
        return TextWriter.full(ForecastReport.of(subject)).replaceAll("\\s+", " ");
    }

    /** 140 for each of 210 m², and what stands beside it; the sum of twenty years by the factor of an annuity. */
    @Test
    void worthIsOfTheSeasonsMoney() {
        Subject subject = with(
                new Prices("EUR", 0.09, 0.28, 140),
                new Offer(3_000, 5_000, 200, new Terms(0.05, 0, 20), CoverOffer.USUAL));
        MoneySummary money = subject.summary().money().orElseThrow();
        Worth worth =
                CollectorsWorth.of(subject.installation(), subject.season()).orElseThrow();

        assertThat(worth.investment().paid()).isCloseTo(140 * 210 + 3_000 - 5_000, within(CENT));
        assertThat(worth.netPresentValue())
                .isCloseTo((money.saved() - 200) * 12.46221 - 27_400, within(0.1)); // (1 − 1.05^−20)/0.05
    }

    @Test
    void textPageAndCsvTellTheSame() {
        Subject subject = SampleReports.MUNICIPAL;
        Report report = ForecastReport.of(subject);
        Worth worth =
                CollectorsWorth.of(subject.installation(), subject.season()).orElseThrow();
        Table csv = report.data().stream()
                .filter(data -> data.name().equals("money"))
                .findFirst()
                .orElseThrow()
                .table()
                .get();
        int last = worth.terms().years();
        double low = number(csv, last, 1);
        double likely = number(csv, last, 2);
        double high = number(csv, last, 3);

        assertThat(csv.rows()).hasSize(last + 1);
        assertThat(number(csv, 0, 2)).isCloseTo(-worth.investment().paid(), within(CENT));
        assertThat(likely).isCloseTo(worth.netPresentValue(), within(CENT)).isStrictlyBetween(low, high);
        String told = PLAIN.show(rounded(likely), 0) + " EUR " + PLAIN.show(rounded(low), 0) + " to "
                + PLAIN.show(rounded(high), 0) + " EUR";
        assertThat(text(subject)).contains("net present value " + told);
        assertThat(HtmlWriter.page(report, Optional.of("none"))
                        .replaceAll("<[^>]*>", " ")
                        .replaceAll("\\s+", " "))
                .contains("net present value " + told);
    }

    /** Two digits, as the doubt is tens of percent. */
    private static double rounded(double value) {
        return new BigDecimal(value).round(new MathContext(2)).doubleValue();
    }

    @Test
    void whatNeverPaysBackSaysSoEverywhere() {
        Subject subject = with(new Prices("EUR", 0.02, 0.28, 900), Offer.USUAL);

        assertThat(text(subject))
                .contains("paid back not within 40 years")
                .contains("The collectors cost in 20 years")
                .contains("more than they bring")
                .doesNotContain("Their heat costs less");
    }

    /** Who sees cheap heat beside a loss asks why. */
    @Test
    void cheapHeatThatDoesNotPaySaysWhy() {
        assertThat(text(with(new Prices("EUR", 0.09, 0.28, 350), Offer.USUAL)))
                .contains("more than they bring")
                .contains("Their heat costs less than the heater's, but a part of it only makes the water warmer");
        assertThat(text(SampleReports.MUNICIPAL)).doesNotContain("Their heat costs less");
    }

    @Test
    void withoutPricesNoMoneyIsSpokenOf() {
        Installation built = SampleForecasts.MUNICIPAL.installation().toBuilder()
                .prices(null)
                .build();
        String text =
                text(Subject.of(SampleForecasts.municipal(built), new ReportSettings("A pool", UnitSystem.METRIC)));

        assertThat(text)
                .doesNotContain("Money over the years", "present value", "paid back", "EUR", " costs ")
                .contains("What else the money could do");
    }

    @Test
    void coverIsPutBesideTheCollectors() {
        assertThat(text(SampleReports.MUNICIPAL))
                .containsPattern(
                        "The cover alone saves 140,000 kWh \\([0-9,]+ to [0-9,]+\\) of what is bought, more than the"
                                + " collectors alone, 66,000 kWh \\([0-9,]+ to [0-9,]+\\); both save 190,000 kWh \\(")
                .contains("at comfort on 16 and 42 days")
                .containsPattern("Over 20 years both together cost least: [0-9,]+ EUR \\([0-9,]+ to [0-9,]+\\)"
                        + " for what is built and for energy");
        assertThat(text(SampleReports.SOUTHERN))
                .contains("The pool has no cover. Beside the collectors, a bubble sheet");
    }

    /** The club's heater holds comfort in all four, and what it does not have to give is told instead. */
    @Test
    void daysThatSayNothingAreNotPutBesideEachOther() {
        AlternativesStudy study = AlternativesStudy.of(SampleForecasts.CLUB).orElseThrow();

        assertThat(text(SampleReports.CLUB))
                .contains("with the collectors alone; the heater gives nothing on "
                        + study.coverAlone().daysWithoutHeater() + " and "
                        + study.collectors().daysWithoutHeater() + " days.")
                .doesNotContain("at comfort on ");
    }

    /** 210 m² at 140 and 3,000 once; 312.5 m² of cover at 28, bought again in every so many years. */
    @Test
    void withoutAHeaterEachStillHasItsPrice() {
        Installation unheated = SampleForecasts.MUNICIPAL.installation().toBuilder()
                .heater(null)
                .build();
        AlternativesStudy study =
                AlternativesStudy.of(SampleForecasts.municipal(unheated)).orElseThrow();

        assertThat(study.collectors().cost().orElseThrow().paid()).isCloseTo(140 * 210 + 3000, within(1e-6));
        assertThat(study.coverAlone().cost().orElseThrow().paid()).isCloseTo(28 * 312.5, within(1e-6));
        assertThat(study.neither().cost().orElseThrow().overYears()).isZero();
        assertThat(text(Subject.of(
                        SampleForecasts.municipal(unheated), new ReportSettings("A pool", UnitSystem.METRIC))))
                .containsPattern("Over 20 years the cover alone costs [0-9,]+ EUR and the collectors alone [0-9,]+ EUR"
                        + "( \\([0-9,]+ to [0-9,]+\\))?, pumping included")
                .contains("sums are in EUR")
                .doesNotContain("cost least", "costs least");
    }

    @Test
    void aPaybackThatMayNeverComeIsPlainWords() {
        Worth worth = CollectorsWorth.of(SampleForecasts.MUNICIPAL.installation(), SampleReports.MUNICIPAL.season())
                .orElseThrow();
        Numbers numbers = new Numbers(UnitSystem.METRIC);
        double saved = worth.energySaved();
        String soonest = MoneyWords.paybackRange(numbers, worth, new Estimate(0, saved, 2 * saved));

        assertThat(soonest).matches("\\d+(\\.\\d)? years, at worst not within 40");
        assertThat(MoneyWords.paybackRange(numbers, worth, new Estimate(saved, saved, 2 * saved)))
                .matches("\\d+(\\.\\d)? to \\d+(\\.\\d)? years");
        assertThat(MoneyWords.paybackRange(numbers, worth, new Estimate(-saved, -saved, 0)))
                .isEmpty();
    }

    private static double number(Table table, int row, int column) {
        return table.rows().get(row).get(column).match(words -> Double.NaN, Cell.Value::value, empty -> Double.NaN);
    }
}
