package dev.warmlane.weather;

import dev.warmlane.files.BoundedFile;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/** A text file in memory with its lines numbered from 1; UTF-8, or Latin-1 where it is not valid UTF-8. */
final class FileText {

    private static final char BYTE_ORDER_MARK = '\uFEFF';
    /** Ctrl-Z: the end of a text file on machines of long ago, and still written by some tools. */
    private static final char END_OF_FILE = '\u001A';

    /** A year of every format has one or two, by the hour; forty years of the longest rows have as much as this. */
    static final int MEGABYTES_AT_MOST = 64;
    /** Ten times what the longest header of any format has, characters. */
    static final int LONGEST_LINE = 10_000;

    private final Path path;
    private final String text;
    /** Where each line starts, and one past the end. */
    private final int[] starts;

    private final int lines;

    private FileText(Path path, String text) {
        this.path = path;
        this.text = text;
        int[] at = new int[10_000];
        int count = 0;
        int start = 0;
        while (start < text.length()) {
            if (count + 2 > at.length) {
                at = Arrays.copyOf(at, at.length * 2);
            }
            at[count++] = start;
            int end = text.indexOf('\n', start);
            start = end < 0 ? text.length() : end + 1;
        }
        at[count] = text.length() + (text.endsWith("\n") ? 0 : 1);
        this.starts = at;
        this.lines = count;
    }

    static byte[] bytes(Path path) throws IOException {
        if (Files.isDirectory(path)) {
            throw new WeatherFileException(path, 0, "", "a folder", "a weather file", "Name the file that lies in it.");
        }
        return BoundedFile.read(path, MEGABYTES_AT_MOST, "a weather file");
    }

    /** The text of bytes that stood in a file, or in an archive. */
    static FileText of(Path path, byte[] bytes) throws WeatherFileException {
        Misfit.refuse(path, bytes);
        String text = decode(bytes);
        if (text.indexOf('\0') >= 0) {
            throw new WeatherFileException(
                    path,
                    0,
                    "",
                    "bytes that are not text",
                    "a text file in UTF-8, UTF-16 or Latin-1",
                    "Unpack the file if it is an archive, or save it as plain text.");
        }
        if (text.isBlank()) {
            throw new WeatherFileException(
                    path, 0, "", "an empty file", "a year of weather", "Fetch the file again from its publisher.");
        }
        FileText read = new FileText(path, oneLineEnding(text));
        if (!read.isJson()) {
            read.refuseLongLines();
        }
        return read;
    }

    private void refuseLongLines() throws WeatherFileException {
        for (int i = 0; i < lines; i++) {
            int length = starts[i + 1] - starts[i];
            if (length > LONGEST_LINE) {
                throw error(
                        i + 1,
                        "",
                        "a line of " + length + " characters",
                        "at most " + LONGEST_LINE,
                        "Name a weather file, or fetch it again: its line ends may be lost.");
            }
        }
    }

    /** The same file with its lines written in another way, line by line. */
    FileText rewritten(UnaryOperator<String> line) {
        StringBuilder all = new StringBuilder(text.length() + lines);
        for (int number = 1; number <= lines; number++) {
            all.append(line.apply(line(number))).append('\n');
        }
        return new FileText(path, all.toString());
    }

    private static String decode(byte[] bytes) {
        Charset wide = wide(bytes);
        if (wide != null) {
            String text = new String(bytes, wide);
            return withoutEndMark(!text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text);
        }
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return withoutEndMark(!text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text);
        } catch (CharacterCodingException e) {
            return withoutEndMark(new String(bytes, StandardCharsets.ISO_8859_1));
        }
    }

    /** UTF-16, by its mark, or by the empty half of its first letters; null where it is none. */
    private static @Nullable Charset wide(byte[] bytes) {
        if (Unpacked.startsWith(bytes, 0xFF, 0xFE)) {
            return StandardCharsets.UTF_16LE;
        }
        if (Unpacked.startsWith(bytes, 0xFE, 0xFF)) {
            return StandardCharsets.UTF_16BE;
        }
        if (bytes.length < 40 || (bytes[0] == 0) == (bytes[1] == 0)) {
            return null;
        }
        boolean little = bytes[1] == 0;
        for (int i = 0; i + 1 < 40; i += 2) {
            if (bytes[little ? i + 1 : i] != 0 || bytes[little ? i : i + 1] == 0) {
                return null;
            }
        }
        return little ? StandardCharsets.UTF_16LE : StandardCharsets.UTF_16BE;
    }

    private static String withoutEndMark(String text) {
        String stripped = text.stripTrailing();
        return !stripped.isEmpty() && stripped.charAt(stripped.length() - 1) == END_OF_FILE
                ? withoutEndMark(stripped.substring(0, stripped.length() - 1))
                : text;
    }

    /** Files come with LF, CR LF, both, or CR CR LF from a careless transfer. */
    private static String oneLineEnding(String text) {
        return text.indexOf('\r') < 0
                ? text
                : text.replace("\r\r\n", "\n").replace("\r\n", "\n").replace('\r', '\n');
    }

    /** What has lines of any length, or a single one. */
    boolean isJson() {
        int at = 0;
        while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
            at++;
        }
        return at < text.length() && text.charAt(at) == '{';
    }

    String whole() {
        return text;
    }

    int lines() {
        return lines;
    }

    /** The first line that is not blank: some tools write an empty one above the header. */
    int first() {
        int line = 1;
        while (line < lines && isBlank(line)) {
            line++;
        }
        return line;
    }

    /** A line without its ending; empty beyond the last. */
    String line(int number) {
        return number > lines ? "" : text.substring(starts[number - 1], starts[number] - 1);
    }

    /** The lines from the first to before the last. */
    String block(int first, int end) {
        return first > lines ? "" : text.substring(starts[first - 1], Math.min(text.length(), starts[end - 1]));
    }

    /** Whether a line has no character but blanks and the commas that a spreadsheet fills empty rows with. */
    boolean isBlank(int number) {
        if (number > lines) {
            return true;
        }
        for (int i = starts[number - 1]; i < starts[number] - 1; i++) {
            char c = text.charAt(i);
            if (c != ',' && !Character.isWhitespace(c)) {
                return false;
            }
        }
        return true;
    }

    int commasIn(int number) {
        return commas(starts[number - 1], starts[number] - 1);
    }

    /** The commas of a line up to its last cell that holds something: a spreadsheet pads lines to the longest. */
    int commasWithin(int number) {
        int end = starts[number] - 1;
        while (end > starts[number - 1] && (text.charAt(end - 1) == ',' || text.charAt(end - 1) == ' ')) {
            end--;
        }
        return commas(starts[number - 1], end);
    }

    private int commas(int from, int to) {
        int count = 0;
        for (int i = from; i < to; i++) {
            if (text.charAt(i) == ',') {
                count++;
            }
        }
        return count;
    }

    WeatherFileException error(int line, String column, String found, String expected, String remedy) {
        return new WeatherFileException(path, line, column, found, expected, remedy);
    }

    /** A number in a header line. */
    double number(int line, String what, String value) throws WeatherFileException {
        try {
            double number = Double.parseDouble(value.strip());
            if (Double.isFinite(number)) {
                return number;
            }
        } catch (NumberFormatException e) {
            // told below, together with what is no finite number
        }
        throw error(line, what, "\"" + value.strip() + "\"", "a number", "Correct the header of the file.");
    }
}
