package dev.warmlane.report.page;

import dev.warmlane.report.ForecastParts;
import dev.warmlane.report.ForecastReport;
import dev.warmlane.report.chart.Chart;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What the pages of all studies are filled in with. */
final class StudyValues {

    private final Map<String, @Nullable Object> values = new HashMap<>();
    private final Map<String, String> drawn = new HashMap<>();

    /**
     * Begins with what every page has.
     *
     * @param described the forecast of what the study started from
     * @param title the study's title
     * @param cautions what to be careful of
     * @param charts its charts; none where they cannot be drawn
     * @param remark a line about what is missing from the page
     */
    StudyValues(
            ForecastReport described,
            String title,
            List<String> cautions,
            List<Chart> charts,
            Optional<String> remark) {
        charts.forEach(chart -> drawn.put(chart.name(), chart.inPage().svg()));
        ForecastParts parts = new ForecastParts(described);
        values.put("title", title);
        values.put("place", ForecastPage.place(described));
        values.put("remark", remark.orElse(null));
        values.put(
                "assumed",
                described.assumed().stream().map(ForecastPage.Assumed::of).toList());
        values.put("nothingAssumed", described.assumed().isEmpty());
        values.put("typicalYear", parts.typicalYear());
        values.put("cautions", cautions);
        values.put("weather", parts.weather());
        values.put("weatherQuality", parts.weatherQuality());
        values.put("model", ModelSources.of(described.forecast().installation()));
    }

    /** Adds a value; null leaves out what the template has for it. */
    StudyValues with(String name, @Nullable Object value) {
        values.put(name, value);
        return this;
    }

    /** Adds a chart under a name of the template, if it was drawn. */
    StudyValues chart(String name, String chart) {
        return with(name, drawn.get(chart));
    }

    /** The page. */
    String filledInto(String template) {
        return PageTemplate.filled(template, values);
    }
}
