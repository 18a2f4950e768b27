package dev.warmlane.scenario;

import dev.warmlane.roof.Outline;
import dev.warmlane.roof.RoofPoint;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.tomlj.TomlArray;

/** An outline: its corners as one walks around it, each as two lengths in one text. */
record PointsKind() implements Kind<Outline> {

    @Override
    public Outline read(Object toml) throws BadValueException {
        if (!(toml instanceof TomlArray array)) {
            throw BadValueException.of(toml, allowed());
        }
        List<RoofPoint> corners = new ArrayList<>();
        for (Object item : array.toList()) {
            corners.add(corner(item));
        }
        try {
            return new Outline(corners);
        } catch (IllegalArgumentException e) {
            throw new BadValueException(e.getMessage() + "; allowed: " + allowed());
        }
    }

    private RoofPoint corner(Object item) throws BadValueException {
        String[] parts = item instanceof String text ? text.strip().split("\\s*(?:;|,\\s)\\s*", -1) : new String[0];
        if (parts.length != 2) {
            throw BadValueException.of(item, allowed());
        }
        Kind<Double> length = Kinds.of(RoofPoint.COORDINATE);
        return new RoofPoint(length.read(parts[0]), length.read(parts[1]));
    }

    @Override
    public String write(Outline value) {
        return value.corners().stream()
                .map(corner -> "\"" + RoofPoint.COORDINATE.write(corner.xM()) + ", "
                        + RoofPoint.COORDINATE.write(corner.yM()) + "\"")
                .collect(Collectors.joining(", ", "[", "]"));
    }

    @Override
    public String allowed() {
        return "a list of at least three corners, each \"x, y\" such as \"12 m, 3.5 m\"";
    }

    @Override
    public Outline standIn() {
        return Outline.rectangle(1, 1);
    }
}
