package dev.warmlane.report;

import dev.warmlane.files.Printable;
import dev.warmlane.scenario.ReportSettings;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Site;
import dev.warmlane.weather.Closure;
import dev.warmlane.weather.WeatherFinding;
import dev.warmlane.weather.WeatherSummary;
import dev.warmlane.weather.WeatherYear;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/** A weather file in words: what it is, what it holds by month, and what was found wrong with it. */
public final class WeatherText {

    /** What real files close within, W/m²; the limits are told with their meaning in docs/formats.md. */
    private static final double OLDER_WM2 = 9.05;

    private WeatherText() {}

    /** All of it, lines ending with a line feed. */
    public static String of(WeatherYear weather, ReportSettings.Units units) {
        Numbers numbers = new Numbers(units);
        String title = Printable.line(weather.site().name());
        return title + '\n' + "=".repeat(title.codePointCount(0, title.length())) + "\n\n"
                + file(numbers, weather).text() + '\n'
                + new TextSection("By month", TextSection.linesOf(months(weather, units))).text()
                + '\n' + quality(weather).text();
    }

    /** What the year holds by month, the year below. */
    public static Table months(WeatherYear weather, ReportSettings.Units units) {
        WeatherSummary summary = WeatherSummary.of(weather);
        List<Row> rows = IntStream.rangeClosed(1, 12)
                .mapToObj(m -> new Row(
                        Month.of(m).getDisplayName(TextStyle.SHORT, Locale.ENGLISH),
                        summary.months().get(m - 1)))
                .toList();
        return new TableBuilder<Row>(units)
                .words("month", "month", Row::label)
                .number("global", "global_horizontal", Measure.HEAT_PER_AREA, r -> r.values.globalKwhM2())
                .number("beam", "direct_normal", Measure.HEAT_PER_AREA, r -> r.values.directKwhM2())
                .number("diffuse", "diffuse_horizontal", Measure.HEAT_PER_AREA, r -> r.values.diffuseKwhM2())
                .number("air", "air_mean", Measure.TEMPERATURE, r -> r.values.airC())
                .number("lowest", "air_lowest", Measure.TEMPERATURE, r -> r.values.lowestAirC())
                .number("highest", "air_highest", Measure.TEMPERATURE, r -> r.values.highestAirC())
                .number("dew\npoint", "dew_point_mean", Measure.TEMPERATURE, r -> r.values.dewPointC())
                .number("humidity", "relative_humidity", Measure.SHARE, r -> r.values.relativeHumidity())
                .number("wind", "wind_mean", Measure.SPEED, r -> r.values.windMs())
                .number("sky", "sky_temperature", Measure.TEMPERATURE, r -> r.values.skyTemperatureC())
                .build(rows, List.of(new Row("year", summary.year())));
    }

    static TextSection file(Numbers numbers, WeatherYear weather) {
        Site site = weather.site();
        List<String> lines = new ArrayList<>();
        lines.add("File: " + weather.source());
        lines.add("Place: " + Numbers.place(site) + ", " + numbers.show(Measure.LENGTH, site.elevationM())
                + " above the sea, UTC" + (site.utcOffsetHours() < 0 ? "-" : "+")
                + Numbers.show(Math.abs(site.utcOffsetHours()), site.utcOffsetHours() % 1 == 0 ? 0 : 2));
        lines.add("Years it was taken from: " + years(weather));
        lines.add("Irradiance: "
                + (weather.sun().isHourlyMean() ? "means over an hour, centred " : "instants, ")
                + Numbers.show(weather.sun().offsetHours(0), 2) + " h after the hour's start");
        lines.add("Long-wave of the sky: "
                + switch (weather.longWaveOrigin()) {
                    case FILE -> "from the file" + estimated(weather.longWaveEstimatedHours());
                    case CLOUD_COVER -> "estimated from air, humidity and the file's cloud cover";
                    case CLEARNESS -> "estimated from air, humidity and a cloud cover derived from the irradiance";
                });
        return new TextSection("What it is", lines);
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

    static TextSection quality(WeatherYear weather) {
        List<String> points = new ArrayList<>();
        Closure closure = weather.closure();
        if (closure != null) {
            points.add(agreement(closure));
        }
        for (WeatherFinding finding : weather.findings()) {
            points.add(point(finding));
        }
        if (weather.findings().isEmpty()) {
            points.add("Nothing was found wrong, mended or estimated");
        }
        if (closure != null) {
            points.add(closure(closure));
        }
        return new TextSection("Quality", TextSection.listed(points));
    }

    /** What was mended and estimated, in the file's own units: all findings but the warnings, which stand elsewhere. */
    static List<String> mended(WeatherYear weather) {
        List<String> points = weather.findings().stream()
                .filter(finding -> finding.kind() != WeatherFinding.Kind.WARNING)
                .map(WeatherText::point)
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
    private static String closure(Closure closure) {
        return "In numbers: global less diffuse and beam is " + Numbers.show(closure.usedRmseWm2(), 1)
                + " W/m² (root mean square over " + Numbers.show(closure.hours(), 0)
                + " hours of daylight; 0.5 to 3 is sound, up to 9 usual in older files)"
                + (closure.usedShiftHours() == closure.statedShiftHours()
                        ? ""
                        : ", and " + Numbers.show(closure.statedRmseWm2(), 1) + " at the time that is stated");
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
