package dev.warmlane.report;

import dev.warmlane.fit.FittedPool;
import dev.warmlane.fit.FittedPool.MeteredFit;
import dev.warmlane.fit.FittedPool.Residual;
import dev.warmlane.fit.Found;
import dev.warmlane.fit.Unknown;
import dev.warmlane.report.Block.Figure;
import dev.warmlane.report.Block.KeyFigures;
import dev.warmlane.report.Block.Picture;
import dev.warmlane.report.Report.Data;
import dev.warmlane.report.chart.FitCharts;
import dev.warmlane.scenario.ReportSettings;
import dev.warmlane.units.Measure;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.function.ToIntFunction;
import java.util.stream.IntStream;

/** What a log says about its pool. A section is a method here and a line in {@link #sections}. */
public final class FitReport {

    private final FittedPool fit;
    private final Numbers numbers;
    private final FitWords words;

    private FitReport(FittedPool fit, Numbers numbers) {
        this.fit = fit;
        this.numbers = numbers;
        this.words = new FitWords(fit, numbers);
    }

    /**
     * The report of a fit.
     *
     * @param fit what was found
     * @param settings units and letterhead
     */
    public static Report of(FittedPool fit, ReportSettings settings) {
        FitReport report = new FitReport(fit, new Numbers(settings.units(fit.installation()), settings.notation()));
        return new Report(
                "fit",
                fit.described().name() + ": fitted to its log",
                report.numbers.place(fit.weather().site()),
                settings.letterhead(),
                settings.notation(),
                report.sections(),
                List.of(new Data("fit", () -> report.found(true)), new Data("fit-residuals", report::residuals)));
    }

    private List<Section> sections() {
        return List.of(answer(), cannotTell(), cautions(), foundBeside(), left(), metered(), how());
    }

    private Section answer() {
        return Section.of("What the log says", Place.ANSWER)
                .words(words.answer())
                .with(new KeyFigures(List.of(
                        figure(Unknown.WIND, "wind at the water over the station's"),
                        figure(Unknown.SUN, "of the sun warms the water"),
                        new Figure(
                                numbers.show(Measure.TEMPERATURE_DIFFERENCE, fit.rmsK()),
                                "between log and model",
                                "root mean square by the hour"))))
                .with(new Picture("fit-water", name -> FitCharts.water(name, fit, numbers.units())));
    }

    private Section cautions() {
        return Section.of("Cautions", Place.ANSWER).points(words.cautions());
    }

    private Figure figure(Unknown unknown, String meaning) {
        Found found = fit.found(unknown).orElseThrow();
        return new Figure(
                words.show(unknown, found.likely()),
                meaning,
                words.show(unknown, found.low()) + " to " + words.show(unknown, found.high()),
                "described " + words.show(unknown, words.described(unknown)));
    }

    private Section foundBeside() {
        return Section.of("Before and after", Place.PRINTED)
                .words("Nine draws of ten lie from low to high. By Laplace's method stands beside the chain: where the"
                        + " two differ by much, believe the wider.")
                .with(found(false))
                .words(words.correlation())
                .points(fit.found().stream()
                        .map(one -> "Before, " + one.of().label() + ": "
                                + one.prior().why())
                        .toList());
    }

    /** Every unknown a row; for csv in plain numbers. */
    private Table found(boolean plain) {
        TableBuilder<Found> table = new TableBuilder<Found>(numbers.units())
                .words("", "unknown", one -> one.of().label());
        if (plain) {
            return table.number("before", "before", Measure.FACTOR, one -> one.prior()
                            .likely())
                    .number("width before", "before_sd", Measure.FACTOR, one -> one.prior()
                            .standardDeviation())
                    .number("found", "found", Measure.FACTOR, Found::likely)
                    .number("low", "low", Measure.FACTOR, Found::low)
                    .number("high", "high", Measure.FACTOR, Found::high)
                    .number("width, Laplace", "laplace_sd", Measure.FACTOR, Found::standardDeviation)
                    .number("width, chain", "chain_sd", Measure.FACTOR, Found::chainStandardDeviation)
                    .build(fit.found());
        }
        return table.words(
                        "before",
                        "before",
                        one -> plusMinus(one, one.prior().likely(), one.prior().standardDeviation()))
                .words("found", "found", one -> words.show(one.of(), one.likely()))
                .words(
                        "low to high",
                        "range",
                        one -> words.show(one.of(), one.low()) + " to " + words.show(one.of(), one.high()))
                .words("Laplace", "laplace", one -> plusMinus(one, one.likely(), one.standardDeviation()))
                .number("width left\nof before", "width_left", Measure.SHARE, Found::shareOfPrior)
                .build(fit.found());
    }

    private String plusMinus(Found found, double value, double width) {
        return words.show(found.of(), value) + " ± " + words.width(found.of(), width);
    }

    private Section cannotTell() {
        return Section.of("What the log cannot tell", Place.ANSWER).points(words.cannotTell());
    }

    private Section left() {
        return Section.of("What is left between log and model", Place.PRINTED)
                .words(words.error())
                .with(new Picture("fit-residuals", name -> FitCharts.residuals(name, fit, numbers.units())))
                .with(byHourOfDay());
    }

    /** Mean difference in each part of the day, and by the calendar month. */
    private Table byHourOfDay() {
        List<Part> parts = new ArrayList<>();
        for (int from = 0; from < 24; from += 3) {
            int first = from;
            add(parts, first + " to " + (first + 3) + " h", one -> one.time().getHour() / 3 * 3, first);
        }
        IntStream.rangeClosed(1, 12)
                .forEach(month -> add(
                        parts,
                        Month.of(month).getDisplayName(TextStyle.SHORT, Locale.ENGLISH),
                        one -> one.time().getMonthValue(),
                        month));
        return new TableBuilder<Part>(numbers.units())
                .words("standard time", "part", Part::name)
                .count("hours", "hours", Part::hours)
                .number("logged less\nmodelled", "mean", Measure.TEMPERATURE_DIFFERENCE, Part::meanK)
                .number("root mean\nsquare", "rms", Measure.TEMPERATURE_DIFFERENCE, Part::rmsK)
                .build(parts);
    }

    private void add(List<Part> parts, String name, ToIntFunction<Residual> key, int wanted) {
        List<Residual> in = fit.residuals().stream()
                .filter(one -> key.applyAsInt(one) == wanted)
                .toList();
        if (!in.isEmpty()) {
            parts.add(new Part(
                    name,
                    in.size(),
                    mean(in, Residual::differenceK),
                    Math.sqrt(mean(in, one -> one.differenceK() * one.differenceK()))));
        }
    }

    private static double mean(List<Residual> in, ToDoubleFunction<Residual> number) {
        return in.stream().mapToDouble(number).average().orElseThrow();
    }

    private record Part(String name, int hours, double meanK, double rmsK) {}

    private Table residuals() {
        return new TableBuilder<Residual>(numbers.units())
                .words("time", one -> one.time().toString())
                .number("logged", Measure.TEMPERATURE, Residual::loggedC)
                .number("modelled", Measure.TEMPERATURE, Residual::modelC)
                .number("difference", Measure.TEMPERATURE_DIFFERENCE, Residual::differenceK)
                .build(fit.residuals());
    }

    private Section metered() {
        Section section = Section.of("Bills and meter", Place.PRINTED);
        if (!fit.bills().isEmpty()) {
            section = section.with(metered("bought for\nthe heater", Measure.HEAT, fit.bills(), 1));
        }
        if (!fit.meter().isEmpty()) {
            section = section.with(metered("make-up\nwater", Measure.VOLUME, fit.meter(), 1e-3));
        }
        return section;
    }

    private Table metered(String what, Measure measure, List<MeteredFit> periods, double toShown) {
        return new TableBuilder<MeteredFit>(numbers.units())
                .words("from", one -> one.read().from().toString())
                .words("to", one -> one.read().to().toString())
                .number(what, "read", measure, one -> toShown * one.read().amount())
                .number("modelled", measure, one -> toShown * one.modelled())
                .build(periods);
    }

    private Section how() {
        return Section.of("How it was found", Place.DETAIL).points(words.how());
    }
}
