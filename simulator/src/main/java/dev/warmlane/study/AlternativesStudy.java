package dev.warmlane.study;

import dev.warmlane.money.Investment;
import dev.warmlane.money.Terms;
import dev.warmlane.pool.Cover;
import dev.warmlane.pool.PoolForcing;
import dev.warmlane.season.CollectorsWorth;
import dev.warmlane.season.CoverOffer;
import dev.warmlane.season.GasSummary;
import dev.warmlane.season.Installation;
import dev.warmlane.season.MoneySummary;
import dev.warmlane.season.PeriodSummary;
import dev.warmlane.season.Periods;
import dev.warmlane.season.PoolSummary;
import dev.warmlane.season.SeasonForcing;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.season.WarmDays;
import java.util.List;
import java.util.Optional;

/**
 * What else the money could do: the pool with neither collectors nor cover, with either, and with both, in the same
 * weather. The cover is the pool's own, or the one offered where it has none. The four start with the water that each has
 * by itself.
 *
 * @param cover the cover
 * @param terms how later years are counted
 * @param neither as the pool would be without either
 * @param collectors with the collectors alone
 * @param coverAlone with the cover alone
 * @param both with both
 */
public record AlternativesStudy(
        Cover cover,
        Terms terms,
        Alternative neither,
        Alternative collectors,
        Alternative coverAlone,
        Alternative both) {

    /** Simulates the other two seasons; nothing for a pool without collectors, which leaves nothing to compare. */
    public static Optional<AlternativesStudy> of(SeasonForecast forecast) {
        Installation built = forecast.installation();
        if (built.arrays().isEmpty()) {
            return Optional.empty();
        }
        boolean covered = built.cover().isPresent();
        Installation other = other(built);
        PoolForcing pool = SeasonForcing.poolOf(other, forecast.weather());
        Season one = Season.of(forecast);
        Season two = Season.of(SeasonForecast.of(
                other, new SeasonForcing(pool, forecast.forcing().collectors()), forecast.weather()));
        Season bare = covered ? two : one;
        Season withCover = covered ? one : two;
        return Optional.of(new AlternativesStudy(
                cover(built),
                built.offer().terms(),
                without(built, bare, false),
                with(built, bare, false, !covered),
                without(built, withCover, true),
                with(built, withCover, true, covered)));
    }

    /** The same without its cover, or with the one offered where it has none. */
    static Installation other(Installation built) {
        return built.toBuilder()
                .cover(built.cover().isPresent() ? null : cover(built))
                .build();
    }

    private static Cover cover(Installation built) {
        return built.cover().orElse(built.offer().cover().cover());
    }

    /** All four, from nothing bought to everything. */
    public List<Alternative> all() {
        return List.of(neither, collectors, coverAlone, both);
    }

    private record Season(PeriodSummary sums, WarmDays days) {

        static Season of(SeasonForecast forecast) {
            return new Season(PeriodSummary.of(forecast, Periods.season(forecast.with())), WarmDays.of(forecast));
        }
    }

    private static Alternative with(Installation built, Season of, boolean cover, boolean asDescribed) {
        PeriodSummary season = of.sums;
        double bought = season.gas().match(GasSummary.Displaced::burnedKwh, none -> 0.0);
        return new Alternative(
                true,
                cover,
                asDescribed,
                new PoolSummary(season.water(), season.comfort(), season.balance(), bought),
                of.days.withoutHeater(),
                bought,
                season.gas().fuel().co2KgForKwh(bought),
                season.pump().electricityKwh(),
                cost(built, true, cover, season));
    }

    private static Alternative without(Installation built, Season of, boolean cover) {
        PeriodSummary season = of.sums;
        double bought = season.gas().match(GasSummary.Displaced::burnedWithoutKwh, none -> 0.0);
        return new Alternative(
                false,
                cover,
                false,
                new PoolSummary(season.waterWithout(), season.comfortWithout(), season.balanceWithout(), bought),
                of.days.withoutHeaterBefore(),
                bought,
                season.gas().fuel().co2KgForKwh(bought),
                0,
                cost(built, false, cover, season));
    }

    /** What a season costs with or without the collectors. */
    static Optional<Alternative.Cost> cost(
            Installation built, boolean collectors, boolean cover, PeriodSummary season) {
        Optional<Double> energy = MoneySummary.of(built, season)
                .map(money -> collectors ? money.gasCost() + money.pumpCost() : money.gasCostWithout());
        Optional<Investment> roof = collectors ? CollectorsWorth.investment(built) : Optional.of(Investment.NONE);
        Optional<Investment> sheet = cover ? priced(built) : Optional.of(Investment.NONE);
        if (energy.isEmpty() || roof.isEmpty() || sheet.isEmpty()) {
            return Optional.empty();
        }
        Terms terms = built.offer().terms();
        return Optional.of(new Alternative.Cost(
                roof.get().paid() + sheet.get().paid(),
                energy.get(),
                roof.get().presentCost(terms)
                        + sheet.get().presentCost(terms)
                        + energy.get() * terms.factorOfEnergy(terms.years())));
    }

    /** What the cover costs; nothing where that is not known. */
    private static Optional<Investment> priced(Installation built) {
        CoverOffer offer = built.offer().cover();
        return offer.pricePerM2() > 0 && built.prices().isPresent()
                ? Optional.of(new Investment(offer.pricePerM2() * built.pool().areaM2(), 0, 0, offer.lastsYears()))
                : Optional.empty();
    }
}
