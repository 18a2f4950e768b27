package dev.warmlane.examples;

import dev.warmlane.weather.PlainWeatherWriter;
import dev.warmlane.weather.generate.NormalsFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Collectors;

/**
 * Invented real years: the sample of the cool coast with other normals and other days in every year. How far months differ
 * from year to year is chosen to be plausible, and of no place.
 */
final class InventedYears {

    private static final Path NORMALS = Path.of("..", "weather-samples", "cool-coast.normals.csv");

    /** Standard deviation of a month's mean air temperature, K, and of its irradiation. */
    private static final double AIR_K = 1.3;

    private static final double LIGHT = 0.08;

    private InventedYears() {}

    /** Writes a file for each year. */
    static void write(Path folder, int first, int last) throws IOException {
        for (int year = first; year <= last; year++) {
            Random random = new Random(year);
            String normals = Files.readAllLines(NORMALS).stream()
                    .map(line -> Character.isDigit(line.charAt(0)) ? month(line, random) : line)
                    .collect(Collectors.joining("\n"))
                    .replaceFirst("# seed: \\d+", "# seed: " + year);
            Path file = folder.resolve(year + ".csv");
            PlainWeatherWriter.write(
                    NormalsFile.read(Files.writeString(file, normals)).generate(), file);
            Files.writeString(file, Files.readString(file).replaceAll("(?m)^2002,", year + ","));
        }
    }

    private static String month(String line, Random random) {
        String[] cells = line.split(",", -1);
        double warmerK = AIR_K * random.nextGaussian();
        double light = 1 + LIGHT * Math.max(-2, Math.min(2, random.nextGaussian()));
        return String.format(
                Locale.ROOT,
                "%s,%.3f,%.2f,%s,%.2f,%s",
                cells[0],
                light * Double.parseDouble(cells[1]),
                warmerK + Double.parseDouble(cells[2]),
                cells[3],
                warmerK + Double.parseDouble(cells[4]),
                cells[5]);
    }
}
