package dev.warmlane.examples;

import dev.warmlane.files.Printable;
import dev.warmlane.heater.SaleUnit;
import dev.warmlane.scenario.ScenarioAnswer;
import dev.warmlane.units.Dimension;
import dev.warmlane.units.LoneMark;
import dev.warmlane.units.Quantity;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The questions about what heats the pool today, and about money. */
final class HeatQuestions {

    private static final Pattern SOLD_BY = Pattern.compile(".*(?:\\bper\\s+|/\\s*)([^/]+?)");

    private static final Pattern HUNDREDTHS =
            Pattern.compile("(?i)(\\d+(?:[.,]\\d+)?)\\s*(?:ct|cts|cents?|c|p|pence|\u00a2)");

    private static final Pattern WEEKS = Pattern.compile("(?:(\\d{1,2})|a|one)\\s*weeks?");
    private static final int DAYS_OF_WEEK = 7;

    /** Nobody pays as much for a m²; who says so means all of them. */
    private static final double DEAREST_PER_AREA = 2000;

    private HeatQuestions() {}

    static List<Question> heater() {
        return List.of(
                Question.own(
                                Questions.HEATER,
                                Heaters.offered(),
                                ScenarioAnswer.meaning("heater", "kind")
                                        + "; none where only the sun warms it; solar collectors that are there already are"
                                        + " no heater",
                                (written, before) -> Heaters.answer(written))
                        .usually(Questions.NONE)
                        .under("What heats the pool today"),
                Question.key("heater.capacity", "Heat that it gives to the water", Usual::capacityUnit)
                        .usually(Usual::capacity)
                        .when(HeatQuestions::heated)
                        .saying("the plate on it says its output; if you know only what it burns, give four fifths"),
                Question.key("heater.set_point", "Water temperature that it keeps", Questions.TEMPERATURE)
                        .usually(before -> before.text("season.comfort"))
                        .when(HeatQuestions::heated),
                Question.own(
                                "before",
                                "How many days before the first day does heating begin",
                                "from then on heater and collectors may run, and the water warms up for opening; before, it"
                                        + " stands as cold as the weather makes it; 0 to 180",
                                (written, before) -> before(written, true))
                        .usually("7")
                        .when(before -> heated(before) && !Questions.allYear(before)),
                Question.key("heater.cop", "")
                        .asking(before -> "Its COP in air and water of about " + before.by("27 degC", "80 degF")
                                + ", by its data sheet")
                        .usually("5")
                        .when(before -> Heaters.of(before) == Heaters.HEAT_PUMP),
                Question.key("heater.fuel_co2", "", before -> before.by("kg/kWh", "lb/kWh"))
                        .asking(before -> "Carbon dioxide of the "
                                + (Heaters.of(before).electric() ? "electricity" : "network's heat")
                                + ", as the supplier tells it")
                        .usually(Usual::carbon)
                        .when(before -> heated(before) && !Heaters.of(before).burns()));
    }

    static List<Question> money() {
        return List.of(
                Question.own(
                                Questions.CURRENCY,
                                "Currency, such as EUR, or none",
                                ScenarioAnswer.meaning("prices", "currency") + "; with none nothing is said of money",
                                (written, before) -> currency(written))
                        .usually(Questions.NONE)
                        .under("Money"),
                Question.own(
                                "prices.fuel",
                                "",
                                ScenarioAnswer.meaning("prices", "fuel") + "; allowed: "
                                        + ScenarioAnswer.allowed("prices", "fuel"),
                                HeatQuestions::fuelPrice)
                        .asking(before -> "Price of " + Heaters.of(before).bought())
                        .usually(Usual::fuelPrice)
                        .when(before -> priced(before)
                                && heated(before)
                                && !Heaters.of(before).electric()),
                price("prices.electricity", "Price of electricity", before -> "per kWh")
                        .usually(before -> before.by("0.25 per kWh", "0.16 per kWh"))
                        .when(HeatQuestions::priced),
                collectorPrice()
                        .usually(before -> before.by("150 per m2", "12 per ft2"))
                        .when(HeatQuestions::priced),
                price("money.cover_price", "", HeatQuestions::areaPrice)
                        .asking(before -> before.is(Questions.COVER, Questions.NONE)
                                ? "Price of a bubble cover for this pool, to compare with"
                                : "Price of a new cover like this one, to compare with")
                        .usually(Usual::coverPrice)
                        .when(HeatQuestions::priced)
                        .saying("for each area of water, with its roller"));
    }

    /** A price may be written with its currency. */
    private static Question price(String id, String words, Function<Answers, String> unit) {
        Question plain = Question.key(id, words, unit);
        return plain.checked((written, before) -> plain.check().of(sum(written, before), before));
    }

    /** A price for each area; one for all of them is asked back. */
    private static Question collectorPrice() {
        Question price = price("prices.collectors", "Price of the collectors, installed", HeatQuestions::areaPrice);
        return price.checked((written, before) -> {
                    String said = sum(written, before);
                    double sum = said.matches("\\d[\\d,' ]*(?:\\.\\d+)?")
                            ? Double.parseDouble(said.replaceAll("[,' ]", ""))
                            : 0;
                    String unit = before.by("m2", "ft2");
                    double area = before.number("collectors.area", Dimension.AREA);
                    double areas = Quantity.in(unit, area, Dimension.AREA);
                    if (sum > DEAREST_PER_AREA && areas > 0) {
                        throw new IllegalArgumentException("found " + Printable.quote(said) + ", much for one " + unit
                                + "; is it for all of them? then it is that over their area; did you mean \""
                                + Quantity.plain(Math.rint(100 * sum / areas) / 100) + " per " + unit + "\"?");
                    }
                    return price.check().of(written, before);
                })
                .saying("the price of all of them is asked back over their area");
    }

    /** An amount of money without words around it; one that is not clear is asked back, whatever it is for. */
    private static String sum(String written, Answers before) {
        String said = bare(written, before).replaceAll("(?i)\\s*(?:in )?(?:total|all|all in all)$", "");
        Optional<LoneMark> mark = LoneMark.of(said).filter(m -> m.decimals().matches("[\\d.]+"));
        if (mark.isPresent()) {
            throw new IllegalArgumentException("\"" + Printable.line(said) + "\" is not clear; "
                    + mark.get().told());
        }
        return said;
    }

    private static Answer currency(String written) {
        String said = written.strip();
        if (said.matches("(?i)none|no|nothing")) {
            return Answer.nothing(Questions.NONE);
        }
        if (said.matches("(?i)y(es)?|.*\\d.*")) {
            throw new IllegalArgumentException(
                    "write how money is written, such as EUR, USD or $, or none; prices are asked for next");
        }
        return Answer.of(Questions.CURRENCY, ScenarioAnswer.of("prices", "currency", said, ""));
    }

    /** A price without the currency that was answered before, or a sign for it. */
    private static String bare(String written, Answers before) {
        Matcher hundredths = HUNDREDTHS.matcher(written.strip());
        if (hundredths.matches()) {
            double whole = Double.parseDouble(hundredths.group(1).replace(',', '.')) / 100;
            throw new IllegalArgumentException(
                    "found \"" + written.strip() + "\"; did you mean \"" + Quantity.plain(whole) + "\"?");
        }
        String currency = Pattern.quote(before.text(Questions.CURRENCY));
        return written.replaceFirst(
                        "(?i)(?<![a-z])(?:" + currency + "|eur|euros?|usd|dollars?|gbp|pounds?|chf)(?![a-z])", "")
                .replaceFirst("[$\u20ac\u00a3]", "")
                .replaceFirst("(\\d)\\s+/", "$1/")
                .strip();
    }

    static boolean heated(Answers before) {
        return Heaters.of(before).heats();
    }

    static boolean priced(Answers before) {
        return !before.is(Questions.CURRENCY, Questions.NONE);
    }

    /** Days before opening from which on collectors may run, and with them the heater. */
    static Answer before(String written, boolean heater) {
        String said = written.strip().toLowerCase(Locale.ROOT).replaceFirst("\\s+before$", "");
        Matcher weeks = WEEKS.matcher(said);
        String days = weeks.matches()
                ? String.valueOf(DAYS_OF_WEEK * (weeks.group(1) == null ? 1 : Integer.parseInt(weeks.group(1))))
                : said.matches("no|none|not at all") ? "0" : said.replaceFirst("\\s*days?$", "");
        Answer collectors =
                Answer.of("season.collectors_before", ScenarioAnswer.of("season", "collectors_before", days, ""));
        return heater
                ? collectors.with("season.heater_before", ScenarioAnswer.of("season", "heater_before", days, ""))
                : collectors;
    }

    /** The price, and with it the unit in which what is bought is told. */
    private static Answer fuelPrice(String written, Answers before) {
        Answer price = Answer.of(
                "prices.fuel", ScenarioAnswer.of("prices", "fuel", bare(written, before), Usual.fuelUnit(before)));
        Matcher by =
                SOLD_BY.matcher(price.values().getOrDefault("prices.fuel", "").replace("\"", ""));
        Optional<SaleUnit> unit = by.matches() ? SaleUnit.of(by.group(1)) : Optional.empty();
        return unit.map(u -> price.with("heater.sold_in", ScenarioAnswer.of("heater", "sold_in", u.symbol(), "")))
                .orElse(price);
    }

    private static String areaPrice(Answers before) {
        return before.by("per m2", "per ft2");
    }
}
