package dev.warmlane.benchmark;

import dev.warmlane.season.Demo;
import dev.warmlane.season.Installation;
import dev.warmlane.study.YearsStudy;
import dev.warmlane.weather.PlainWeatherWriter;
import dev.warmlane.weather.RealYears;
import dev.warmlane.weather.WeatherYear;
import dev.warmlane.weather.WeatherYears;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/** Thirty real years of one design, with and without collectors, on all cores. Results: docs/performance.md. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2, time = 3)
@Measurement(iterations = 3, time = 3)
@Fork(1)
public class YearsBenchmark {

    private static final int YEARS = 30;

    private final Installation built = Demo.pool(1.8).heater(Demo.HEATER).build();
    private Path folder = Path.of("");
    private WeatherYears years = WeatherYears.of(List.of(Demo.weather("cool-coast")));

    /** Made by JMH. */
    public YearsBenchmark() {}

    /** Writes the files. */
    @Setup(Level.Trial)
    public void write() throws IOException {
        folder = Files.createTempDirectory("years");
        WeatherYear sample = Demo.weather("cool-coast");
        for (int i = 0; i < YEARS; i++) {
            PlainWeatherWriter.write(
                    RealYears.like(sample, 1980 + i, (i % 7) / 3.0, 1 - 0.01 * (i % 5)), folder.resolve(i + ".csv"));
        }
        years = WeatherYears.read(folder);
        if (years.years().size() != YEARS) {
            throw new IllegalStateException("left out: " + years.leftOut());
        }
    }

    /** Removes them. */
    @TearDown(Level.Trial)
    public void remove() throws IOException {
        for (int i = 0; i < YEARS; i++) {
            Files.deleteIfExists(folder.resolve(i + ".csv"));
        }
        Files.deleteIfExists(folder);
    }

    /** From the disk to the table. */
    @Benchmark
    public YearsStudy readAndSimulate() throws IOException {
        return YearsStudy.of(built, WeatherYears.read(folder));
    }

    /** The years are read already. */
    @Benchmark
    public YearsStudy simulate() {
        return YearsStudy.of(built, years);
    }
}
