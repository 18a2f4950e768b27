package dev.warmlane.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.DocBlock;
import dev.warmlane.RealWeather;
import dev.warmlane.circuit.Control;
import dev.warmlane.physics.MoistAir;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Schedule;
import dev.warmlane.weather.WeatherFiles;
import dev.warmlane.weather.WeatherYear;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A PVGIS year, in UTC, against the same rows put into an EPW file of local standard time, with the labels that people
 * put there: a season must not depend on the file it came in.
 */
class SameYearOtherFormatTest {

    /** What a season may differ by: sunrise hours are means here and instants there. */
    private static final double SAME = 0.005;

    @TempDir
    private Path folder;

    /**
     * The stamp of a row is the start of the hour, or taken for the end of it: then its irradiance belongs 0.68 h later
     * than the middle of the EPW hour, to the next one.
     */
    @ParameterizedTest
    @CsvSource({"0", "-1"})
    void seasonAndCollectorsAgree(int labelsLateByHours) throws IOException {
        Path pvgisFile = RealWeather.file("po-valley-pvgis.csv");
        WeatherYear pvgis = WeatherFiles.read(pvgisFile);
        Path epwFile = folder.resolve("same.epw");
        Files.write(epwFile, epw(Files.readAllLines(pvgisFile), labelsLateByHours));
        WeatherYear epw = WeatherFiles.read(epwFile);

        SeasonLedger asPvgis = season(pvgis);
        SeasonLedger asEpw = season(epw);

        assertThat(heat(asEpw)).isCloseTo(heat(asPvgis), within(SAME * heat(asPvgis)));
        assertThat(RealSeasons.mean(asEpw))
                .isCloseTo(RealSeasons.mean(asPvgis), within(SAME * RealSeasons.mean(asPvgis)));
        assertThat(epw.sun().offsetHours(0)).isBetween(0.0, 1.0);
    }

    /**
     * What moving the rows is worth: left where they stand, all weather comes an hour early by the clock, which is the
     * same as a pump that starts and stops an hour late.
     */
    @Test
    void whatMovedRowsAreWorthIsThatOfTheRecord() throws IOException {
        Path file = RealWeather.file("po-valley-pvgis.csv");
        WeatherYear right = WeatherFiles.read(file);
        SeasonLedger asPvgis = season(right);
        Path labelledEarly = folder.resolve("early.epw");
        Files.write(labelledEarly, epw(Files.readAllLines(file), -1));
        DocBlock.check(
                "model.md",
                "row moves",
                "| the same year | pool | collectors' heat |\n|---|---|---|\n"
                        + row("rows moved", season(WeatherFiles.read(labelledEarly)), asPvgis)
                        + row("rows left where they stand", season(right, Schedule.daily(9, 15)), asPvgis));
    }

    private static String row(String what, SeasonLedger ledger, SeasonLedger asPvgis) {
        return "| " + what
                + " | " + DocBlock.signed(RealSeasons.mean(ledger) - RealSeasons.mean(asPvgis), 2)
                + " K | " + DocBlock.signed(100 * (heat(ledger) / heat(asPvgis) - 1), 1) + " % |\n";
    }

    /** The pump runs by the clock, so that the clock matters. */
    private static SeasonLedger season(WeatherYear weather) {
        return season(weather, Schedule.daily(8, 14));
    }

    private static SeasonLedger season(WeatherYear weather, Schedule pumping) {
        return SeasonForecast.of(
                        RealSeasons.pool(RealSeasons.racks(weather, 3))
                                .control(new Control(4, 0.3, 30, Double.POSITIVE_INFINITY, pumping))
                                .build(),
                        weather)
                .with();
    }

    private static double heat(SeasonLedger ledger) {
        return ledger.arrayHeatKwh(0, Periods.season(ledger));
    }

    private static List<String> epw(List<String> pvgis, int labelsLateByHours) {
        List<String> lines = new ArrayList<>(List.of(
                "LOCATION,same year,-,-,-,0,45.0,8.0,1.0,250.0",
                "DESIGN CONDITIONS,0",
                "TYPICAL/EXTREME PERIODS,0",
                "GROUND TEMPERATURES,0",
                "HOLIDAYS/DAYLIGHT SAVINGS,No,0,0,0",
                "COMMENTS 1,",
                "COMMENTS 2,",
                "DATA PERIODS,1,1,Data,Sunday, 1/ 1,12/31"));
        String[] rows = new String[HourOfYear.HOURS];
        for (String line : pvgis) {
            if (line.matches("\\d{8}:\\d{4},.*")) {
                String[] c = line.split(",", -1);
                int utc = HourOfYear.of(
                        Integer.parseInt(c[0].substring(4, 6)),
                        Integer.parseInt(c[0].substring(6, 8)),
                        Integer.parseInt(c[0].substring(9, 11)));
                int hour = Math.floorMod(utc + 1 + labelsLateByHours, HourOfYear.HOURS);
                double air = Double.parseDouble(c[1]);
                double dew = MoistAir.dewPointC(MoistAir.saturationPressureKpa(air) * Double.parseDouble(c[2]) / 100);
                rows[hour] = String.format(
                        Locale.ROOT,
                        "%s,%d,%d,%d,0,?9,%s,%.2f,%s,%s,9999,9999,%s,%s,%s,%s,9999,9999,9999,9999,0,%s,99,99,9999,99999,9,"
                                + "999999999,0,0,0,88,0,0,0",
                        c[0].substring(0, 4),
                        HourOfYear.monthOf(hour),
                        HourOfYear.dayOfMonth(hour),
                        HourOfYear.hourOfDay(hour) + 1,
                        c[1],
                        dew,
                        c[2],
                        c[9],
                        c[6],
                        c[3],
                        c[4],
                        c[5],
                        c[7]);
            }
        }
        lines.addAll(List.of(rows));
        return lines;
    }
}
