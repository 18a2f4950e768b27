package dev.warmlane.scenario;

import dev.warmlane.files.Printable;
import dev.warmlane.roof.RoofPlan;
import dev.warmlane.site.Horizon;
import dev.warmlane.site.Roof;
import dev.warmlane.units.DateOrder;
import dev.warmlane.units.Notation;
import dev.warmlane.units.UnitSystem;
import dev.warmlane.weather.WeatherReadOptions;
import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Reads the roof, the weather file and the report's settings. */
final class PlaceReader {

    private PlaceReader() {}

    /**
     * The roof.
     *
     * @param drawn whether it is drawn
     * @param plan the drawing, where it is sound; sides that are not given follow from it
     */
    static @Nullable Roof roof(Section s, Horizon horizon, boolean drawn, @Nullable RoofPlan plan) {
        double length = drawn ? side(s, PlaceKeys.LENGTH, plan) : side(s, PlaceKeys.LENGTH, PlaceKeys.WIDTH);
        double width = drawn ? side(s, PlaceKeys.WIDTH, plan) : side(s, PlaceKeys.WIDTH, PlaceKeys.LENGTH);
        if (drawn) {
            s.refuse("not allowed for a roof that is drawn", PlaceKeys.AREA);
        } else if (s.has(PlaceKeys.AREA) && s.has(PlaceKeys.LENGTH) && s.has(PlaceKeys.WIDTH)) {
            s.refuse("not allowed with length and width; give one of the three less", PlaceKeys.AREA);
        }
        Roof.Builder roof = Roof.builder(length, width, s.get(PlaceKeys.HEIGHT))
                .albedo(s.get(PlaceKeys.ALBEDO))
                .emittance(s.get(PlaceKeys.EMITTANCE))
                .uValueWm2K(s.get(PlaceKeys.U_VALUE))
                .roomTemperatureC(s.get(PlaceKeys.ROOM_TEMPERATURE))
                .roughnessFactor(s.get(PlaceKeys.ROUGHNESS))
                .windSpeedRatio(s.get(PlaceKeys.WIND_SPEED_RATIO))
                .horizon(horizon);
        // on a drawn roof edges and obstacles are known, and nothing is assumed of their share
        if (!drawn || s.has(PlaceKeys.USABLE_SHARE)) {
            roof.usableShare(s.get(PlaceKeys.USABLE_SHARE));
        }
        if (s.sound(PlaceKeys.LENGTH) && s.sound(PlaceKeys.WIDTH) && width > length) {
            s.warning(PlaceKeys.WIDTH, "is more than the length; the longer side is the length");
        }
        return s.build(roof::build);
    }

    /** A side of the rectangle that the wind runs over in place of a drawn roof. */
    private static double side(Section s, Key<Double> side, @Nullable RoofPlan plan) {
        if (plan == null) {
            return s.has(side) ? s.get(side) : side.kind().standIn();
        }
        double[] sides = plan.windSidesM();
        return s.get(
                side,
                sides[side.equals(PlaceKeys.LENGTH) ? 0 : 1],
                "as large as the largest drawn surface, in the proportions of the rectangle around it");
    }

    /** A side, or where it is not given the one that follows from the area: of the other side, or of a square. */
    private static double side(Section s, Key<Double> side, Key<Double> other) {
        if (s.has(side) || !s.has(PlaceKeys.AREA)) {
            return s.get(side);
        }
        double area = s.get(PlaceKeys.AREA);
        if (!s.sound(PlaceKeys.AREA) || !s.sound(other)) {
            return side.kind().standIn();
        }
        return s.has(other)
                ? s.get(side, area / s.get(other), "the roof's area over its other side")
                : s.get(side, Math.sqrt(area), "a square of the roof's area");
    }

    /** The weather file, which must be there; it is not opened. */
    static Path weather(Section s, Path scenarioFile) {
        Path weather = there(s, PlaceKeys.WEATHER, scenarioFile);
        if (Files.isDirectory(weather) && !s.get(PlaceKeys.WEATHER).isEmpty()) {
            s.error(
                    PlaceKeys.WEATHER,
                    "is a folder: " + Printable.quote(s.get(PlaceKeys.WEATHER))
                            + "; name the weather file that lies in it");
        }
        return weather;
    }

    /** Where real years are, a file or a folder that must be there. */
    static Optional<Scenario.RealYears> years(Section s, Path scenarioFile) {
        return s.has(PlaceKeys.YEARS)
                ? Optional.of(new Scenario.RealYears(
                        there(s, PlaceKeys.YEARS, scenarioFile), isNear(s, PlaceKeys.YEARS, scenarioFile)))
                : Optional.empty();
    }

    private static Path there(Section s, Key<String> key, Path scenarioFile) {
        String given = s.get(key);
        try {
            Path path = scenarioFile.resolveSibling(given).normalize();
            if (!given.isEmpty() && !Files.isDirectory(path) && !Files.isRegularFile(path)) {
                s.error(key, "no such file: " + Printable.quote(given) + ", seen from the folder of the scenario file");
            }
            return path;
        } catch (InvalidPathException e) {
            s.error(key, "is no file name on this machine: " + Printable.quote(given));
            return scenarioFile;
        }
    }

    /** What the user knows better than the weather file. */
    static WeatherReadOptions reading(Section s) {
        WeatherReadOptions options = WeatherReadOptions.defaults();
        if (s.has(PlaceKeys.UTC_OFFSET)) {
            options = options.withUtcOffsetHours(s.get(PlaceKeys.UTC_OFFSET));
        }
        if (s.has(PlaceKeys.WIND_HEIGHT)) {
            options = options.withWindHeightM(s.get(PlaceKeys.WIND_HEIGHT));
        }
        return s.has(PlaceKeys.IRRADIANCE_TIME) ? options.withCentreHours(s.get(PlaceKeys.IRRADIANCE_TIME)) : options;
    }

    /**
     * Whether what a key names lies in the folder of the scenario file or below: by the way it is named, and by the way
     * that links lead.
     */
    static boolean isNear(Section s, Key<String> key, Path scenarioFile) {
        try {
            Path given = Path.of(s.get(key)).normalize();
            Path folder = scenarioFile.toAbsolutePath().resolveSibling("").toRealPath();
            return !given.isAbsolute()
                    && given.getRoot() == null
                    && !given.startsWith("..")
                    && folder.resolve(given).toRealPath().startsWith(folder);
        } catch (InvalidPathException | IOException e) {
            return false;
        }
    }

    /** What the job is called. */
    static String name(Section s, Path scenarioFile) {
        if (s.has(PlaceKeys.NAME)) {
            return s.get(PlaceKeys.NAME);
        }
        return String.valueOf(scenarioFile.getFileName()).replaceFirst("\\.toml$", "");
    }

    static ReportSettings report(Section s, String name, Path scenarioFile) {
        String title = s.has(PlaceKeys.TITLE) ? s.get(PlaceKeys.TITLE) : name;
        Letterhead.Builder head = Letterhead.builder()
                .company(words(s, PlaceKeys.COMPANY))
                .contact(words(s, PlaceKeys.CONTACT))
                .preparedFor(words(s, PlaceKeys.PREPARED_FOR))
                .offer(words(s, PlaceKeys.OFFER))
                .date(words(s, PlaceKeys.DATE))
                .place(words(s, PlaceKeys.PLACE));
        if (s.has(PlaceKeys.LOGO) && s.sound(PlaceKeys.LOGO)) {
            logo(s, scenarioFile).ifPresent(head::logo);
        }
        UnitSystem units = s.get(PlaceKeys.UNITS);
        DateOrder dates = s.has(PlaceKeys.DATES)
                ? s.get(PlaceKeys.DATES)
                : Notation.usual(units).dates();
        return new ReportSettings(title, units, new Notation(s.get(PlaceKeys.NUMBERS), dates), head.build());
    }

    private static String words(Section s, Key<String> key) {
        return s.has(key) ? s.get(key) : "";
    }

    private static Optional<Logo> logo(Section s, Path scenarioFile) {
        String named = s.get(PlaceKeys.LOGO);
        try {
            return Optional.of(Logo.read(scenarioFile.resolveSibling(named), named));
        } catch (NoSuchFileException | InvalidPathException e) {
            s.error(
                    PlaceKeys.LOGO,
                    "no such file: " + Printable.quote(named) + ", seen from the folder of the scenario file");
        } catch (FileSystemException e) {
            s.error(PlaceKeys.LOGO, "cannot be read: " + Printable.quote(named) + " " + e.getReason());
        } catch (IOException e) {
            s.error(PlaceKeys.LOGO, "cannot be read: " + Printable.quote(named));
        } catch (IllegalArgumentException e) {
            s.error(PlaceKeys.LOGO, Printable.quote(named) + " " + e.getMessage());
        }
        return Optional.empty();
    }
}
