package dev.warmlane.report.write;

import dev.warmlane.report.Block;
import dev.warmlane.report.Column;
import dev.warmlane.report.Report;
import dev.warmlane.report.Table;
import dev.warmlane.report.chart.Chart;
import dev.warmlane.report.chart.RoofSheet;
import dev.warmlane.scenario.Letterhead;
import java.util.Arrays;
import java.util.List;

/**
 * How much of a printed sheet something takes, as {@code style.css} sets it for print. An estimate on the high side: fonts
 * differ from one machine to the next, and what is estimated too low would tear the first sheet in two. Whatever is left
 * over goes to the chart, which fills its sheet.
 */
final class Paper implements Block.Kinds<Double> {

    /** Height inside the margins, mm: the lower of A4 (277) and Letter (259). */
    static final double HEIGHT_MM = 259;

    /** Width inside the margins, mm: the narrower of A4 (184) and Letter (190). */
    private static final double WIDTH_MM = 184;

    /** Letters alike in width, by that font's own metrics. */
    private static final String SLIM = "ijlI.,:;'|!";

    private static final String NARROW = "frt()[]/-\"";
    private static final String MIDDLE = "acekosvxyz";
    private static final String WIDE = "mwMW%@–—";
    private static final double SPACE = 0.32;

    /** Bold letters are this much wider than others; own measurement in the same font. */
    private static final double BOLD = 1.12;

    /** A chart lower than this cannot be read, mm; own choice, and what the page's style gives it at least. */
    private static final double CHART_MM = 46;

    /** A chart higher than this says no more, mm; own choice. */
    private static final double HIGHEST_CHART_MM = 110;

    /** Fine print stands in two columns from this many points on. */
    private static final double COLUMNS = 2;

    /** The widest picture at its head, mm. */
    private static final double LOGO_MM = 42;

    private static final double FINE = 0.86;
    private static final double LARGE = 1.08;

    /** How a sheet is set, as the class of that name of {@code style.css} does it. */
    enum Type {
        /** As all others are. */
        USUAL("", 8.4, 1.28, 1.7, 15),
        /** Where it is full; smaller, its fine print (6.6 pt) would be hard to read on paper. Own choice. */
        TIGHT(" tight", 7.7, 1.22, 1.35, 12);

        private final String style;
        private final double emMm;
        private final double line;
        private final double title;
        private final double logoMm;

        /** Points, height of lines over letters, the title's letters over others, highest picture at the head in mm. */
        Type(String style, double points, double line, double title, double logoMm) {
            this.style = style;
            this.emMm = points * 25.4 / 72;
            this.line = line;
            this.title = title;
            this.logoMm = logoMm;
        }

        /** What it adds to the classes of the sheet. */
        String style() {
            return style;
        }
    }

    private final Type type;
    private final boolean drawn;
    private final boolean answer;

    private Paper(Type type, boolean drawn, boolean answer) {
        this.type = type;
        this.drawn = drawn;
        this.answer = answer;
    }

    /** The height in which to draw a chart as wide as the sheet that has more room than it needs at least, mm. */
    static int chartPixels(double moreMm) {
        double mm = Math.min(HIGHEST_CHART_MM, CHART_MM + Math.max(0, moreMm));
        return (int) (mm / WIDTH_MM * Chart.WIDTH);
    }

    /** Of what stands above the first section, mm. */
    static double head(Report report, Type type) {
        return new Paper(type, false, false).head(report);
    }

    private double head(Report report) {
        return letterhead(report.letterhead())
                + lines(report.title(), WIDTH_MM, type.title) * type.title * type.emMm * 1.2
                + text(report.place(), WIDTH_MM, 1);
    }

    /** Sender and offer stand side by side, the picture beside the sender. */
    private double letterhead(Letterhead head) {
        if (head.isEmpty()) {
            return 0;
        }
        double half = WIDTH_MM / 2 - (head.logo().isPresent() ? LOGO_MM : 0);
        double words =
                Math.max(lines(LetterheadLines.sender(head), half), lines(LetterheadLines.offer(head), WIDTH_MM / 2));
        return Math.max(words * type.emMm * type.line, head.logo().isPresent() ? type.logoMm : 0) + 1.6 * type.emMm;
    }

    private int lines(List<String> all, double widthMm) {
        return all.stream().mapToInt(line -> lines(line, widthMm, 1)).sum();
    }

    /** Of a block, mm; {@code answer} where it stands in the section that answers. */
    static double of(Block block, Type type, boolean drawn, boolean answer) {
        return block.as(new Paper(type, drawn, answer));
    }

    /** Of a heading, mm. */
    static double heading(Type type, boolean answer) {
        return answer ? 0 : LARGE * type.emMm * (type.line + 1.05) + 0.5;
    }

    @Override
    public Double words(Block.Words words) {
        double size = answer ? LARGE : FINE;
        return text(words.text(), WIDTH_MM, size) + (answer ? 0.8 : 0.7) * size * type.emMm;
    }

    @Override
    public Double points(Block.Points points) {
        double columns = points.points().size() < COLUMNS ? 1 : COLUMNS;
        double width = (WIDTH_MM - (1.6 * columns + 2.2 * (columns - 1)) * FINE * type.emMm) / columns;
        double[] heights = points.points().stream()
                .mapToDouble(point -> text(point, width, FINE) + 0.24 * FINE * type.emMm)
                .toArray();
        return (columns == 1 ? Arrays.stream(heights).sum() : balanced(heights)) + 0.6 * type.emMm;
    }

    /** The higher of two columns, each as low as can be without breaking a point. */
    private static double balanced(double[] heights) {
        double all = Arrays.stream(heights).sum();
        double lowest = all;
        double left = 0;
        for (double height : heights) {
            left += height;
            lowest = Math.min(lowest, Math.max(left, all - left));
        }
        return lowest;
    }

    @Override
    public Double figures(Block.KeyFigures figures) {
        double width = (WIDTH_MM + 1.6) / Math.max(1, figures.figures().size()) - 1.6 - type.emMm;
        return figures.figures().stream()
                        .mapToDouble(figure -> text(figure.value(), width / BOLD, 1.3)
                                + text(figure.range(), width / BOLD, 1)
                                + text(figure.meaning(), width, 1)
                                + text(figure.beside(), width, 0.88))
                        .max()
                        .orElse(0)
                + 1.2 * type.emMm;
    }

    @Override
    public Double table(Table table) {
        double line = 0.9 * type.emMm * type.line;
        double row = line + 0.2 * 0.9 * type.emMm + 0.27;
        int head = table.columns().stream()
                .map(Column::header)
                .mapToInt(header -> header.split("\n", -1).length)
                .max()
                .orElse(1);
        int rows = (table.hasUnits() ? 1 : 0)
                + table.rows().size()
                + table.totals().size()
                + (table.caption().isEmpty() ? 0 : 1);
        return head * line + rows * row + 0.5 * type.emMm;
    }

    @Override
    public Double picture(Block.Picture picture) {
        return drawn && picture.chart().isPresent() ? CHART_MM : 0.0;
    }

    @Override
    public Double plan(Block.Plan plan) {
        return drawn ? plan.draw().get().height() / RoofSheet.PIXELS_PER_MM : 0.0;
    }

    private double text(String text, double widthMm, double size) {
        return text.isEmpty() ? 0 : lines(text, widthMm, size) * size * type.emMm * type.line;
    }

    /** Lines of a paragraph, broken between words. */
    private int lines(String text, double widthMm, double size) {
        double fits = Math.max(4, widthMm / (size * type.emMm));
        int lines = 1;
        double used = 0;
        for (String word : List.of(text.strip().split("\\s+", -1))) {
            double wide = width(word);
            if (used > 0 && used + SPACE + wide > fits) {
                lines++;
                used = 0;
            }
            used += (used > 0 ? SPACE : 0) + wide;
            // a word longer than the line is broken anywhere
            lines += (int) (used / fits);
            used %= fits;
        }
        return lines;
    }

    /** Of a word over the height of its letters, by the widths of DejaVu Sans, the widest font that browsers take by themselves. */
    private static double width(String word) {
        return word.codePoints().mapToDouble(Paper::letter).sum();
    }

    private static double letter(int c) {
        if (SLIM.indexOf(c) >= 0) {
            return 0.3;
        }
        if (NARROW.indexOf(c) >= 0) {
            return 0.4;
        }
        return MIDDLE.indexOf(c) >= 0 ? 0.59 : WIDE.indexOf(c) >= 0 ? 0.93 : 0.64;
    }
}
