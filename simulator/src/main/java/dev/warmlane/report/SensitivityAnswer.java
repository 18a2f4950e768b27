package dev.warmlane.report;

import dev.warmlane.report.Block.Figure;
import dev.warmlane.season.Installation;
import dev.warmlane.season.PeriodSummary;
import dev.warmlane.study.ExposureStudy;
import dev.warmlane.study.Sensitivity;
import dev.warmlane.study.SensitivityStudy;
import dev.warmlane.units.Estimate;
import dev.warmlane.units.Measure;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** What a forecast depends on most, in sentences and in a few large numbers. */
final class SensitivityAnswer {

    private final ExposureStudy exposure;
    private final SensitivityStudy study;
    private final Installation built;
    private final Numbers numbers;

    SensitivityAnswer(ExposureStudy exposure, SensitivityStudy study, Installation built, Numbers numbers) {
        this.exposure = exposure;
        this.study = study;
        this.built = built;
        this.numbers = numbers;
    }

    Section section() {
        return CommonSections.answer(
                numbers, exposure.cases().stream().map(ExposureStudy.Case::season), sentences(), figures());
    }

    /** The answer in a few sentences. */
    String sentences() {
        StringBuilder text = new StringBuilder("As planned the collectors deliver ")
                .append(likely(Measure.HEAT, heat()))
                .append(" in the season and the pool averages ")
                .append(numbers.show(
                        Measure.TEMPERATURE, study.described().water().meanC()))
                .append(". With ")
                .append(outdoor() ? "pool and roof" : "the roof")
                .append(" anywhere from sheltered to exposed it would be ")
                .append(range(Measure.HEAT, heat()))
                .append(" and ")
                .append(range(Measure.TEMPERATURE, means()))
                .append('.');
        study.effects().stream().findFirst().ifPresent(most -> text.append(
                        " Of single things the heat depends most on ")
                .append(DoubtWords.of(most))
                .append(next())
                .append(". The first alone may make it ")
                .append(change(most))
                .append('.'));
        return text.append(" Effects of several at once do not simply add up.")
                .append(Telling.hardlyNeeded(built, study.described()))
                .toString();
    }

    /** The large numbers, two or three. */
    List<Figure> figures() {
        PeriodSummary described = study.described();
        List<Figure> keys = new ArrayList<>();
        keys.add(new Figure(
                range(Measure.TEMPERATURE, means()),
                "mean pool temperature, sheltered to exposed",
                numbers.show(Measure.TEMPERATURE, described.water().meanC()) + " as planned"));
        keys.add(new Figure(
                range(Measure.HEAT, heat()),
                "heat delivered, sheltered to exposed",
                likely(Measure.HEAT, heat()) + " as planned"));
        if (SensitivityTables.displaces(study)) {
            Estimate displaced = over(season -> season.gas().replacedKwh());
            keys.add(new Figure(
                    range(Measure.HEAT, displaced),
                    FuelWords.of(described).wordDisplaced() + ", sheltered to exposed",
                    likely(Measure.HEAT, displaced) + " as planned"));
        }
        return keys;
    }

    private boolean outdoor() {
        return exposure.cases().get(0).poolWindFactor().isPresent();
    }

    private Estimate heat() {
        return over(season -> season.balance().deliveredKwh());
    }

    private Estimate means() {
        return over(season -> season.water().meanC());
    }

    /** The lowest and the highest of all cases about what is described. */
    private Estimate over(ToDoubleFunction<PeriodSummary> number) {
        DoubleSummaryStatistics cases = exposure.cases().stream()
                .map(ExposureStudy.Case::season)
                .mapToDouble(number)
                .summaryStatistics();
        double described = number.applyAsDouble(study.described());
        return new Estimate(Math.min(cases.getMin(), described), described, Math.max(cases.getMax(), described));
    }

    private String range(Measure measure, Estimate cases) {
        return numbers.bare(measure, cases.low(), cases) + " to " + numbers.about(measure, cases.high(), cases);
    }

    private String likely(Measure measure, Estimate cases) {
        return numbers.about(measure, cases.likely(), cases);
    }

    private String next() {
        return study.effects().size() < 3
                ? ""
                : ", then on " + DoubtWords.of(study.effects().get(1)) + " and "
                        + DoubtWords.of(study.effects().get(2));
    }

    /** At the two ends, three digits of what their table has: {@code 643 kWh more or 9,030 kWh less}; once where one changes nothing. */
    private String change(Sensitivity varied) {
        String low = change(varied.low());
        String high = change(varied.high());
        return low.isEmpty() ? high : high.isEmpty() || low.equals(high) ? low : low + " or " + high;
    }

    private String change(Sensitivity.End end) {
        double kwh = end.change().deliveredKwh();
        String shown = numbers.about(Measure.HEAT, Math.abs(kwh));
        return shown.equals(numbers.about(Measure.HEAT, 0)) ? "" : shown + (kwh < 0 ? " less" : " more");
    }
}
