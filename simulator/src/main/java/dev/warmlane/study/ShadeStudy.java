package dev.warmlane.study;

import dev.warmlane.irradiance.Skylines;
import dev.warmlane.pool.Flow;
import dev.warmlane.pool.Pool;
import dev.warmlane.pool.PoolSetting;
import dev.warmlane.pool.PoolSkyline;
import dev.warmlane.roof.RoofPlan;
import dev.warmlane.season.ArraySky;
import dev.warmlane.season.Installation;
import dev.warmlane.season.Period;
import dev.warmlane.season.PeriodSummary;
import dev.warmlane.season.Periods;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.site.Horizon;
import java.util.List;
import java.util.Optional;

/**
 * What shade costs: a season beside the same with nothing in the way of sun and sky, once for the collectors alone, since a
 * sunnier pool asks less of them, and once for the pool too. A shaded share and a share of the sky that are given for the
 * pool as plain numbers stay in all.
 *
 * @param shaded the season as it is
 * @param collectors the same with the collectors under an open sky
 * @param open the same with collectors and pool under an open sky
 */
public record ShadeStudy(SeasonForecast shaded, SeasonForecast collectors, SeasonForecast open) {

    /** Simulates the season under an open sky; nothing where it is open already. */
    public static Optional<ShadeStudy> of(SeasonForecast forecast) {
        Installation built = forecast.installation();
        if (!isShaded(built)) {
            return Optional.empty();
        }
        Installation collectors = openCollectors(built);
        return Optional.of(new ShadeStudy(
                forecast,
                SeasonForecast.of(collectors, forecast.weather()),
                SeasonForecast.of(openPool(collectors), forecast.weather())));
    }

    /**
     * The season with the collectors alone under an open sky; nothing where nothing is in their way.
     *
     * @param forecast the season as it is
     * @param forcing of the same weather; shared with other studies of it
     */
    public static Optional<SeasonForecast> withOpenCollectors(SeasonForecast forecast, SharedForcing forcing) {
        Installation built = forecast.installation();
        if (!areCollectorsShaded(built)) {
            return Optional.empty();
        }
        Installation open = openCollectors(built);
        return Optional.of(SeasonForecast.of(open, forcing.of(open), forcing.weather()));
    }

    /** Whether a horizon, or anything that stands on the roof or beside the pool, is in the way. */
    public static boolean isShaded(Installation built) {
        return !pool(built).isOpen() || areCollectorsShaded(built);
    }

    private static boolean areCollectorsShaded(Installation built) {
        return !built.arrays().isEmpty()
                && ArraySky.of(built).stream()
                        .anyMatch(
                                sky -> sky.near().isPresent() || !sky.horizon().isLevel());
    }

    /** What the pool of an installation sees of the sky. */
    public static Skylines pool(Installation built) {
        return built.pool()
                .setting()
                .match(outdoor -> outdoor.skyline().skylines(built.pool().areaM2()), indoor -> Skylines.OPEN);
    }

    private static Installation openCollectors(Installation built) {
        return built.arrays().isEmpty()
                ? built
                : built.toBuilder()
                        .plan(built.plan().map(RoofPlan::withoutHeights).orElse(null))
                        .roof(built.roof().toBuilder().horizon(Horizon.LEVEL).build())
                        .build();
    }

    private static Installation openPool(Installation built) {
        Pool pool = built.pool();
        PoolSetting setting = pool.setting().match(outdoor -> outdoor.withSkyline(PoolSkyline.OPEN), indoor -> indoor);
        return built.toBuilder().pool(pool.withSetting(setting)).build();
    }

    /** The months of the season. */
    public List<Loss> months() {
        return Periods.months(shaded.with()).stream().map(this::loss).toList();
    }

    /** All of the season. */
    public Loss season() {
        return loss(Periods.season(shaded.with()));
    }

    private Loss loss(Period period) {
        return new Loss(
                PeriodSummary.of(shaded, period), PeriodSummary.of(collectors, period), PeriodSummary.of(open, period));
    }

    /**
     * What is lost in a period.
     *
     * @param shaded the period as it is
     * @param openCollectors with the collectors under an open sky
     * @param open with collectors and pool under an open sky
     */
    public record Loss(PeriodSummary shaded, PeriodSummary openCollectors, PeriodSummary open) {

        /** Share of the light on the collectors that is taken away, 0 to 1. */
        public double collectorsLight() {
            return share(
                    shaded.collectors().irradiationKwh(),
                    openCollectors.collectors().irradiationKwh());
        }

        /** Share of the sun in the pool that is taken away, 0 to 1. */
        public double poolLight() {
            return share(
                    shaded.balance().kwh().getOrDefault(Flow.SUN, 0.0),
                    open.balance().kwh().getOrDefault(Flow.SUN, 0.0));
        }

        /** Share of the collectors' heat that is lost with the collectors' light. */
        public double heat() {
            return share(
                    shaded.collectors().deliveredKwh(),
                    openCollectors.collectors().deliveredKwh());
        }

        private static double share(double left, double whole) {
            return whole > 0 ? 1 - left / whole : 0;
        }
    }
}
