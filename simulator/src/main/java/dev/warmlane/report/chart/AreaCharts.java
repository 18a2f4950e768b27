package dev.warmlane.report.chart;

import dev.warmlane.report.AreaTables;
import dev.warmlane.report.FuelWords;
import dev.warmlane.report.Numbers;
import dev.warmlane.season.PeriodSummary;
import dev.warmlane.study.AreaDesign;
import dev.warmlane.study.AreaStudy;
import dev.warmlane.study.AreaWorth;
import dev.warmlane.units.Measure;
import dev.warmlane.units.UnitSystem;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;

/** The charts of an area study, all of them against the collector area. */
public final class AreaCharts {

    static final String HEAT = "heat delivered";
    static final String MEAN = "heat, mean of the whole area";
    static final String NEXT = "heat, what more area adds up to the next design";
    static final String NEXT_DISPLACED = ", what more area adds up to the next design";
    static final String WITH = "days at comfort";
    static final String WITHOUT = "without collectors";
    static final String ROOF = "the roof holds ";
    static final String VALUE = "net present value";
    static final String BAND = "low to high, by all that is uncertain";
    static final String MOST = "worth most, ";

    /** The same where no area is worth what it costs. */
    static final String LEAST_LOST = "loses least, ";

    private static final int X_STEPS = 10;
    private static final int Y_STEPS = 7;

    /** A roof that is this many times larger or smaller than all designs is not drawn: it would leave them no room. */
    private static final double FAR = 1.5;

    private final AreaStudy study;
    private final Numbers numbers;
    private final UnitSystem units;
    private final double[] area;

    private AreaCharts(AreaStudy study, Numbers numbers) {
        this.study = study;
        this.numbers = numbers;
        this.units = numbers.units();
        this.area = shown(Measure.AREA, AreaDesign::areaM2);
    }

    /** Heat and gas; like the others nothing for a study of one area, where there is nothing to draw a line to. */
    public static Optional<Chart> heat(String name, AreaStudy study, Numbers numbers) {
        return of(study, numbers, charts -> charts.heat(name));
    }

    /** What a unit of area gives, and what one more adds. */
    public static Optional<Chart> worth(String name, AreaStudy study, Numbers numbers) {
        return of(study, numbers, charts -> charts.perArea(name));
    }

    /** What each area is worth over the years, between the bounds of its doubt. */
    public static Optional<Chart> value(String name, AreaWorth worth, Numbers numbers) {
        return of(worth.study(), numbers, charts -> charts.value(name, worth));
    }

    /** Days at comfort. */
    public static Optional<Chart> comfort(String name, AreaStudy study, Numbers numbers) {
        return of(study, numbers, charts -> charts.comfort(name));
    }

    private static Optional<Chart> of(AreaStudy study, Numbers numbers, Function<AreaCharts, Chart> chart) {
        return study.designs().size() < 2 ? Optional.empty() : Optional.of(chart.apply(new AreaCharts(study, numbers)));
    }

    private FuelWords fuel() {
        return FuelWords.of(study.designs().get(0).season());
    }

    private Chart heat(String name) {
        boolean displaces = AreaTables.displaces(study.designs());
        double[] heat = shown(Measure.HEAT, d -> d.season().balance().deliveredKwh());
        double[] gas = shown(Measure.HEAT, d -> d.season().gas().replacedKwh());
        LinePlot plot = plot(
                Measure.HEAT.unit(units) + " in the season",
                displaces ? new double[][] {heat, gas} : new double[][] {heat});
        if (displaces) {
            plot.line(fuel().wordDisplaced(), area, gas, Palette.BLUE, Pen.DASHED);
        }
        plot.line(HEAT, area, heat, Palette.VERMILLION, Pen.THICK);
        return chart(
                name,
                displaces
                        ? "How much heat and " + fuel().word() + " does more area bring?"
                        : "How much heat does more area bring?",
                plot);
    }

    private Chart perArea(String name) {
        boolean displaces = AreaTables.displaces(study.designs());
        double[] mean = shown(Measure.HEAT_PER_AREA, d -> d.season().balance().deliveredKwh() / d.areaM2());
        double[] next = shown(Measure.HEAT_PER_AREA, d -> d.next().deliveredKwhPerM2());
        double[] gas = displaces
                ? shown(Measure.HEAT_PER_AREA, d -> d.next().displacedKwhPerM2().orElse(0))
                : new double[0];
        LinePlot plot = plot(Measure.HEAT_PER_AREA.unit(units) + " in the season", mean, next, gas);
        if (displaces) {
            plot.line(fuel().wordDisplaced() + NEXT_DISPLACED, area, gas, Palette.BLUE, Pen.DOTTED);
        }
        plot.line(NEXT, area, next, Palette.VERMILLION, Pen.DASHED);
        plot.line(MEAN, area, mean, Palette.INK, Pen.THICK);
        return chart(name, "What does each " + numbers.unitOfArea() + " give, and what does one more add?", plot);
    }

    private Chart value(String name, AreaWorth worth) {
        List<AreaWorth.Doubted> doubted = worth.doubted();
        double[] doubtedAt = doubted.stream()
                .mapToDouble(one -> Measure.AREA.in(units, one.design().areaM2()))
                .toArray();
        double[] low =
                doubted.stream().mapToDouble(one -> one.netPresentValue().low()).toArray();
        double[] high = doubted.stream()
                .mapToDouble(one -> one.netPresentValue().high())
                .toArray();
        double[] value = shown(Measure.MONEY, d -> d.worth().orElseThrow().netPresentValue());
        String currency =
                study.installation().prices().map(prices -> prices.currency()).orElse("");
        LinePlot plot = plot(currency + ", as money of today", value, low, high);
        plot.band(BAND, doubtedAt, low, high, Palette.faint(Palette.SKY_BLUE, 0.45));
        AreaDesign best = worth.best().design();
        if (!best.asDescribed()) {
            plot.upright(
                    (worth.best().netPresentValue().likely() > 0 ? MOST : LEAST_LOST)
                            + numbers.show(Measure.AREA, best.areaM2()),
                    Measure.AREA.in(units, best.areaM2()),
                    Palette.GREEN,
                    Pen.DOTTED);
        }
        plot.line(VALUE, area, value, Palette.BLUE, Pen.THICK);
        return chart(
                name,
                "What is each area worth over "
                        + study.installation().offer().terms().years() + " years?",
                plot);
    }

    private Chart comfort(String name) {
        PeriodSummary season = study.designs().get(0).season();
        double[] with = shown(Measure.DAYS, d -> d.season().comfort().daysAtComfort());
        double without = season.comfortWithout().daysAtComfort();
        LinePlot plot = plot("days, of " + season.comfort().openDays() + " open", with, new double[] {
            without, season.comfort().openDays()
        });
        plot.level(WITHOUT, without, Palette.VERMILLION, Pen.DASHED);
        plot.line(WITH, area, with, Palette.BLUE, Pen.THICK);
        return chart(
                name,
                "On how many days is the pool at "
                        + numbers.show(Measure.TEMPERATURE, study.installation().comfortC())
                        + " or above?",
                plot);
    }

    private Chart chart(String name, String title, LinePlot plot) {
        return new Chart(name, title, study.installation().name(), plot);
    }

    /** A plot with the roof's limit and the installation as described drawn in. */
    private LinePlot plot(String yTitle, double[]... values) {
        OptionalDouble roof = roof();
        double[] places =
                DoubleStream.concat(Arrays.stream(area), roof.stream()).toArray();
        LinePlot plot = new LinePlot(
                "collector area, " + Measure.AREA.unit(units),
                Scale.holding(
                        Arrays.stream(places).min().orElse(0),
                        Arrays.stream(places).max().orElse(0),
                        X_STEPS),
                Plot.Label.WHOLE,
                yTitle,
                Scale.withZero(Y_STEPS, values));
        study.designs().stream()
                .filter(AreaDesign::asDescribed)
                .findFirst()
                .ifPresent(d -> plot.upright(
                        "as planned, " + numbers.show(Measure.AREA, d.areaM2()),
                        Measure.AREA.in(units, d.areaM2()),
                        Palette.FAINT_INK,
                        Pen.LONG_DASH));
        roof.ifPresent(at -> plot.upright(
                ROOF + numbers.show(Measure.AREA, study.roofLimitM2().orElseThrow()), at, Palette.INK, Pen.DASH_DOT));
        return plot;
    }

    private OptionalDouble roof() {
        return study.roofLimitM2().stream()
                .map(m2 -> Measure.AREA.in(units, m2))
                .filter(at -> at >= area[0] / FAR && at <= area[area.length - 1] * FAR)
                .findFirst();
    }

    private double[] shown(Measure measure, ToDoubleFunction<AreaDesign> number) {
        return study.designs().stream()
                .mapToDouble(design -> measure.in(units, number.applyAsDouble(design)))
                .toArray();
    }
}
