package dev.warmlane.season;

import dev.warmlane.collector.CollectorArray;
import dev.warmlane.collector.CollectorForcing;
import dev.warmlane.collector.CollectorSurroundings;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Terrain;
import dev.warmlane.weather.WeatherYear;
import java.io.PrintStream;
import java.util.Locale;

/**
 * Prints the tables of docs/validation.md that report without asserting: whole seasons in real weather, and where flat
 * mats give more than racks. Run with the test classes and {@code -Dweather.dir=}.
 */
public final class ValidationTables {

    private static final double[] INLETS_C = {20, 26, 30};

    private ValidationTables() {}

    /** Prints all tables. */
    public static void main(String[] arguments) {
        PrintStream out = System.out;
        out.println("| weather | mounting | pool without °C | with °C | warmest °C | heat kWh/m² | refused kWh/m² "
                + "| 20 °C | 26 °C | 30 °C | hottest dry plate °C |");
        out.println("|---|---|---|---|---|---|---|---|---|---|---|");
        for (String file : RealSeasons.FILES) {
            WeatherYear weather = RealSeasons.weather(file);
            line(out, file, weather, "flat", RealSeasons.flat());
            line(out, file, weather, "one row", RealSeasons.racks(weather, 1));
            line(out, file, weather, "ten rows", RealSeasons.racks(weather, 10));
        }
    }

    private static void line(PrintStream out, String file, WeatherYear weather, String name, CollectorArray array) {
        Installation installation = RealSeasons.pool(array).build();
        SeasonForcing forcing = SeasonForcing.of(installation, weather);
        SeasonLedger with = SeasonSimulator.simulate(installation, forcing);
        SeasonLedger without = SeasonSimulator.simulate(installation.withoutCollectors(), forcing.withoutCollectors());
        double warmest = 0;
        for (int index = 0; index < with.hours(); index++) {
            warmest = Math.max(warmest, with.waterEndC(index));
        }
        StringBuilder row = new StringBuilder(String.format(
                Locale.ROOT,
                "| %s | %s | %.1f | %.1f | %.1f | %.0f | %.0f |",
                file,
                name,
                RealSeasons.mean(without),
                RealSeasons.mean(with),
                warmest,
                with.heatKwh(Flow.COLLECTORS, 0, with.hours()) / RealSeasons.COLLECTOR_M2,
                with.refusedKwh(0, with.hours()) / RealSeasons.COLLECTOR_M2));
        CollectorForcing collector =
                CollectorForcing.of(new CollectorSurroundings(weather, Demo.ROOF, Terrain.SUBURBAN), array);
        for (double inlet : INLETS_C) {
            row.append(String.format(Locale.ROOT, " %.0f |", atInlet(collector, inlet)));
        }
        double hottest = 0;
        for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
            hottest = Math.max(hottest, collector.curves().stagnationC(hour));
        }
        out.println(row.append(String.format(Locale.ROOT, " %.0f |", hottest)));
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
