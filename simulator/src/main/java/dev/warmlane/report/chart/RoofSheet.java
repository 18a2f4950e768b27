package dev.warmlane.report.chart;

import dev.warmlane.report.Numbers;
import dev.warmlane.roof.Bank;
import dev.warmlane.roof.LaidSurface;
import dev.warmlane.roof.Obstacle;
import dev.warmlane.roof.Patch;
import dev.warmlane.roof.RoofPoint;
import dev.warmlane.roof.SurfaceLayout;
import dev.warmlane.units.Measure;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A surface of a roof with what lies on it, to scale and in black and white, to take onto the roof. Rows of banks run
 * from left to right. It is as wide as the print on A4 (184 mm), where one of {@link #SCALES} holds exactly; a sheet of
 * Letter has room for it too.
 */
public final class RoofSheet extends Painted {

    /** Width on paper, mm: what A4 has between the margins of a page. */
    public static final double WIDTH_MM = 184;

    /** So many times smaller than the roof, the first that fits; own choice of the usual ones. */
    static final int[] SCALES = {20, 25, 50, 75, 100, 125, 150, 200, 250, 300, 400, 500, 750, 1000, 1500, 2000, 5000};

    /** Most height on paper, mm, so that title and plan stand on one sheet of A4 or Letter. */
    private static final double MOST_HEIGHT_MM = 232;

    /** Pixels of its drawing for a millimetre on paper. */
    public static final double PIXELS_PER_MM = 96 / 25.4;

    private static final double LEFT = 52;
    private static final double RIGHT = 66;
    private static final double TOP = 62;
    private static final double BOTTOM = 152;
    private static final int LETTERS = 26;

    /** Height of the line that names collectors among several. */
    private static final double NAME = 16;

    /** Labels of distances stand no closer than this. */
    private static final double APART = 12;

    private static final Color INK = Color.BLACK;
    private static final Color GREY = new Color(120, 120, 120);

    private static final BasicStroke EDGE = new BasicStroke(2.4f);
    private static final BasicStroke LINE = new BasicStroke(1);
    private static final BasicStroke HAIR = new BasicStroke(0.5f);
    private static final BasicStroke DASHED =
            new BasicStroke(0.7f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {5, 3}, 0);

    private final String name;
    private final String title;
    private final LaidSurface laid;
    private final SurfaceLayout layout;
    private final Numbers numbers;
    private final int scale;

    /**
     * A sheet.
     *
     * @param name the name of its files, without an ending
     * @param title what stands above it
     * @param laid the surface and all that lies on it
     * @param numbers how its distances are written
     */
    public RoofSheet(String name, String title, LaidSurface laid, Numbers numbers) {
        this.name = name;
        this.title = title;
        this.laid = laid;
        this.layout = laid.first();
        this.numbers = numbers;
        this.scale = IntStream.of(SCALES)
                .filter(one -> LEFT + RIGHT + px(layout.lengthM(), one) <= width()
                        && TOP + bottom() + px(layout.depthM(), one) <= MOST_HEIGHT_MM * PIXELS_PER_MM)
                .findFirst()
                .orElse(SCALES[SCALES.length - 1]);
    }

    private static double px(double metres, int scale) {
        return metres * 1000 / scale * PIXELS_PER_MM;
    }

    /** Height of the foot, in which several collectors are named. */
    private double bottom() {
        return BOTTOM + namesHeight();
    }

    private double namesHeight() {
        return isShared() ? NAME * laid.collectors().size() + 6 : 0;
    }

    private boolean isShared() {
        return laid.collectors().size() > 1;
    }

    /** How many times smaller than the roof it is on paper. */
    public int scale() {
        return scale;
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public String title() {
        return title;
    }

    @Override
    public int width() {
        return (int) Math.round(WIDTH_MM * PIXELS_PER_MM);
    }

    @Override
    public int height() {
        return (int) Math.ceil(TOP + bottom() + px(layout.depthM(), scale));
    }

    /** At 300 dots to the inch it is to scale. */
    @Override
    double dotsPerPixel() {
        return 300 / 96.0;
    }

    @Override
    String onPaper() {
        return String.format(
                Locale.ROOT, " width=\"%.2fmm\" height=\"%.2fmm\"", width() / PIXELS_PER_MM, height() / PIXELS_PER_MM);
    }

    @Override
    void paint(Graphics2D g) {
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setColor(Palette.PAPER);
        g.fill(new Rectangle2D.Double(0, 0, width(), height()));
        Lettering.title(title, width() - 20).paint(g, 8, 22, INK);
        Lettering.small(subtitle(), width() - 16).paint(g, 8, 40, INK);
        draw(g, HAIR, area(layout.surface().outline().corners()));
        layout.surface().insideEdges().forEach(ring -> draw(g, DASHED, area(ring)));
        for (int i = 0; i < laid.collectors().size(); i++) {
            LaidSurface.On on = laid.collectors().get(i);
            for (Bank bank : on.layout().banks()) {
                bank(g, bank, on.layout().number(bank), Hatch.of(i));
            }
        }
        List<Obstacle> obstacles = layout.surface().obstacles();
        for (int i = 0; i < obstacles.size(); i++) {
            obstacle(g, obstacles.get(i), letter(i));
        }
        draw(g, EDGE, area(layout.surface().outline().corners()));
        distances(g);
        foot(g);
    }

    private String subtitle() {
        String banks = laid.panels() + (laid.panels() == 1 ? " panel" : " panels") + " in " + laid.banks()
                + (laid.banks() == 1 ? " bank, " : " banks, ") + numbers.show(Measure.AREA, laid.areaM2());
        return banks + (isShared() ? "" : fronts(laid.collectors().get(0))) + "; 1:" + scale
                + " where this sheet is printed " + numbers.show(WIDTH_MM, 0) + " mm wide";
    }

    private String fronts(LaidSurface.On on) {
        return on.laying()
                .match(
                        mats -> "",
                        racks -> "; fronts of the racks look "
                                + switch (laid.quarterTurns(on)) {
                                    case 0 -> "down the sheet";
                                    case 1 -> "to its right";
                                    case 2 -> "up the sheet";
                                    case 3 -> "to its left";
                                    default ->
                                        "to " + numbers.show(Measure.ANGLE, racks.facingDeg()) + " by the compass";
                                });
    }

    private void bank(Graphics2D g, Bank bank, int number, Hatch hatch) {
        g.setColor(INK);
        g.setStroke(HAIR);
        hatch.draw(g, bank.panelsPatch().corners().stream().map(this::at).toList());
        bank.headerPatches().forEach(header -> g.fill(area(header.corners())));
        bank.panelPatches().forEach(panel -> draw(g, HAIR, area(panel.corners())));
        draw(g, LINE, area(bank.place().corners()));
        Patch place = bank.place();
        Point2D middle = at(place.at(place.lengthM() / 2, place.depthM() / 2));
        Lettering words = Lettering.small(
                number + ":  " + bank.panels() + " × " + numbers.show(Measure.LAID_LENGTH, bank.panelLengthM()), 999);
        Lettering label =
                words.width() + 8 < px(place.lengthM(), scale) ? words : Lettering.small(String.valueOf(number), 999);
        double across = px(place.depthM() * (1 - bank.nearHeader() - bank.farHeader()), scale);
        if (label.width() + 4 < px(place.lengthM(), scale) && across > APART) {
            g.setColor(Palette.PAPER);
            g.fill(new Rectangle2D.Double(
                    middle.getX() - label.width() / 2 - 3, middle.getY() - 6.5, label.width() + 6, 13));
            label.paint(g, middle.getX() - label.width() / 2, middle.getY() + 4, INK);
        }
    }

    private void obstacle(Graphics2D g, Obstacle obstacle, String letter) {
        draw(g, DASHED, area(obstacle.reach()));
        Rectangle2D box = obstacle.shape()
                .match(
                        disc -> {
                            Point2D middle = at(disc.centre());
                            double r = px(disc.diameterM() / 2, scale);
                            return new Rectangle2D.Double(middle.getX() - r, middle.getY() - r, 2 * r, 2 * r);
                        },
                        block -> area(block.outline().corners()).getBounds2D());
        Path2D edges = obstacle.shape()
                .match(
                        disc -> new Path2D.Double(
                                new Ellipse2D.Double(box.getX(), box.getY(), box.getWidth(), box.getHeight())),
                        block -> area(block.outline().corners()));
        g.setColor(Palette.PAPER);
        g.fill(edges);
        draw(g, LINE, edges);
        g.setStroke(HAIR);
        List<Line2D> cross = obstacle.shape()
                .match(
                        disc -> cross(box, Math.sqrt(0.5)),
                        block -> cross(block.outline().corners()));
        cross.forEach(g::draw);
        Lettering label = Lettering.small(letter, 60);
        boolean inside = box.getWidth() > label.width() + 6 && box.getHeight() > APART + 2;
        double x = inside ? box.getCenterX() - label.width() / 2 : box.getMaxX() + 3;
        double y = inside ? box.getCenterY() + 4 : box.getMinY() - 1;
        g.setColor(Palette.PAPER);
        g.fill(new Rectangle2D.Double(x - 1.5, y - 9.5, label.width() + 3, 11.5));
        label.paint(g, x, y, INK);
    }

    /** Both diagonals of a box, shortened to a share of them around its middle. */
    private static List<Line2D> cross(Rectangle2D box, double share) {
        double x = box.getWidth() / 2 * share;
        double y = box.getHeight() / 2 * share;
        double u = box.getCenterX();
        double v = box.getCenterY();
        return List.of(new Line2D.Double(u - x, v - y, u + x, v + y), new Line2D.Double(u - x, v + y, u + x, v - y));
    }

    /** Both diagonals of four corners; none of any other number. */
    private List<Line2D> cross(List<RoofPoint> corners) {
        return corners.size() != 4
                ? List.of()
                : List.of(
                        new Line2D.Double(at(corners.get(0)), at(corners.get(2))),
                        new Line2D.Double(at(corners.get(1)), at(corners.get(3))));
    }

    /** A, B, ... Z, A1, B1, ... */
    public static String letter(int index) {
        return (char) ('A' + index % LETTERS) + (index < LETTERS ? "" : String.valueOf(index / LETTERS));
    }

    /** Overall sizes to the left and below; on the right and above running distances from the corner marked 0. */
    private void distances(Graphics2D g) {
        double left = LEFT;
        double right = LEFT + px(layout.lengthM(), scale);
        double bottom = TOP + px(layout.depthM(), scale);
        overall(g, left, bottom + 30, right, bottom + 30, layout.lengthM());
        overall(g, left - 30, bottom, left - 30, TOP, layout.depthM());
        Lettering.small("0", 20).paint(g, left - 10, bottom + 11, INK);
        double lowest = bottom;
        for (double from : rowStarts()) {
            double y = bottom - px(from, scale);
            g.setColor(GREY);
            g.setStroke(HAIR);
            g.draw(new Line2D.Double(right + 4, y, right + 14, y));
            if (y <= lowest) {
                Lettering.small(number(from), 60).paint(g, right + 17, y + 4, INK);
                lowest = y - APART;
            }
        }
        double reached = left;
        for (double from : bankStarts()) {
            double x = left + px(from, scale);
            g.setColor(GREY);
            g.setStroke(HAIR);
            g.draw(new Line2D.Double(x, bottom + 4, x, bottom + 10));
            Lettering label = Lettering.small(number(from), 60);
            if (x - label.width() / 2 >= reached) {
                label.paint(g, x - label.width() / 2, bottom + 21, INK);
                reached = x + label.width() / 2 + 4;
            }
        }
    }

    private void overall(Graphics2D g, double x1, double y1, double x2, double y2, double metres) {
        g.setColor(INK);
        g.setStroke(HAIR);
        g.draw(new Line2D.Double(x1, y1, x2, y2));
        boolean level = y1 == y2;
        for (double[] end : new double[][] {{x1, y1}, {x2, y2}}) {
            g.draw(new Line2D.Double(end[0] - 3, end[1] + 3, end[0] + 3, end[1] - 3));
        }
        Lettering label = Lettering.small(numbers.show(Measure.LAID_LENGTH, metres), 200);
        double x = level ? (x1 + x2 - label.width()) / 2 : Math.max(2, x1 - label.width() / 2);
        double y = level ? y1 + 4 : (y1 + y2) / 2 + 4;
        g.setColor(Palette.PAPER);
        g.fill(new Rectangle2D.Double(x - 3, y - 10, label.width() + 6, 13));
        label.paint(g, x, y, INK);
    }

    private double[] rowStarts() {
        return square().map(LaidSurface.Place::acrossM)
                .mapToDouble(from -> from)
                .sorted()
                .distinct()
                .toArray();
    }

    private double[] bankStarts() {
        return square().mapToDouble(place -> Math.rint(place.alongM() * 100) / 100)
                .sorted()
                .distinct()
                .toArray();
    }

    /** Where banks lie that do not stand askew on the sheet. */
    private Stream<LaidSurface.Place> square() {
        return laid.collectors().stream()
                .filter(on -> laid.quarterTurns(on) >= 0)
                .flatMap(on -> on.layout().banks().stream().map(bank -> laid.place(on, bank)));
    }

    private String number(double metres) {
        return numbers.show(Measure.LAID_LENGTH.in(numbers.units(), metres), 2);
    }

    /** Scale bar, north, and what the lines mean. */
    private void foot(Graphics2D g) {
        double y = height() - 92 - namesHeight();
        double bar = niceBarM();
        double x = LEFT;
        g.setColor(INK);
        for (int part = 0; part < 4; part++) {
            Rectangle2D box = new Rectangle2D.Double(x + px(bar * part / 4, scale), y, px(bar / 4, scale), 5);
            if (part % 2 == 0) {
                g.fill(box);
            }
            draw(g, HAIR, new Path2D.Double(box));
        }
        Lettering.small("0", 20).paint(g, x - 2, y + 17, INK);
        Lettering end = Lettering.small(numbers.show(Measure.LENGTH, bar), 90);
        end.paint(g, x + px(bar, scale) - end.width() / 2, y + 17, INK);
        NorthArrow.paint(g, width() - 46, y, layout.surface().compassDeg(layout.alongDeg() + 90), INK);
        names(g);
        String[] lines = {
            obstacles(),
            "Thick: edge.  Dashed: distance kept from edges and obstacles.  Black strips: headers.  Crossed: obstacles.",
            "Numbers below and on the right: where banks and rows begin, from the corner 0, in "
                    + Measure.LAID_LENGTH.unit(numbers.units()) + ".",
            "Check every size on the roof. Loads, edges and wind: licensed practice and the local code decide."
        };
        for (int i = 0; i < lines.length; i++) {
            Lettering.small(lines[i], width() - 16).paint(g, 8, height() - 50 + 14 * i, INK);
        }
    }

    /** Which collectors are hatched how, and which banks are theirs. */
    private void names(Graphics2D g) {
        for (int i = 0; isShared() && i < laid.collectors().size(); i++) {
            LaidSurface.On on = laid.collectors().get(i);
            double y = height() - 50 - namesHeight() + NAME * i;
            Rectangle2D swatch = new Rectangle2D.Double(8, y - 10, 24, 12);
            draw(g, LINE, new Path2D.Double(swatch));
            g.setStroke(HAIR);
            Hatch.of(i).lines(swatch).forEach(g::draw);
            int first = on.layout().firstBank();
            int last = first + on.layout().banks().size() - 1;
            Lettering.small(
                            (first == last
                                            ? "bank " + first
                                            : "banks " + first + (first + 1 == last ? " and " : " to ") + last)
                                    + ": " + on.name() + ", " + on.layout().panels()
                                    + (on.layout().panels() == 1 ? " panel, " : " panels, ")
                                    + numbers.show(Measure.AREA, on.layout().areaM2()) + fronts(on),
                            width() - 48)
                    .paint(g, 40, y, INK);
        }
    }

    private String obstacles() {
        List<Obstacle> all = layout.surface().obstacles();
        return IntStream.range(0, all.size())
                .mapToObj(i -> letter(i) + " " + all.get(i).name())
                .collect(Collectors.joining(",  "));
    }

    private double niceBarM() {
        double unit = Measure.LENGTH.in(numbers.units(), 1);
        double most = 0.3 * width() / px(1, scale) * unit;
        double ten = Math.pow(10, Math.floor(Math.log10(most)));
        double nice = most >= 5 * ten ? 5 * ten : most >= 2 * ten ? 2 * ten : ten;
        return nice / unit;
    }

    private Point2D at(RoofPoint point) {
        RoofPoint from = layout.fromCorner(point);
        return new Point2D.Double(LEFT + px(from.xM(), scale), TOP + px(layout.depthM() - from.yM(), scale));
    }

    private Path2D area(List<RoofPoint> corners) {
        Path2D path = new Path2D.Double();
        for (int i = 0; i < corners.size(); i++) {
            Point2D at = at(corners.get(i));
            if (i == 0) {
                path.moveTo(at.getX(), at.getY());
            } else {
                path.lineTo(at.getX(), at.getY());
            }
        }
        path.closePath();
        return path;
    }

    private static void draw(Graphics2D g, BasicStroke stroke, Path2D path) {
        g.setColor(INK);
        g.setStroke(stroke);
        g.draw(path);
    }
}
