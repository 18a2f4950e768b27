package dev.warmlane.scenario;

import dev.warmlane.files.BoundedFile;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/** The text of a scenario file: UTF-8, with or without a byte order mark. */
final class ScenarioText {

    private static final char BYTE_ORDER_MARK = '\uFEFF';

    private static final int MEGABYTES_AT_MOST = 1;

    private ScenarioText() {}

    /**
     * Reads the text.
     *
     * @throws ScenarioException if it is a folder or not UTF-8, with the place of the first byte that is not
     */
    static String load(Path file, Notes notes) throws IOException {
        if (Files.isDirectory(file)) {
            notes.error(0, 0, "is a folder; name the scenario file that lies in it");
            notes.throwIfAny();
        }
        ByteBuffer bytes = ByteBuffer.wrap(BoundedFile.read(file, MEGABYTES_AT_MOST, "a scenario file"));
        CharBuffer chars = CharBuffer.allocate(bytes.remaining());
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
        boolean bad = decoder.decode(bytes, chars, true).isError();
        String text = chars.flip().toString();
        if (bad) {
            int line = 1 + (int) text.chars().filter(c -> c == '\n').count();
            int column = text.length() - text.lastIndexOf('\n');
            int found = bytes.get(bytes.position()) & 0xFF;
            notes.error(
                    line,
                    column,
                    String.format(Locale.ROOT, "the byte %02X is not UTF-8; save the file as UTF-8", found));
            notes.throwIfAny();
        }
        return !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text;
    }
}
