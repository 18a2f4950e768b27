package dev.warmlane.report.page;

import dev.warmlane.report.ForecastParts;
import dev.warmlane.report.ForecastReport;
import dev.warmlane.report.SensitivityParts;
import dev.warmlane.report.StudyCautions;
import dev.warmlane.report.chart.Chart;
import dev.warmlane.season.PeriodSummary;
import dev.warmlane.study.ExposureStudy;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What a forecast depends on as one HTML file that needs nothing else. Well-formed XML as well. */
public final class SensitivityPage {

    private SensitivityPage() {}

    /**
     * Writes the page.
     *
     * @param described the forecast of what the study started from
     * @param parts both studies
     * @param charts their charts, as {@link dev.warmlane.report.chart.SensitivityCharts} gives them; none where they cannot
     *     be drawn
     * @param remark a line about what is missing from it
     */
    public static String of(
            ForecastReport described, SensitivityParts parts, List<Chart> charts, Optional<String> remark) {
        SensitivityHeadline headline = new SensitivityHeadline(parts.exposure(), parts.study(), parts.units());
        return new StudyValues(described, parts.title(), StudyCautions.of(described, seasons(parts)), charts, remark)
                .with("sentences", headline.sentences())
                .with("keyNumbers", headline.keyNumbers())
                .with("job", new ForecastParts(described).job())
                .with("exposure", HtmlPart.of(parts.sheltered()))
                .with("exposures", HtmlPart.of(parts.exposures()))
                .with("gasExposure", parts.gasExposure().map(HtmlPart::of).orElse(null))
                .with("effects", HtmlPart.of(parts.effects()))
                .with("why", parts.why())
                .with("skipped", parts.skipped())
                .with("hasSkipped", !parts.skipped().isEmpty())
                .chart("heatChart", "sensitivity-heat")
                .chart("poolChart", "sensitivity-pool")
                .chart("gasChart", "sensitivity-gas")
                .filledInto("sensitivity");
    }

    private static List<PeriodSummary> seasons(SensitivityParts parts) {
        return Stream.concat(
                        parts.exposure().cases().stream().map(ExposureStudy.Case::season),
                        parts.study().effects().stream()
                                .flatMap(s ->
                                        Stream.of(s.low().season(), s.high().season())))
                .toList();
    }
}
