package dev.warmlane.fit;

import dev.warmlane.pool.Departure;
import dev.warmlane.season.OtherSeasons;
import java.util.Arrays;

/**
 * What a fit makes of the hours of its weather: those of the log as they were found, those before and after as
 * {@link OtherSeasons} has it, likely or drawn.
 */
final class Seasons {

    /** A wind factor below it has no ratio; own choice, far below any shelter's. */
    private static final double LEAST = 1e-3;

    private static final double PHI = OtherSeasons.left(1);

    private final int hours;
    private final int first;
    private final int last;

    /**
     * For the weather of a fit.
     *
     * @param hours hours of the weather
     * @param first the first of them that the log has
     * @param last the last that it has
     */
    Seasons(int hours, int first, int last) {
        this.hours = hours;
        this.first = first;
        this.last = last;
    }

    /** What is most likely of every hour, from values found. */
    Departure likely(FittedPool fit, double[] values) {
        return drawn(fit, values, () -> 0);
    }

    /** One of what may be, from the values of a draw. */
    Departure drawn(FittedPool fit, double[] values, Gauss gauss) {
        double[] wind = path(fit, Unknown.WIND, values, gauss);
        double[] sun = path(fit, Unknown.SUN, values, gauss);
        double[] sky = path(fit, Unknown.SKY, values, gauss);
        double windFound = wind[first];
        double sunFound = sun[first];
        return new Departure() {
            @Override
            public double windRatio(int hour) {
                return windFound < LEAST ? 1 : wind[hour] / windFound;
            }

            @Override
            public double sunRatio(int hour) {
                return sun[hour] / sunFound;
            }

            @Override
            public double longWaveWm2(int hour) {
                return sky[hour];
            }
        };
    }

    private double[] path(FittedPool fit, Unknown unknown, double[] values, Gauss gauss) {
        int index = fit.index(unknown);
        return path(fit.found().get(index).prior(), values[index], gauss);
    }

    /** An unknown through all hours: what was found in those of the log, within the ends of its prior beyond. */
    double[] path(Prior prior, double found, Gauss gauss) {
        double width = prior.standardDeviation();
        double steady = prior.likely()
                + (found - prior.likely()) * (1 - OtherSeasons.SEASONAL)
                + width * Math.sqrt(OtherSeasons.SEASONAL * (1 - OtherSeasons.SEASONAL)) * gauss.next();
        double step = width * Math.sqrt(OtherSeasons.SEASONAL * (1 - PHI * PHI));
        double[] path = new double[hours];
        Arrays.fill(path, first, last + 1, found);
        double departure = found - steady;
        for (int hour = last + 1; hour < hours; hour++) {
            departure = PHI * departure + step * gauss.next();
            path[hour] = steady + departure;
        }
        departure = found - steady;
        for (int hour = first - 1; hour >= 0; hour--) {
            departure = PHI * departure + step * gauss.next();
            path[hour] = steady + departure;
        }
        for (int hour = 0; hour < hours; hour++) {
            path[hour] = Math.max(prior.lowest(), Math.min(prior.highest(), path[hour]));
        }
        return path;
    }

    /** The next of a normal distribution's numbers. */
    interface Gauss {
        double next();
    }
}
