package dev.warmlane.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The fenced blocks of a document that show what a command prints. They are compared with what it prints; with
 * {@code -Ddocs.write=true} they are written again from it.
 */
final class ShownOutput {

    private ShownOutput() {}

    /**
     * Holds blocks to what was printed: a block begins with a line that is printed, spaces aside, and holds as many lines
     * as it shows.
     *
     * @param fence the pattern of a block: its text is the first group
     * @param blocks how many there are
     */
    static void isAsPrinted(Path document, Pattern fence, int blocks, String printed) throws IOException {
        String text = Files.readString(document).replace("\r\n", "\n");
        List<MatchResult> shown = fence.matcher(text).results().toList();
        assertThat(shown).hasSize(blocks);
        if (Boolean.getBoolean("docs.write")) {
            StringBuilder written = new StringBuilder(text);
            for (int i = blocks - 1; i >= 0; i--) {
                MatchResult block = shown.get(i);
                written.replace(block.start(1), block.end(1), current(block.group(1), printed));
            }
            Files.writeString(document, written);
            return;
        }
        assertThat(shown).allSatisfy(block -> assertThat(printed).contains(block.group(1)));
    }

    private static String current(String block, String printed) {
        List<String> shown = block.lines().toList();
        List<String> lines = printed.lines().toList();
        for (int first = 0; first + shown.size() <= lines.size(); first++) {
            if (same(shown.get(0), lines.get(first)) && same(shown.get(1), lines.get(first + 1))) {
                return String.join("\n", lines.subList(first, first + shown.size()));
            }
        }
        throw new AssertionError("nothing printed begins with \"" + shown.get(0) + "\"");
    }

    private static boolean same(String one, String other) {
        Matcher space = Pattern.compile("\\s+").matcher(one);
        return space.replaceAll(" ")
                .strip()
                .equals(other.replaceAll("\\s+", " ").strip());
    }
}
