package dev.warmlane.report;

import dev.warmlane.pool.OpeningSeason;
import dev.warmlane.report.chart.Chart;
import dev.warmlane.report.write.HtmlWriter;
import dev.warmlane.scenario.ReportSettings;
import dev.warmlane.scenario.Scenario;
import dev.warmlane.scenario.ScenarioReader;
import dev.warmlane.season.Installation;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Schedule;
import dev.warmlane.units.UnitSystem;
import dev.warmlane.weather.UncheckedYear;
import dev.warmlane.weather.WeatherYear;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.MonthDay;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/** Subjects of reports: the project's own scenarios, and seasons that charts and page must stand as well. */
public final class SampleReports {

    /** Heater, prices, one flat array; metric. */
    public static final Subject MUNICIPAL = scenario("municipal-25m");

    /** US units. */
    public static final Subject CLUB = scenario("us-club");

    /** No heater, over New Year. */
    public static final Subject SOUTHERN = scenario("southern-summer");

    /** In a hall, the whole year. */
    public static final Subject INDOOR = scenario("indoor-school");

    /** A heat pump, comfort above its set point. */
    public static final Subject HOTEL = scenario("hotel-heat-pump");

    /** Mats laid out on a drawn roof, with the plan of it. */
    public static final Subject DRAWN = scenario("drawn-roof");

    private static final Map<String, Subject> ODD = makeOdd();

    private static final Map<Subject, Report> REPORTS = Collections.synchronizedMap(new IdentityHashMap<>());

    private static final Map<Report, String> PAGES = Collections.synchronizedMap(new IdentityHashMap<>());

    private SampleReports() {}

    /** The scenarios. */
    public static Map<String, Subject> usual() {
        return Map.of("municipal", MUNICIPAL, "club", CLUB, "southern", SOUTHERN, "indoor", INDOOR, "hotel", HOTEL);
    }

    /** Seasons with something missing. */
    public static Map<String, Subject> odd() {
        return ODD;
    }

    /** One of them. */
    public static Subject odd(String name) {
        return Objects.requireNonNull(ODD.get(name), name);
    }

    private static Map<String, Subject> makeOdd() {
        Installation built = MUNICIPAL.forecast().installation();
        Installation unheated = SOUTHERN.forecast().installation();
        Map<String, Subject> odd = new LinkedHashMap<>();
        odd.put(
                "one month",
                municipal(built.toBuilder().season(days(6, 1, 6, 30)).build()));
        odd.put(
                "one day",
                municipal(built.toBuilder().season(days(7, 14, 7, 14)).build()));
        odd.put(
                "new year's day",
                municipal(built.toBuilder().season(days(12, 31, 1, 1)).build()));
        odd.put(
                "a year from mid-month",
                municipal(built.toBuilder().season(days(3, 10, 3, 9)).build()));
        odd.put("no collectors", municipal(built.withoutCollectors()));
        odd.put(
                "neither collectors nor heater",
                of(SeasonForecast.of(
                        unheated.withoutCollectors(), SOUTHERN.forecast().weather())));
        odd.put(
                "no sun",
                of(SeasonForecast.of(built, sunless(MUNICIPAL.forecast().weather()))));
        odd.put(
                "no sun, no heater",
                of(SeasonForecast.of(unheated, sunless(SOUTHERN.forecast().weather()))));
        odd.put(
                "never open",
                municipal(built.toBuilder()
                        .season(new OpeningSeason(MonthDay.of(5, 5), MonthDay.of(9, 15), Schedule.NEVER))
                        .build()));
        return odd;
    }

    /** The municipal pool under another title. */
    public static Subject titled(String title) {
        return MUNICIPAL.in(new ReportSettings(title, MUNICIPAL.units()));
    }

    /** The report of a subject that all tests share, so that its season is simulated and its charts are drawn once. */
    public static Report report(Subject subject) {
        return once(REPORTS, subject, ForecastReport::of);
    }

    /** The page of a report, written once. */
    public static String page(Report report) {
        return once(PAGES, report, one -> loose(HtmlWriter.page(one)));
    }

    /** Made by one test while others go on with theirs. */
    private static <K, V> V once(Map<K, V> known, K of, Function<K, V> make) {
        synchronized (of) {
            V made = known.get(of);
            if (made == null) {
                made = make.apply(of);
                known.put(of, made);
            }
            return made;
        }
    }

    /** The same text with spaces before its units at which a line may end, as the text for a terminal has them. */
    static String loose(String page) {
        return page.replaceAll("\u00a0(?=\\D)", " ");
    }

    /** The charts of a report that there are. */
    public static List<Chart> charts(Report report) {
        return report.pictures().stream()
                .flatMap(picture -> picture.chart().stream())
                .toList();
    }

    private static Subject municipal(Installation built) {
        return of(SeasonForecast.of(built, MUNICIPAL.forecast().weather()));
    }

    private static Subject of(SeasonForecast forecast) {
        return Subject.of(forecast, new ReportSettings("invented", UnitSystem.METRIC));
    }

    private static OpeningSeason days(int firstMonth, int firstDay, int lastMonth, int lastDay) {
        return new OpeningSeason(MonthDay.of(firstMonth, firstDay), MonthDay.of(lastMonth, lastDay), Schedule.ALWAYS);
    }

    private static WeatherYear sunless(WeatherYear weather) {
        double[] dark = new double[HourOfYear.HOURS];
        return UncheckedYear.of(WeatherYear.builder(weather.site(), "dark", weather.sun())
                .irradianceWm2(dark, dark, dark)
                .skyLongWaveWm2(column(weather::skyLongWaveWm2), weather.longWaveOrigin())
                .airC(column(weather::airTemperatureC), column(weather::dewPointC))
                .pressureKpa(column(weather::pressureKpa))
                .windSpeedMs(column(weather::windSpeedMs)));
    }

    private static double[] column(IntToDoubleFunction values) {
        return IntStream.range(0, HourOfYear.HOURS).mapToDouble(values).toArray();
    }

    private static Subject scenario(String name) {
        try {
            Scenario scenario = ScenarioReader.read(Path.of("..", "examples", "scenarios", name + ".toml"));
            return Subject.of(SeasonForecast.of(scenario.installation(), scenario.readWeather()), scenario);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
