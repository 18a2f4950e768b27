package dev.warmlane.units;

import java.util.regex.Pattern;

/** Brings the many ways of writing one unit to one key, so that "W/(m²·K)", "W/m2/K" and "W/m2K" are the same. */
final class UnitText {

    private static final Pattern IGNORED = Pattern.compile("[\\s\\u00a0\\u202f()^*\\u00b7\\u22c5\\u2219\\u00d7]");
    private static final Pattern LITRE = Pattern.compile("(?<![A-Za-z])l(?![A-Za-z])");

    /** A flow on an area in a time, L/m2h, which others write L/h/m2. */
    private static final Pattern AREA_FIRST = Pattern.compile("/(m2|ft2)/?(h|min|s)$");

    private static final Pattern US = Pattern.compile(
            ".*(?<![A-Za-z])(?:ft|in|yd|acre|gal|k?Btu|MMBtu|MBH|lb|psi|mph|hp|therms?|ccf|(?:deg)?F)(?![A-Za-z]).*");

    private UnitText() {}

    /** Whether a symbol is of a unit that only people use who write decimals with a point. */
    static boolean isUs(String symbol) {
        return US.matcher(symbol).matches();
    }

    /** The key of a unit as somebody wrote it. Case matters in units (m, M) and is kept. */
    static String key(String written) {
        String text = IGNORED.matcher(written).replaceAll("");
        text = text.replace('²', '2').replace('³', '3').replace('⁴', '4');
        text = text.replace("㎡", "m2").replace("㎥", "m3");
        text = text.replace("℃", "C").replace("℉", "F").replace('º', '°').replace("°", "deg");
        text = text.replace("degC", "C").replace("degF", "F");
        text = text.replace("sqft", "ft2").replace("sqm", "m2").replace("gpm", "gal/min");
        text = text.replace("USgal", "gal").replace("hr", "h");
        text = LITRE.matcher(text).replaceAll("L");
        if (text.startsWith("per")) {
            text = "/" + text.substring(3);
        }
        return oneSlash(AREA_FIRST.matcher(text).replaceFirst("/$2$1"));
    }

    /** "kg/s/m2" and "kg/(s m2)" are the same: what follows the first stroke is all below it. */
    private static String oneSlash(String text) {
        int slash = text.indexOf('/') + 1;
        return text.substring(0, slash) + text.substring(slash).replace("/", "");
    }
}
