package dev.warmlane.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.SampleForecasts;
import dev.warmlane.circuit.Pipes;
import dev.warmlane.money.Terms;
import dev.warmlane.season.CoverOffer;
import dev.warmlane.season.Installation;
import dev.warmlane.season.Offer;
import dev.warmlane.season.PeriodSummary;
import dev.warmlane.season.Prices;
import dev.warmlane.units.Estimate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Which area is worth most, and how sure that is. */
class AreaWorthTest {

    private static final Runs ALONE = new Runs(1, Progress.SILENT);
    private static final SharedForcing FORCING = new SharedForcing(SampleForecasts.MUNICIPAL.weather());
    private static final Installation MUNICIPAL = SampleForecasts.MUNICIPAL.installation();

    /** Money. */
    private static final double CENT = 0.01;

    private static final AreaStudy STUDY = study(MUNICIPAL, 52.5, 420, 8);
    private static final AreaWorth WORTH =
            AreaWorth.of(STUDY, new SeasonBands(FORCING, ALONE)).orElseThrow();

    private static AreaStudy study(Installation built, double fromM2, double toM2, int designs) {
        return AreaStudy.of(built, new AreaRange(fromM2, toM2, designs), FORCING, ALONE);
    }

    /** As in a spreadsheet: one line a year, nothing of the library's own sums. */
    @Test
    void theNetPresentValueOfEveryAreaIsTheSumOfItsYears() {
        Prices prices = MUNICIPAL.prices().orElseThrow();
        Offer offer = MUNICIPAL.offer();
        for (AreaDesign design : STUDY.designs()) {
            PeriodSummary season = design.season();
            double saved = season.gas().replacedKwh() * prices.gasPerKwh()
                    - season.pump().electricityKwh() * prices.electricityPerKwh();
            double together = -(design.areaM2() * prices.collectorPerM2() + offer.fixedCost() - offer.grant());
            double today = 1;
            double price = 1;
            for (int year = 1; year <= offer.terms().years(); year++) {
                today /= 1 + offer.terms().interest();
                price *= 1 + offer.terms().energyPriceGrowth();
                together += (saved * price - offer.upkeepPerYear()) * today;
            }
            assertThat(design.worth().orElseThrow().netPresentValue()).isCloseTo(together, within(CENT));
        }
    }

    @Test
    void whatEachFurtherAreaAddsIsKnownOfEveryRow() {
        SeasonBands bands = new SeasonBands(FORCING, ALONE);
        MoreArea more = MoreArea.of(STUDY, bands);
        for (AreaDesign design : STUDY.designs()) {
            Estimate next = more.of(design).orElseThrow();
            assertThat(next).isEqualTo(bands.nextKwhPerM2(design));
            assertThat(next.likely()).isEqualTo(design.next().deliveredKwhPerM2());
            assertThat(next.high() - next.low()).isPositive();
        }
    }

    @Test
    void ofManyAreasWhatTheyAddIsKnownOfThreeAtMost() {
        AreaStudy many = study(MUNICIPAL, 100, 420, AreaWorth.MOST_DOUBTED + 1);

        assertThat(MoreArea.of(many, new SeasonBands(FORCING, ALONE)).kwhPerM2())
                .containsKeys(
                        many.designs().get(0).areaM2(),
                        many.designs().get(AreaWorth.MOST_DOUBTED).areaM2())
                .hasSizeLessThanOrEqualTo(3);
    }

    @Test
    void theBestIsTheHighestAndWhatIsAsGoodLiesAroundIt() {
        double highest = value(WORTH.best().design());
        assertThat(STUDY.designs()).allSatisfy(d -> assertThat(value(d)).isLessThanOrEqualTo(highest));
        Estimate asGood = WORTH.asGoodM2().orElseThrow();
        assertThat(asGood.likely()).isEqualTo(WORTH.best().design().areaM2());
        for (AreaDesign design : STUDY.designs()) {
            boolean within = design.areaM2() >= asGood.low() && design.areaM2() <= asGood.high();
            assertThat(value(design) >= highest * (1 - AreaWorth.AS_GOOD))
                    .as(design.areaM2() + " m2")
                    .isEqualTo(within);
        }
        assertThat(WORTH.bestThatFits().orElseThrow().design().fitsRoof()).isTrue();
    }

    @Test
    void everyRangeHoldsItsLikelyValue() {
        assertThat(WORTH.doubted()).hasSameSizeAs(STUDY.designs()).allSatisfy(one -> {
            Estimate value = one.netPresentValue();
            assertThat(value.likely()).isCloseTo(value(one.design()), within(CENT));
            assertThat(value.low()).isLessThan(value.likely());
            assertThat(value.high()).isGreaterThan(value.likely());
        });
        Estimate area = WORTH.bestAreaM2();
        assertThat(area.likely()).isEqualTo(WORTH.best().design().areaM2()).isBetween(area.low(), area.high());
        assertThat(STUDY.designs().stream().map(AreaDesign::areaM2)).contains(area.low(), area.high());
    }

    @Test
    void ofManyAreasTheDoubtOfSomeIsKnownAndThatOfTheBest() {
        AreaStudy many = study(MUNICIPAL, 100, 400, 41);
        AreaWorth worth = AreaWorth.of(many, new SeasonBands(FORCING, ALONE)).orElseThrow();
        assertThat(worth.doubted()).hasSizeBetween(AreaWorth.MOST_DOUBTED / 2, AreaWorth.MOST_DOUBTED + 3);
        assertThat(worth.best().netPresentValue().likely())
                .isEqualTo(many.designs().stream()
                        .mapToDouble(AreaWorthTest::value)
                        .max()
                        .orElseThrow());
    }

    @Test
    void aPumpThatStayedAsItIsWouldShowTheSmallestAreasAsTooDear() {
        double watts = 3_000;
        Installation strong = MUNICIPAL.toBuilder().pipes(new Pipes(60, watts)).build();
        List<AreaDesign> designs = study(strong, 52.5, 420, 8).designs();
        for (AreaDesign design : designs) {
            assertThat(design.built().pipes().pumpPowerW())
                    .isCloseTo(watts * design.areaM2() / MUNICIPAL.collectorAreaM2(), within(1e-9));
            assertThat(design.season().pump().electricityKwh())
                    .isCloseTo(
                            design.season().pump().hours()
                                    * design.built().pipes().pumpPowerW()
                                    / 1000,
                            within(1e-6));
            assertThat(design.built().pipes().heatLossWK()).isEqualTo(60);
        }
        // a quarter of the collectors: a quarter of the pump, and not all of it
        AreaDesign quarter = designs.get(0);
        double hours = quarter.season().pump().hours();
        double fixed = value(quarter) - 0.28 * hours * 0.75 * watts / 1000 * Terms.USUAL.factor(20);
        assertThat(value(quarter)).isGreaterThan(fixed + 5_000);
    }

    @Test
    void aPumpThatWouldBeTooLargeIsRefusedWithTheArea() {
        Installation huge = MUNICIPAL.toBuilder().pipes(new Pipes(60, 90_000)).build();
        assertThatThrownBy(() -> study(huge, 100, 400, 4))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("to 400 m2 is too large: the pump, whose power follows the flow, would take");
    }

    @Test
    void withoutAPriceOrAHeaterNothingIsSaidOfMoney() {
        Installation unpriced =
                MUNICIPAL.toBuilder().prices(new Prices("EUR", 0.09, 0.28, 0)).build();
        Installation unheated = MUNICIPAL.toBuilder().heater(null).build();
        assertThat(AreaWorth.of(study(unpriced, 100, 200, 2), new SeasonBands(FORCING, ALONE)))
                .isEmpty();
        assertThat(AreaWorth.of(study(unheated, 100, 200, 2), new SeasonBands(FORCING, ALONE)))
                .isEmpty();
    }

    @Test
    void whereNoAreaPaysNoneIsAsGood() {
        Installation dear = MUNICIPAL.toBuilder()
                .offer(new Offer(200_000, 0, 0, Terms.USUAL, CoverOffer.USUAL))
                .build();
        AreaWorth worth = AreaWorth.of(study(dear, 100, 200, 2), new SeasonBands(FORCING, ALONE))
                .orElseThrow();
        assertThat(worth.best().netPresentValue().likely()).isNegative();
        assertThat(worth.asGoodM2()).isEmpty();
    }

    private static double value(AreaDesign design) {
        return design.worth().orElseThrow().netPresentValue();
    }
}
