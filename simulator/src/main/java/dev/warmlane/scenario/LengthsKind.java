package dev.warmlane.scenario;

import dev.warmlane.roof.PanelRules;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.tomlj.TomlArray;

/** The lengths that panels are made in: one, or a list. */
record LengthsKind() implements Kind<PanelRules.Fixed> {

    private static final Kind<Double> LENGTH = Kinds.of(PanelRules.LENGTH);

    @Override
    public PanelRules.Fixed read(Object toml) throws BadValueException {
        List<Double> lengths = new ArrayList<>();
        for (Object item : toml instanceof TomlArray array ? array.toList() : List.of(toml)) {
            lengths.add(LENGTH.read(item));
        }
        try {
            return new PanelRules.Fixed(lengths);
        } catch (IllegalArgumentException e) {
            throw new BadValueException(e.getMessage() + "; allowed: " + allowed());
        }
    }

    @Override
    public String write(PanelRules.Fixed value) {
        return value.lengthsM().stream().map(LENGTH::write).collect(Collectors.joining(", ", "[", "]"));
    }

    @Override
    public String allowed() {
        return "a length or a list of lengths, each " + PanelRules.LENGTH.ends();
    }

    @Override
    public PanelRules.Fixed standIn() {
        return new PanelRules.Fixed(List.of(PanelRules.LENGTH.highest()));
    }
}
