package dev.warmlane.examples;

import dev.warmlane.scenario.ScenarioAnswer;
import dev.warmlane.units.Dimension;
import dev.warmlane.units.Quantity;
import dev.warmlane.units.QuantityException;
import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;

/**
 * The questions that a scenario file is made of, in the order a person thinks. What is usual is our own choice, and every
 * one of them is told before it is taken.
 */
final class Questions {

    /** Collectors over water surface in the usual answer; common practice, no source. */
    private static final double AREA_OVER_WATER = 0.6;

    /** Share of a flat roof that the usual answer covers, as the scenario's usable_share. */
    private static final double SHARE_OF_ROOF = 0.8;

    private static final Function<Answers, String> LENGTH = unit("m", "ft");
    private static final Function<Answers, String> AREA = unit("m2", "ft2");
    private static final Function<Answers, String> TEMPERATURE = unit("degC", "degF");

    static final String NONE = "none";

    /** What heats the pool: a fuel, or a kind of heater that burns none. */
    static final String HEATER = "heater.kind";

    private static final String OIL = "heating-oil";

    private Questions() {}

    private static Function<Answers, String> unit(String metric, String us) {
        return before -> before.by(metric, us);
    }

    private static Function<Answers, String> by(String metric, String us) {
        return unit(metric, us);
    }

    static List<Question> all(PrintWriter out) {
        Question weather = Question.key("site.weather", "Weather file of a typical year (.epw, .csv, .tm2)");
        return List.of(
                Question.key("report.units", "Units, metric or us").usually("metric"),
                Question.key("site.name", "What is the job called").usually("My pool"),
                new Question(
                        weather.id(),
                        weather.words(),
                        "the guide says where such files come from, and how to make one from monthly normals",
                        weather.asked(),
                        weather.usual(),
                        new WeatherAnswer(out)),
                Question.key("pool.setting", "Is the pool outdoor or indoor").usually("outdoor"),
                Question.key("pool.area", "Water surface, or length x width", AREA)
                        .usually(by("25 m x 12.5 m", "75 ft x 40 ft")),
                Question.key("pool.depth", "Mean depth of the water", LENGTH).usually(by("1.5 m", "5 ft")),
                Question.key("pool.wind_shelter", "Is the water sheltered, suburban or exposed to wind")
                        .usually("suburban")
                        .when(Questions::outdoor),
                Question.key("pool.hall_temperature", "Temperature of the hall", TEMPERATURE)
                        .usually(by("28 degC", "82 degF"))
                        .when(before -> !outdoor(before)),
                Question.key("pool.hall_humidity", "Relative humidity of the hall")
                        .usually("55 %")
                        .when(before -> !outdoor(before)),
                Question.key("cover.kind", "Cover: none, bubble, foam, solid-track or liquid-film")
                        .usually(NONE)
                        .or(NONE, "there is no cover"),
                Question.key("cover.drawn", "Hours in which the cover lies on the water")
                        .usually("8 pm to 8 am")
                        .when(before -> !before.is("cover.kind", NONE)),
                Question.key("season.first_day", "First day of the season")
                        .usually(before -> before.south() ? "1 November" : "1 May"),
                Question.key("season.last_day", "Last day of the season")
                        .usually(before -> before.south() ? "31 March" : "30 September"),
                Question.key(
                                "season.comfort",
                                "From which temperature do bathers find the water warm enough",
                                TEMPERATURE)
                        .usually(by("24 degC", "78 degF")),
                Question.key("season.open", "Hours in which it is open").usually("8 am to 8 pm"),
                Question.key("pool.bathers", "Bathers in the water at once when it is full, 0 where nobody counts them")
                        .usually("0"),
                Question.key(
                                "collectors.mounting",
                                "Collectors: flat on a flat roof, on a pitched roof, or on racks (flat, pitched, rack)")
                        .usually("flat"),
                Question.key("roof.length", "Roof or building, length", LENGTH).usually(by("25 m", "80 ft")),
                Question.key("roof.width", "Roof or building, width", LENGTH).usually(by("12 m", "40 ft")),
                Question.key("roof.height", "Its height above the ground", LENGTH)
                        .usually(by("4 m", "13 ft")),
                Question.key("collectors.tilt", "Tilt of the collectors, or rise over run as 4:12", before -> "deg")
                        .usually(before -> before.is("collectors.mounting", "pitched") ? "20 deg" : "25 deg")
                        .when(Questions::tilted),
                Question.key(
                                "collectors.azimuth",
                                "Which way do they face (south, south-west, 200 deg)",
                                before -> "deg")
                        .usually(before -> before.south() ? "north" : "south")
                        .when(Questions::tilted),
                Question.key("collectors.slope_length", "Length of that roof up the slope", LENGTH)
                        .usually(by("6 m", "20 ft"))
                        .when(before -> before.is("collectors.mounting", "pitched")),
                Question.key("collectors.pitch", "Distance from one row of racks to the next", LENGTH)
                        .usually(by("4 m", "13 ft"))
                        .when(before -> before.is("collectors.mounting", "rack")),
                Question.key("collectors.area", "Collector area, or length x width", AREA)
                        .usually(Questions::usualArea),
                new Question(
                        HEATER,
                        "What heats the pool today: none, natural-gas, propane, heating-oil, electric, heat-pump",
                        ScenarioAnswer.meaning("heater", "kind")
                                + "; none where only the sun does; more can be said in the" + " file",
                        before -> true,
                        before -> NONE,
                        (written, before) -> heater(written)),
                Question.key("heater.capacity", "Heat that it gives to the water", by("kW", "Btu/h"))
                        .usually(by("150 kW", "500,000 Btu/h"))
                        .when(Questions::heated),
                Question.key("heater.set_point", "Water temperature that it keeps", TEMPERATURE)
                        .usually(before -> before.text("season.comfort"))
                        .when(Questions::heated),
                Question.key("heater.cop", "Its COP in air and water of 27 degC, by its data sheet")
                        .when(before -> before.is(HEATER, "heat-pump")),
                Question.key(
                                "heater.fuel_co2",
                                "Carbon dioxide of the electricity, as the supplier tells it",
                                before -> "kg/kWh")
                        .when(Questions::electric),
                Question.key("prices.currency", "Currency for money, such as EUR, or none")
                        .usually(NONE)
                        .or(NONE, "nothing is said of money"),
                Question.key("prices.gas", "Price of gas", by("per kWh", "per therm"))
                        .usually(by("0.10 per kWh", "1.40 per therm"))
                        .when(before -> priced(before) && !electric(before) && !before.is(HEATER, OIL)),
                Question.key("prices.fuel", "Price of heating oil", by("per L", "per gal"))
                        .when(before -> priced(before) && before.is(HEATER, OIL)),
                Question.key("prices.electricity", "Price of electricity", before -> "per kWh")
                        .usually(by("0.25 per kWh", "0.16 per kWh"))
                        .when(before -> priced(before)),
                Question.key("prices.collectors", "Price of the installed collectors", by("per m2", "per ft2"))
                        .usually(by("150 per m2", "12 per ft2"))
                        .when(before -> priced(before)));
    }

    private static boolean outdoor(Answers before) {
        return before.is("pool.setting", "outdoor");
    }

    private static boolean tilted(Answers before) {
        return !before.is("collectors.mounting", "flat");
    }

    private static boolean heated(Answers before) {
        return !before.is(HEATER, NONE);
    }

    /** Whether it takes electricity. */
    static boolean electric(Answers before) {
        return before.is(HEATER, "electric") || before.is(HEATER, "heat-pump");
    }

    /** Nothing, what a boiler burns, or another kind of heater. */
    private static ScenarioAnswer heater(String written) {
        if (written.strip().equalsIgnoreCase(NONE)) {
            return new ScenarioAnswer(NONE, "");
        }
        String joined = written.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_]+", "-");
        return joined.matches("electric(ity)?|heat-?pump")
                ? ScenarioAnswer.of("heater", "kind", joined.startsWith("e") ? "electric" : "heat-pump", "")
                : ScenarioAnswer.of("heater", "fuel", written, "");
    }

    private static boolean priced(Answers before) {
        return !before.is("prices.currency", NONE);
    }

    /** A share of the water surface, as far as a flat roof has room for it. */
    private static String usualArea(Answers before) {
        double most = AREA_OVER_WATER * number(before, "pool.area", Dimension.AREA);
        if (before.is("collectors.mounting", "flat")) {
            double roof =
                    number(before, "roof.length", Dimension.LENGTH) * number(before, "roof.width", Dimension.LENGTH);
            most = Math.min(most, SHARE_OF_ROOF * roof);
        }
        double shown = before.us() ? Quantity.in("ft2", most, Dimension.AREA) : most;
        double step = shown >= 100 ? 10 : 1;
        return String.format(
                Locale.ROOT, "%.0f %s", Math.max(1, Math.floor(shown / step) * step), before.by("m2", "ft2"));
    }

    private static double number(Answers before, String id, Dimension dimension) {
        try {
            return Quantity.parse(before.text(id), dimension);
        } catch (QuantityException none) {
            return 0;
        }
    }
}
