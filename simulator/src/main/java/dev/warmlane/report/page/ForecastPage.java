package dev.warmlane.report.page;

import dev.warmlane.report.ForecastParts;
import dev.warmlane.report.ForecastReport;
import dev.warmlane.report.Numbers;
import dev.warmlane.report.chart.Chart;
import dev.warmlane.scenario.Assumption;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The forecast as one HTML file that needs nothing else: a page for the pool's owner and one for whoever checks it.
 * Well-formed XML as well.
 */
public final class ForecastPage {

    private ForecastPage() {}

    /**
     * Writes the page.
     *
     * @param report what it shows
     * @param charts its charts, as {@link dev.warmlane.report.chart.ForecastCharts} gives them; none where they cannot be
     *     drawn
     * @param remark a line about what is missing from it
     */
    public static String of(ForecastReport report, List<Chart> charts, Optional<String> remark) {
        Map<String, String> drawn = new HashMap<>();
        charts.forEach(chart -> drawn.put(chart.name(), chart.inPage().svg()));
        ForecastParts parts = new ForecastParts(report);
        Headline headline = new Headline(report);
        Map<String, @Nullable Object> page = new HashMap<>();
        page.put("title", report.settings().title());
        page.put("place", place(report));
        page.put("sentences", headline.sentences());
        page.put("keyNumbers", headline.keyNumbers());
        page.put("lookAt", parts.lookAt());
        page.put("hasLookAt", !parts.lookAt().isEmpty());
        page.put("remark", remark.orElse(null));
        page.put(
                "mainChart",
                first(drawn, "season-exposure", "season-temperature").orElse(null));
        page.put("months", HtmlTable.of(parts.months()));
        page.put("heat", headline.heat().orElse(null));
        page.put("gas", parts.gas());
        page.put("assumed", report.assumed().stream().map(Assumed::of).toList());
        page.put("nothingAssumed", report.assumed().isEmpty());
        page.put("typicalYear", parts.typicalYear());
        page.put("cautions", parts.cautions());
        page.put("job", parts.job());
        page.put("pool", HtmlTable.of(parts.pool()));
        page.put("balance", HtmlTable.of(parts.balance()));
        page.put("collectors", parts.collectors());
        page.put("exposure", parts.exposure().map(HtmlTable::of).orElse(null));
        page.put("exposureRemark", parts.exposureRemark().orElse(null));
        page.put("strongWind", parts.strongWind().orElse(null));
        page.put("workingRange", parts.workingRange());
        page.put("hasWorkingRange", !parts.workingRange().isEmpty());
        page.put("weather", parts.weather());
        page.put("weatherQuality", parts.weatherQuality());
        page.put("model", ModelSources.of(report.forecast().installation()));
        // where the first page shows the exposure, the second has the range of the days
        page.put("rangeChart", drawn.containsKey("season-exposure") ? drawn.get("season-temperature") : null);
        page.put("durationChart", drawn.get("temperature-duration"));
        page.put("balanceChart", drawn.get("pool-balance"));
        page.put("heatChart", drawn.get("heat-and-gas"));
        return PageTemplate.filled("forecast", page);
    }

    /**
     * An assumption as the template takes it.
     *
     * @param what what it is and its value
     * @param why where it comes from
     */
    record Assumed(String what, String why) {
        static Assumed of(Assumption assumption) {
            return new Assumed(assumption.words() + " " + assumption.value(), assumption.why());
        }
    }

    /** Where and when the season is. */
    static String place(ForecastReport report) {
        return report.forecast().weather().site().name() + ", season "
                + Numbers.show(report.forecast().installation().season().first()) + " to "
                + Numbers.show(report.forecast().installation().season().last());
    }

    private static Optional<String> first(Map<String, String> drawn, String... names) {
        for (String name : names) {
            if (drawn.containsKey(name)) {
                return Optional.ofNullable(drawn.get(name));
            }
        }
        return Optional.empty();
    }
}
