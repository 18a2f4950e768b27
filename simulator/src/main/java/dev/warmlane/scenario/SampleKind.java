package dev.warmlane.scenario;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;

/**
 * A way of writing something, named by a sample of it: {@code "1,234.5"}.
 *
 * @param <E> the ways
 */
record SampleKind<E extends Enum<E>>(Map<String, E> samples) implements Kind<E> {

    /** The constants of an enumeration by their samples. */
    static <E extends Enum<E>> Kind<E> of(Class<E> type, Function<E, String> sample) {
        Map<String, E> samples = new LinkedHashMap<>();
        Arrays.stream(type.getEnumConstants()).forEach(way -> samples.put(sample.apply(way), way));
        return new SampleKind<>(samples);
    }

    @Override
    public E read(Object toml) throws BadValueException {
        if (toml instanceof String text) {
            for (Map.Entry<String, E> one : samples.entrySet()) {
                if (plain(one.getKey()).equals(plain(text))) {
                    return one.getValue();
                }
            }
        }
        throw BadValueException.of(toml, allowed());
    }

    /** Whatever space and apostrophe the keyboard has. */
    private static String plain(String text) {
        return text.strip()
                .replace('\u00a0', ' ')
                .replace('\u202f', ' ')
                .replace('\u2019', '\'')
                .toLowerCase(Locale.ROOT);
    }

    @Override
    public String write(E value) {
        return samples.entrySet().stream()
                .filter(one -> one.getValue() == value)
                .map(one -> "\"" + one.getKey() + "\"")
                .findFirst()
                .orElseThrow();
    }

    @Override
    public String allowed() {
        return "written like \"" + String.join("\", \"", samples.keySet()) + "\"";
    }

    @Override
    public E standIn() {
        return samples.values().iterator().next();
    }
}
