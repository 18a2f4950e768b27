package dev.warmlane.report.write;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.zip.InflaterInputStream;

/** What a test asks of a PDF as a browser prints it: its sheets and what is drawn on each. */
final class Pdf {

    private static final Pattern PAGE =
            Pattern.compile("/Type /Page\\b(?:(?!endobj).)*?/Contents (\\d+) 0 R", Pattern.DOTALL);
    private static final Pattern BASELINE = Pattern.compile("(?:-?[\\d.]+ ){5}(-?[\\d.]+) Tm");

    private final byte[] bytes;
    private final String text;
    private final List<String> sheets = new ArrayList<>();

    Pdf(byte[] bytes) throws IOException {
        this.bytes = bytes;
        this.text = new String(bytes, StandardCharsets.ISO_8859_1);
        Matcher page = PAGE.matcher(text);
        while (page.find()) {
            sheets.add(contents(Integer.parseInt(page.group(1))));
        }
    }

    byte[] bytes() {
        return bytes;
    }

    int sheets() {
        return sheets.size();
    }

    /** Lines of text on a sheet. */
    long lines(int sheet) {
        return BASELINE.matcher(sheets.get(sheet))
                .results()
                .map(m -> m.group(1))
                .distinct()
                .count();
    }

    /** Lines of text below the last line of a colour, as the PDF writes it, on a sheet; nothing where there is none. */
    OptionalLong linesAfter(String colour, int sheet) {
        String drawn = sheets.get(sheet);
        int last = drawn.lastIndexOf(colour);
        return last < 0
                ? OptionalLong.empty()
                : OptionalLong.of(BASELINE.matcher(drawn.substring(last))
                                .results()
                                .map(m -> m.group(1))
                                .distinct()
                                .count()
                        - 1);
    }

    /** The sheets on which something is drawn in a colour, as the PDF writes it. */
    List<Integer> sheetsWith(String colour) {
        return IntStream.range(0, sheets.size())
                .filter(i -> sheets.get(i).contains(colour))
                .boxed()
                .toList();
    }

    private String contents(int object) throws IOException {
        int at = text.indexOf("\n" + object + " 0 obj");
        int from = text.indexOf("stream\n", at) + "stream\n".length();
        try (InflaterInputStream in =
                new InflaterInputStream(new ByteArrayInputStream(bytes, from, bytes.length - from))) {
            return new String(in.readAllBytes(), StandardCharsets.ISO_8859_1);
        }
    }
}
