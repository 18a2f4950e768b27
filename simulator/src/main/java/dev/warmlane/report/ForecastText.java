package dev.warmlane.report;

import dev.warmlane.pool.PoolSetting;
import dev.warmlane.scenario.Assumption;
import dev.warmlane.scenario.ReportSettings;
import dev.warmlane.season.Installation;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.season.SeasonSummary;
import dev.warmlane.site.Site;
import dev.warmlane.study.PoolWindBand;
import java.util.ArrayList;
import java.util.List;

/**
 * A forecast in words and tables, for a terminal or a mail.
 *
 * @param title its title
 * @param sections its parts in their order, the most asked for first
 */
public record ForecastText(String title, List<TextSection> sections) {

    /** Keeps its own copy of the list. */
    public ForecastText {
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
        Numbers numbers = new Numbers(settings.units());
        SeasonSummary summary = forecast.summary();
        List<TextSection> sections = new ArrayList<>();
        sections.add(job(numbers, forecast));
        sections.add(PoolText.of(numbers, forecast.installation(), summary));
        sections.add(HeatText.collectors(numbers, summary));
        sections.add(GasText.of(numbers, summary));
        sections.add(new TextSection(
                "Month by month", TextSection.linesOf(ForecastTables.months(forecast, settings.units()))));
        sections.add(HeatText.balance(numbers, summary.season()));
        sections.add(CertaintyText.of(numbers, PoolWindBand.of(forecast), forecast.weather()));
        summary.workingRange().ifPresent(range -> sections.add(SafetyText.workingRange(numbers, range)));
        if (!assumed.isEmpty()) {
            sections.add(new TextSection(
                    "Assumed, because the scenario does not say",
                    TextSection.listed(
                            assumed.stream().map(Assumption::toString).toList())));
        }
        sections.add(SafetyText.cautions(numbers, summary));
        return new ForecastText(settings.title(), sections);
    }

    /** All of it, lines ending with a line feed. */
    public String text() {
        StringBuilder text = new StringBuilder(title)
                .append('\n')
                .append("=".repeat(title.codePointCount(0, title.length())))
                .append('\n');
        sections.forEach(section -> text.append('\n').append(section.text()));
        return text.toString();
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
        lines.add("Weather: " + site.name() + ", " + Numbers.place(site) + " ("
                + forecast.weather().source() + ")");
        return new TextSection("The job", lines);
    }
}
