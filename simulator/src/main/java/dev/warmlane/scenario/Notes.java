package dev.warmlane.scenario;

import dev.warmlane.units.UnitSystem;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Gathers what is found while one file is read. */
final class Notes {

    private final Path file;
    /** What several readers ask for is missing once. */
    private final Set<Finding> errors = new LinkedHashSet<>();

    private final List<Finding> warnings = new ArrayList<>();
    private final Set<Assumption> assumed = new LinkedHashSet<>();

    private UnitSystem units = UnitSystem.METRIC;
    private List<String> text = List.of();

    Notes(Path file) {
        this.file = file;
    }

    /** The text that is read. */
    void read(String scenario) {
        text = scenario.lines().toList();
    }

    /** A line of that text as it stands there, from 1; empty where there is none. */
    String line(int number) {
        return number >= 1 && number <= text.size() ? text.get(number - 1) : "";
    }

    /** From here on what is assumed is told in other units than metric. */
    void use(UnitSystem reportUnits) {
        units = reportUnits;
    }

    /** The units that quantities are told in. */
    UnitSystem units() {
        return units;
    }

    /** Something that makes the file unusable. */
    void error(int line, String section, String key, String message) {
        errors.add(new Finding(file, line, 0, section, key, message));
    }

    /** Something about the text itself that makes the file unusable, where it is known to the column. */
    void error(int line, int column, String message) {
        errors.add(new Finding(file, line, column, "", "", message));
    }

    /** Something allowed that is hardly meant. */
    void warning(int line, String section, String key, String message) {
        warnings.add(new Finding(file, line, 0, section, key, message));
    }

    /** A value that the file leaves open; told twice it counts once. */
    void assumed(String section, String key, String value, String why) {
        assumed.add(new Assumption(section, key, value, why));
    }

    /** What is allowed but hardly meant, in the order of the file. */
    List<Finding> warnings() {
        return inOrder(warnings);
    }

    /** Everything assumed so far, in the order of reading. */
    List<Assumption> assumed() {
        return List.copyOf(assumed);
    }

    /**
     * Ends the reading if anything was wrong.
     *
     * @throws ScenarioException with everything that was wrong, in the order of the file
     */
    void throwIfAny() {
        if (!errors.isEmpty()) {
            throw new ScenarioException(inOrder(errors));
        }
    }

    private static List<Finding> inOrder(Collection<Finding> findings) {
        return findings.stream().sorted(Comparator.comparingInt(Finding::line)).toList();
    }
}
