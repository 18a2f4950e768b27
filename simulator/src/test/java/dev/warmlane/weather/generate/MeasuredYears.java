package dev.warmlane.weather.generate;

import dev.warmlane.MeasuredData;
import dev.warmlane.physics.DiffuseFraction;
import dev.warmlane.physics.MoistAir;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Site;
import dev.warmlane.sun.SunPath;
import dev.warmlane.weather.WeatherYear;
import dev.warmlane.weather.WeatherYears;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Year;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.zip.GZIPInputStream;

/**
 * Fourteen real years of Champaign, Illinois, 1996 to 2009, for tests: SURFRAD Bondville and the state's water survey, as
 * biocro/biocro has them. Global irradiance is the photosynthetic photon flux over 2.04 µmol/J (Meek et al. 1984; from memory),
 * its diffuse share that of Erbs et al. 1982: enough to tell years from each other, not to tell this place from another.
 */
public final class MeasuredYears {

    private static final Site SITE = new Site("Champaign, Illinois", 40.05, -88.37, 213, -6);
    private static final int FIRST = 1996;
    private static final int LAST = 2009;

    /** Photons of photosynthesis per joule of global irradiation, µmol/J. */
    private static final double PHOTONS_PER_JOULE = 2.04;

    /** The sun so low that a share of the horizontal's says nothing of the beam. */
    private static final double LOW = 0.05;

    private MeasuredYears() {}

    /** The years; a test that asks is skipped without the folder. */
    public static WeatherYears champaign() throws IOException {
        List<Path> files = IntStream.rangeClosed(FIRST, LAST)
                .mapToObj(year -> MeasuredData.file("champaign-" + year + ".csv.gz"))
                .toList();
        List<WeatherYear> years = IntStream.range(0, files.size())
                .mapToObj(i -> read(files.get(i), FIRST + i))
                .toList();
        return WeatherYears.of(years);
    }

    private static WeatherYear read(Path file, int calendarYear) {
        int[] year = new int[HourOfYear.HOURS];
        Arrays.fill(year, calendarYear);
        // the mean around the hour that a row is labelled with
        SunPath sun = SunPath.ofHourlyMeans(SITE, year, 0);
        double[] global = missing();
        double[] direct = missing();
        double[] diffuse = missing();
        double[] air = missing();
        double[] dew = missing();
        double[] wind = missing();
        for (String line : lines(file)) {
            double[] row = Arrays.stream(line.split(",", -1))
                    .mapToDouble(cell -> cell.isEmpty() ? Double.NaN : Double.parseDouble(cell))
                    .toArray();
            int day = (int) row[0];
            if (Year.isLeap(calendarYear)) {
                if (day == 60) {
                    continue;
                }
                day = day > 60 ? day - 1 : day;
            }
            int hour = (day - 1) * 24 + (int) row[1];
            double cosine = sun.cosZenith(hour) * sun.upFraction(hour);
            double outside = sun.extraterrestrialNormalWm2(hour) * cosine;
            // night fluxes are noise of the instrument
            global[hour] = cosine > 0 ? Math.max(0, row[2]) / PHOTONS_PER_JOULE : 0;
            diffuse[hour] = global[hour] * (cosine > LOW ? DiffuseFraction.erbs(global[hour] / outside) : 1);
            direct[hour] = cosine > LOW ? (global[hour] - diffuse[hour]) / cosine : 0;
            air[hour] = row[3];
            dew[hour] = Math.min(row[3], MoistAir.dewPointC(row[4] * MoistAir.saturationPressureKpa(row[3])));
            wind[hour] = row[5];
        }
        return WeatherYear.builder(SITE, "Champaign " + calendarYear, sun)
                .irradianceWm2(global, direct, diffuse)
                .airC(air, dew)
                .windSpeedMs(wind)
                .build();
    }

    private static double[] missing() {
        double[] values = new double[HourOfYear.HOURS];
        Arrays.fill(values, Double.NaN);
        return values;
    }

    private static List<String> lines(Path file) {
        try (BufferedReader reader = new BufferedReader(
                new InputStreamReader(new GZIPInputStream(Files.newInputStream(file)), StandardCharsets.UTF_8))) {
            return reader.lines().skip(1).collect(Collectors.toList());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
