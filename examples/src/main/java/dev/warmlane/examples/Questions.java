package dev.warmlane.examples;

import dev.warmlane.scenario.ScenarioAnswer;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;

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

    static final String WINTER_CLOCK = "by the clock of winter, an hour less than that of summer";

    static final Function<Answers, String> LENGTH = before -> before.by("m", "ft");
    static final Function<Answers, String> AREA = before -> before.by("m2", "ft2");
    static final Function<Answers, String> TEMPERATURE = before -> before.by("degC", "degF");

    /** The shelters, in the words of somebody who stands at the pool. */
    private static final String SHELTERS =
            "sheltered: hedges and walls all around, higher than people; suburban: houses and trees around; exposed: open"
                    + " land or a shore; indoor: in a hall";

    private Questions() {}

    static List<Question> all(PrintWriter out) {
        List<Question> all = new ArrayList<>(job(out));
        all.addAll(pool());
        all.addAll(RoofQuestions.all());
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
                                "outdoors the wind at the water matters most; " + SHELTERS,
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
                        .usually(before -> before.by("1.5 m", "5 ft"))
                        .saying("of an even floor half of what the shallow end and the deep end are together"),
                Question.key(COVER, "Cover: none, bubble, foam, solid-track or liquid-film")
                        .usually(NONE)
                        .or(NONE, "there is no cover")
                        .saying(
                                "bubble is a plastic sheet with air bubbles, foam a thicker mat, solid-track slats or a sheet"
                                        + " in tracks, liquid-film what is dosed into the water"),
                Question.key("cover.drawn", "Hours that it lies on the water, " + WINTER_CLOCK)
                        .usually("8 pm to 8 am")
                        .when(before -> !before.is(COVER, NONE)),
                Question.own(
                                SEASON,
                                "Season, first day to last day, or all year",
                                "such as 15 May to 30 September; south of the equator it may run over New Year",
                                (written, before) -> SeasonAnswer.of(written))
                        .usually(before -> indoor(before)
                                ? SeasonAnswer.ALL_YEAR
                                : before.south()
                                        ? before.by("1 November to 31 March", "November 1 to March 31")
                                        : before.by("1 May to 30 September", "May 1 to September 30")),
                Question.key(
                                "season.comfort",
                                "From which temperature is the water warm enough for bathers",
                                TEMPERATURE)
                        .usually(before -> before.by("24 degC", "78 degF")));
    }

    static boolean indoor(Answers before) {
        return before.is(PLACE, "indoor");
    }

    static boolean allYear(Answers before) {
        return before.is(SEASON, SeasonAnswer.ALL_YEAR);
    }

    /** In a hall, or outdoors and how. */
    private static Answer place(String written) {
        String said = written.strip().toLowerCase(Locale.ROOT);
        if (said.matches("indoors?|inside|(in a )?hall|enclosed")) {
            return Answer.of("indoor", List.of(PLACE), List.of(ScenarioAnswer.of("pool", "setting", "indoor", "")));
        }
        if (said.matches("outdoors?|outside|open|open.air")) {
            throw new IllegalArgumentException("how does the wind get at it? write " + SHELTERS);
        }
        ScenarioAnswer shelter;
        try {
            shelter = ScenarioAnswer.of("pool", "wind_shelter", written, "");
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(e.getMessage() + "\n" + SHELTERS, e);
        }
        return Answer.of(
                shelter.text(),
                List.of(PLACE, "pool.wind_shelter"),
                List.of(ScenarioAnswer.of("pool", "setting", "outdoor", ""), shelter));
    }
}
