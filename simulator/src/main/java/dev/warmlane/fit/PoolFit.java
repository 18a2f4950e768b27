package dev.warmlane.fit;

import dev.warmlane.season.Installation;
import dev.warmlane.weather.HourlyWeather;
import dev.warmlane.weather.RecordOptions;
import dev.warmlane.weather.WeatherFileException;
import dev.warmlane.weather.WeatherFiles;
import dev.warmlane.weather.WeatherRecord;
import dev.warmlane.weather.WeatherYear;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.EigenDecomposition;

/**
 * Finds of a pool, from a log of its water in the weather of the same hours, what nobody knows from a drawing.
 *
 * @param installation the pool and all that is built, as it is described
 * @param weather the weather of the hours of the log; other hours than these are not looked at
 * @param log the water temperatures
 * @param bills what was bought for the heater, kWh; those that lie within the log are used; refused
 *     without a {@link dev.warmlane.heater.Boiler}
 * @param meter what the make-up meter ran up, litres; those periods that lie within the log are used
 * @param options how the fit is made
 */
public record PoolFit(
        Installation installation,
        WeatherRecord weather,
        WaterLog log,
        List<Metered> bills,
        List<Metered> meter,
        FitOptions options) {

    /** Own choice: where in no direction more than a fifth of the priors' width was taken away, the log said nothing. */
    private static final double NOTHING_SAID = 0.8;

    /** Own choice: of fewer of its steps than this a chain has no spread to tell; usually it takes more than 0.3 of them. */
    private static final double LEAST_TAKEN = 0.01;

    /** Own choice: share of a range that is its end. */
    private static final double EDGE = 0.002;

    /** Keeps its own copies of the lists. */
    public PoolFit {
        bills = List.copyOf(bills);
        meter = List.copyOf(meter);
    }

    /** A fit to a log alone, made in the usual way. */
    public PoolFit(Installation installation, WeatherRecord weather, WaterLog log) {
        this(installation, weather, log, List.of(), List.of(), FitOptions.USUAL);
    }

    /**
     * The weather that a fit needs; refuses a typical year.
     *
     * @throws FitRefusal if it is one
     */
    public static WeatherRecord recordOf(HourlyWeather weather) {
        return weather.match(
                year -> {
                    throw new FitRefusal(
                            FitRefusal.Reason.TYPICAL_YEAR,
                            "the weather is a year of " + year.source() + ", not that of the hours of the log: a pool"
                                    + " follows the weather it had. Take a station's record of the same hours");
                },
                record -> record);
    }

    /**
     * Reads the weather of the hours of a log.
     *
     * @throws FitRefusal if the file holds a typical year, whose months are of different years
     * @throws IOException if it cannot be read as a record
     */
    public static WeatherRecord readWeather(Path file, RecordOptions options) throws IOException {
        try {
            return WeatherFiles.readRecord(file, options);
        } catch (WeatherFileException e) {
            try {
                WeatherYear year = WeatherFiles.read(file, options.reading());
                if (IntStream.range(1, year.hours())
                        .anyMatch(hour ->
                                year.sun().calendarYear(hour) != year.sun().calendarYear(0))) {
                    return recordOf(year);
                }
            } catch (WeatherFileException noYearEither) {
                e.addSuppressed(noYearEither);
            }
            throw e;
        }
    }

    /** The same fit with bills, kWh. */
    public PoolFit withBills(List<Metered> value) {
        return new PoolFit(installation, weather, log, value, meter, options);
    }

    /** The same fit with the periods of a water meter, litres. */
    public PoolFit withMeter(List<Metered> value) {
        return new PoolFit(installation, weather, log, bills, value, options);
    }

    /** The same fit made otherwise. */
    public PoolFit with(FitOptions value) {
        return new PoolFit(installation, weather, log, bills, meter, value);
    }

    /**
     * Makes the fit, in some seconds for a season of hours.
     *
     * @throws FitRefusal if the log cannot tell anything, or tells what cannot be; the message says why and what to do
     */
    public FittedPool fit() {
        PoolValues.outdoor(installation);
        if (!bills.isEmpty() && PoolValues.boiler(installation).isEmpty()) {
            throw new FitRefusal(
                    FitRefusal.Reason.BILLS,
                    "bills are given, and \"" + installation.name() + "\" has "
                            + (installation.heater().isPresent() ? "a heater that is no boiler" : "no heater")
                            + ": bills tell the one efficiency of a boiler for gas, oil or another fuel; what a condensing boiler, a"
                            + " heat pump, an electric heater or district heat makes of what is bought is held as described. Leave"
                            + " the bills out, or describe the boiler that they are of");
        }
        Observations seen = new Observations(log, weather, bills, meter, options.clockHours());
        LogChecks.check(installation, weather, seen);
        List<Prior> priors =
                Priors.of(installation, weather, seen.waterC[0], !seen.bills.isEmpty(), !seen.meter.isEmpty(), options);
        PoolAtLog model = new PoolAtLog(
                installation, weather, seen, priors.stream().map(Prior::of).toList());
        Posterior posterior = new Posterior(priors, model, seen, options);
        Mode mode = mode(posterior);
        refuseEdges(posterior, mode);
        refuseNothingSaid(posterior, mode, seen);
        Chain chain = Chain.of(posterior, mode, options);
        refuseStanding(mode, chain);
        return new FittedPool(this, seen, posterior, mode, chain);
    }

    private static void refuseStanding(Mode mode, Chain chain) {
        if (!(chain.acceptedShare() >= LEAST_TAKEN)) {
            throw new FitRefusal(
                    FitRefusal.Reason.NOT_SETTLED,
                    String.format(
                            Locale.ROOT,
                            "of the chain's steps %.1f of 100 were taken, too few to say how sure anything is. What lasts"
                                    + " between log and model is %.3f K: below 0.02 K the log is nearer to the model than a logger"
                                    + " can be, and was computed, not measured; otherwise log for longer",
                            100 * chain.acceptedShare(),
                            mode.error().errorK()));
        }
    }

    /**
     * The most likely values. With a clock that is wrong by some hours least squares may settle on a wind that is wrong too:
     * so it begins at each of several clocks, and the most likely end counts.
     */
    private Mode mode(Posterior posterior) {
        double[] start = start(posterior);
        int clock = start.length - 1;
        Mode best = Mode.of(posterior, start);
        for (double hours : new double[] {-options.clockHours() / 2, 0, options.clockHours() / 2}) {
            double[] other = start.clone();
            other[clock] = posterior.priors.get(clock).deviations(hours);
            Mode mode = Mode.of(posterior, other);
            best = mode.logMarginal(posterior) > best.logMarginal(posterior) ? mode : best;
        }
        return best;
    }

    /** The middle of every prior, with the clock that follows the log best. */
    private double[] start(Posterior posterior) {
        double[] start = new double[posterior.priors.size()];
        int clock = start.length - 1;
        double best = Double.POSITIVE_INFINITY;
        double bestClock = 0;
        Prior prior = posterior.priors.get(clock);
        for (double hours = -options.clockHours() + 0.25; hours < options.clockHours(); hours += 0.25) {
            double[] tried = start.clone();
            tried[clock] = prior.deviations(hours);
            double spread = spread(posterior.residuals(tried));
            if (spread < best) {
                best = spread;
                bestClock = tried[clock];
            }
        }
        start[clock] = bestClock;
        return start;
    }

    private static double spread(double[] values) {
        double sum = 0;
        double square = 0;
        for (double value : values) {
            sum += value;
            square += value * value;
        }
        return square - sum * sum / values.length;
    }

    private static void refuseEdges(Posterior posterior, Mode mode) {
        double[] values = posterior.values(mode.deviations());
        for (int i = 0; i < values.length; i++) {
            Prior prior = posterior.priors.get(i);
            double edge = EDGE * (prior.highest() - prior.lowest());
            boolean low = values[i] < prior.lowest() + edge;
            if ((low || values[i] > prior.highest() - edge) && prior.of() != Unknown.MAKE_UP) {
                throw new FitRefusal(
                        FitRefusal.Reason.AT_THE_EDGE,
                        "the log is followed best with the " + prior.of().label() + " at the end of what is possible, "
                                + (low ? prior.lowest() : prior.highest())
                                + (prior.of() == Unknown.CLOCK
                                        ? " h: check the time zone of the log, or widen the range of its clock"
                                        : ": something that the fit holds fixed is wrong. Check area, depth, cover hours,"
                                                + " heater and the time zone of the log"));
            }
        }
    }

    private static void refuseNothingSaid(Posterior posterior, Mode mode, Observations seen) {
        double[] left = new EigenDecomposition(mode.covariance().getSubMatrix(0, 1, 0, 1)).getRealEigenvalues();
        double least = Math.sqrt(Math.min(left[0], left[1]));
        if (least > NOTHING_SAID) {
            double heated = LogChecks.heatedShare(posterior.model.run(posterior.values(mode.deviations())));
            throw new FitRefusal(
                    FitRefusal.Reason.NO_INFORMATION,
                    "the log says no more of wind and sun than was known before"
                            + (heated > 0.5
                                    ? ": the heater held the pool in " + Math.round(100 * heated)
                                            + " of 100 hours, whatever wind and sun did. "
                                            + (seen.bills.isEmpty()
                                                    ? "Log while it rests, or give its bills by period"
                                                    : "Log while it rests, or give bills of shorter periods")
                                    : ". Log for longer, in weather that changes"));
        }
    }
}
