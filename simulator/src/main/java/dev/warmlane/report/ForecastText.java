package dev.warmlane.report;

import dev.warmlane.pool.PoolSetting;
import dev.warmlane.scenario.Assumption;
import dev.warmlane.scenario.ReportSettings;
import dev.warmlane.season.Installation;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.season.SeasonSummary;
import dev.warmlane.site.Site;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A forecast in words and tables, for a terminal or a mail.
 *
 * @param title its title
 * @param brief the parts that are asked for first, with the cautions
 * @param sections all parts in their order
 */
public record ForecastText(String title, List<TextSection> brief, List<TextSection> sections) {

    private static final String ASSUMED = "Assumed, because it was not given";

    /** Keeps its own copies of the lists. */
    public ForecastText {
        brief = List.copyOf(brief);
        sections = List.copyOf(sections);
    }

    /**
     * Writes a forecast up; simulates the season for a sheltered and an exposed pool on the way.
     *
     * @param forecast the season
     * @param settings title and units
     * @param assumed what was assumed where nothing was given
     */
    public static ForecastText of(SeasonForecast forecast, ReportSettings settings, List<Assumption> assumed) {
        return of(ForecastReport.of(forecast, settings, assumed));
    }

    /** Writes a forecast up. */
    public static ForecastText of(ForecastReport report) {
        Numbers numbers = new Numbers(report.units());
        SeasonForecast forecast = report.forecast();
        SeasonSummary summary = report.summary();
        TextSection job = job(numbers, forecast);
        TextSection headline = HeadlineText.of(numbers, forecast, summary);
        TextSection months =
                new TextSection("Month by month", TextSection.linesOf(ForecastTables.months(forecast, report.units())));
        Optional<TextSection> lookAt = LookAtText.of(report);
        TextSection certainty = CertaintyText.of(numbers, report);
        TextSection cautions = SafetyText.cautions(numbers, summary);

        List<TextSection> brief = new ArrayList<>(List.of(job, headline, months));
        lookAt.ifPresent(brief::add);
        brief.addAll(List.of(certainty, assumedInShort(report.assumed()), cautions));

        List<TextSection> sections = new ArrayList<>(List.of(job, headline, months));
        lookAt.ifPresent(sections::add);
        sections.add(PoolText.of(numbers, forecast.installation(), summary));
        sections.add(HeatText.collectors(numbers, summary));
        sections.add(GasText.of(numbers, summary));
        sections.add(HeatText.balance(numbers, summary.season()));
        sections.add(certainty);
        summary.workingRange()
                .ifPresent(range -> sections.add(SafetyText.workingRange(
                        numbers, range, forecast.installation().season().days())));
        sections.add(new TextSection(
                "The weather file, as it was read", TextSection.listed(WeatherText.mended(forecast.weather()))));
        sections.add(assumed(report.assumed()));
        sections.add(cautions);
        return new ForecastText(report.settings().title(), brief, sections);
    }

    /** All of it, lines ending with a line feed. */
    public String text() {
        return TextSection.page(title, sections);
    }

    /** The first page: headline, months, how sure it is, cautions; lines ending with a line feed. */
    public String briefText() {
        return TextSection.page(title, brief);
    }

    private static TextSection assumed(List<Assumption> assumed) {
        List<String> lines = assumed.isEmpty()
                ? List.of("Nothing: everything was given.")
                : TextSection.listed(assumed.stream().map(Assumption::toString).toList());
        return new TextSection(ASSUMED, lines);
    }

    private static TextSection assumedInShort(List<Assumption> assumed) {
        String names = assumed.stream().map(Assumption::words).distinct().collect(Collectors.joining(", "));
        String all =
                assumed.isEmpty() ? "Nothing: everything was given." : names + ". The full forecast has their values.";
        return new TextSection(ASSUMED, TextSection.broken("", all));
    }

    static TextSection job(Numbers numbers, SeasonForecast forecast) {
        Installation built = forecast.installation();
        Site site = forecast.weather().site();
        List<String> lines = new ArrayList<>();
        lines.add("Pool: " + numbers.show(Measure.AREA, built.pool().areaM2()) + ", "
                + numbers.show(Measure.LENGTH, built.pool().depthM()) + " deep, "
                + (built.pool().setting() instanceof PoolSetting.Indoor ? "indoor" : "outdoor")
                + built.cover().map(cover -> ", " + cover.name()).orElse(", no cover"));
        lines.add("Collectors: " + numbers.show(Measure.AREA, built.collectorAreaM2()) + ", "
                + Numbers.show(100 * built.collectorAreaM2() / built.pool().areaM2(), 0) + " % of the pool");
        lines.add("Heater: "
                + built.heater()
                        .map(heater -> heater.fuel().name() + ", " + numbers.show(Measure.POWER, heater.capacityKw())
                                + ", set to " + numbers.show(Measure.TEMPERATURE, heater.setPointC()))
                        .orElse("none")
                + "; collectors warm up to "
                + numbers.show(Measure.TEMPERATURE, built.control().limitC()));
        lines.add("Season: " + Numbers.show(built.season().first()) + " to "
                + Numbers.show(built.season().last()) + ", " + built.season().days() + " days");
        lines.addAll(TextSection.broken(
                "Weather: ",
                site.name() + ", " + Numbers.place(site) + " ("
                        + forecast.weather().source() + ")"));
        return new TextSection("The job", lines);
    }
}
