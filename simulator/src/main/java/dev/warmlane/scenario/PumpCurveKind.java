package dev.warmlane.scenario;

import dev.warmlane.circuit.Hydraulics;
import dev.warmlane.hydraulics.PumpCurve;
import dev.warmlane.hydraulics.PumpCurve.Point;
import dev.warmlane.physics.Constants;
import dev.warmlane.units.Dimension;
import dev.warmlane.units.LoneMark;
import dev.warmlane.units.Quantity;
import dev.warmlane.units.QuantityException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.tomlj.TomlArray;

/** A pump's curve: points of a flow and a head in one text, the head as a height of water or as a pressure. */
record PumpCurveKind() implements Kind<PumpCurve> {

    /** A metre of water, kPa. */
    private static final double KPA_PER_M = Hydraulics.WATER.densityKgM3() * Constants.GRAVITY / 1000;

    /** What people write behind a height of water. */
    private static final String OF_WATER = "(?i)\\s*(of\\s+)?(head|water|h2o|wc)$";

    @Override
    public PumpCurve read(Object toml) throws BadValueException {
        if (!(toml instanceof TomlArray array)) {
            throw BadValueException.of(toml, allowed());
        }
        List<Point> points = new ArrayList<>();
        for (Object item : array.toList()) {
            points.add(point(item, allowed()));
        }
        try {
            return new PumpCurve(points);
        } catch (IllegalArgumentException e) {
            throw new BadValueException(e.getMessage() + "; allowed: " + allowed());
        }
    }

    /** A flow and a head, or what is allowed in their place. */
    static Point point(Object item, String allowed) throws BadValueException {
        String[] parts =
                item instanceof String text ? text.strip().split("\\s*(?:;|,\\s|\\sat\\s)\\s*", -1) : new String[0];
        if (parts.length != 2) {
            throw BadValueException.of(item, allowed);
        }
        Optional<LoneMark> mark = LoneMark.of(parts[0]).filter(m -> m.point() || !parts[0].matches(".*gal.*"));
        if (mark.isPresent()) {
            throw new BadValueException("found " + BadValueException.show(item) + "; in the flow "
                    + mark.get().told() + "; allowed: " + allowed);
        }
        try {
            return new Point(Quantity.parse(parts[0], Dimension.VOLUME_FLOW), headM(parts[1]));
        } catch (QuantityException e) {
            throw new BadValueException(e.getMessage() + "; allowed: " + allowed);
        }
    }

    private static double headM(String text) {
        try {
            return Quantity.parse(text.replaceAll(OF_WATER, ""), Dimension.LENGTH);
        } catch (QuantityException noLength) {
            try {
                return Quantity.parse(text, Dimension.PRESSURE) / KPA_PER_M;
            } catch (QuantityException noPressure) {
                throw noLength;
            }
        }
    }

    /** A flow that is read as it is meant. */
    static String flow(double m3s) {
        String text = Quantity.plain(m3s) + " m3/s";
        return LoneMark.of(text).map(LoneMark::decimals).orElse(text);
    }

    @Override
    public String write(PumpCurve value) {
        return value.points().stream()
                .map(point -> "\"" + flow(point.flowM3S()) + ", " + Quantity.plain(point.headM()) + " m\"")
                .collect(Collectors.joining(", ", "[", "]"));
    }

    @Override
    public String allowed() {
        return "a list of at least two points, each \"flow, head\" such as \"8 m3/h, 10 m\" or \"35 gal/min, 14 psi\", from"
                + " small flow to large, each with less head";
    }

    @Override
    public PumpCurve standIn() {
        return new PumpCurve(List.of(new Point(0, 2), new Point(1, 1)));
    }
}
