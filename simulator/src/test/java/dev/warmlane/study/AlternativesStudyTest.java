package dev.warmlane.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.SampleForecasts;
import dev.warmlane.money.Terms;
import dev.warmlane.pool.Cover;
import dev.warmlane.pool.Flow;
import dev.warmlane.season.CoverOffer;
import dev.warmlane.season.GasSummary;
import dev.warmlane.season.Installation;
import dev.warmlane.season.Offer;
import dev.warmlane.season.PeriodSummary;
import dev.warmlane.season.Prices;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.season.WarmDays;
import org.junit.jupiter.api.Test;

class AlternativesStudyTest {

    private static final double CENT = 0.01;

    private static AlternativesStudy of(SeasonForecast forecast) {
        return AlternativesStudy.of(forecast).orElseThrow();
    }

    /** Each of the four is the season of an installation that is built so. */
    @Test
    void eachIsASeasonOfItsOwn() {
        Installation built = SampleForecasts.MUNICIPAL.installation();
        AlternativesStudy study = of(SampleForecasts.MUNICIPAL);

        isSeason(study.both(), built);
        isSeason(study.coverAlone(), built.withoutCollectors());
        isSeason(study.collectors(), built.toBuilder().cover(null).build());
        isSeason(
                study.neither(),
                built.withoutCollectors().toBuilder().cover(null).build());
        assertThat(study.all()).extracting(Alternative::asDescribed).containsExactly(false, false, false, true);
    }

    private static void isSeason(Alternative one, Installation built) {
        SeasonForecast forecast = SampleForecasts.municipal(built);
        PeriodSummary season = forecast.summary().season();
        assertThat(one.daysWithoutHeater()).isEqualTo(WarmDays.of(forecast).withoutHeater());
        assertThat(one.pool().water()).isEqualTo(season.water());
        assertThat(one.pool().comfort()).isEqualTo(season.comfort());
        assertThat(one.boughtKwh()).isEqualTo(season.gas().match(GasSummary.Displaced::burnedKwh, none -> Double.NaN));
    }

    @Test
    void poolWithoutACoverIsComparedWithTheOneOffered() {
        SeasonForecast forecast = SampleForecasts.SOUTHERN;
        Cover foam = Cover.foam(CoverOffer.USUAL.cover().drawn());
        Installation built = forecast.installation();
        Installation offered = built.toBuilder()
                .offer(new Offer(0, 0, 0, Terms.USUAL, new CoverOffer(foam, 0, 5)))
                .build();
        AlternativesStudy study = of(SeasonForecast.of(offered, forecast.weather()));
        SeasonForecast covered = SeasonForecast.of(built.toBuilder().cover(foam).build(), forecast.weather());

        assertThat(study.cover()).isEqualTo(foam);
        assertThat(study.collectors().asDescribed()).isTrue();
        assertThat(study.both().pool().water())
                .isEqualTo(covered.summary().season().water());
        assertThat(study.coverAlone().pool().water())
                .isEqualTo(covered.summary().season().waterWithout());
        assertThat(study.all()).allSatisfy(a -> {
            assertThat(a.boughtKwh()).isZero();
            assertThat(a.cost()).isEmpty();
            assertThat(a.pool().balance().kwh(Flow.HEATER)).isZero();
        });
    }

    /** Ten years without interest, so that every sum can be worked by hand. */
    @Test
    void costsAreThoseOfAnAccount() {
        Installation built = SampleForecasts.MUNICIPAL.installation().toBuilder()
                .prices(new Prices("EUR", 0.1, 0.3, 100))
                .offer(new Offer(
                        3_000, 1_000, 200, new Terms(0, 0, 10), new CoverOffer(CoverOffer.USUAL.cover(), 20, 4)))
                .build();
        AlternativesStudy study = of(SampleForecasts.municipal(built));
        double collectors = 100 * 210 + 3_000 - 1_000;
        double cover = 20 * 312.5;

        assertThat(cost(study.neither()).paid()).isZero();
        assertThat(cost(study.collectors()).paid()).isCloseTo(collectors, within(CENT));
        assertThat(cost(study.both()).paid()).isCloseTo(collectors + cover, within(CENT));
        assertThat(cost(study.coverAlone()).energyPerYear())
                .isCloseTo(0.1 * study.coverAlone().boughtKwh(), within(CENT));
        assertThat(cost(study.both()).energyPerYear())
                .isCloseTo(0.1 * study.both().boughtKwh() + 0.3 * study.both().pumpKwh(), within(CENT));
        // bought now, after 4 and after 8 years
        assertThat(cost(study.coverAlone()).overYears())
                .isCloseTo(3 * cover + 10 * cost(study.coverAlone()).energyPerYear(), within(CENT));
        assertThat(cost(study.both()).overYears())
                .isCloseTo(
                        collectors
                                + 10 * 200
                                + 3 * cover
                                + 10 * cost(study.both()).energyPerYear(),
                        within(CENT));
    }

    private static Alternative.Cost cost(Alternative one) {
        return one.cost().orElseThrow();
    }

    @Test
    void withoutAPriceNothingIsToldOfItsMoney() {
        AlternativesStudy study = of(SampleForecasts.CLUB);

        assertThat(study.collectors().cost()).isPresent();
        assertThat(study.coverAlone().cost()).isEmpty();
        assertThat(study.both().cost()).isEmpty();
    }

    @Test
    void withoutCollectorsThereIsNothingToCompare() {
        assertThat(AlternativesStudy.of(SampleForecasts.BARE)).isEmpty();
    }
}
