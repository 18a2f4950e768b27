package dev.warmlane.report;

import dev.warmlane.heater.Fuel;
import dev.warmlane.heater.SaleUnit;
import dev.warmlane.season.Period;
import dev.warmlane.site.Site;
import dev.warmlane.units.Estimate;
import dev.warmlane.units.Measure;
import dev.warmlane.units.Notation;
import dev.warmlane.units.UnitSystem;
import dev.warmlane.units.Units;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.MonthDay;
import java.util.function.DoubleUnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Numbers, dates and money as a person reads them, always with their unit: the one place that writes them.
 *
 * @param units the units they are shown in
 * @param notation how the place writes them
 */
public record Numbers(UnitSystem units, Notation notation) {

    /** From this share of the likely value on doubt makes the third digit worthless; own choice. */
    private static final double COARSE = 0.1;

    /** As {@link dev.warmlane.season.Periods#months} labels it. */
    private static final Pattern PART_OF_A_MONTH = Pattern.compile("([A-Z][a-z]{2}) (\\d+-\\d+)");

    /** In the usual notation of the units. */
    public Numbers(UnitSystem units) {
        this(units, Notation.usual(units));
    }

    /** A plain number with some decimals. */
    public String show(double value, int decimals) {
        return notation.show(value, decimals);
    }

    /** A date, day and month. */
    public String show(MonthDay date) {
        return notation.show(date);
    }

    /** A period as it is labelled; a month that is open in part, {@code May 15-31}, in the order of the place. */
    public String label(Period period) {
        Matcher part = PART_OF_A_MONTH.matcher(period.label());
        return part.matches() ? notation.dates().show(part.group(2), part.group(1)) : period.label();
    }

    /** What a site is called and where it is: {@code Coast, 48.1 N 123.5 W}. */
    public String place(Site site) {
        return site.name().isEmpty() ? coordinates(site) : site.name() + ", " + coordinates(site);
    }

    /** What a place is called, by its coordinates where it has no name. */
    public String placeName(Site site) {
        return site.name().isEmpty() ? coordinates(site) : site.name();
    }

    private String coordinates(Site site) {
        return show(Math.abs(site.latitudeDeg()), 1)
                + (site.latitudeDeg() < 0 ? " S " : " N ")
                + show(Math.abs(site.longitudeDeg()), 1)
                + (site.longitudeDeg() < 0 ? " W" : " E");
    }

    /** A value with its unit. */
    public String show(Measure measure, double value) {
        return show(measure.in(units, value), measure.decimals(units)) + " " + measure.unit(units);
    }

    /** A value with its unit for a headline: three digits where it has more before the point. */
    public String about(Measure measure, double value) {
        return show(threeDigits(measure.in(units, value)), measure.decimals(units)) + " " + measure.unit(units);
    }

    /** A value with its unit where nothing is known of its doubt: two digits, and said to be about. */
    String roughly(Measure measure, double value) {
        return "about " + show(digits(measure.in(units, value), 2), measure.decimals(units)) + " "
                + measure.unit(units);
    }

    /** The same of money. */
    String roughlyMoney(double amount, String currency) {
        return "about " + notation.money(show(digits(amount, 2), 0), currency);
    }

    /** A difference of temperatures in words of an owner: {@code 2.4 degrees}. */
    public String degrees(double kelvin) {
        return show(Measure.TEMPERATURE_DIFFERENCE.in(units, kelvin), 1) + " degrees";
    }

    /** How far two temperatures are apart as they are shown, so that a reader who takes one from the other agrees. */
    String degreesApart(double oneC, double otherC) {
        return degrees(kelvinApart(oneC, otherC));
    }

    /** The same, K. */
    double kelvinApart(double oneC, double otherC) {
        double shown = Math.abs(rounded(Measure.TEMPERATURE, oneC) - rounded(Measure.TEMPERATURE, otherC));
        return shown / Measure.TEMPERATURE_DIFFERENCE.in(units, 1);
    }

    /**
     * By how much one value is above another as both are shown, so that a reader who takes one from the other agrees; in the
     * unit of the results. Not for temperatures, see {@link #kelvinApart}.
     */
    double apart(Measure measure, double one, double other) {
        return (rounded(measure, one) - rounded(measure, other)) / measure.in(units, 1);
    }

    /** An amount of money for a headline. */
    public String aboutMoney(double amount, String currency) {
        return notation.money(show(threeDigits(amount), 0), currency);
    }

    /** An amount of money to the whole unit of its currency. */
    public String money(double amount, String currency) {
        return price(amount, 0, currency);
    }

    /** What the shown unit of heat costs: {@code $0.78 a therm}; for a kWh given. */
    String priceOfHeat(double perKwh, String currency) {
        return notation.money(bareOfHeat(perKwh), currency) + " a "
                + Measure.HEAT.unit(units).replaceAll("s$", "");
    }

    /** The same without currency and unit: two digits where it is of a therm, three of the small kWh. */
    String bareOfHeat(double perKwh) {
        return show(perKwh / Measure.HEAT.in(units, 1), Measure.HEAT.in(units, 1) < 1 ? 2 : 3);
    }

    /** What the shown unit of area costs, without currency and unit; for a m² given. */
    String bareOfArea(double perM2) {
        return show(perM2 / Measure.AREA.in(units, 1), units.us() ? 2 : 0);
    }

    /** An amount of money with some decimals. */
    public String price(double amount, int decimals, String currency) {
        return notation.money(show(amount, decimals), currency);
    }

    /** A bound or the likely value of an estimate of money for a headline, see {@link #bare}. */
    String aboutMoney(double one, Estimate of, String currency) {
        return notation.money(bare(Measure.MONEY, one, of), currency);
    }

    /** A bound or the likely value of an estimate with its unit, see {@link #bare}. */
    String about(Measure measure, double one, Estimate of) {
        return bare(measure, one, of) + " " + measure.unit(units);
    }

    /**
     * A bound or the likely value of an estimate for a headline: two digits where the doubt is a tenth or more of the likely
     * value, else three. Temperatures and counts of days keep theirs: their zero says nothing of how exact they are, and
     * days are counted.
     */
    String bare(Measure measure, double one, Estimate of) {
        double shown = measure.in(units, one);
        if (measure == Measure.TEMPERATURE || measure == Measure.TEMPERATURE_DIFFERENCE || measure == Measure.DAYS) {
            return show(shown, measure.decimals(units));
        }
        boolean coarse = of.doubt() >= COARSE * Math.abs(of.likely());
        return show(coarse ? digits(shown, 2) : threeDigits(shown), measure.decimals(units));
    }

    /** Both bounds of an estimate without their unit, see {@link #bare}; empty where nothing moves it as shown. */
    String bounds(Measure measure, Estimate of) {
        String low = bare(measure, of.low(), of);
        String high = bare(measure, of.high(), of);
        return low.equals(high) ? "" : low + " to " + high;
    }

    private static double threeDigits(double value) {
        return Math.abs(value) < 1000 ? value : digits(value, 3);
    }

    private static double digits(double value, int digits) {
        return value == 0
                ? 0
                : BigDecimal.valueOf(value)
                        .round(new MathContext(digits, RoundingMode.HALF_UP))
                        .doubleValue();
    }

    /** A value as a person sees it: in the unit shown, to the decimals shown. */
    double rounded(Measure measure, double value) {
        return BigDecimal.valueOf(measure.in(units, value))
                .setScale(measure.decimals(units), RoundingMode.HALF_UP)
                .doubleValue();
    }

    /** Two values with one unit. */
    public String range(Measure measure, double low, double high) {
        return show(measure.in(units, low), measure.decimals(units)) + " to " + show(measure, high);
    }

    /** An amount of heat in every unit that people ask for, the report's own first; kWh given. */
    public String heat(double kwh) {
        double joules = kwh * Units.KWH;
        String gigajoules = show(Units.gigajoules(joules), 1) + " GJ";
        String therms = show(Units.therms(joules), 0) + " therms";
        return units == UnitSystem.US
                ? therms + " (" + show(kwh, 0) + " kWh, " + gigajoules + ")"
                : show(kwh, 0) + " kWh (" + gigajoules + ", " + therms + ")";
    }

    /** An amount of a fuel in the units it is sold in; US gases by the cubic foot and the gallon. */
    public String fuel(Fuel fuel, double amount) {
        return fuel(fuel, amount, shown -> shown);
    }

    /** Two digits of the same. */
    String roundedFuel(Fuel fuel, double amount) {
        return fuel(fuel, amount, shown -> digits(shown, 2));
    }

    private String fuel(Fuel fuel, double amount, DoubleUnaryOperator round) {
        boolean us = units.us();
        if (us && fuel.unit() == SaleUnit.M3) {
            return show(round.applyAsDouble(amount / Units.FOOT3), 0) + " ft³";
        }
        if (us && fuel.unit() == SaleUnit.LITRE) {
            return show(round.applyAsDouble(Units.usGallons(amount * Units.LITRE)), 0) + " gal";
        }
        return sold(fuel, round.applyAsDouble(amount));
    }

    /** An amount in the unit it is sold in, whatever the report's units. */
    String sold(Fuel fuel, double amount) {
        String unit = fuel.unit().symbol();
        return show(amount, amount < 100 ? 1 : 0) + " " + (unit.equals("therm") ? "therms" : unit.replace("m3", "m³"));
    }

    /** A unit of area in words. */
    public String unitOfArea() {
        return units.us() ? "square foot" : "square metre";
    }
}
