package dev.warmlane.report.page;

import dev.warmlane.report.AreaParts;
import dev.warmlane.report.ForecastParts;
import dev.warmlane.report.ForecastReport;
import dev.warmlane.report.StudyCautions;
import dev.warmlane.report.chart.Chart;
import dev.warmlane.study.AreaDesign;
import java.util.List;
import java.util.Optional;

/** An area study as one HTML file that needs nothing else. Well-formed XML as well. */
public final class AreaPage {

    private AreaPage() {}

    /**
     * Writes the page.
     *
     * @param described the forecast of what the study started from
     * @param parts the study
     * @param charts its charts, as {@link dev.warmlane.report.chart.AreaCharts} gives them; none where they cannot be
     *     drawn
     * @param remark a line about what is missing from it
     */
    public static String of(ForecastReport described, AreaParts parts, List<Chart> charts, Optional<String> remark) {
        AreaHeadline headline = new AreaHeadline(parts.study(), parts.units());
        List<String> cautions = StudyCautions.of(
                described,
                parts.study().designs().stream().map(AreaDesign::season).toList());
        return new StudyValues(described, parts.title(), cautions, charts, remark)
                .with("sentences", headline.sentences())
                .with("keyNumbers", headline.keyNumbers())
                .with("job", new ForecastParts(described).job())
                .with("areas", HtmlPart.of(parts.areas()))
                .with("notes", parts.notes())
                .chart("heatChart", "area-heat")
                .chart("worthChart", "area-worth")
                .chart("comfortChart", "area-comfort")
                .filledInto("areas");
    }
}
