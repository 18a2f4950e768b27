package dev.warmlane.report.page;

import dev.warmlane.report.ForecastReport;
import dev.warmlane.report.MountingParts;
import dev.warmlane.report.StudyCautions;
import dev.warmlane.report.chart.Chart;
import dev.warmlane.study.MountingResult;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Mountings side by side as one HTML file that needs nothing else. Well-formed XML as well. */
public final class MountingPage {

    private MountingPage() {}

    /**
     * Writes the page.
     *
     * @param described the forecast of what the study started from
     * @param parts the comparison
     * @param charts its charts, as {@link dev.warmlane.report.chart.MountingCharts} gives them; none where they cannot be
     *     drawn
     * @param remark a line about what is missing from it
     */
    public static String of(
            ForecastReport described, MountingParts parts, List<Chart> charts, Optional<String> remark) {
        MountingHeadline headline = new MountingHeadline(parts.study(), parts.units());
        List<String> cautions = StudyCautions.of(
                described,
                Stream.concat(parts.study().sameArea().stream(), parts.study().sameRoof().stream())
                        .map(MountingResult::season)
                        .toList());
        return new StudyValues(described, parts.title(), cautions, charts, remark)
                .with("sentences", headline.sentences())
                .with("keyNumbers", headline.keyNumbers())
                .with("job", parts.job())
                .with("mountings", parts.mountings())
                .with("sameArea", HtmlPart.of(parts.sameArea()))
                .with("sameRoof", HtmlPart.of(parts.sameRoof()))
                .with("why", HtmlPart.of(parts.why()))
                .with("held", HtmlPart.of(parts.held()))
                .with("turning", parts.turningPoints().map(HtmlPart::of).orElse(null))
                .chart("heatChart", "mounting-heat")
                .chart("perAreaChart", "mounting-heat-per-area")
                .chart("monthsChart", "mounting-months")
                .chart("lightChart", "mounting-light")
                .chart("heldChart", "mounting-held-pool")
                .filledInto("mountings");
    }
}
