package dev.warmlane.examples;

import dev.warmlane.files.Printable;
import dev.warmlane.report.Numbers;
import dev.warmlane.scenario.ScenarioAnswer;
import dev.warmlane.site.Site;
import dev.warmlane.units.Measure;
import dev.warmlane.units.UnitSystem;
import dev.warmlane.weather.WeatherFiles;
import dev.warmlane.weather.WeatherFinding;
import dev.warmlane.weather.WeatherSummary;
import dev.warmlane.weather.WeatherYear;
import java.io.File;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Looks at the weather file that somebody names, and tells in a few lines what it is. */
final class WeatherAnswer implements Question.Check {

    private static final int NAMED_AT_MOST = 6;

    private final PrintWriter out;

    WeatherAnswer(PrintWriter out) {
        this.out = out;
    }

    @Override
    public Answer of(String written, Answers before) {
        String bare = written.replaceAll("^[\"']|[\"']$", "");
        Path file = path(bare);
        if (Files.isDirectory(file)) {
            throw new IllegalArgumentException(bare + " is a folder; name a file in it" + near(file.resolve("any")));
        }
        try {
            WeatherYear year = WeatherFiles.read(file);
            tell(year, before.us() ? UnitSystem.US : UnitSystem.METRIC);
            before.look(year);
        } catch (NoSuchFileException none) {
            throw new IllegalArgumentException(bare + ": there is no such file" + near(file), none);
        } catch (IOException wrong) {
            throw new IllegalArgumentException(wrong.getMessage(), wrong);
        }
        String named = seenFrom(before.file(), file);
        return Answer.of(bare, List.of(Questions.WEATHER), List.of(ScenarioAnswer.of("site", "weather", named, "")));
    }

    private static Path path(String written) {
        try {
            // the backslashes of Windows name nothing elsewhere
            return Path.of(File.separatorChar == '/' ? written.replace('\\', '/') : written);
        } catch (InvalidPathException none) {
            throw new IllegalArgumentException("that is no file name on this machine", none);
        }
    }

    /** The way from the scenario's folder to the weather file, which both keep when they move together. */
    static String seenFrom(Path scenario, Path weather) {
        Path folder = scenario.toAbsolutePath().resolveSibling("").normalize();
        Path to = weather.toAbsolutePath().normalize();
        boolean reachable = Objects.equals(folder.getRoot(), to.getRoot());
        return (reachable ? folder.relativize(to) : to).toString().replace('\\', '/');
    }

    /** Names of files in the same folder that may be meant. */
    private static String near(Path file) {
        Path parent = file.toAbsolutePath().normalize().resolveSibling("");
        if (!Files.isDirectory(parent)) {
            return "";
        }
        try (Stream<Path> files = Files.list(parent)) {
            List<String> names = files.map(f -> String.valueOf(f.getFileName()))
                    .filter(name -> name.toLowerCase(Locale.ROOT).matches("(?!.*\\.normals\\.).*\\.(epw|csv|tm2|tmy)"))
                    .sorted()
                    .limit(NAMED_AT_MOST)
                    .toList();
            return names.isEmpty() ? "" : "; in that folder there are " + Printable.line(String.join(", ", names));
        } catch (IOException unreadable) {
            return "";
        }
    }

    private void tell(WeatherYear year, UnitSystem units) {
        Numbers numbers = new Numbers(units);
        Site site = year.site();
        WeatherSummary.Period all = WeatherSummary.of(year).year();
        out.println("  " + Printable.line(site.name())
                + String.format(
                        Locale.ROOT,
                        ", %.1f° %s, %.1f° %s, %s above the sea, UTC%s%s",
                        Math.abs(site.latitudeDeg()),
                        site.latitudeDeg() < 0 ? "south" : "north",
                        Math.abs(site.longitudeDeg()),
                        site.longitudeDeg() < 0 ? "west" : "east",
                        numbers.show(Measure.LENGTH.in(units, site.elevationM()), 0) + " " + Measure.LENGTH.unit(units),
                        site.utcOffsetHours() < 0 ? "-" : "+",
                        String.valueOf(Math.abs(site.utcOffsetHours())).replaceFirst("\\.0$", "")));
        out.println("  8760 hours: air " + numbers.show(Measure.TEMPERATURE, all.lowestAirC()) + " to "
                + numbers.show(Measure.TEMPERATURE, all.highestAirC()) + ", mean "
                + numbers.show(Measure.TEMPERATURE, all.airC()) + ", sun "
                + numbers.show(Measure.HEAT_PER_AREA, all.globalKwhM2()) + " a year, wind "
                + numbers.show(Measure.SPEED, all.windMs()));
        List<WeatherFinding> grave = year.findings().stream()
                .filter(finding -> finding.kind() == WeatherFinding.Kind.WARNING)
                .toList();
        out.println("  Quality: "
                + (grave.isEmpty()
                        ? "nothing to warn of; the command \"weather\" tells the rest"
                        : "look at this before you believe the forecast:\n"
                                + grave.stream()
                                        .map(finding -> "  - " + Printable.line(finding.message()))
                                        .collect(Collectors.joining("\n"))));
    }
}
