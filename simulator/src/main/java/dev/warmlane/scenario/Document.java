package dev.warmlane.scenario;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.tomlj.TomlArray;
import org.tomlj.TomlTable;

/** A parsed file sorted into the sections of the schema; what fits none of them becomes a finding. */
final class Document {

    private final TomlTable root;
    private final Notes notes;
    private final Set<String> misspelt = new HashSet<>();

    Document(TomlTable root, Notes notes) {
        this.root = root;
        this.notes = notes;
        for (String name : root.keySet()) {
            if (Schema.section(name).isEmpty()) {
                unknown(name);
            }
        }
    }

    private void unknown(String name) {
        int line = Lines.of(root, name, 1);
        Object value = root.get(List.of(name));
        if (value instanceof TomlTable || (value instanceof TomlArray array && holdsTables(array))) {
            notes.error(line, name, "", "unknown section" + Nearest.section(name));
            Nearest.word(name, Schema.names()).ifPresent(misspelt::add);
        } else {
            notes.error(line, "", name, "stands outside any section; put it below one, such as [site]");
        }
    }

    /** A section that stands once. */
    Section one(SectionSchema schema) {
        String name = schema.name();
        Object value = root.get(List.of(name));
        if (value instanceof TomlTable table) {
            return Section.read(schema, name, Lines.of(root, name, 1), table, notes);
        }
        if (value != null) {
            String count = value instanceof TomlArray array && holdsTables(array) ? " once" : ", its keys below it";
            notes.error(Lines.of(root, name, 1), name, "", "is a section; write [" + name + "]" + count);
            return Section.unreadable(schema, notes);
        }
        if (misspelt.contains(name)) {
            return Section.unreadable(schema, notes);
        }
        if (schema.needed()) {
            notes.error(1, name, "", "missing section; " + schema.meaning() + "; it needs " + schema.needs());
            return Section.unreadable(schema, notes);
        }
        return Section.absent(schema, notes);
    }

    /** All sections of a schema that may stand any number of times. */
    List<Group> all(SectionSchema schema) {
        String name = schema.name();
        Object value = root.get(List.of(name));
        List<Group> groups = new ArrayList<>();
        if (value instanceof TomlArray array && holdsTables(array)) {
            for (int i = 0; i < array.size(); i++) {
                String label = array.size() == 1 ? name : name + " " + (i + 1);
                groups.add(group(schema, label, array.inputPositionOf(i).line(), array.getTable(i)));
            }
        } else if (value instanceof TomlTable table) {
            int line = Lines.of(root, name, 1);
            notes.error(line, name, "", "may stand several times; write [[" + name + "]]");
            groups.add(group(schema, name, line, table));
        } else if (value != null && !(value instanceof TomlArray array && array.isEmpty())) {
            notes.error(Lines.of(root, name, 1), name, "", "is a section; write [[" + name + "]], its keys below it");
        }
        return groups;
    }

    private static boolean holdsTables(TomlArray array) {
        return !array.isEmpty() && array.toList().stream().allMatch(TomlTable.class::isInstance);
    }

    private Group group(SectionSchema schema, String label, int line, TomlTable table) {
        List<Section> parts = new ArrayList<>();
        for (SectionSchema part : schema.parts()) {
            Object value = table.get(List.of(part.name()));
            int partLine = Lines.of(table, part.name(), line);
            String partLabel = label + "." + part.name();
            if (value instanceof TomlTable inner) {
                parts.add(Section.read(part, partLabel, partLine, inner, notes));
            } else if (value == null) {
                parts.add(Section.absent(part, partLabel, notes));
            } else {
                notes.error(
                        partLine, partLabel, "", "is a section; write " + schema.heading(part) + ", its keys below it");
                parts.add(Section.unreadable(part, notes));
            }
        }
        return new Group(Section.read(schema, label, line, table, notes), parts);
    }

    /**
     * One section and those inside it.
     *
     * @param main the section
     * @param parts one for each part of its schema, in that order
     */
    record Group(Section main, List<Section> parts) {}
}
