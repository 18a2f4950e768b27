package dev.warmlane.benchmark;

import dev.warmlane.pool.OpeningSeason;
import dev.warmlane.season.Demo;
import dev.warmlane.season.Installation;
import dev.warmlane.study.AreaRange;
import dev.warmlane.study.AreaStudy;
import dev.warmlane.study.Progress;
import dev.warmlane.study.Runs;
import dev.warmlane.study.SensitivityStudy;
import dev.warmlane.study.SharedForcing;
import dev.warmlane.weather.WeatherYear;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** What studies cost, forcing included. How to run it, and results: docs/performance.md. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 5, time = 3)
@Fork(1)
public class AreaStudyBenchmark {

    private static final AreaRange THOUSAND = new AreaRange(20, 500, 1000);

    private final WeatherYear weather = Demo.weather("cool-coast");
    private final Installation season = Demo.pool(1.8).heater(Demo.HEATER).build();
    private final Installation year =
            season.toBuilder().season(OpeningSeason.wholeYear()).build();

    /** How many threads. */
    @Param({"1", "2"})
    public int threads;

    /** Made by JMH. */
    public AreaStudyBenchmark() {}

    private SharedForcing forcing() {
        return new SharedForcing(weather);
    }

    /** A thousand areas, open from May to September. */
    @Benchmark
    public AreaStudy thousandSeasons() {
        return AreaStudy.of(season, THOUSAND, forcing(), new Runs(threads, Progress.SILENT));
    }

    /** A thousand areas, open all year. */
    @Benchmark
    public AreaStudy thousandYears() {
        return AreaStudy.of(year, THOUSAND, forcing(), new Runs(threads, Progress.SILENT));
    }

    /** Every parameter low and high: two forcings for most of them. */
    @Benchmark
    public SensitivityStudy sensitivity() {
        return SensitivityStudy.of(season, forcing(), new Runs(threads, Progress.SILENT));
    }
}
