package dev.warmlane.weather;

import dev.warmlane.weather.WeatherFinding.Kind;
import java.util.ArrayList;
import java.util.List;

/** Collects findings in the order they are made. */
final class Findings {

    private final List<WeatherFinding> all = new ArrayList<>();

    void note(int line, int hours, String message) {
        all.add(new WeatherFinding(Kind.NOTE, line, hours, message));
    }

    void warning(int line, int hours, String message) {
        all.add(new WeatherFinding(Kind.WARNING, line, hours, message));
    }

    void repair(int line, int hours, String message) {
        all.add(new WeatherFinding(Kind.REPAIR, line, hours, message));
    }

    /** A repair of the hours counted, if there are any. */
    void repair(Occurrences found, String message) {
        add(Kind.REPAIR, found, message);
    }

    /** A warning of the hours counted, if there are any. */
    void warning(Occurrences found, String message) {
        add(Kind.WARNING, found, message);
    }

    void add(Kind kind, Occurrences found, String message) {
        if (found.count() > 0) {
            all.add(new WeatherFinding(kind, found.firstLine(), found.count(), message));
        }
    }

    Findings copy() {
        Findings copy = new Findings();
        copy.all.addAll(all);
        return copy;
    }

    List<WeatherFinding> all() {
        return List.copyOf(all);
    }
}
