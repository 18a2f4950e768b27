package dev.warmlane.scenario;

import dev.warmlane.circuit.Hydraulics;
import dev.warmlane.hydraulics.MeasuredDrop;
import dev.warmlane.hydraulics.PumpCurve;
import dev.warmlane.physics.Constants;
import dev.warmlane.units.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.tomlj.TomlArray;

/** What a panel takes of pressure: points of a flow and a pressure in one text, the pressure also as a height of water. */
record PanelDropKind() implements Kind<MeasuredDrop> {

    private static final double DENSITY = Hydraulics.WATER.densityKgM3();

    private static final double PA_PER_M = DENSITY * Constants.GRAVITY;

    @Override
    public MeasuredDrop read(Object toml) throws BadValueException {
        if (!(toml instanceof TomlArray array)) {
            throw BadValueException.of(toml, allowed());
        }
        List<MeasuredDrop.Point> points = new ArrayList<>();
        for (Object item : array.toList()) {
            PumpCurve.Point point = PumpCurveKind.point(item, allowed());
            points.add(new MeasuredDrop.Point(point.flowM3S() * DENSITY, point.headM() * PA_PER_M));
        }
        try {
            return new MeasuredDrop(points);
        } catch (IllegalArgumentException e) {
            throw new BadValueException(e.getMessage() + "; allowed: " + allowed());
        }
    }

    @Override
    public String write(MeasuredDrop value) {
        return value.points().stream()
                .map(point -> "\"" + PumpCurveKind.flow(point.flowKgS() / DENSITY) + ", "
                        + Quantity.plain(point.dropPa() / PA_PER_M) + " m\"")
                .collect(Collectors.joining(", ", "[", "]"));
    }

    @Override
    public String allowed() {
        return "a list of at least two points of one panel, each \"flow, pressure\" such as \"0.2 L/s, 3 kPa\" or"
                + " \"4 gal/min, 1.2 ft\", from small flow to large, each with more pressure";
    }

    @Override
    public MeasuredDrop standIn() {
        return new MeasuredDrop(List.of(new MeasuredDrop.Point(0.1, 100), new MeasuredDrop.Point(1, 1000)));
    }
}
