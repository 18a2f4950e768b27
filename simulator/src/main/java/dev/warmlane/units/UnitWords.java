package dev.warmlane.units;

import java.util.Locale;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** Knows the words for units, which are not read but suggest the symbol that is: "metres" for m, "square feet" for ft2. */
final class UnitWords {

    private static final Pattern WORD = Pattern.compile("\\p{Alpha}+");

    private static final Map<String, String> SYMBOLS = Map.ofEntries(
            Map.entry("metre", "m"),
            Map.entry("meter", "m"),
            Map.entry("centimetre", "cm"),
            Map.entry("centimeter", "cm"),
            Map.entry("millimetre", "mm"),
            Map.entry("millimeter", "mm"),
            Map.entry("foot", "ft"),
            Map.entry("feet", "ft"),
            Map.entry("inch", "in"),
            Map.entry("inche", "in"),
            Map.entry("litre", "L"),
            Map.entry("liter", "L"),
            Map.entry("gallon", "gal"),
            Map.entry("celsius", "degC"),
            Map.entry("fahrenheit", "degF"),
            Map.entry("kelvin", "K"),
            Map.entry("watt", "W"),
            Map.entry("kilowatt", "kW"),
            Map.entry("degree", "deg"),
            Map.entry("percent", "%"),
            Map.entry("second", "s"),
            Map.entry("minute", "min"),
            Map.entry("hour", "h"));

    private UnitWords() {}

    /** The text with its words replaced by symbols. */
    static String symbols(String written) {
        String text = WORD.matcher(written).replaceAll(UnitWords::symbol);
        return text.replaceAll("(?i)square (\\w+)", "$12")
                .replaceAll("(?i)cubic (\\w+)", "$13")
                .replaceAll("(deg|°) ?deg", "deg")
                .replace(" per ", "/");
    }

    private static String symbol(MatchResult word) {
        String lower = word.group().toLowerCase(Locale.ROOT);
        String singular = lower.replaceFirst("s$", "");
        return SYMBOLS.getOrDefault(lower, SYMBOLS.getOrDefault(singular, word.group()));
    }
}
