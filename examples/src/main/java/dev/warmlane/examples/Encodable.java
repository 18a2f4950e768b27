package dev.warmlane.examples;

import java.io.FilterWriter;
import java.io.IOException;
import java.io.Writer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetEncoder;
import java.util.Map;

/**
 * Writes what the code page of a console has not with signs that it has. An encoder puts a question mark for each, and a
 * loss would be read as a gain: the code pages of Windows have no minus but the hyphen.
 */
final class Encodable extends FilterWriter {

    private static final Map<Character, String> OTHERWISE = Map.of(
            '\u2212', "-",
            '\u00a0', " ",
            '\u00b2', "2",
            '\u00b3', "3",
            '\u00d7', "x",
            '\u2018', "'",
            '\u2019', "'",
            '\u201c', "\"",
            '\u201d', "\"",
            '\u20ac', "EUR");

    private final CharsetEncoder encoder;

    Encodable(Writer out, Charset charset) {
        super(out);
        encoder = charset.newEncoder();
    }

    @Override
    public void write(int c) throws IOException {
        out.write(encodable(String.valueOf((char) c)));
    }

    @Override
    public void write(char[] text, int from, int length) throws IOException {
        out.write(encodable(String.valueOf(text, from, length)));
    }

    @Override
    public void write(String text, int from, int length) throws IOException {
        out.write(encodable(text.substring(from, from + length)));
    }

    private String encodable(String text) {
        if (encoder.canEncode(text)) {
            return text;
        }
        StringBuilder written = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            written.append(encoder.canEncode(c) ? String.valueOf(c) : OTHERWISE.getOrDefault(c, String.valueOf(c)));
        }
        return written.toString();
    }
}
