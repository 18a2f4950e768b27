package dev.warmlane.study;

import dev.warmlane.collector.CollectorArray;
import dev.warmlane.season.Installation;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.weather.WeatherYear;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Mountings side by side on one installation, compared twice: with the same collector area, and with the most that fits
 * the same roof. Neither alone is fair: racks need room between their rows, mats do not.
 *
 * <p>All collectors of the installation are taken as one array of the kind of the first: its model, flow and panels.
 * Their area together is the area of the first comparison. Everything but the mounting stays as it is, save that the pump's
 * power follows the flow where more or less of it fits the roof.
 *
 * @param template the installation
 * @param weather the typical year
 * @param compared the options in the order they were given
 */
public record MountingStudy(Installation template, WeatherYear weather, List<Compared> compared) {

    /** Keeps its own copy of the list. */
    public MountingStudy {
        compared = List.copyOf(compared);
    }

    /**
     * An option in both comparisons.
     *
     * @param option the option
     * @param sameArea with the installation's collector area, whether the roof has room for it or not
     * @param sameRoof with the most that fits; nothing where not even one panel does
     */
    public record Compared(MountingOption option, MountingResult sameArea, Optional<MountingResult> sameRoof) {}

    /** Simulates every option twice on all cores; see {@link #of(Installation, SharedForcing, List, Runs)}. */
    public static MountingStudy of(Installation template, WeatherYear weather, List<MountingOption> options) {
        return of(template, new SharedForcing(weather), options, Runs.onAllCores());
    }

    /**
     * Simulates every option twice.
     *
     * @param template an installation with collectors
     * @param forcing of the typical year; shared with other studies of it
     * @param options one or more options with different names
     * @param runs how to run, and who hears of it
     * @throws IllegalArgumentException if there are no collectors or options, two options have one name, or rows cannot
     *     be spaced as an option asks
     * @throws java.util.concurrent.CancellationException if the study was cancelled
     */
    public static MountingStudy of(
            Installation template, SharedForcing forcing, List<MountingOption> options, Runs runs) {
        check(template, options);
        double latitude = forcing.weather().site().latitudeDeg();
        List<Run> asked = new ArrayList<>();
        for (MountingOption option : options) {
            asked.add(new Run(option, RoofFit.ofArea(template, latitude, option, template.collectorAreaM2()), true));
            RoofFit.most(template, latitude, option).ifPresent(fit -> asked.add(new Run(option, fit, false)));
        }
        List<MountingResult> results = runs.map(asked, run -> simulate(template, forcing, run));
        List<Compared> compared = new ArrayList<>();
        for (int i = 0; i < asked.size(); i++) {
            if (asked.get(i).sameArea) {
                boolean fits = i + 1 < asked.size() && !asked.get(i + 1).sameArea;
                compared.add(new Compared(
                        asked.get(i).option,
                        results.get(i),
                        fits ? Optional.of(results.get(i + 1)) : Optional.empty()));
            }
        }
        return new MountingStudy(template, forcing.weather(), compared);
    }

    /** The results with the same collector area, in the order of the options. */
    public List<MountingResult> sameArea() {
        return compared.stream().map(Compared::sameArea).toList();
    }

    /** The results with the most that fits the roof, of the options of which anything fits. */
    public List<MountingResult> sameRoof() {
        return compared.stream().flatMap(c -> c.sameRoof().stream()).toList();
    }

    /** The installation with a mounting as it stands on the roof. */
    static Installation mounted(Installation template, MountingOption option, RoofFit fit) {
        CollectorArray first = template.arrays().get(0);
        Installation built = WaterCircuit.applied(PumpByFlow.with(
                template,
                List.of(new CollectorArray(
                        option.name(),
                        fit.areaM2(),
                        fit.mounting(),
                        first.model(),
                        first.flowKgSM2(),
                        first.panelAreaM2(),
                        first.filling()))));
        OptionalDouble price = option.pricePerM2();
        return price.isEmpty()
                ? built
                : built.toBuilder()
                        .prices(built.prices()
                                .map(prices -> prices.withCollectorPerM2(price.getAsDouble()))
                                .orElse(null))
                        .build();
    }

    private static MountingResult simulate(Installation template, SharedForcing forcing, Run run) {
        Installation built = mounted(template, run.option, run.fit);
        return MountingResult.of(run.option, run.fit, SeasonForecast.of(built, forcing.of(built), forcing.weather()));
    }

    private static void check(Installation template, List<MountingOption> options) {
        if (template.arrays().isEmpty()) {
            throw new IllegalArgumentException(
                    "comparing mountings needs an installation with collectors: their kind and area are compared");
        }
        if (options.isEmpty()) {
            throw new IllegalArgumentException("there is no mounting to compare");
        }
        Set<String> names = new HashSet<>();
        for (MountingOption option : options) {
            if (!names.add(option.name())) {
                throw new IllegalArgumentException("two mountings are called \"" + option.name() + "\"");
            }
        }
    }

    private record Run(MountingOption option, RoofFit fit, boolean sameArea) {}
}
