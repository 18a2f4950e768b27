package dev.warmlane;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Numbers of the library itself that may not move without a reason. They say nothing about truth: that is what published
 * values, measurements and invariants are for. They notice every term that is lost or turned round. {@code -Dkept.write=true}
 * writes them; whoever does says in docs/model.md what moved and why.
 */
public final class KeptNumbers {

    /** Six digits are kept; two machines agree to nine. */
    private static final double SHARE = 2e-6;

    private static final double LEAST = 2e-6;

    private final Path file;
    private final List<String> lines = new ArrayList<>();

    /** @param name file in the test resources, below {@code kept}, without its ending */
    public KeptNumbers(String name) {
        file = Path.of("src", "test", "resources", "kept", name.replace(' ', '-') + ".csv");
    }

    /** Adds a row: what it is, and its numbers. */
    public void add(String label, double... numbers) {
        StringBuilder line = new StringBuilder(label);
        for (double number : numbers) {
            line.append(',').append(String.format(Locale.ROOT, "%.7g", number));
        }
        lines.add(line.toString());
    }

    /** Compares all that was added, or writes it. */
    public void hold(String heading) {
        List<String> all =
                new ArrayList<>(List.of("# Written by the library itself; notices changes, proves nothing.", heading));
        all.addAll(lines);
        try {
            if (Boolean.getBoolean("kept.write")) {
                Files.createDirectories(file.getParent());
                Files.write(file, all);
            }
            compare(Files.readAllLines(file), all);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void compare(List<String> kept, List<String> now) {
        assertThat(now).hasSameSizeAs(kept);
        for (int line = 1; line < kept.size(); line++) {
            String[] before = kept.get(line).split(",");
            String[] after = now.get(line).split(",");
            assertThat(after).as(kept.get(line)).hasSameSizeAs(before);
            assertThat(after[0]).isEqualTo(before[0]);
            for (int cell = 1; line > 1 && cell < before.length; cell++) {
                double was = Double.parseDouble(before[cell]);
                assertThat(Double.parseDouble(after[cell]))
                        .as("%s, number %d", before[0], cell)
                        .isCloseTo(was, within(LEAST + SHARE * Math.abs(was)));
            }
        }
    }
}
