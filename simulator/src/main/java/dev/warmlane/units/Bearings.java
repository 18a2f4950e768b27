package dev.warmlane.units;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Directions in words and slopes as ratios: what people call a roof's azimuth and tilt. */
final class Bearings {

    /** The points of the compass, clockwise from north. */
    private static final List<String> POINTS =
            List.of("n", "nne", "ne", "ene", "e", "ese", "se", "sse", "s", "ssw", "sw", "wsw", "w", "wnw", "nw", "nnw");

    private static final double POINT_DEG = 22.5;

    /** 20 deg west of south. */
    private static final Pattern OF =
            Pattern.compile("(\\d{1,2}(?:\\.\\d+)?)\\s*(?:deg(?:rees)?|°)?\\s*([ew])\\s*of\\s*([ns])");

    /** The same as surveyors write it, S 20 W. */
    private static final Pattern QUADRANT =
            Pattern.compile("([ns])\\s*(\\d{1,2}(?:\\.\\d+)?)\\s*(?:deg(?:rees)?|°)?\\s*([ew])");

    private static final String CALLED = "(?:pitch|slope|roof)";

    private static final Pattern RATIO = Pattern.compile(
            "(?:" + CALLED + "\\s*)?(\\d+(?:\\.\\d+)?)\\s*(?::|/|in|on)\\s*(\\d+(?:\\.\\d+)?)(?:\\s*" + CALLED + ")*",
            Pattern.CASE_INSENSITIVE);

    /** A roof's rise is counted on a run of twelve, in inches on a foot. */
    private static final double USUAL_RUN = 12;

    private Bearings() {}

    /**
     * Degrees clockwise from north, or empty if the text is no direction in words: English, and those of its neighbours
     * that mean one thing only; a single O is east to some and west to others.
     */
    static OptionalDouble direction(String usual) {
        String text = usual.toLowerCase(Locale.ROOT)
                .replaceAll("\\b(?:due|faces|facing|facade|the|to|towards)\\b", "")
                .replaceAll("(?<=th|st)(?:wards?|erly|ern)\\b", "")
                .replaceAll("west|ouest|oeste", "w")
                .replaceAll("east|este|est|ost", "e")
                .replaceAll("north|nord|norte|nor", "n")
                .replaceAll("south|s\u00fcd|sued|sud|sur", "s")
                .strip();
        Matcher of = OF.matcher(text);
        if (of.matches()) {
            return OptionalDouble.of(from(of.group(3), of.group(1), of.group(2)));
        }
        Matcher quadrant = QUADRANT.matcher(text);
        if (quadrant.matches()) {
            return OptionalDouble.of(from(quadrant.group(1), quadrant.group(2), quadrant.group(3)));
        }
        int point = POINTS.indexOf(text.replaceAll("[\\s.\\-/]", ""));
        return point < 0 ? OptionalDouble.empty() : OptionalDouble.of(point * POINT_DEG);
    }

    /** So many degrees from north or south towards east or west. */
    private static double from(String pole, String degrees, String side) {
        boolean south = pole.equals("s");
        double turn = Double.parseDouble(degrees) * (side.equals(south ? "w" : "e") ? 1 : -1);
        return ((south ? 180 : 0) + turn + 360) % 360;
    }

    /** A slope whose run probably stands first, turned round; else empty. */
    static String turned(String usual) {
        Matcher ratio = RATIO.matcher(usual);
        return ratio.matches() && Double.parseDouble(ratio.group(1)) > Double.parseDouble(ratio.group(2))
                ? ratio.group(2) + ":" + ratio.group(1)
                : "";
    }

    /** Degrees from the horizontal, or empty if the text is no rise over a run, as a roof's {@code 4:12}. */
    static OptionalDouble slope(String usual) {
        Matcher ratio = RATIO.matcher(usual);
        if (!ratio.matches()) {
            return OptionalDouble.empty();
        }
        double rise = Double.parseDouble(ratio.group(1));
        double run = Double.parseDouble(ratio.group(2));
        return run > 0 && (run == USUAL_RUN || rise <= run)
                ? OptionalDouble.of(degrees(rise / run))
                : OptionalDouble.empty();
    }

    /** The angle of a slope of a rise over its run. */
    static double degrees(double slope) {
        return Math.toDegrees(Math.atan(slope));
    }
}
