package dev.warmlane.weather.generate;

import dev.warmlane.MeasuredData;
import dev.warmlane.weather.WeatherReadOptions;
import dev.warmlane.weather.WeatherYears;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.zip.GZIPInputStream;

/**
 * Fourteen real years of Champaign, Illinois, 1996 to 2009, for tests: SURFRAD Bondville and the state's water survey, as
 * biocro/biocro has them. They are read as the csv of a weather station that has global irradiance alone, so that the
 * library's own split, humidity and checks are what docs/years.md rests on. Global irradiance is the photosynthetic photon
 * flux over 2.04 µmol/J (Meek et al. 1984; from memory): enough to tell years from each other, not to tell this place from
 * another.
 */
public final class MeasuredYears {

    private static final int FIRST = 1996;
    private static final int LAST = 2009;

    /** Photons of photosynthesis per joule of global irradiation, µmol/J. */
    private static final double PHOTONS_PER_JOULE = 2.04;

    /** Below it the flux is noise of the instrument, as in the night, µmol/(m² s): 5 W/m² (own choice). */
    private static final double DARK = 10;

    /** Values are centred on the hour that a row is labelled with. */
    private static final String HEADER = """
            # Warmlane plain weather csv
            # name: Champaign, Illinois
            # latitude, degrees north: 40.05
            # longitude, degrees east: -88.37
            # elevation, m: 213
            # utc offset, h: -6
            # irradiance time, h after the start of the hour: 0
            year,month,day,hour,global W/m2,air degC,relative humidity %,wind m/s""";

    private MeasuredYears() {}

    /**
     * The years; a test that asks is skipped without the data.
     *
     * @param folder a temporary one, where they are written as plain csv and removed again
     */
    public static WeatherYears champaign(Path folder) throws IOException {
        List<Path> files = new ArrayList<>();
        try {
            for (int year = FIRST; year <= LAST; year++) {
                Path from = MeasuredData.file("champaign-" + year + ".csv.gz");
                Path file = folder.resolve("champaign-" + year + ".csv");
                files.add(file);
                Files.write(file, rows(from, year));
            }
            return WeatherYears.read(files, WeatherReadOptions.defaults());
        } finally {
            for (Path file : files) {
                Files.deleteIfExists(file);
            }
        }
    }

    private static List<String> rows(Path file, int year) throws IOException {
        List<String> rows = new ArrayList<>(List.of(HEADER));
        try (BufferedReader reader = new BufferedReader(
                new InputStreamReader(new GZIPInputStream(Files.newInputStream(file)), StandardCharsets.UTF_8))) {
            reader.readLine();
            for (String line = reader.readLine(); line != null; line = reader.readLine()) {
                rows.add(row(line.split(",", -1), year));
            }
        }
        return rows;
    }

    private static String row(String[] cells, int year) {
        LocalDate day = LocalDate.ofYearDay(year, Integer.parseInt(cells[0]));
        return String.join(
                ",",
                Integer.toString(year),
                Integer.toString(day.getMonthValue()),
                Integer.toString(day.getDayOfMonth()),
                cells[1],
                scaled(cells[2], 1 / PHOTONS_PER_JOULE, DARK),
                cells[3],
                scaled(cells[4], 100, 0),
                cells[5]);
    }

    /** A missing value stays missing. */
    private static String scaled(String cell, double by, double nothingBelow) {
        if (cell.isEmpty()) {
            return "";
        }
        double value = Double.parseDouble(cell);
        return String.format(Locale.ROOT, "%.3f", value < nothingBelow ? 0 : value * by);
    }
}
