package dev.warmlane;

import dev.warmlane.pool.BeforeOpening;
import dev.warmlane.scenario.Scenario;
import dev.warmlane.scenario.ScenarioReader;
import dev.warmlane.season.Installation;
import dev.warmlane.season.PeriodSummary;
import dev.warmlane.season.SeasonForecast;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;

/** Forecasts of the project's own scenario files, and of what one of them would be without heater or collectors. */
public final class SampleForecasts {

    private static final Path SCENARIOS = Path.of("..", "examples", "scenarios");

    /** Heater, cover, prices, panels, one flat array. */
    public static final SeasonForecast MUNICIPAL = of(scenario("municipal-25m.toml"));

    /** A flat array and racks, US units, a deep season. */
    public static final SeasonForecast CLUB = of(scenario("us-club.toml"));

    /** No heater, and a season over New Year. */
    public static final SeasonForecast SOUTHERN = of(scenario("southern-summer.toml"));

    /** Open the whole year, in a hall. */
    public static final SeasonForecast INDOOR = of(scenario("indoor-school.toml"));

    /** The municipal pool without collectors. */
    public static final SeasonForecast BARE =
            SeasonForecast.of(MUNICIPAL.installation().withoutCollectors(), MUNICIPAL.weather());

    private SampleForecasts() {}

    /** All of them. */
    public static List<SeasonForecast> all() {
        return List.of(MUNICIPAL, CLUB, SOUTHERN, INDOOR, BARE);
    }

    /** One of the scenario files. */
    public static Scenario scenario(String name) {
        try {
            return ScenarioReader.read(SCENARIOS.resolve(name));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The municipal pool with nothing that runs before it opens, so that it opens as cold as it stood. */
    public static SeasonForecast municipalCold() {
        Installation built = MUNICIPAL.installation();
        return municipal(built.toBuilder()
                .season(built.season().after(BeforeOpening.NOTHING))
                .build());
    }

    /** Of the parts of a season those in which the pool is open: temperatures and comfort are told of these alone. */
    public static List<PeriodSummary> opened(SeasonForecast forecast, List<PeriodSummary> parts) {
        return parts.stream()
                .filter(part -> part.period().from() >= forecast.with().opening())
                .toList();
    }

    /** The municipal pool in its weather, otherwise built. */
    public static SeasonForecast municipal(Installation built) {
        return SeasonForecast.of(built, MUNICIPAL.weather());
    }

    private static SeasonForecast of(Scenario scenario) {
        try {
            return SeasonForecast.of(scenario.installation(), scenario.readWeather());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
