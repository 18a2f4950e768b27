package dev.warmlane.report;

import dev.warmlane.heater.Fuel;
import dev.warmlane.heater.Heater;
import dev.warmlane.heater.SaleUnit;
import dev.warmlane.season.PeriodSummary;
import java.util.Locale;

/**
 * What a report calls the energy that a heater is fed with: gas, oil, electricity, district heat, or another fuel by its
 * name. One place, so that no report calls oil gas.
 *
 * @param fuel the energy
 */
public record FuelWords(Fuel fuel) {

    /** Letters of a word that leave a table of all columns a hundred wide, as a terminal is. */
    private static final int LONGEST_HEADING = 8;

    /** The words of a season: of what its heater is fed with, or of the gas that one would have burned. */
    public static FuelWords of(PeriodSummary season) {
        return new FuelWords(season.gas().fuel());
    }

    /** What a heater is, as the job names it: a boiler by its fuel. */
    static String kind(Heater heater) {
        return heater.match(
                boiler -> boiler.fuel().name(),
                condensing -> condensing.fuel().name() + ", condensing",
                electric -> "electric",
                pump -> "heat pump",
                network -> "district heat");
    }

    /** The word for it, in lower case. */
    public String word() {
        return fuel.word();
    }

    /** The same for the head of a column, which has room for few letters. */
    String heading() {
        return word().length() > LONGEST_HEADING ? "energy" : word();
    }

    /** What becomes of it, burned or bought. */
    public String used() {
        return fuel.carrier().burned() ? "burned" : "bought";
    }

    /** The same as what a heater does with it. */
    String uses() {
        return fuel.carrier().burned() ? "burns" : "takes";
    }

    /** What more of it would be done with, burn or take. */
    String use() {
        return fuel.carrier().burned() ? "burn" : "take";
    }

    /** {@code gas burned}. */
    public String wordUsed() {
        return word() + " " + used();
    }

    /** {@code gas displaced}. */
    public String wordDisplaced() {
        return word() + " displaced";
    }

    /** How it is counted, after its amount; nothing where there is but one way. */
    String counted() {
        return fuel.carrier().burned() ? " (higher heating value)" : "";
    }

    /** Why it is not as much as the heat that it gives; nothing where it is. */
    String whyNotAsMuch() {
        return fuel.carrier().burned()
                ? ", which takes more " + word() + " than that because some of it goes up the flue"
                : "";
    }

    /** A text that begins a sentence or a line. */
    static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    /** The word in names of files and columns, which hold small letters alone: a fuel of one's own by what it is sold as. */
    public String slug() {
        return switch (fuel.carrier()) {
            case OTHER -> fuel.unit() == SaleUnit.M3 || fuel.unit() == SaleUnit.CCF ? "gas" : "fuel";
            default -> word().replace(' ', '_');
        };
    }

    /** The name of a column that has {@code gas} in it. */
    String csv(String column) {
        return column.replace("gas", slug()).replace("burned", used());
    }
}
