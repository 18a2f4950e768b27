package dev.warmlane.weather;

import java.util.ArrayList;
import java.util.List;

/** Collects findings in the order they are made. */
final class Findings {

    private final List<WeatherFinding> all = new ArrayList<>();

    void note(int line, int hours, String message) {
        all.add(new WeatherFinding(WeatherFinding.Kind.NOTE, line, hours, message));
    }

    void repair(int line, int hours, String message) {
        all.add(new WeatherFinding(WeatherFinding.Kind.REPAIR, line, hours, message));
    }

    void warning(int line, int hours, String message) {
        all.add(new WeatherFinding(WeatherFinding.Kind.WARNING, line, hours, message));
    }

    List<WeatherFinding> all() {
        return List.copyOf(all);
    }
}
