package dev.warmlane.scenario;

import dev.warmlane.heater.Fuel;
import dev.warmlane.heater.SaleUnit;
import dev.warmlane.scenario.EnergyPriceKind.EnergyPrice;
import dev.warmlane.season.Prices;
import dev.warmlane.units.LoneMark;
import dev.warmlane.units.PriceText;
import dev.warmlane.units.Quantity;
import dev.warmlane.units.QuantityException;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A price of energy, or of a volume of the fuel that holds it. */
record EnergyPriceKind() implements Kind<EnergyPrice> {

    private static final String OR_VOLUME = "; or per m3, ccf, L or gal of the fuel";
    private static final Kind<Double> PER_ENERGY = Kinds.of(Prices.GAS);
    private static final Pattern CURRENCY = Pattern.compile("(?<![A-Za-z])" + PriceText.CURRENCY);
    private static final Pattern PER = Pattern.compile("(?:(?:per|an?|each)\\s+|/\\s*)(.+)");

    @Override
    public EnergyPrice read(Object toml) throws BadValueException {
        Optional<EnergyPrice> ofVolume = toml instanceof String text ? ofVolume(text) : Optional.empty();
        if (ofVolume.isPresent()) {
            return ofVolume.get();
        }
        Optional<EnergyPrice> without =
                toml instanceof String text ? ofVolume(CURRENCY.matcher(text).replaceFirst("")) : Optional.empty();
        if (without.isPresent()) {
            throw new BadValueException(BadValueException.show(toml)
                    + " has a currency in it, which has a key of its own; did you mean " + write(without.get()) + "?");
        }
        try {
            return EnergyPrice.perKwh(PER_ENERGY.read(toml));
        } catch (BadValueException e) {
            throw new BadValueException(e.getMessage() + OR_VOLUME);
        }
    }

    /** The price of a volume, if it is one. */
    private static Optional<EnergyPrice> ofVolume(String text) {
        try {
            Quantity.Written price = Quantity.written(text);
            Matcher per = PER.matcher(price.unit());
            return per.matches()
                    ? SaleUnit.of(per.group(1))
                            .filter(SaleUnit::isVolume)
                            .map(u -> new EnergyPrice(price.number(), u, LoneMark.of(text)))
                    : Optional.empty();
        } catch (QuantityException noPrice) {
            return Optional.empty();
        }
    }

    @Override
    public String write(EnergyPrice value) {
        return value.unit == SaleUnit.KWH
                ? PER_ENERGY.write(value.amount)
                : "\"" + Quantity.plain(value.amount) + " per " + value.unit.symbol() + "\"";
    }

    @Override
    public String allowed() {
        return PER_ENERGY.allowed() + OR_VOLUME;
    }

    @Override
    public EnergyPrice standIn() {
        return EnergyPrice.perKwh(0);
    }

    /**
     * A price.
     *
     * @param amount money for a unit
     * @param unit a volume, or kWh
     * @param mark a mark in it that may part thousands or decimals: which, the fuel shows
     */
    record EnergyPrice(double amount, SaleUnit unit, Optional<LoneMark> mark) {

        static EnergyPrice perKwh(double amount) {
            return new EnergyPrice(amount, SaleUnit.KWH, Optional.empty());
        }

        /**
         * Money for a kWh.
         *
         * @throws IllegalArgumentException if the fuel is not sold by that unit, or the price is out of range or not clear
         */
        double perKwh(Fuel fuel) {
            if (unit == SaleUnit.KWH) {
                return amount;
            }
            double each = amount / fuel.soldIn(unit).kwhOfUnits(1);
            if (mark.isPresent() && Prices.GAS.holds(each) && Prices.GAS.holds(1000 * each)) {
                throw new IllegalArgumentException(mark.get().told());
            }
            return Prices.GAS.check(each);
        }
    }
}
