package dev.warmlane.fit;

import dev.warmlane.season.FittedDoubt;
import dev.warmlane.season.FittedDoubt.Correlations;
import dev.warmlane.season.FittedDoubt.Spread;
import dev.warmlane.season.Installation;
import dev.warmlane.season.RecordLedger;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.weather.WeatherRecord;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.MonthDay;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.apache.commons.math3.stat.correlation.PearsonsCorrelation;

/** What a fit found. Immutable and safe to share. */
public final class FittedPool {

    private final Installation described;
    private final WeatherRecord weather;
    private final WaterLog log;
    private final Observations seen;
    private final List<Found> found;
    private final ErrorFound error;
    private final Chain chain;
    private final PoolAtLog model;
    private final double[] likely;
    private final RecordLedger run;
    private final double[] expected;

    FittedPool(PoolFit fit, Observations seen, Posterior posterior, Mode mode, Chain chain) {
        this.described = fit.installation();
        this.weather = fit.weather();
        this.log = fit.log();
        this.seen = seen;
        this.chain = chain;
        this.model = posterior.model;
        this.likely = posterior.values(mode.deviations());
        this.found = IntStream.range(0, likely.length)
                .mapToObj(i -> found(posterior.priors.get(i), i, mode, chain))
                .toList();
        this.error = new ErrorFound(mode.error(), error(0.05), error(0.95));
        this.run = model.run(likely);
        this.expected = model.expected(likely, run);
    }

    /**
     * The size of what model and log disagree in.
     *
     * @param likely the most likely size
     * @param low below either lies one in twenty draws
     * @param high above either lies one in twenty draws
     */
    public record ErrorFound(ErrorSize likely, ErrorSize low, ErrorSize high) {}

    /**
     * An hour of the log against the most likely values.
     *
     * @param time middle of its readings, local standard time, the log's clock put right
     * @param loggedC mean of its readings, °C
     * @param modelC what the model says, °C
     */
    public record Residual(LocalDateTime time, double loggedC, double modelC) {

        /** Logged less modelled, K. */
        public double differenceK() {
            return loggedC - modelC;
        }
    }

    /**
     * A meter period against the most likely values.
     *
     * @param read what was read
     * @param modelled what the model says, in the same unit
     */
    public record MeteredFit(Metered read, double modelled) {}

    /** The installation as it was described. */
    public Installation described() {
        return described;
    }

    /** The installation with the most likely values, and with what they are uncertain by. */
    public Installation installation() {
        return model.built(likely).toBuilder().fitted(doubt()).build();
    }

    /** The weather of the hours of the log. */
    public WeatherRecord weather() {
        return weather;
    }

    /** The log. */
    public WaterLog log() {
        return log;
    }

    /** Every unknown, wind and sun first. */
    public List<Found> found() {
        return found;
    }

    /** What was found of an unknown; nothing where it was none of this fit's. */
    public Optional<Found> found(Unknown unknown) {
        return found.stream().filter(one -> one.of() == unknown).findFirst();
    }

    /** Correlation of two unknowns over the chain's draws. */
    public double correlation(Unknown one, Unknown other) {
        return new PearsonsCorrelation().correlation(draws(index(one)), draws(index(other)));
    }

    /** What model and log disagree in. */
    public ErrorFound error() {
        return error;
    }

    /** Share of the chain's steps that were taken; above 0.3 it moves well. */
    public double acceptedShare() {
        return chain.acceptedShare();
    }

    /** Every hour of the log that was used. */
    public List<Residual> residuals() {
        long clockSeconds = Math.round(3600 * likely[index(Unknown.CLOCK)]);
        return IntStream.range(0, seen.hours.length)
                .mapToObj(i -> new Residual(seen.stated[i].minusSeconds(clockSeconds), seen.waterC[i], expected[i]))
                .toList();
    }

    /** Every bill that was used, kWh. */
    public List<MeteredFit> bills() {
        return metered(seen.bills, seen.hours.length);
    }

    /** Every period of the water meter that was used, litres. */
    public List<MeteredFit> meter() {
        return metered(seen.meter, seen.hours.length + seen.bills.size());
    }

    /** Hours of the log that lie outside of the weather. */
    public int hoursOutside() {
        return seen.outside;
    }

    /** Hours of the log that were left out because their weather was filled. */
    public int hoursInGaps() {
        return seen.inGaps;
    }

    /** Every flow of the log's hours with the most likely values. */
    public RecordLedger run() {
        return run;
    }

    /** Root of the mean square of the residuals, K. */
    public double rmsK() {
        return Math.sqrt(residuals().stream()
                .mapToDouble(one -> one.differenceK() * one.differenceK())
                .average()
                .orElseThrow());
    }

    /** What forecasts need of it. */
    public FittedDoubt doubt() {
        LocalDate from = seen.stated[0].toLocalDate();
        LocalDate to = seen.stated[seen.stated.length - 1].toLocalDate();
        boolean wholeYear = ChronoUnit.DAYS.between(from, to) >= HourOfYear.DAYS - 1;
        return new FittedDoubt(
                log.source() + ", " + from + " to " + to,
                MonthDay.from(from),
                MonthDay.from(wholeYear ? from.minusDays(1) : to),
                spread(Unknown.WIND),
                spread(Unknown.SUN),
                likely[index(Unknown.SKY)],
                spread(Unknown.SKY),
                new Correlations(
                        correlation(Unknown.WIND, Unknown.SUN),
                        correlation(Unknown.WIND, Unknown.SKY),
                        correlation(Unknown.SUN, Unknown.SKY)),
                error.likely().errorK(),
                error.likely().fadeHours());
    }

    private Spread spread(Unknown unknown) {
        Found one = found.get(index(unknown));
        return new Spread(
                one.chainStandardDeviation(), one.prior().likely(), one.prior().widthBetweenEnds());
    }

    Chain chain() {
        return chain;
    }

    /** The values of a draw put into the installation. */
    Installation drawn(Chain.Draw draw) {
        return model.built(draw.values());
    }

    /** What it makes of the seasons of its weather. */
    Seasons seasons() {
        List<Residual> hours = residuals();
        return new Seasons(
                weather.hours(),
                weather.hourAt(hours.get(0).time()),
                weather.hourAt(hours.get(hours.size() - 1).time()));
    }

    /** The most likely values. */
    double[] likely() {
        return likely.clone();
    }

    PoolAtLog model() {
        return model;
    }

    int index(Unknown unknown) {
        for (int i = 0; i < found.size(); i++) {
            if (found.get(i).of() == unknown) {
                return i;
            }
        }
        throw new IllegalArgumentException("this fit did not look for the " + unknown.label());
    }

    private List<MeteredFit> metered(List<Metered> periods, int from) {
        return IntStream.range(0, periods.size())
                .mapToObj(i -> new MeteredFit(periods.get(i), expected[from + i]))
                .toList();
    }

    private Found found(Prior prior, int i, Mode mode, Chain draws) {
        double[] values =
                draws.draws().stream().mapToDouble(draw -> draw.values()[i]).toArray();
        double mean = Arrays.stream(values).average().orElseThrow();
        double square = Arrays.stream(values)
                .map(value -> (value - mean) * (value - mean))
                .average()
                .orElseThrow();
        return new Found(
                prior,
                likely[i],
                prior.standardDeviation() * Math.sqrt(mode.covariance().getEntry(i, i)),
                quantile(draw -> draw.values()[i], 0.05),
                quantile(draw -> draw.values()[i], 0.95),
                mean,
                Math.sqrt(square));
    }

    private double[] draws(int unknown) {
        return chain.draws().stream()
                .mapToDouble(draw -> draw.values()[unknown])
                .toArray();
    }

    private ErrorSize error(double share) {
        return new ErrorSize(
                quantile(draw -> draw.error().errorK(), share),
                quantile(draw -> draw.error().fadeHours(), share),
                quantile(draw -> draw.error().noiseK(), share));
    }

    private double quantile(ToDoubleFunction<Chain.Draw> number, double share) {
        double[] sorted = chain.draws().stream().mapToDouble(number).sorted().toArray();
        return sorted[(int) Math.round(share * (sorted.length - 1))];
    }
}
