package dev.warmlane.scenario;

import dev.warmlane.heater.Boiler;
import dev.warmlane.heater.Heater;
import dev.warmlane.pool.PoolSetting.Outdoor;
import dev.warmlane.season.Installation;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The text of a scenario file with what a fit found: only those lines are changed, so that every other key and every remark
 * stays as its author wrote it. What stood in a line before stays beside it as a remark.
 */
public final class FittedScenario {

    private static final Pattern HEADING = Pattern.compile("\\s*\\[\\s*([A-Za-z_]+)\\s*]\\s*(#.*)?");
    private static final Pattern ANY_HEADING = Pattern.compile("\\s*\\[.*");
    private static final Pattern PATH = Pattern.compile("(\\s*\\w+\\s*=\\s*)\"([^\"\\\\]*)\"(.*)");

    private final List<String> lines;

    private FittedScenario(List<String> lines) {
        this.lines = lines;
    }

    /**
     * The text for a new scenario file.
     *
     * @param original the scenario file that was fitted
     * @param described its installation as it was read
     * @param fitted the same with what was found, {@link Installation#fitted} among it
     * @param folder the folder that the new file will be in, to which weather, years and logo then lie as before
     * @throws IOException if the original cannot be read, or its pool is not a section with a heading of its own
     */
    public static String text(Path original, Installation described, Installation fitted, Path folder)
            throws IOException {
        String before = ScenarioText.load(original, new Notes(original));
        FittedScenario scenario =
                new FittedScenario(new ArrayList<>(before.lines().toList()));
        if (scenario.heading("pool") < 0) {
            throw new IOException(
                    original + " has no line [pool]: give its pool a section of that heading, so that what was"
                            + " found can be written into it");
        }
        scenario.removeFit();
        scenario.pool(fitted);
        if (fitted.makeUp().litresPerDay() != described.makeUp().litresPerDay()) {
            scenario.change("pool", PoolKeys.MAKE_UP, fitted.makeUp().litresPerDay());
        }
        fitted.heater()
                .filter(heater -> !described.heater().equals(Optional.of(heater)))
                .flatMap(FittedScenario::boiler)
                .ifPresent(boiler -> scenario.change("heater", HeaterKeys.EFFICIENCY, boiler.efficiency()));
        Path from = original.toAbsolutePath().normalize().getParent();
        Path to = folder.toAbsolutePath().normalize();
        if (from != null && !from.equals(to)) {
            scenario.move("site", PlaceKeys.WEATHER, from, to);
            scenario.move("site", PlaceKeys.YEARS, from, to);
            scenario.move("report", PlaceKeys.LOGO, from, to);
        }
        TomlText fit = new TomlText();
        fitted.fitted().ifPresent(doubt -> FitKeys.write(fit, doubt));
        return String.join("\n", scenario.lines).stripTrailing() + "\n\n" + fit;
    }

    private void pool(Installation fitted) {
        Outdoor outdoor = fitted.pool().setting().outdoor().orElseThrow();
        change("pool", PoolKeys.WIND_FACTOR, outdoor.windFactor(), PoolKeys.WIND_SHELTER);
        change("pool", PoolKeys.ABSORPTANCE, fitted.pool().solarAbsorptance(), PoolKeys.FINISH);
        change("pool", PoolKeys.SHADED_SHARE, outdoor.shadedShare());
    }

    private static Optional<Boiler> boiler(Heater heater) {
        return heater.match(
                Optional::of,
                condensing -> Optional.empty(),
                electric -> Optional.empty(),
                heatPump -> Optional.empty(),
                district -> Optional.empty());
    }

    /** Puts a value in the place of its key, or of the words that stood for it, or below the section's heading. */
    private <T> void change(String section, Key<T> key, T value, Key<?>... instead) {
        String text = key.name() + " = " + key.kind().write(value);
        List<Integer> found = new ArrayList<>();
        found.add(line(section, key.name()));
        for (Key<?> other : instead) {
            found.add(line(section, other.name()));
        }
        for (int at : found) {
            if (at >= 0) {
                String before = lines.get(at).strip();
                lines.set(at, before.startsWith(text) ? before : text + "  # before the fit: " + before);
                return;
            }
        }
        lines.add(heading(section) + 1, text);
    }

    /** Lets a path lead from another folder to the same file. */
    private void move(String section, Key<String> key, Path from, Path to) {
        int at = line(section, key.name());
        Matcher path = PATH.matcher(at < 0 ? "" : lines.get(at));
        if (path.matches() && !Path.of(path.group(2)).isAbsolute()) {
            String moved = to.relativize(from.resolve(path.group(2)).normalize())
                    .toString()
                    .replace('\\', '/');
            lines.set(at, path.group(1) + "\"" + moved + "\"" + path.group(3));
        }
    }

    private void removeFit() {
        int first = heading("fit");
        if (first >= 0) {
            lines.subList(first, end(first)).clear();
        }
    }

    private int heading(String section) {
        for (int i = 0; i < lines.size(); i++) {
            Matcher heading = HEADING.matcher(lines.get(i));
            if (heading.matches() && section.equals(heading.group(1))) {
                return i;
            }
        }
        return -1;
    }

    /** The line after the last of a section. */
    private int end(int heading) {
        int end = heading + 1;
        while (end < lines.size() && !ANY_HEADING.matcher(lines.get(end)).matches()) {
            end++;
        }
        return end;
    }

    private int line(String section, String key) {
        int heading = heading(section);
        if (heading >= 0) {
            Pattern begins = Pattern.compile("\\s*" + key + "\\s*=.*");
            for (int i = heading + 1; i < end(heading); i++) {
                if (begins.matcher(lines.get(i)).matches()) {
                    return i;
                }
            }
        }
        return -1;
    }
}
