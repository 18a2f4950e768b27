package dev.warmlane.scenario;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.tomlj.TomlTable;

/**
 * The values of one section of one file. Asking for a value never fails: what is missing or bad becomes a finding and a
 * stand-in is returned, so that the rest is read too; {@link #build} then refuses to build from stand-ins.
 */
final class Section {

    private final SectionSchema schema;
    private final String label;
    private final int line;
    private final Notes notes;
    private final boolean absent;
    private final Map<String, Given> given = new HashMap<>();
    private boolean failed;

    private Section(SectionSchema schema, String label, int line, Notes notes, boolean absent) {
        this.schema = schema;
        this.label = label;
        this.line = line;
        this.notes = notes;
        this.absent = absent;
    }

    /** Reads the values of a table; tables inside it that the schema knows are left to the caller. */
    static Section read(SectionSchema schema, String label, int line, TomlTable table, Notes notes) {
        Section section = new Section(schema, label, line, notes, false);
        for (String name : table.keySet()) {
            if (schema.part(name).isPresent()) {
                continue;
            }
            int keyLine = Lines.of(table, name, line);
            Object value = Objects.requireNonNull(table.get(List.of(name)));
            schema.key(name)
                    .ifPresentOrElse(
                            key -> section.readValue(key, value, keyLine), () -> section.unknown(name, keyLine));
        }
        return section;
    }

    /** A section that the file does not have: every value is the usual one. */
    static Section absent(SectionSchema schema, Notes notes) {
        return absent(schema, schema.name(), notes);
    }

    /** The same for a section that is called otherwise than its schema. */
    static Section absent(SectionSchema schema, String label, Notes notes) {
        return new Section(schema, label, 1, notes, true);
    }

    /** A section that the file should have and has not, or has in a wrong form: nothing more is said about its keys. */
    static Section unreadable(SectionSchema schema, Notes notes) {
        Section section = absent(schema, notes);
        section.failed = true;
        return section;
    }

    private void readValue(Key<?> key, Object toml, int keyLine) {
        try {
            Object written = key.kind().takesNumbers() ? Lines.asWritten(toml, notes.line(keyLine)) : toml;
            given.put(key.name(), new Given(key.kind().read(written), keyLine));
        } catch (BadValueException e) {
            given.put(key.name(), new Given(null, keyLine));
            fail(keyLine, key.name(), e.getMessage() + OtherWords.beside(schema.name(), key.name()));
        }
    }

    private void unknown(String name, int keyLine) {
        String hint = Nearest.key(name, schema);
        fail(keyLine, name, "unknown key" + hint);
        Nearest.word(name, schema.names()).ifPresent(n -> given.putIfAbsent(n, new Given(null, keyLine)));
    }

    /** The value of a key: given, else usual, else a finding that it is missing. */
    <T> T get(Key<T> key) {
        if (has(key)) {
            T value = given(key);
            return value == null ? key.kind().standIn() : value;
        }
        T usual = key.usual();
        if (usual != null) {
            if (!key.why().isEmpty()) {
                assume(key, usual, key.why());
            }
            return usual;
        }
        if (!(failed && absent)) {
            String when = key.otherwise().equals("required") ? "" : ", " + key.otherwise();
            fail(
                    line,
                    key.name(),
                    "missing" + when + "; " + key.meaning() + "; allowed: "
                            + key.kind().allowed());
        }
        return key.kind().standIn();
    }

    /** The value of a key, or one that follows from others and is recorded as assumed. */
    <T> T get(Key<T> key, T otherwise, String why) {
        if (!has(key)) {
            assume(key, otherwise, why);
            return otherwise;
        }
        return get(key);
    }

    /** Whether the file gives the key, with a good value or a bad one. */
    boolean has(Key<?> key) {
        return given.containsKey(key.name());
    }

    /** Whether the file gives the key with a good value, or does not give it. */
    boolean sound(Key<?> key) {
        Given found = given.get(key.name());
        return found == null || found.value != null;
    }

    /** Whether anything in the section was missing or bad so far. */
    boolean hasFailed() {
        return failed;
    }

    /** Reports a key that has no place here, if it is given. */
    void refuse(String why, Key<?>... keys) {
        for (Key<?> key : keys) {
            if (has(key)) {
                fail(lineOf(key), key.name(), why);
            }
        }
    }

    /** Reports that a key's value does not go with the rest. */
    void error(Key<?> key, String message) {
        fail(lineOf(key), key.name(), message);
    }

    /** Reports that a key's value is hardly meant. */
    void warning(Key<?> key, String message) {
        notes.warning(lineOf(key), label, key.name(), message);
    }

    /** Reports that the section as a whole is hardly meant. */
    void warning(String message) {
        notes.warning(line, label, "", message);
    }

    /** Reports something about the section itself. */
    void error(String message) {
        fail(line, "", message);
    }

    /** Whether the file has the section. */
    boolean present() {
        return !absent;
    }

    /** Makes a thing of the section's values, or nothing if any was missing or bad. */
    <T> @Nullable T build(Supplier<T> made) {
        if (failed) {
            return null;
        }
        try {
            return made.get();
        } catch (IllegalArgumentException e) {
            error(String.valueOf(e.getMessage()));
            return null;
        }
    }

    private <T> void assume(Key<T> key, T value, String why) {
        notes.assumed(label, key.name(), key.kind().show(value, notes.units()), why);
    }

    private void fail(int where, String key, String message) {
        failed = true;
        notes.error(where, label, key, message);
    }

    private int lineOf(Key<?> key) {
        Given found = given.get(key.name());
        return found == null ? line : found.line;
    }

    /** The cast is safe: a value is only ever stored under the name of the key whose kind read it. */
    @SuppressWarnings("unchecked")
    private <T> @Nullable T given(Key<T> key) {
        Given found = given.get(key.name());
        return found == null ? null : (T) found.value;
    }

    /** A value of the file and its line; no value where it was bad. */
    private record Given(@Nullable Object value, int line) {}
}
