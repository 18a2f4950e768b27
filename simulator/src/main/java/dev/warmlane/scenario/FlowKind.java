package dev.warmlane.scenario;

import dev.warmlane.collector.CollectorArray;
import dev.warmlane.scenario.FlowKind.Flow;
import dev.warmlane.units.Dimension;
import dev.warmlane.units.LoneMark;
import dev.warmlane.units.Quantity;
import dev.warmlane.units.QuantityException;
import dev.warmlane.units.UnitSystem;
import java.util.Optional;
import java.util.regex.Pattern;

/** The flow through collectors, per area or of all of them together. */
record FlowKind() implements Kind<Flow> {

    private static final Kind<Double> PER_AREA = Kinds.of(CollectorArray.FLOW);

    private static final Dimension TOTAL = Dimension.VOLUME_FLOW;

    private static final Pattern PER_AN_AREA = Pattern.compile("(?i)(?:m2|m\u00b2|m\\^2|ft2|ft\u00b2|ft\\^2|sq|sf)");

    /** One kilogram to the litre, as {@link Dimension#MASS_FLOW_PER_AREA} counts. */
    private static final double KG_PER_M3 = 1000;

    /**
     * A flow.
     *
     * @param number kg/s·m², or kg/s
     * @param total whether it is of all collectors together
     * @param inThousands the flow of all if a point in it parts thousands; the area tells whether it does
     */
    record Flow(double number, boolean total, Optional<String> inThousands) {

        static Flow perArea(double kgSM2) {
            return new Flow(kgSM2, false, Optional.empty());
        }

        /** The flow per area, kg/s·m². */
        double over(double areaM2) {
            return total ? number / areaM2 : number;
        }
    }

    @Override
    public Flow read(Object toml) throws BadValueException {
        if (!(toml instanceof String text) || PER_AN_AREA.matcher(text).find()) {
            return Flow.perArea(PER_AREA.read(toml));
        }
        try {
            return new Flow(
                    KG_PER_M3 * Quantity.parse(text, TOTAL),
                    true,
                    LoneMark.of(text).map(LoneMark::thousands));
        } catch (QuantityException e) {
            throw new BadValueException(inHours(text, e) + "; allowed: " + allowed());
        }
    }

    /** What is wrong with a flow of all collectors; a volume alone is probably one of an hour. */
    private static String inHours(String text, QuantityException wrong) {
        try {
            Quantity.parse(text, TOTAL, "L/h");
            return String.valueOf(wrong.getMessage());
        } catch (QuantityException e) {
            return String.valueOf(e.getMessage());
        }
    }

    /** The flow per area, or what is wrong with it. */
    static double over(Section s, Key<Flow> key, double areaM2) {
        Flow flow = s.get(key);
        double perArea = flow.over(areaM2);
        if (flow.total() && s.sound(key) && areaM2 > 0 && !CollectorArray.FLOW.holds(perArea)) {
            s.error(
                    key,
                    "is " + PER_AREA.show(perArea) + " on " + ReportUnits.message(areaM2, "m2")
                            + " of collectors; allowed: " + PER_AREA.allowed() + inThousands(flow, areaM2));
        }
        return perArea;
    }

    private static String inThousands(Flow flow, double areaM2) {
        return flow.inThousands()
                .filter(text -> CollectorArray.FLOW.holds(KG_PER_M3 * Quantity.parse(text, TOTAL) / areaM2))
                .map(text -> "; did you mean " + BadValueException.quote(text) + "?")
                .orElse("");
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
