package dev.warmlane.fit;

import dev.warmlane.pool.Pool;
import dev.warmlane.pool.PoolSetting;
import dev.warmlane.season.Demo;
import dev.warmlane.season.Installation;
import dev.warmlane.season.RecordLedger;
import dev.warmlane.season.RecordSimulator;
import dev.warmlane.season.RecordState;
import dev.warmlane.season.SeasonForcing;
import dev.warmlane.season.WindAndSun;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.weather.RecordOptions;
import dev.warmlane.weather.WeatherRecord;
import dev.warmlane.weather.WeatherYear;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;

/** Invented pools whose truth is known, and the logs that they would have left. */
public final class InventedLog {

    /** The truth of {@link #POOL} that its description does not know. */
    static final double WIND = 0.22;

    static final double SUN = 0.74;

    /** A pool as it is described: suburban wind, a light finish without shade. */
    static final Installation POOL = Installation.builder(
                    "invented pool", Pool.of(312.5, 1.8, new PoolSetting.Outdoor(0.30)))
            .build();

    static final LocalDateTime JUNE = LocalDateTime.of(2019, 6, 1, 0, 0);

    private static final int FIRST_HOUR = HourOfYear.of(5, 30, 0);
    private static final int DAYS = 110;

    static final WeatherRecord WEATHER = weather("cool-coast");

    private InventedLog() {}

    /** A summer of an invented sample year as if it had been measured in 2019. */
    private static WeatherRecord weather(String sample) {
        WeatherYear year = Demo.weather(sample);
        return WeatherRecord.builder(year.site(), "invented", JUNE.minusDays(2))
                .globalWm2(column(year::globalHorizontalWm2))
                .directNormalWm2(column(year::directNormalWm2))
                .diffuseWm2(column(year::diffuseHorizontalWm2))
                .airC(column(year::airTemperatureC))
                .dewPointC(column(year::dewPointC))
                .windSpeedMs(column(year::windSpeedMs))
                .pressureKpa(column(year::pressureKpa))
                .skyLongWaveWm2(column(year::skyLongWaveWm2))
                .options(RecordOptions.USUAL.withYearlyAir(year.yearlyAir()))
                .build();
    }

    private static double[] column(IntToDoubleFunction value) {
        return IntStream.range(FIRST_HOUR, FIRST_HOUR + 24 * DAYS)
                .mapToDouble(value)
                .toArray();
    }

    /** The described pool with its true wind and sun. */
    static Installation truth(Installation described) {
        return new WindAndSun(WIND, SUN).in(described);
    }

    /** What is found in a log of forty days, for whoever needs a fit to tell of. */
    public static FittedPool fitted() {
        return fitted(400);
    }

    /** The same with a longer chain, for whoever counts its draws. */
    public static FittedPool fitted(int draws) {
        WaterLog log = log(run(truth(POOL), JUNE, 40), new ErrorSize(0.3, 120, 0.05), 1);
        return new PoolFit(POOL, WEATHER, log)
                .with(FitOptions.USUAL.withDraws(draws))
                .fit();
    }

    /** Every hour of the truth. */
    static RecordLedger run(Installation truth, LocalDateTime from, int days) {
        return RecordSimulator.simulate(
                truth, SeasonForcing.of(truth, WEATHER), RecordState.water(from, 18), from.plusDays(days));
    }

    /**
     * What a logger with a clock an hour ahead writes every half hour, to hundredths, with an error that fades and noise.
     *
     * @param error size and time of the error, and the noise of each reading
     */
    static WaterLog log(RecordLedger truth, ErrorSize error, long seed) {
        RandomGenerator random = new Well19937c(seed);
        double phi = Math.exp(-0.5 / error.fadeHours());
        double state = error.errorK() * random.nextGaussian();
        List<WaterLog.Reading> readings = new ArrayList<>();
        LocalDateTime end = truth.time(truth.hours());
        for (LocalDateTime time = truth.time(0).plusMinutes(7); time.isBefore(end); time = time.plusMinutes(30)) {
            double shown = truth.waterC(time) + state + error.noiseK() * random.nextGaussian();
            readings.add(new WaterLog.Reading(time.plus(1, ChronoUnit.HOURS), Math.rint(100 * shown) / 100));
            state = phi * state + error.errorK() * Math.sqrt(1 - phi * phi) * random.nextGaussian();
        }
        return new WaterLog("an invented log", WEATHER.site().utcOffsetHours(), readings);
    }
}
