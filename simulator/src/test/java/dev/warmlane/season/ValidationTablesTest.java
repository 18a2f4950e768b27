package dev.warmlane.season;

import dev.warmlane.DocBlock;
import dev.warmlane.collector.CollectorArray;
import dev.warmlane.collector.CollectorForcing;
import dev.warmlane.collector.CollectorSurroundings;
import dev.warmlane.pool.Flow;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Terrain;
import dev.warmlane.weather.WeatherYear;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * The tables of docs/validation/seasons.md that report without asserting: whole seasons in real weather, and where flat mats give
 * more than racks. {@code -Ddocs.write=true} writes them.
 */
@Tag("handbook")
class ValidationTablesTest {

    private static final double[] INLETS_C = {20, 26, 30};

    /** One line of the seasons: heat over the season and at each inlet are what the second table compares. */
    private record Line(String text, double seasonKwhM2, List<Double> inletKwhM2) {}

    @Test
    void tablesAreThoseOfTheRecord() throws IOException {
        StringBuilder seasons = new StringBuilder("| weather | mounting | pool without °C | with °C | warmest °C "
                + "| heat kWh/m² | refused kWh/m² | 20 °C | 26 °C | 30 °C | hottest dry plate °C |\n"
                + "|---|---|---|---|---|---|---|---|---|---|---|\n");
        StringBuilder ratios = new StringBuilder("| weather | season: one row, ten rows | at 20 °C | at 26 °C "
                + "| at 30 °C |\n|---|---|---|---|---|\n");
        for (String file : RealSeasons.FILES) {
            WeatherYear weather = RealSeasons.weather(file);
            Line flat = line(file, weather, "flat", RealSeasons.flat());
            Line one = line(file, weather, "one row", RealSeasons.racks(weather, 1));
            Line ten = line(file, weather, "ten rows", RealSeasons.racks(weather, 10));
            seasons.append(flat.text()).append(one.text()).append(ten.text());
            ratios.append("| ").append(file).append(pair(flat.seasonKwhM2(), one.seasonKwhM2(), ten.seasonKwhM2()));
            for (int i = 0; i < INLETS_C.length; i++) {
                ratios.append(pair(
                        flat.inletKwhM2().get(i),
                        one.inletKwhM2().get(i),
                        ten.inletKwhM2().get(i)));
            }
            ratios.append(" |\n");
        }
        DocBlock.check("validation/seasons.md", "seasons", seasons.toString());
        DocBlock.check("validation/seasons.md", "flat over racks", ratios.toString());
    }

    private static String pair(double flat, double one, double ten) {
        return String.format(Locale.ROOT, " | %.2f, %.2f", flat / one, flat / ten);
    }

    private static Line line(String file, WeatherYear weather, String name, CollectorArray array) {
        Installation installation = RealSeasons.pool(array).build();
        SeasonForcing forcing = SeasonForcing.of(installation, weather);
        SeasonLedger with = SeasonSimulator.simulate(installation, forcing);
        SeasonLedger without = SeasonSimulator.simulate(installation.withoutCollectors(), forcing.withoutCollectors());
        double warmest = 0;
        for (int index = 0; index < with.hours(); index++) {
            warmest = Math.max(warmest, with.waterEndC(index));
        }
        double season = with.heatKwh(Flow.COLLECTORS, Periods.season(with)) / RealSeasons.COLLECTOR_M2;
        StringBuilder row = new StringBuilder(String.format(
                Locale.ROOT,
                "| %s | %s | %.1f | %.1f | %.1f | %.0f | %.0f |",
                file,
                name,
                RealSeasons.mean(without),
                RealSeasons.mean(with),
                warmest,
                season,
                with.refusedKwh(Periods.season(with)) / RealSeasons.COLLECTOR_M2));
        CollectorForcing collector =
                CollectorForcing.of(new CollectorSurroundings(weather, Demo.ROOF, Terrain.SUBURBAN), array);
        List<Double> inlets = new ArrayList<>();
        for (double inletC : INLETS_C) {
            double inlet = atInlet(collector, inletC);
            inlets.add(inlet);
            row.append(String.format(Locale.ROOT, " %.0f |", inlet));
        }
        double hottest = 0;
        for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
            hottest = Math.max(hottest, collector.curves().highestPlateC(hour));
        }
        return new Line(
                row.append(String.format(Locale.ROOT, " %.0f |\n", hottest)).toString(), season, inlets);
    }

    /** Heat of May to September with water entering always at one temperature, whenever there is any, kWh/m². */
    private static double atInlet(CollectorForcing collector, double inletC) {
        double sum = 0;
        for (int hour = HourOfYear.firstHourOf(5); hour < HourOfYear.firstHourOf(10); hour++) {
            sum += Math.max(0, collector.curves().heatWm2(hour, inletC)) / 1000;
        }
        return sum;
    }
}
