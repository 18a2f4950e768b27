package dev.warmlane.report.chart;

import de.erichseifert.vectorgraphics2d.VectorGraphics2D;
import de.erichseifert.vectorgraphics2d.svg.SVGProcessor;
import de.erichseifert.vectorgraphics2d.util.PageSize;
import dev.warmlane.files.Printable;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A chart as SVG. What the drawing library writes is a file of its own, with coordinates to the last digit; here it is
 * made small, and fit to stand in a page beside others.
 */
final class Svg {

    private static final Pattern HEAD = Pattern.compile("^.*?<svg [^>]*>", Pattern.DOTALL);
    private static final Pattern TAG = Pattern.compile("<[^>]*>");
    private static final Pattern LONG_NUMBER = Pattern.compile("-?\\d+\\.(?:\\d{3,}(?:E[-+]?\\d+)?|\\d+E[-+]?\\d+)");
    private static final Pattern NEEDLESS_SPACE = Pattern.compile(">\\s+<");

    private Svg() {}

    static String of(Painted chart) {
        String drawn = HEAD.matcher(drawn(chart)).replaceFirst("");
        drawn = NEEDLESS_SPACE.matcher(drawn).replaceAll("><");
        drawn = TAG.matcher(drawn).replaceAll(tag -> Matcher.quoteReplacement(shortened(tag.group())));
        // names must not meet those of another chart in the same page
        drawn = drawn.replace("\"clip", "\"" + chart.name() + "-clip").replace("#clip", "#" + chart.name() + "-clip");
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 " + chart.width() + " " + chart.height() + "\""
                + chart.onPaper() + " role=\"img\" aria-label=\"" + escaped(chart.title()) + "\">" + drawn.strip();
    }

    /** A title may hold what somebody called a roof. */
    private static String escaped(String text) {
        return Printable.line(text)
                .replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }

    /** The numbers of a tag in hundredths of a pixel, without exponents: 1.2E-15, where something stands at 0, is 0. */
    static String shortened(String tag) {
        return LONG_NUMBER.matcher(tag).replaceAll(number -> new BigDecimal(number.group())
                .setScale(2, RoundingMode.HALF_EVEN)
                .stripTrailingZeros()
                .toPlainString());
    }

    private static String drawn(Painted chart) {
        VectorGraphics2D g = new VectorGraphics2D();
        chart.paint(g);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            new SVGProcessor()
                    .getDocument(g.getCommands(), new PageSize(chart.width(), chart.height()))
                    .writeTo(bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toString(StandardCharsets.UTF_8);
    }
}
