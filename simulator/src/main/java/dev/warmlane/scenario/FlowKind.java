package dev.warmlane.scenario;

import dev.warmlane.collector.CollectorArray;
import dev.warmlane.scenario.FlowKind.Flow;
import dev.warmlane.units.Dimension;
import dev.warmlane.units.Quantity;
import dev.warmlane.units.QuantityException;
import dev.warmlane.units.UnitSystem;

/** The flow through collectors, per area or of all of them together. */
record FlowKind() implements Kind<Flow> {

    private static final Kind<Double> PER_AREA = Kinds.of(CollectorArray.FLOW);

    /** One kilogram to the litre, as {@link Dimension#MASS_FLOW_PER_AREA} counts. */
    private static final double KG_PER_M3 = 1000;

    /**
     * A flow.
     *
     * @param number kg/s·m², or kg/s
     * @param total whether it is of all collectors together
     */
    record Flow(double number, boolean total) {

        static Flow perArea(double kgSM2) {
            return new Flow(kgSM2, false);
        }

        /** The flow per area, kg/s·m². */
        double over(double areaM2) {
            return total ? number / areaM2 : number;
        }
    }

    @Override
    public Flow read(Object toml) throws BadValueException {
        if (toml instanceof String text) {
            try {
                return new Flow(KG_PER_M3 * Quantity.parse(text, Dimension.VOLUME_FLOW), true);
            } catch (QuantityException notTotal) {
                return Flow.perArea(PER_AREA.read(toml));
            }
        }
        return Flow.perArea(PER_AREA.read(toml));
    }

    /** The flow per area, or what is wrong with it. */
    static double over(Section s, Key<Flow> key, double areaM2) {
        Flow flow = s.get(key);
        double perArea = flow.over(areaM2);
        if (flow.total() && s.sound(key) && areaM2 > 0 && !CollectorArray.FLOW.holds(perArea)) {
            s.error(
                    key,
                    "is " + PER_AREA.show(perArea) + " on " + ReportUnits.message(areaM2, "m2")
                            + " of collectors; allowed: " + PER_AREA.allowed());
        }
        return perArea;
    }

    @Override
    public String write(Flow value) {
        return value.total() ? "\"" + Quantity.plain(value.number()) + " L/s\"" : PER_AREA.write(value.number());
    }

    @Override
    public String show(Flow value, UnitSystem units) {
        return value.total() ? write(value).replace("\"", "") : PER_AREA.show(value.number(), units);
    }

    @Override
    public String allowed() {
        return PER_AREA.allowed() + ", or the flow of all, such as \"36 m3/h\"";
    }

    @Override
    public Flow standIn() {
        return Flow.perArea(PER_AREA.standIn());
    }
}
