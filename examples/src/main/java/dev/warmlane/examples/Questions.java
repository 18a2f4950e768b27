package dev.warmlane.examples;

import dev.warmlane.scenario.ScenarioAnswer;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The questions that a scenario file is made of, in the order a person thinks: first those that every pool has an answer of
 * its own to, then, for those who want to say more, the rest. What is usual is our own choice, see {@link Usual}, and every
 * one is told before it is taken.
 */
final class Questions {

    static final String UNITS = "report.units";
    static final String WEATHER = "site.weather";
    static final String PLACE = "pool.setting";
    static final String COVER = "cover.kind";
    static final String SEASON = "season";
    static final String MOUNTING = "collectors.mounting";

    /** What heats the pool, one of {@link Heaters}. */
    static final String HEATER = "heater.kind";

    static final String CURRENCY = "prices.currency";

    /** Whether somebody wants to be asked the rest. */
    static final String MORE = "more";

    static final String NONE = "none";

    /** Nobody who answers has to know what standard time is. */
    static final String STANDARD_TIME = "in standard time: 9 by a clock put forward for summer is 8";

    static final Function<Answers, String> LENGTH = before -> before.by("m", "ft");
    static final Function<Answers, String> AREA = before -> before.by("m2", "ft2");
    static final Function<Answers, String> TEMPERATURE = before -> before.by("degC", "degF");

    private static final String ALL_YEAR = "all year";
    private static final Pattern FROM_TO =
            Pattern.compile("(.+?)(?:\\s+(?:to|till|until|through)\\s+|\\s*[\u2013\u2014]\\s*|\\s+-\\s+)(.+)");
    private static final Pattern SIDES = Pattern.compile("(.+?)\\s*(?:x|\u00d7|\\bby\\b)\\s*(.+)");

    private Questions() {}

    static List<Question> all(PrintWriter out) {
        List<Question> all = new ArrayList<>(job(out));
        all.addAll(pool());
        all.addAll(roof());
        all.addAll(HeatQuestions.heater());
        all.addAll(HeatQuestions.money());
        all.addAll(MoreQuestions.all());
        return List.copyOf(all);
    }

    private static List<Question> job(PrintWriter out) {
        return List.of(
                Question.key(UNITS, "Units, metric or us").usually("metric").under("The job"),
                Question.key("site.name", "What is it called").usually("My pool"),
                Question.own(
                        WEATHER,
                        "Weather file of a typical year (.epw, .csv, .tm2)",
                        "the guide says where such files come from, and how to make one from monthly normals",
                        new WeatherAnswer(out)));
    }

    private static List<Question> pool() {
        return List.of(
                Question.own(
                                PLACE,
                                "Sheltered, suburban or exposed to wind, or indoor",
                                "outdoors the wind at the water matters most: sheltered by hedges and walls all around and"
                                        + " higher than people, suburban among houses and trees, exposed in open land or"
                                        + " at a shore",
                                (written, before) -> place(written))
                        .usually("suburban")
                        .under("The pool"),
                Question.key("pool.hall_temperature", "Temperature of the hall", TEMPERATURE)
                        .usually(before -> before.by("30 degC", "86 degF"))
                        .when(Questions::indoor),
                Question.key("pool.hall_humidity", "Relative humidity of the hall", before -> "%")
                        .usually("55 %")
                        .when(Questions::indoor),
                Question.key("pool.area", "Water surface, or length x width", AREA)
                        .usually(before -> before.by("25 m x 12.5 m", "75 ft x 40 ft")),
                Question.key("pool.depth", "Mean depth of the water", LENGTH)
                        .usually(before -> before.by("1.5 m", "5 ft")),
                Question.key(COVER, "Cover: none, bubble, foam, solid-track or liquid-film")
                        .usually(NONE)
                        .or(NONE, "there is no cover"),
                Question.key("cover.drawn", "Hours that it lies on the water, " + STANDARD_TIME)
                        .usually("8 pm to 8 am")
                        .when(before -> !before.is(COVER, NONE)),
                Question.own(
                                SEASON,
                                "Season, first day to last day, or all year",
                                "such as 15 May to 30 September; south of the equator it may run over New Year",
                                (written, before) -> season(written))
                        .usually(before -> indoor(before)
                                ? ALL_YEAR
                                : before.south() ? "1 November to 31 March" : "1 May to 30 September"),
                Question.key(
                                "season.comfort",
                                "From which temperature is the water warm enough for bathers",
                                TEMPERATURE)
                        .usually(before -> before.by("24 degC", "78 degF")));
    }

    private static List<Question> roof() {
        return List.of(
                Question.key(MOUNTING, "Flat on a flat roof, on a pitched roof, or on racks (flat, pitched, rack)")
                        .usually("flat")
                        .under("The collectors and their roof"),
                Question.own(
                                "roof",
                                "",
                                "the flat roof that they lie or stand on, or the building below a pitched one as seen from"
                                        + " above; its area alone where the sides are not known",
                                Questions::roof)
                        .asking(before -> before.is(MOUNTING, "pitched")
                                ? "Building below it, length x width"
                                : "Roof, length x width")
                        .usually(before -> before.by("25 m x 12 m", "80 ft x 40 ft")),
                Question.key("collectors.slope_length", "Length of that slope, from eaves to ridge", LENGTH)
                        .usually(before -> before.by("6 m", "20 ft"))
                        .when(before -> before.is(MOUNTING, "pitched")),
                Question.key("collectors.tilt", "Tilt of the collectors, or rise over run as 4:12", before -> "deg")
                        .usually(before -> before.is(MOUNTING, "pitched") ? "20 deg" : "25 deg")
                        .when(Questions::tilted),
                Question.key(
                                "collectors.azimuth",
                                "Which way do they face (south, south-west, 200 deg)",
                                before -> "deg")
                        .usually(before -> before.south() ? "north" : "south")
                        .when(Questions::tilted),
                Question.key("collectors.pitch", "Distance from one row of racks to the next", LENGTH)
                        .usually(before -> before.by("4 m", "13 ft"))
                        .when(before -> before.is(MOUNTING, "rack")),
                Question.key("collectors.area", "Collector area, or length x width", AREA)
                        .usually(Usual::collectorArea));
    }

    static boolean indoor(Answers before) {
        return before.is(PLACE, "indoor");
    }

    static boolean allYear(Answers before) {
        return before.is(SEASON, ALL_YEAR);
    }

    private static boolean tilted(Answers before) {
        return !before.is(MOUNTING, "flat");
    }

    /** In a hall, or outdoors and how. */
    private static Answer place(String written) {
        String said = written.strip().toLowerCase(Locale.ROOT);
        if (said.matches("indoors?|inside|(in a )?hall|enclosed")) {
            return Answer.of("indoor", List.of(PLACE), List.of(ScenarioAnswer.of("pool", "setting", "indoor", "")));
        }
        if (said.matches("outdoors?|outside|open|open.air")) {
            throw new IllegalArgumentException(
                    "how does the wind get at it? write sheltered (hedges and walls all around),"
                            + " suburban (houses and trees) or exposed (open land, a shore)");
        }
        ScenarioAnswer shelter;
        try {
            shelter = ScenarioAnswer.of("pool", "wind_shelter", written, "");
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(e.getMessage() + ", or \"indoor\"", e);
        }
        return Answer.of(
                shelter.text(),
                List.of(PLACE, "pool.wind_shelter"),
                List.of(ScenarioAnswer.of("pool", "setting", "outdoor", ""), shelter));
    }

    /** Both days of a season, or none for a pool that is always open. */
    private static Answer season(String written) {
        String said = written.strip();
        if (said.toLowerCase(Locale.ROOT)
                .matches("all(-| )year(( |-)round)?|always|whole year|12 months|year(-| )round")) {
            return Answer.nothing(ALL_YEAR);
        }
        Matcher days = FROM_TO.matcher(said);
        if (!days.matches()) {
            throw new IllegalArgumentException(
                    "found \"" + said + "\"; write both days, \"15 May to 30 September\", or \"all year\"");
        }
        return Answer.of(
                said,
                List.of("season.first_day", "season.last_day"),
                List.of(
                        ScenarioAnswer.of("season", "first_day", days.group(1), ""),
                        ScenarioAnswer.of("season", "last_day", days.group(2), "")));
    }

    /** Two sides, or an area where they are not known. */
    private static Answer roof(String written, Answers before) {
        String said = written.strip();
        Matcher sides = SIDES.matcher(said);
        if (!sides.matches()) {
            return Answer.of(
                    said, List.of("roof.area"), List.of(ScenarioAnswer.of("roof", "area", said, AREA.apply(before))));
        }
        String unit = sides.group(2).replaceFirst("^[\\d.,/ ]+", "").strip();
        String first =
                sides.group(1).matches("[\\d.]+") && !unit.isEmpty() ? sides.group(1) + " " + unit : sides.group(1);
        return Answer.of(
                said,
                List.of("roof.length", "roof.width"),
                List.of(
                        ScenarioAnswer.of("roof", "length", first, LENGTH.apply(before)),
                        ScenarioAnswer.of("roof", "width", sides.group(2), LENGTH.apply(before))));
    }
}
