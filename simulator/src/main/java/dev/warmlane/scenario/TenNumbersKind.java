package dev.warmlane.scenario;

import dev.warmlane.irradiance.IncidenceModifier;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import org.tomlj.TomlArray;

/** Incidence angle modifiers for beam at every tenth degree, from 1 to 0. */
record TenNumbersKind() implements Kind<List<Double>> {

    private static final int COUNT = 10;

    private static final Kind<Double> NUMBER = Kinds.of(IncidenceModifier.BEAM);

    @Override
    public List<Double> read(Object toml) throws BadValueException {
        if (!(toml instanceof TomlArray array) || array.size() != COUNT) {
            throw BadValueException.of(toml, allowed());
        }
        List<Double> numbers = new ArrayList<>();
        for (Object item : array.toList()) {
            numbers.add(NUMBER.read(item));
        }
        if (numbers.get(0) != 1 || numbers.get(COUNT - 1) != 0) {
            throw BadValueException.of(toml, allowed());
        }
        return List.copyOf(numbers);
    }

    @Override
    public String write(List<Double> value) {
        return value.stream().map(NUMBER::write).collect(Collectors.joining(", ", "[", "]"));
    }

    @Override
    public String allowed() {
        return "a list of ten numbers, " + IncidenceModifier.BEAM.ends() + ", the first 1 and the last 0";
    }

    @Override
    public List<Double> standIn() {
        return Collections.nCopies(COUNT, 0.0);
    }
}
