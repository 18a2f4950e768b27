package dev.warmlane.examples;

import dev.warmlane.files.Printable;
import dev.warmlane.scenario.ScenarioAnswer;
import dev.warmlane.units.Dimension;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The questions about the collectors and the roof that they lie or stand on. */
final class RoofQuestions {

    private static final String FLAT = "flat";
    private static final String RACK = "rack";
    private static final String TENT = "tent";
    private static final String PITCHED = "pitched";
    private static final String GABLE = "gable";

    private static final String KINDS =
            "flat: on a flat roof; pitched: on one slope of a pitched roof; gable: half of them on"
                    + " either slope of one; rack: tilted, in rows on a flat roof; tent: racks in pairs back to back, such as one"
                    + " to the east and one to the west";

    private static final Pattern TENTS =
            Pattern.compile("tents?|(?:back.to.back|east.west) racks?|racks? (?:back.to.back|east.west)");
    private static final Pattern ALL_OF_IT = Pattern.compile(
            "(?i)max(?:imum)?|all(?: of it)?|full(?: roof)?|(?:the )?whole roof|as much as (?:fits|possible)");
    private static final Pattern DECIMAL_COMMA = Pattern.compile("(?<=\\d),(?=\\d{1,2}(?!\\d))");
    private static final Pattern SIDES = Pattern.compile("(.+?)\\s*(?:x|\u00d7|\\bby\\b)\\s*(.+)");

    private RoofQuestions() {}

    static List<Question> all() {
        return List.of(
                Question.own(
                                Questions.MOUNTING,
                                "Collectors: flat, pitched (on one slope), gable (on both slopes), rack (tilted, in rows) or tent"
                                        + " (racks back to back)",
                                KINDS,
                                (written, before) -> mounting(written))
                        .usually(FLAT)
                        .under("The collectors and their roof"),
                Question.own(
                                "roof",
                                "",
                                "the flat roof that they lie or stand on, or the building below a pitched one as seen from"
                                        + " above; its area alone where the sides are not known",
                                RoofQuestions::roof)
                        .asking(before ->
                                sloping(before) ? "Building below it, length x width" : "Roof, length x width")
                        .usually(before -> before.by("25 m x 12 m", "80 ft x 40 ft")),
                Question.key("collectors.slope_length", "", Questions.LENGTH)
                        .asking(before -> gable(before)
                                ? "Length of one slope, from eaves to ridge"
                                : "Length of that slope, from eaves to ridge")
                        .usually(before -> before.by("6 m", "20 ft"))
                        .when(RoofQuestions::sloping),
                Question.key("collectors.tilt", "Tilt of the collectors, or rise over run as 4:12", before -> "deg")
                        .usually(before -> sloping(before) ? "20 deg" : "25 deg")
                        .when(RoofQuestions::tilted)
                        .saying(
                                "a slope that rises a third of what it runs has 18 deg, one that rises as much as it runs 45"),
                Question.key("collectors.azimuth", "", before -> "deg")
                        .asking(before -> gable(before)
                                ? "Which way does one of the slopes face (south, south-west, 200 deg)"
                                : tents(before)
                                        ? "Which way does one of their two sides face (east, south, 200 deg)"
                                        : "Which way do they face (south, south-west, 200 deg)")
                        .usually(before -> tents(before) ? "east" : before.south() ? "north" : "south")
                        .when(RoofQuestions::tilted),
                pitch().asking(before -> tents(before)
                                ? "Distance from one ridge to the next"
                                : "Distance from one row of racks to the next")
                        .usually(before -> before.by("4 m", "13 ft"))
                        .when(before -> before.is(Questions.MOUNTING, RACK) || tents(before)),
                area());
    }

    /** One that no roof has room for, such as the area that is asked next, is asked back. */
    private static Question pitch() {
        Question pitch = Question.key("collectors.pitch", "", Questions.LENGTH);
        return pitch.checked((written, before) -> {
            Answer answer = pitch.check().of(written, before);
            String toml = answer.values().getOrDefault("collectors.pitch", "");
            if (Answers.quantity(toml, Dimension.LENGTH) > Usual.MOST_PITCH_M) {
                throw new IllegalArgumentException("found " + Printable.quote(written.strip())
                        + ", more than from one row to the next; the area of the collectors is asked next");
            }
            return answer;
        });
    }

    private static Question area() {
        Question area = Question.key("collectors.area", "", Questions.AREA);
        return area.asking(before -> gable(before)
                        ? "Collector area of both slopes, or length x width"
                        : "Collector area, or length x width")
                .usually(Usual::collectorArea)
                .checked((written, before) -> area.check()
                        .of(ALL_OF_IT.matcher(written.strip()).matches() ? Usual.most(before) : written, before))
                .saying("\"max\": as much as the roof has room for");
    }

    /** Two racks back to back for each ridge. */
    static boolean tents(Answers before) {
        return before.is(Questions.MOUNTING, TENT);
    }

    private static boolean gable(Answers before) {
        return before.is(Questions.MOUNTING, GABLE);
    }

    private static boolean sloping(Answers before) {
        return gable(before) || before.is(Questions.MOUNTING, PITCHED);
    }

    private static boolean tilted(Answers before) {
        return !before.is(Questions.MOUNTING, FLAT);
    }

    private static Answer mounting(String written) {
        String typed = written.strip().toLowerCase(Locale.ROOT);
        if (typed.matches("east.west")) {
            throw new IllegalArgumentException(
                    "on what? on a flat roof write tent, on both slopes of a pitched roof gable");
        }
        String said = TENTS.matcher(typed).matches() ? TENT : typed;
        if (said.matches("yes|(?:on (?:the |a )?)?(?:house )?roof")) {
            throw new IllegalArgumentException("what roof is it? write one of these words: " + KINDS);
        }
        try {
            return Answer.of(Questions.MOUNTING, ScenarioAnswer.of("collectors", "mounting", said, ""));
        } catch (IllegalArgumentException e) {
            String meant = Interview.offer(String.valueOf(e.getMessage()));
            throw new IllegalArgumentException(
                    "found \"" + written.strip() + "\""
                            + (meant.isEmpty() ? "" : "; did you mean \"" + meant + "\"?")
                            + "\nwrite one of these words: " + KINDS,
                    e);
        }
    }

    /** Two sides, or an area where they are not known. */
    private static Answer roof(String written, Answers before) {
        String said = written.strip();
        String withPoint = DECIMAL_COMMA.matcher(said).replaceAll(".");
        if (!withPoint.equals(said)) {
            throw new IllegalArgumentException("\"" + Printable.line(said)
                    + "\" has a decimal comma; write a decimal point, \"" + Printable.line(withPoint) + "\"");
        }
        Matcher sides = SIDES.matcher(said);
        if (!sides.matches()) {
            return Answer.of(
                    said,
                    List.of("roof.area"),
                    List.of(ScenarioAnswer.of("roof", "area", said, Questions.AREA.apply(before))));
        }
        String unit = sides.group(2).replaceFirst("^[\\d.,/ ]+", "").strip();
        String first =
                sides.group(1).matches("[\\d.]+") && !unit.isEmpty() ? sides.group(1) + " " + unit : sides.group(1);
        return Answer.of(
                said,
                List.of("roof.length", "roof.width"),
                List.of(
                        ScenarioAnswer.of("roof", "length", first, Questions.LENGTH.apply(before)),
                        ScenarioAnswer.of("roof", "width", sides.group(2), Questions.LENGTH.apply(before))));
    }
}
