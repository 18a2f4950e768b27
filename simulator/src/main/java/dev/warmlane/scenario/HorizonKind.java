package dev.warmlane.scenario;

import dev.warmlane.site.Horizon;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.tomlj.TomlArray;

/** A horizon: a list of directions, each with the height of the horizon there in one text. */
record HorizonKind() implements Kind<Horizon> {

    @Override
    public Horizon read(Object toml) throws BadValueException {
        if (!(toml instanceof TomlArray array) || array.isEmpty()) {
            throw BadValueException.of(toml, allowed());
        }
        List<Horizon.Height> heights = new ArrayList<>();
        for (Object item : array.toList()) {
            heights.add(height(item));
        }
        try {
            return new Horizon(heights);
        } catch (IllegalArgumentException e) {
            throw new BadValueException(e.getMessage() + "; allowed: " + allowed());
        }
    }

    private Horizon.Height height(Object item) throws BadValueException {
        String[] parts = item instanceof String text ? text.strip().split("\\s*(?:;|,\\s)\\s*", -1) : new String[0];
        if (parts.length != 2) {
            throw BadValueException.of(item, allowed());
        }
        return new Horizon.Height(
                Kinds.of(Horizon.AZIMUTH).read(parts[0]),
                Kinds.of(Horizon.HEIGHT).read(parts[1]));
    }

    @Override
    public String write(Horizon value) {
        return value.heights().stream()
                .map(one -> "\"" + Horizon.AZIMUTH.write(one.azimuthDeg()) + ", "
                        + Horizon.HEIGHT.write(one.heightDeg()) + "\"")
                .collect(Collectors.joining(", ", "[", "]"));
    }

    @Override
    public String allowed() {
        return "a list of directions with heights, each \"direction, height\" such as \"90 deg, 12 deg\"";
    }

    @Override
    public Horizon standIn() {
        return Horizon.LEVEL;
    }
}
