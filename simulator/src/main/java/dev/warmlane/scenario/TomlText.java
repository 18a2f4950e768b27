package dev.warmlane.scenario;

/** Grows the text of a scenario file, key by key, each in the form that its kind reads. */
final class TomlText {

    private final StringBuilder text = new StringBuilder();

    /** Starts a section. */
    TomlText section(String heading) {
        if (!text.isEmpty()) {
            text.append('\n');
        }
        text.append(heading).append('\n');
        return this;
    }

    /** Writes a remark on a line of its own. */
    TomlText remark(String words) {
        text.append("# ").append(words).append('\n');
        return this;
    }

    /** Writes a key. */
    <T> TomlText key(Key<T> key, T value) {
        text.append(key.name()).append(" = ").append(key.kind().write(value)).append('\n');
        return this;
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
