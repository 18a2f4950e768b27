package dev.warmlane.report;

import dev.warmlane.season.Installation;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** The methods behind the numbers and where they come from, in short; docs/model.md has all of it. */
final class ModelSources {

    private ModelSources() {}

    static List<String> of(Installation installation) {
        List<String> lines = new ArrayList<>();
        lines.add("The pool is one well-mixed basin. Its heat is balanced every hour, in shorter steps where the set"
                + " point, the collectors' limit or the pump's switching falls within the hour; every flow is kept, and"
                + " their sum is the heat stored.");
        if (!installation.arrays().isEmpty()) {
            lines.add(
                    "Sun position after Reda and Andreas 2004. Light on tilted planes from the sky model chosen, usually"
                            + " that of Perez and others 1990. " + collectors(installation));
            lines.add("Wind on the roof by the power-law profiles of the ASHRAE Handbook. " + films(installation));
        }
        lines.add("Evaporation: " + installation.pool().evaporation().source()
                + ". Convection in the ratio of Bowen 1926. Ground by the basement form of ISO 13370.");
        lines.add(
                installation.pool().setting().outdoor().isEmpty()
                        ? "The pool lies in a hall: no sun, no sky, the hall's air instead."
                        : "Long-wave of the sky from the weather file, or estimated after Martin and Berdahl 1984 where"
                                + " it has none.");
        boolean described = installation.hydraulics().isPresent();
        if (described) {
            lines.add(
                    "Pressure after Darcy and Weisbach with the friction factor of Colebrook 1939, laminar below Re 2300; headers"
                            + " after Bajura and Jones 1976; heat of pipes by conduction through round layers.");
        }
        lines.add("Not modelled, and small: heat content of the array at start-up (0.8 to 3.4 %), dew on the collectors"
                + " in the morning (1 to 4 % in humid places), "
                + (described ? "" : "uneven flow between panels (about 1 %), ")
                + "rain into the pool (under 1 %), snow.");
        return lines;
    }

    /** Each kind of collector that there is, once. */
    private static String collectors(Installation installation) {
        return installation.arrays().stream()
                .map(array -> array.model()
                        .match(
                                absorber -> "by the flat-plate equations of Duffie and Beckman",
                                certificate -> "by the test certificate given (ISO 9806)",
                                curve -> "by a curve that is not of this program (" + curve.source() + ")"))
                .distinct()
                .collect(Collectors.joining(", and ", "Collectors ", "."));
    }

    private static String films(Installation installation) {
        if (installation.arrays().stream()
                .allMatch(array -> array.model().curve().isPresent())) {
            return "What wind and still air take from the collectors is in their curve.";
        }
        return installation
                        .collectorPhysics()
                        .film()
                        .match(
                                physical -> "Cooling by wind and by still air of every face that is exposed",
                                fit -> "Cooling of every face that is exposed by its wind (" + fit.source() + ")",
                                face -> "Cooling of every face that is exposed by a function of the face ("
                                        + face.source() + ")")
                + "; an open back sees the sunlit roof below it, strip by strip.";
    }
}
