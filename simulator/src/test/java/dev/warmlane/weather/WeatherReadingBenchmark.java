package dev.warmlane.weather;

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
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/** How long it takes to read a year: the rows alone, and with closure, sun path and repairs. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class WeatherReadingBenchmark {

    /** The format of the file. */
    @Param({"epw", "tmy3", "tmy2", "pvgis"})
    public String format = "epw";

    private Path file = Path.of("");

    /** Writes the file. */
    @Setup(Level.Trial)
    public void write() throws IOException {
        InventedYear year = InventedYear.sound();
        List<String> lines =
                switch (format) {
                    case "tmy3" -> year.tmy3();
                    case "tmy2" -> year.tmy2();
                    case "pvgis" -> InventedYear.ofInstants().pvgis();
                    default -> year.epw();
                };
        file = Files.createTempFile("weather", ".txt");
        Files.write(file, lines);
    }

    /** Removes the file. */
    @TearDown(Level.Trial)
    public void remove() throws IOException {
        Files.deleteIfExists(file);
    }

    /** From the disk to 8760 rows of numbers. */
    @Benchmark
    public Object rows() throws IOException {
        return WeatherFiles.table(file, WeatherReadOptions.defaults(), new Findings());
    }

    /** From the disk to a finished year. */
    @Benchmark
    public Object year() throws IOException {
        return WeatherFiles.read(file);
    }
}
