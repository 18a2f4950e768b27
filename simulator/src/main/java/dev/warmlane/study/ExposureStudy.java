package dev.warmlane.study;

import dev.warmlane.season.Installation;
import dev.warmlane.season.PeriodSummary;
import dev.warmlane.season.Periods;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.site.Terrain;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The same season with pool and roof each sheltered, as described and exposed to the wind. A windy pool loses more heat,
 * a windy roof gives less of it; which of the two surprises is worse is for the table to say.
 *
 * @param cases every pool with every roof, pool by pool, each from sheltered to exposed. A pool in a hall has no wind and
 *     stays as described; so does the roof of a pool without collectors
 */
public record ExposureStudy(List<Case> cases) {

    private static final List<WindExposure> ALL = List.of(WindExposure.values());

    /** Keeps its own copy of the list. */
    public ExposureStudy {
        cases = List.copyOf(cases);
    }

    /**
     * One of the cases.
     *
     * @param pool how exposed the pool is
     * @param poolWindFactor wind at the water over wind of the station at 10 m; nothing for a pool in a hall
     * @param roof how exposed the roof is
     * @param terrain the ground around the roof
     * @param season the season with and without collectors
     */
    public record Case(
            WindExposure pool,
            OptionalDouble poolWindFactor,
            WindExposure roof,
            Terrain terrain,
            PeriodSummary season) {}

    /**
     * Simulates all cases.
     *
     * @param installation what is built
     * @param forcing of the weather; shared with other studies of it
     * @param runs how to run
     * @throws java.util.concurrent.CancellationException if the runs were cancelled
     */
    public static ExposureStudy of(Installation installation, SharedForcing forcing, Runs runs) {
        boolean outdoor = installation.pool().setting().outdoor().isPresent();
        List<WindExposure> pools = outdoor ? ALL : List.of(WindExposure.LIKELY);
        List<WindExposure> roofs = installation.arrays().isEmpty() ? List.of(WindExposure.LIKELY) : ALL;
        List<Place> places = new ArrayList<>();
        for (WindExposure pool : pools) {
            roofs.forEach(roof -> places.add(new Place(pool, roof)));
        }
        return new ExposureStudy(runs.map(places, place -> place.simulate(installation, forcing)));
    }

    /**
     * The case of a pool and a roof.
     *
     * @throws IllegalArgumentException if it was not simulated because exposure makes no difference there
     */
    public Case at(WindExposure pool, WindExposure roof) {
        return cases.stream()
                .filter(c -> c.pool == pool && c.roof == roof)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(
                        "no case with the pool " + pool.label() + " and the roof " + roof.label()));
    }

    private record Place(WindExposure pool, WindExposure roof) {

        Case simulate(Installation described, SharedForcing forcing) {
            Installation moved = roofAt(poolAt(described));
            SeasonForecast forecast = SeasonForecast.of(moved, forcing.of(moved), forcing.weather());
            return new Case(
                    pool,
                    moved.pool()
                            .setting()
                            .match(
                                    outdoor -> OptionalDouble.of(outdoor.windFactor()),
                                    indoor -> OptionalDouble.empty()),
                    roof,
                    moved.terrain(),
                    PeriodSummary.of(forecast, Periods.season(forecast.with())));
        }

        private Installation poolAt(Installation built) {
            return built.pool()
                    .setting()
                    .match(
                            outdoor -> WindExposure.withPoolWind(built, pool.poolWindFactor(outdoor.windFactor())),
                            indoor -> built);
        }

        private Installation roofAt(Installation built) {
            return built.toBuilder().terrain(roof.terrain(built.terrain())).build();
        }
    }
}
