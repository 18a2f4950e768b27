package dev.warmlane.units;

import static java.util.Map.entry;

import java.util.Locale;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** Knows the words and shorthands for units: "metres" for m, "square feet" and "sf" for ft2, "gpm" for gal/min. */
final class UnitWords {

    private static final Pattern WORD = Pattern.compile("\\p{Alpha}+");

    /** A price a therm, gallons a day. */
    private static final Pattern PER = Pattern.compile("(?:^| )(?:an?|each) (?=\\p{Alpha})");

    private static final Map<String, String> SYMBOLS = Map.ofEntries(
            entry("metre", "m"),
            entry("meter", "m"),
            entry("centimetre", "cm"),
            entry("centimeter", "cm"),
            entry("millimetre", "mm"),
            entry("millimeter", "mm"),
            entry("foot", "ft"),
            entry("feet", "ft"),
            entry("inch", "in"),
            entry("inche", "in"),
            entry("yard", "yd"),
            entry("acres", "acre"),
            entry("hectare", "ha"),
            entry("litre", "L"),
            entry("liter", "L"),
            entry("gallon", "gal"),
            entry("kilogram", "kg"),
            entry("pound", "lb"),
            entry("lbs", "lb"),
            entry("celsius", "degC"),
            entry("celcius", "degC"),
            entry("centigrade", "degC"),
            entry("fahrenheit", "degF"),
            entry("kelvin", "K"),
            entry("watt", "W"),
            entry("kilowatt", "kW"),
            entry("kwth", "kW"),
            entry("megajoule", "MJ"),
            entry("horsepower", "hp"),
            entry("degree", "deg"),
            entry("grad", "deg"),
            entry("percent", "%"),
            entry("pct", "%"),
            entry("second", "s"),
            entry("sec", "s"),
            entry("minute", "min"),
            entry("hour", "h"),
            entry("hrs", "h"),
            entry("d", "day"),
            entry("sf", "ft2"),
            entry("sqft", "ft2"),
            entry("sqm", "m2"),
            entry("sqyd", "yd2"),
            entry("qm", "m2"),
            entry("cbm", "m3"),
            entry("btu", "Btu"),
            entry("therm", "therm"),
            entry("dth", "MMBtu"),
            entry("dekatherm", "MMBtu"),
            entry("cf", "ft3"),
            entry("cuft", "ft3"),
            entry("gpm", "gal/min"),
            entry("gph", "gal/h"),
            entry("gpd", "gal/day"),
            entry("lpm", "L/min"),
            entry("lps", "L/s"),
            entry("kmh", "km/h"),
            entry("kph", "km/h"),
            entry("btuh", "Btu/h"),
            entry("kbtuh", "kBtu/h"),
            entry("mmbtuh", "MMBtu/h"));

    private static final Pattern IMPERIAL =
            Pattern.compile("(?i).*\\b(?:imp|imperial|uk|british)\\b.*\\b(?:gal|gp[mhd]).*|igp[mhd]");
    private static final Pattern THOUSAND_OR_MILLION = Pattern.compile("M(?:Btu|BTU)(?:/hr?)?|MBTUH");

    /**
     * Units that are not read, because they mean one thing to some and another to others, and what they are; M stands for a
     * thousand in the gas trade of the United States.
     */
    private static final Map<Pattern, String> FOREIGN = Map.of(
            Pattern.compile("(?i)tons?"),
                    told(
                            "a ton of refrigeration is 12000 Btu/h or %.3f kW; write one of these",
                            Units.REFRIGERATION_TON / 1000),
            Pattern.compile("(?i)(?:per |/ ?)mcf"),
                    "an mcf, a thousand cubic feet, is 10 ccf; write a tenth of the price, per ccf",
            Pattern.compile("(?i)kcal/hr?"), told("1 kcal/h is %.3f W; write W or kW", Units.KILOCALORIE / Units.HOUR),
            Pattern.compile("PS|(?i)cv"), told("a metric horsepower is %.1f W; write W or kW", Units.METRIC_HORSEPOWER),
            Pattern.compile("(?i)bhp"),
                    told(
                            "a boiler horsepower is %.2f kW and a brake horsepower 1 hp; write kW or hp",
                            Units.BOILER_HORSEPOWER / 1000),
            Pattern.compile("(?i)boiler[ -](?:hp|horsepower)|(?:hp|horsepower) ?\\(?boiler\\)?|hp|horsepower"),
                    told("a boiler horsepower is %.2f kW, ", Units.BOILER_HORSEPOWER / 1000)
                            + told("a motor's %.3f kW; write kW", Units.HORSEPOWER / 1000));

    private UnitWords() {}

    private static String told(String text, double value) {
        return String.format(Locale.ROOT, text, value);
    }

    /** The text with its words replaced by symbols. */
    static String symbols(String written) {
        String plain = written.replaceFirst("\\.$", "").replaceAll("(?i)\\bper ?cent\\b", "percent");
        String text = WORD.matcher(PER.matcher(plain).replaceAll("/")).replaceAll(UnitWords::symbol);
        return text.replaceAll("(?i)(?:square|sq)(?: |\\. ?)(\\w+)", "$12")
                .replaceAll("(?i)(?:cubic|cu)(?: |\\. ?)(\\w+)", "$13")
                .replaceAll("(deg|°) ?deg", "deg")
                .replace(" per ", "/");
    }

    private static String symbol(MatchResult word) {
        String lower = word.group().toLowerCase(Locale.ROOT);
        String singular = lower.replaceFirst("s$", "");
        return SYMBOLS.getOrDefault(lower, SYMBOLS.getOrDefault(singular, word.group()));
    }

    /** What to say of a unit that is not read because it means one thing to some and another to others; else empty. */
    static String doubtful(String written) {
        if (IMPERIAL.matcher(written).matches()) {
            return "an imperial gallon is 1.20095 gal or 4.54609 L";
        }
        for (Map.Entry<Pattern, String> each : FOREIGN.entrySet()) {
            if (each.getKey().matcher(written).matches()) {
                return each.getValue();
            }
        }
        return THOUSAND_OR_MILLION.matcher(UnitText.key(written)).matches()
                ? "MBtu is a thousand Btu to some and a million to others; write kBtu/h or MMBtu/h"
                : "";
    }
}
