package dev.warmlane.examples;

import dev.warmlane.collector.Mounting;
import dev.warmlane.units.Dimension;
import dev.warmlane.units.Quantity;
import java.util.Locale;

/**
 * What an empty line stands for where it depends on other answers. All of it is common practice without a source, or our own
 * choice, unless a source stands beside it; prices are invented. Each is shown before it is taken, and told apart in the file.
 */
final class Usual {

    /** Collectors over water surface. */
    private static final double AREA_OVER_WATER = 0.6;

    /** Share of a roof that is covered, as the scenario's usable_share. */
    private static final double SHARE_OF_ROOF = 0.8;

    /** Length of a rack up the slope, as the file assumes it: from row to row the roof is covered in part. */
    private static final double CHORD_M = 2;

    /** Farther apart rows are none, see {@link Mounting.OpenRack#MOST_PITCH_CHORDS}. */
    static final double MOST_PITCH_M = Mounting.OpenRack.MOST_PITCH_CHORDS * CHORD_M;

    /** Boilers for outdoor pools are built for a few days of warming up: kW for each m² of water. */
    private static final double BOILER_KW_M2 = 0.5;

    /** What is dearer to build is built smaller. */
    private static final double HEAT_PUMP_KW_M2 = 0.25;

    /** Electricity for a m² of collector, W: between the 2 and 10 that are usual on top of the filter pump. */
    private static final double PUMP_W_M2 = 5;

    /** Upkeep a year over the price of the collectors. */
    private static final double UPKEEP_SHARE = 0.01;

    /** The collectors stop at this, or so far above what the heater keeps and bathers want. */
    private static final double LIMIT_C = 30;

    private static final double LIMIT_ABOVE_K = 2;

    private Usual() {}

    /** A share of the water surface, as far as the roof or the slope of it has room for it. */
    static String collectorArea(Answers before) {
        double wanted = AREA_OVER_WATER * before.number("pool.area", Dimension.AREA);
        return rounded(Math.min(wanted, room(before)), Dimension.AREA, before.by("m2", "ft2"));
    }

    /** As much as the roof has room for. */
    static String most(Answers before) {
        return rounded(room(before), Dimension.AREA, before.by("m2", "ft2"));
    }

    /** Room on the roof, m²: on the slopes that are covered, or on the flat between rows of racks. */
    private static double room(Answers before) {
        double along = before.number("roof.length", Dimension.LENGTH);
        double slope = before.number("collectors.slope_length", Dimension.LENGTH);
        double slopes = before.is(Questions.MOUNTING, "gable") ? 2 : 1;
        double across = slope > 0 ? slopes * slope : before.number("roof.width", Dimension.LENGTH);
        double roof = along > 0 ? along * across : before.number("roof.area", Dimension.AREA);
        double pitch = before.number("collectors.pitch", Dimension.LENGTH);
        double chords = RoofQuestions.tents(before) ? 2 * CHORD_M : CHORD_M;
        double share = pitch > 0 ? SHARE_OF_ROOF * Math.min(1, chords / pitch) : SHARE_OF_ROOF;
        return share * roof;
    }

    /** Heat for the water surface. */
    static String capacity(Answers before) {
        double each = Heaters.of(before) == Heaters.HEAT_PUMP ? HEAT_PUMP_KW_M2 : BOILER_KW_M2;
        double watts = 1000 * each * before.number("pool.area", Dimension.AREA);
        return grouped(rounded(watts, Dimension.POWER, capacityUnit(before)));
    }

    /** Resistance heaters are sold by the kW everywhere. */
    static String capacityUnit(Answers before) {
        return before.us() && Heaters.of(before) != Heaters.ELECTRIC ? "Btu/h" : "kW";
    }

    /** Thousands of Btu/h are read more easily with a comma. */
    private static String grouped(String quantity) {
        int space = quantity.indexOf(' ');
        return String.format(Locale.ROOT, "%,d", Long.parseLong(quantity.substring(0, space)))
                + quantity.substring(space);
    }

    /** Up to where the collectors warm. */
    static String limit(Answers before) {
        double wanted = Math.max(
                before.number("heater.set_point", Dimension.TEMPERATURE),
                before.number("season.comfort", Dimension.TEMPERATURE));
        double limit = Math.max(LIMIT_C, wanted + LIMIT_ABOVE_K);
        return before.us()
                ? String.format(Locale.ROOT, "%.0f degF", Quantity.in("degF", limit, Dimension.TEMPERATURE))
                : String.format(Locale.ROOT, "%.0f degC", limit);
    }

    /** Electricity of the pump. */
    static String pumpPower(Answers before) {
        return rounded(PUMP_W_M2 * before.number("collectors.area", Dimension.AREA), Dimension.POWER, "W");
    }

    /** Upkeep a year. */
    static String upkeep(Answers before) {
        double price = before.number("prices.collectors", Dimension.PRICE_PER_AREA);
        return digits(UPKEEP_SHARE * price * before.number("collectors.area", Dimension.AREA));
    }

    /**
     * Carbon dioxide of a kWh: of the electricity of the United States in 2022 0.86 lb (Energy Information Administration),
     * of that of the European Union about as much as in 2022 (European Environment Agency, from memory); of a network's heat
     * as if a boiler of 82 % made it of natural gas.
     */
    static String carbon(Answers before) {
        return Heaters.of(before) == Heaters.DISTRICT_HEAT
                ? before.by("0.22 kg/kWh", "0.49 lb/kWh")
                : before.by("0.25 kg/kWh", "0.86 lb/kWh");
    }

    /** Price of what the heater is fed with. */
    static String fuelPrice(Answers before) {
        return switch (Heaters.of(before)) {
            case PROPANE, CONDENSING_PROPANE -> before.by("0.80 per L", "2.50 per gal");
            case OIL -> before.by("1.05 per L", "4.00 per gal");
            case DISTRICT_HEAT -> before.by("0.12 per kWh", "30 per MMBtu");
            default -> before.by("0.10 per kWh", "1.40 per therm");
        };
    }

    /** A bill in the unit of the price; where none was answered a gas bill in m3. */
    static String billSample(Answers before) {
        String unit = before.toml("heater.sold_in").replace("\"", "");
        return switch (unit) {
            case "" -> Heaters.of(before).burns() ? "12000 m3" : "120000 kWh";
            case "kWh", "MJ" -> "120000 " + unit;
            case "MWh", "GJ", "MMBtu" -> "400 " + unit;
            default -> "12000 " + unit;
        };
    }

    /** The unit of a price of fuel that is a number alone. */
    static String fuelUnit(Answers before) {
        String price = fuelPrice(before);
        return price.substring(price.indexOf(' ') + 1);
    }

    /** Price of the cover, of the kind that there is or of a bubble sheet. */
    static String coverPrice(Answers before) {
        return switch (before.text(Questions.COVER)) {
            case "foam" -> before.by("60 per m2", "6 per ft2");
            case "solid-track" -> before.by("300 per m2", "30 per ft2");
            case "liquid-film" -> before.by("2 per m2", "0.20 per ft2");
            default -> before.by("30 per m2", "3 per ft2");
        };
    }

    /** How long it lasts. */
    static String coverYears(Answers before) {
        return switch (before.text(Questions.COVER)) {
            case "foam" -> "8";
            case "solid-track" -> "15";
            case "liquid-film" -> "1";
            default -> "5";
        };
    }

    private static String rounded(double base, Dimension dimension, String unit) {
        return digits(Quantity.in(unit, base, dimension)) + " " + unit;
    }

    /** Two digits, downwards, and at least 1. */
    private static String digits(double value) {
        double step = Math.pow(10, Math.max(0, Math.floor(Math.log10(Math.max(1, value))) - 1));
        return String.format(Locale.ROOT, "%.0f", Math.max(1, Math.floor(value / step) * step));
    }
}
