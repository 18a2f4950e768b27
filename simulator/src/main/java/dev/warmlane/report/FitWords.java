package dev.warmlane.report;

import dev.warmlane.fit.FittedPool;
import dev.warmlane.fit.Found;
import dev.warmlane.fit.Unknown;
import dev.warmlane.units.Measure;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What is said of a fit. */
final class FitWords {

    /** Own choice: what took away less than this of the width before is called little. */
    private static final double LITTLE = 0.7;

    /** Own choice: above this two unknowns can hardly be told apart. */
    private static final double HARDLY_APART = 0.8;

    private final FittedPool fit;
    private final Numbers numbers;

    FitWords(FittedPool fit, Numbers numbers) {
        this.fit = fit;
        this.numbers = numbers;
    }

    /** The answer in a few sentences. */
    String answer() {
        StringBuilder text = new StringBuilder("From ")
                .append(fit.residuals().size())
                .append(" hours of ")
                .append(fit.log().source())
                .append(", ")
                .append(fit.residuals().get(0).time().toLocalDate())
                .append(" to ")
                .append(fit.residuals().get(fit.residuals().size() - 1).time().toLocalDate())
                .append(": the wind at the water is ")
                .append(range(Unknown.WIND))
                .append(" of the station's, and ")
                .append(range(Unknown.SUN))
                .append(" of the sun on the surface warms it.");
        fit.found(Unknown.EFFICIENCY).ifPresent(found -> text.append(" The heater's efficiency is ")
                .append(range(Unknown.EFFICIENCY))
                .append('.'));
        fit.found(Unknown.MAKE_UP).ifPresent(found -> text.append(" Beyond what evaporates ")
                .append(range(Unknown.MAKE_UP))
                .append(" are replaced."));
        double clock = fit.found(Unknown.CLOCK).orElseThrow().likely();
        text.append(
                Math.abs(clock) < 0.25
                        ? " Its clock keeps the time zone that was stated."
                        : String.format(
                                Locale.ROOT,
                                " Its clock is %.1f h %s the time zone that was stated, which was put right.",
                                Math.abs(clock),
                                clock > 0 ? "ahead of" : "behind"));
        return text.toString();
    }

    private String range(Unknown unknown) {
        Found found = fit.found(unknown).orElseThrow();
        return show(unknown, found.likely()) + " (" + show(unknown, found.low()) + " to " + show(unknown, found.high())
                + ")";
    }

    double described(Unknown unknown) {
        return fit.found(unknown).orElseThrow().prior().likely();
    }

    /** A value with its unit. */
    String show(Unknown unknown, double value) {
        return switch (unknown) {
            case WIND -> numbers.show(value, 3);
            case SUN -> numbers.show(100 * value, 1) + " %";
            case EFFICIENCY -> numbers.show(100 * value, 0) + " %";
            case MAKE_UP -> numbers.show(Measure.WATER_A_DAY, value);
            case SKY -> numbers.show(Measure.IRRADIANCE, value);
            case START -> numbers.show(Measure.TEMPERATURE, value);
            case CLOCK -> numbers.show(value, 2) + " h";
        };
    }

    /** A width: temperatures differ in other units than they are told in. */
    String width(Unknown unknown, double value) {
        return unknown == Unknown.START ? numbers.show(Measure.TEMPERATURE_DIFFERENCE, value) : show(unknown, value);
    }

    String correlation() {
        double r = fit.correlation(Unknown.WIND, Unknown.SUN);
        return "Wind and sun are correlated by " + numbers.show(r, 2)
                + (Math.abs(r) > HARDLY_APART
                        ? ": the log knows far better how much both warm the water together than either alone."
                        : ".");
    }

    List<String> cannotTell() {
        List<String> points = new ArrayList<>();
        points.add(
                "Evaporation and wind: the equation for evaporation is held as described, and the wind that was found"
                        + " makes up for what is wrong with it. It is the factor of this pool in this model, no measurement of"
                        + " wind");
        points.add("Finish and shade: only their product is told, " + show(Unknown.SUN, value(Unknown.SUN)));
        points.add("Ground, cover, bathers and depth are held as described; what is wrong with them goes into wind, sun"
                + " and the error");
        for (Found found : fit.found()) {
            if (found.shareOfPrior() > LITTLE && found.of() != Unknown.START) {
                points.add("The " + found.of().label() + ": the log took away little of what was uncertain before");
            }
        }
        if (fit.described().heater().isPresent() && fit.bills().isEmpty()) {
            points.add("The heater's efficiency: no bill of a boiler lies within the log");
        }
        if (fit.meter().isEmpty()) {
            points.add("A leak: no period of a make-up meter lies within the log");
        }
        if (fit.hoursOutside() + fit.hoursInGaps() > 0) {
            points.add(fit.hoursOutside() + " hours of the log lie outside of the weather and " + fit.hoursInGaps()
                    + " in its gaps: they were not used");
        }
        return points;
    }

    /** Common practice, no source. */
    List<String> cautions() {
        List<String> points = new ArrayList<>();
        points.add(
                "What was found is of these days and of this model. Trees, covers, pump hours and the sun's height over walls"
                        + " change with the season: for a forecast of another season log in that one");
        if (!fit.bills().isEmpty()) {
            points.add(
                    "Gas and flames: an efficiency from bills is no inspection. A heater is opened, set and checked by"
                            + " licensed people alone, by the local code");
        }
        points.add("Electricity: what logs in or beside a pool runs on a battery or extra-low voltage. Whatever else is"
                + " wired there is for a licensed electrician, by the local code");
        return points;
    }

    String error() {
        return "Log and model differ by " + numbers.show(Measure.TEMPERATURE_DIFFERENCE, fit.rmsK())
                + " (root mean square by the hour). It is taken for an error of "
                + numbers.show(
                        Measure.TEMPERATURE_DIFFERENCE, fit.error().likely().errorK()) + " ("
                + numbers.show(Measure.TEMPERATURE_DIFFERENCE, fit.error().low().errorK()) + " to "
                + numbers.show(
                        Measure.TEMPERATURE_DIFFERENCE, fit.error().high().errorK()) + ") that fades in "
                + numbers.show(fit.error().likely().fadeHours(), 0) + " h ("
                + numbers.show(fit.error().low().fadeHours(), 0) + " to "
                + numbers.show(fit.error().high().fadeHours(), 0)
                + "). Differences that follow the hour of the day are the model's or the description's, and no chance.";
    }

    List<String> how() {
        return List.of(
                "The pool was simulated in the weather of the log's hours; hourly means of the readings are compared",
                "Errors last: they are taken for an Ornstein-Uhlenbeck process with noise of a reading, and residuals are"
                        + " whitened by its Kalman filter before they are squared",
                "The most likely values by least squares with the priors among the residuals, the widths by Laplace's"
                        + " method; low and high from a Metropolis chain on a fixed seed, whose error is free too. Of its"
                        + " steps " + numbers.show(100 * fit.acceptedShare(), 0) + " % were taken",
                "Bills and meter count with 5 % each (own choice)",
                "A prior is what is taken to be known before the log is looked at; it stands beside what was found");
    }

    private double value(Unknown unknown) {
        return fit.found(unknown).orElseThrow().likely();
    }
}
