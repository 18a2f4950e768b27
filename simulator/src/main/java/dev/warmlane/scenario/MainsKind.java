package dev.warmlane.scenario;

import dev.warmlane.pool.MainsWater;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.tomlj.TomlArray;

/** The temperature of mains water: from the air, one for all the year, or twelve. */
record MainsKind() implements Kind<MainsWater> {

    private static final String FROM_AIR = "from air";

    private static final Kind<Double> TEMPERATURE = Kinds.of(MainsWater.Monthly.TEMPERATURE);

    @Override
    public MainsWater read(Object toml) throws BadValueException {
        if (FROM_AIR.equals(toml)) {
            return new MainsWater.FromAir();
        }
        if (toml instanceof String) {
            return MainsWater.Monthly.constant(TEMPERATURE.read(toml));
        }
        if (toml instanceof TomlArray array && array.size() == 12) {
            List<Double> temperatures = new ArrayList<>();
            for (int month = 0; month < 12; month++) {
                temperatures.add(item(array.get(month), month));
            }
            return new MainsWater.Monthly(temperatures);
        }
        if (toml instanceof TomlArray array) {
            throw new BadValueException("found a list of " + array.size() + "; allowed: " + allowed());
        }
        throw BadValueException.of(toml, allowed());
    }

    private static double item(Object toml, int month) throws BadValueException {
        try {
            return TEMPERATURE.read(toml);
        } catch (BadValueException e) {
            throw new BadValueException("month " + (month + 1) + " of 12: " + e.getMessage());
        }
    }

    @Override
    public String write(MainsWater value) {
        return value.match(fromAir -> "\"" + FROM_AIR + "\"", monthly -> monthly.temperaturesC().stream()
                .map(TEMPERATURE::write)
                .collect(Collectors.joining(", ", "[", "]")));
    }

    @Override
    public String allowed() {
        return "\"" + FROM_AIR + "\", one temperature, or a list of twelve from January, " + TEMPERATURE.allowed();
    }

    @Override
    public MainsWater standIn() {
        return new MainsWater.FromAir();
    }
}
