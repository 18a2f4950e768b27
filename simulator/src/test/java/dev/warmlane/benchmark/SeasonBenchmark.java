package dev.warmlane.benchmark;

import dev.warmlane.collector.CollectorArray;
import dev.warmlane.collector.CollectorForcing;
import dev.warmlane.collector.CollectorSurroundings;
import dev.warmlane.collector.Mounting;
import dev.warmlane.pool.OpeningSeason;
import dev.warmlane.season.AdaptiveSeason;
import dev.warmlane.season.Demo;
import dev.warmlane.season.Installation;
import dev.warmlane.season.SeasonForcing;
import dev.warmlane.season.SeasonLedger;
import dev.warmlane.season.SeasonSimulator;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Terrain;
import dev.warmlane.sun.SunPath;
import dev.warmlane.weather.WeatherFiles;
import dev.warmlane.weather.WeatherYear;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** What each part of a forecast costs. How to run it, and results: docs/performance.md. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class SeasonBenchmark {

    private static final Path SAMPLE = Path.of("..", "weather-samples", "cool-coast.csv");

    private final WeatherYear weather = Demo.weather("cool-coast");
    private final CollectorSurroundings around = new CollectorSurroundings(weather, Demo.ROOF, Terrain.SUBURBAN);
    private final CollectorArray single = Demo.FLAT.withMounting(new Mounting.OpenRack(30, 180, 2, 4, 1, 0.3));
    private final CollectorArray rows = Demo.FLAT.withMounting(new Mounting.OpenRack(30, 180, 2, 4, 6, 0.3));
    private final Installation year =
            Demo.pool(1.8).heater(Demo.HEATER).season(OpeningSeason.wholeYear()).build();
    private final SeasonForcing forcing = SeasonForcing.of(year, weather);
    private final int[] years = new int[HourOfYear.HOURS];

    /** Prepares what the benchmarks share. */
    public SeasonBenchmark() {
        Arrays.fill(years, 2001);
    }

    /** Reading a weather file, with closure check and sun path. */
    @Benchmark
    public WeatherYear readWeather() throws IOException {
        return WeatherFiles.read(SAMPLE);
    }

    /** The sun path of a weather file. */
    @Benchmark
    public SunPath sunPath() {
        return SunPath.ofHourlyMeans(weather.site(), years, 0.5);
    }

    /** The forcing of flat mats. */
    @Benchmark
    public CollectorForcing forcingOfFlatMats() {
        return CollectorForcing.of(around, Demo.FLAT);
    }

    /** The forcing of one row of racks. */
    @Benchmark
    public CollectorForcing forcingOfOneRack() {
        return CollectorForcing.of(around, single);
    }

    /** The forcing of racks in rows, first row and interior row. */
    @Benchmark
    public CollectorForcing forcingOfRackRows() {
        return CollectorForcing.of(around, rows);
    }

    /** The same year by a general adaptive integrator of order 8 that may be 0.02 K off in a step. */
    @Benchmark
    public double[] adaptiveYear() {
        return AdaptiveSeason.waterC(year, forcing, 18, 0.02);
    }

    /** A year of 8760 hours once forcing is prepared. */
    @Benchmark
    public SeasonLedger simulateYear() {
        return SeasonSimulator.simulate(year, forcing);
    }
}
