package dev.warmlane.scenario;

import dev.warmlane.heater.Fuel;
import dev.warmlane.scenario.FuelHeatKind.FuelHeat;

/** The higher heating value of a fuel, which also tells whether it is sold by the cubic metre or by the litre. */
record FuelHeatKind() implements Kind<FuelHeat> {

    private static final Kind<Double> PER_M3 = Kinds.of(Fuel.heatPer("m3"));
    private static final Kind<Double> PER_LITRE = Kinds.of(Fuel.heatPer("L"));

    @Override
    public FuelHeat read(Object toml) throws BadValueException {
        String text = toml.toString().strip();
        boolean litres = text.endsWith("L") || text.endsWith("gal");
        return litres ? new FuelHeat(PER_LITRE.read(toml), "L") : new FuelHeat(PER_M3.read(toml), "m3");
    }

    @Override
    public String write(FuelHeat value) {
        return value.unit.equals("L") ? PER_LITRE.write(value.mjPerUnit) : PER_M3.write(value.mjPerUnit);
    }

    @Override
    public String allowed() {
        return PER_M3.allowed() + " or " + PER_LITRE.allowed();
    }

    @Override
    public FuelHeat standIn() {
        return new FuelHeat(1, "m3");
    }

    /**
     * A heating value.
     *
     * @param mjPerUnit MJ per unit
     * @param unit m3 or L
     */
    record FuelHeat(double mjPerUnit, String unit) {}
}
