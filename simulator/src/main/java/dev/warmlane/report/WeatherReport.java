package dev.warmlane.report;

import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Site;
import dev.warmlane.units.Measure;
import dev.warmlane.units.Notation;
import dev.warmlane.units.UnitSystem;
import dev.warmlane.weather.Closure;
import dev.warmlane.weather.FileYear;
import dev.warmlane.weather.WeatherFinding;
import dev.warmlane.weather.WeatherSummary;
import dev.warmlane.weather.WeatherYear;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/** A weather file: what it is, what it holds by month, and what was found wrong with it. */
public final class WeatherReport {

    /** What real files close within, W/m²; the limits are told with their meaning in docs/formats.md. */
    private static final double OLDER_WM2 = 9.05;

    private WeatherReport() {}

    /** All of it. */
    public static Report of(WeatherYear weather, UnitSystem units) {
        return new Report(
                "weather",
                new Numbers(units).placeName(weather.site()),
                "",
                Notation.usual(units),
                List.of(
                        Section.of("What it is", Place.ANSWER).words(file(new Numbers(units), weather)),
                        Section.of("By month", Place.ANSWER).with(months(weather, units)),
                        Section.of("Quality", Place.ANSWER).points(quality(new Numbers(units), weather))),
                List.of());
    }

    /** Every calendar year of a file of real weather: what each holds, which are left out, and what to look at. */
    public static Report ofYears(String file, List<FileYear> years, UnitSystem units) {
        List<Row> rows = new ArrayList<>();
        List<String> leftOut = new ArrayList<>();
        List<String> warnings = new ArrayList<>();
        for (FileYear year : years) {
            String label = Integer.toString(year.year());
            leftOut.addAll(year.match(
                    sound -> List.of(),
                    left -> List.of(label + ": " + left.reason().getMessage())));
            rows.addAll(year.match(
                    sound -> List.of(
                            new Row(label, WeatherSummary.of(sound.weather()).year())),
                    left -> List.of()));
            warnings.addAll(year.match(
                    sound -> sound.weather().findings().stream()
                            .filter(f -> f.kind() == WeatherFinding.Kind.WARNING)
                            .map(f -> label + ": " + point(f))
                            .toList(),
                    left -> List.of()));
        }
        List<Section> sections = new ArrayList<>();
        if (!rows.isEmpty()) {
            sections.add(Section.of("By year", Place.ANSWER)
                    .with(table("year", units).build(rows, List.of())));
        }
        sections.add(Section.of("Left out", Place.ANSWER).points(leftOut.isEmpty() ? List.of("No year") : leftOut));
        sections.add(Section.of("To look at", Place.ANSWER).points(warnings.isEmpty() ? List.of("Nothing") : warnings));
        return new Report("weather-years", file, "", Notation.usual(units), sections, List.of());
    }

    /** The section that other reports have of it; its warnings stand elsewhere. */
    static Section asRead(Numbers numbers, WeatherYear weather) {
        List<String> points = new ArrayList<>(file(numbers, weather));
        points.addAll(closed(numbers, weather, mended(weather)));
        return Section.of(
                        weather.fromFile() ? "The weather file, as it was read" : "The weather, as it was handed over",
                        Place.DETAIL)
                .points(points);
    }

    /** What the year holds by month, the year below. */
    static Table months(WeatherYear weather, UnitSystem units) {
        WeatherSummary summary = WeatherSummary.of(weather);
        List<Row> rows = IntStream.rangeClosed(1, 12)
                .mapToObj(m -> new Row(
                        Month.of(m).getDisplayName(TextStyle.SHORT, Locale.ENGLISH),
                        summary.months().get(m - 1)))
                .toList();
        return table("month", units).build(rows, List.of(new Row("year", summary.year())));
    }

    private static TableBuilder<Row> table(String period, UnitSystem units) {
        return new TableBuilder<Row>(units)
                .words(period, period, Row::label)
                .number("global", "global_horizontal", Measure.HEAT_PER_AREA, r -> r.values.globalKwhM2())
                .number("beam", "direct_normal", Measure.HEAT_PER_AREA, r -> r.values.directKwhM2())
                .number("diffuse", "diffuse_horizontal", Measure.HEAT_PER_AREA, r -> r.values.diffuseKwhM2())
                .number("air", "air_mean", Measure.TEMPERATURE, r -> r.values.airC())
                .number("lowest", "air_lowest", Measure.TEMPERATURE, r -> r.values.lowestAirC())
                .number("highest", "air_highest", Measure.TEMPERATURE, r -> r.values.highestAirC())
                .number("dew\npoint", "dew_point_mean", Measure.TEMPERATURE, r -> r.values.dewPointC())
                .number("humidity", "relative_humidity", Measure.SHARE, r -> r.values.relativeHumidity())
                .number("wind", "wind_mean", Measure.SPEED, r -> r.values.windMs())
                .number("sky", "sky_temperature", Measure.TEMPERATURE, r -> r.values.skyTemperatureC());
    }

    private static List<String> file(Numbers numbers, WeatherYear weather) {
        Site site = weather.site();
        List<String> lines = new ArrayList<>();
        lines.add((weather.fromFile() ? "File: " : "From a program: ") + weather.source());
        lines.add("Place: " + numbers.place(site) + ", " + numbers.show(Measure.LENGTH, site.elevationM())
                + " above the sea, UTC" + (site.utcOffsetHours() < 0 ? "-" : "+")
                + numbers.show(Math.abs(site.utcOffsetHours()), site.utcOffsetHours() % 1 == 0 ? 0 : 2));
        lines.add("Years it was taken from: " + years(weather));
        lines.add("Irradiance: "
                + (weather.sun().isHourlyMean() ? "means over an hour, centred " : "instants, ")
                + numbers.show(weather.sun().offsetHours(0), 2) + " h after the hour's start");
        lines.add("Long-wave of the sky: "
                + switch (weather.longWaveOrigin()) {
                    case FILE -> "from the file" + estimated(weather.longWaveEstimatedHours());
                    case CLOUD_COVER -> "estimated from air, humidity and the file's cloud cover";
                    case CLEARNESS -> "estimated from air, humidity and a cloud cover derived from the irradiance";
                });
        return lines;
    }

    private static String estimated(int hours) {
        return hours == 0 ? "" : ", " + hours + (hours == 1 ? " hour" : " hours") + " estimated";
    }

    private static String years(WeatherYear weather) {
        int[] years = IntStream.range(0, HourOfYear.HOURS)
                .map(weather.sun()::calendarYear)
                .distinct()
                .sorted()
                .toArray();
        return years.length == 1 ? "" + years[0] : years[0] + " to " + years[years.length - 1];
    }

    private static List<String> quality(Numbers numbers, WeatherYear weather) {
        List<String> found =
                weather.findings().stream().map(WeatherReport::point).toList();
        return closed(
                numbers, weather, found.isEmpty() ? List.of("Nothing was found wrong, mended or estimated") : found);
    }

    /** What was found between what the sun says of it, in words and in numbers. */
    private static List<String> closed(Numbers numbers, WeatherYear weather, List<String> found) {
        List<String> points = new ArrayList<>(found);
        Closure closure = weather.closure();
        if (closure != null) {
            points.add(0, agreement(closure));
            points.add(closure(numbers, closure));
        }
        return points;
    }

    /** What was mended and estimated, in the file's own units: all findings but the warnings, which stand elsewhere. */
    static List<String> mended(WeatherYear weather) {
        List<String> points = weather.findings().stream()
                .filter(finding -> finding.kind() != WeatherFinding.Kind.WARNING)
                .map(WeatherReport::point)
                .toList();
        return points.isEmpty() ? List.of("Nothing was mended or estimated") : points;
    }

    private static String agreement(Closure closure) {
        double off = closure.usedRmseWm2();
        return "Global, beam and diffuse irradiance "
                + (off <= OLDER_WM2 ? "agree with the sun" : "agree only roughly with the sun")
                + (closure.usedShiftHours() == closure.statedShiftHours()
                        ? " at the time that is stated: nothing to do"
                        : " once the time is corrected as told below");
    }

    /** For those who check a reader. */
    private static String closure(Numbers numbers, Closure closure) {
        return "In numbers: global irradiance and the sum of diffuse and beam differ by "
                + irradiance(numbers, closure.usedRmseWm2()) + " "
                + Measure.IRRADIANCE.unit(numbers.units()) + " (root mean square over "
                + numbers.show(closure.hours(), 0) + " hours of daylight; " + irradiance(numbers, 0.5) + " to "
                + irradiance(numbers, 3) + " is sound, up to " + irradiance(numbers, 9) + " usual in older files)"
                + (closure.usedShiftHours() == closure.statedShiftHours()
                        ? ""
                        : ", and " + irradiance(numbers, closure.statedRmseWm2()) + " at the time that is stated");
    }

    private static String irradiance(Numbers numbers, double wm2) {
        return numbers.show(Measure.IRRADIANCE.in(numbers.units(), wm2), 1);
    }

    private static String point(WeatherFinding finding) {
        return kind(finding) + where(finding) + finding.message();
    }

    private static String kind(WeatherFinding finding) {
        return finding.kind().name().toLowerCase(Locale.ROOT);
    }

    private static String where(WeatherFinding finding) {
        StringBuilder text = new StringBuilder();
        if (finding.line() > 0) {
            text.append(", from line ").append(finding.line());
        }
        if (finding.hours() > 0) {
            text.append(", ").append(finding.hours()).append(finding.hours() == 1 ? " hour" : " hours");
        }
        return text.append(": ").toString();
    }

    private record Row(String label, WeatherSummary.Period values) {}
}
