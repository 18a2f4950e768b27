package dev.warmlane.report;

import dev.warmlane.collector.CollectorArray;
import dev.warmlane.report.chart.RoofSheet;
import dev.warmlane.roof.Bank;
import dev.warmlane.roof.Piece;
import dev.warmlane.roof.RoofLayout;
import dev.warmlane.roof.RoofPoint;
import dev.warmlane.roof.SurfaceLayout;
import dev.warmlane.season.Installation;
import dev.warmlane.study.ArrayLayout;
import dev.warmlane.study.MountingResult;
import dev.warmlane.study.MountingStudy;
import dev.warmlane.units.Measure;
import dev.warmlane.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;

/** How collectors are laid on a roof that is drawn: words, list of pieces, where each bank begins, and the plan. */
final class RoofSection {

    private static final Set<Place> TECHNICAL = Set.of(Place.TECHNICAL);

    private static final String LICENSED =
            "Loads on the roof, distances from edges and guards against falls, ballast and"
                    + " hold against the wind's uplift: licensed practice and the local code decide, not this drawing. It knows"
                    + " nothing of what the roof is made of.";

    /** A layout and whose it is. */
    private record Laid(CollectorArray array, RoofLayout layout, boolean fits) {}

    /** A row of the list of pieces. */
    private record Listed(String array, Piece piece) {}

    /** A row of the list of banks. */
    private record Placed(String array, SurfaceLayout on, int number, Bank bank) {}

    private final String report;
    private final List<Laid> laid;
    private final UnitSystem units;
    private final Numbers numbers;

    private RoofSection(String report, List<Laid> laid, Numbers numbers) {
        this.report = report;
        this.laid = laid;
        this.units = numbers.units();
        this.numbers = numbers;
    }

    /**
     * The collectors of an installation as they are described; empty where the roof is not drawn.
     *
     * @param report the report it stands in: its files are named by it, so that reports in one folder keep their own
     */
    static RoofSection of(String report, Installation installation, Numbers numbers) {
        return new RoofSection(
                report,
                ArrayLayout.of(installation).stream()
                        .map(one -> new Laid(one.array(), one.layout(), one.fits()))
                        .toList(),
                numbers);
    }

    /** The most of every mounting that is compared; its files are named as above. */
    static RoofSection of(String report, MountingStudy study, Numbers numbers) {
        return new RoofSection(
                report,
                study.sameRoof().stream()
                        .flatMap(result -> laid(study.template(), result).stream())
                        .toList(),
                numbers);
    }

    private static Optional<Laid> laid(Installation template, MountingResult result) {
        CollectorArray like = template.arrays().get(0);
        CollectorArray array = new CollectorArray(
                result.option().name(),
                result.fit().areaM2(),
                result.fit().mounting(),
                like.model(),
                like.flowKgSM2(),
                0,
                like.filling());
        return result.fit().layout().map(layout -> new Laid(array, layout, true));
    }

    /** The section; nothing in it where nothing is drawn. */
    Section section() {
        Section section = Section.of("On the roof", Place.DETAIL);
        if (laid.isEmpty()) {
            return section;
        }
        section = section.points(laid.stream().flatMap(this::points).toList())
                .with(table(pieces(), false))
                .words(LICENSED);
        for (Block.Plan plan : plans()) {
            section = section.with(TECHNICAL, plan);
        }
        return section.with(banksTable().captioned("Where each bank begins, from the corner 0 of its plan"));
    }

    /** Its tables for csv files. */
    List<Report.Data> data() {
        return laid.isEmpty()
                ? List.of()
                : List.of(
                        new Report.Data(report + "_roof_pieces", () -> table(pieces(), true)),
                        new Report.Data(report + "_roof_banks", this::banksTable));
    }

    private Stream<String> points(Laid one) {
        RoofLayout layout = one.layout;
        List<String> points = new ArrayList<>();
        points.add(one.array.name() + ": " + (one.fits ? "" : "does not fit; the most that does is ")
                + count(layout.panels(), "panel") + " in " + count(layout.banks(), "bank") + " and "
                + count(layout.rows(), "row") + ", " + numbers.show(Measure.AREA, layout.areaM2())
                + " of collector on " + numbers.show(Measure.AREA, layout.roofAreaM2()) + " of roof");
        points.add(one.array.name() + ": " + numbers.show(Measure.LENGTH, layout.headersM())
                + " of header, two to a bank; " + numbers.show(Measure.LENGTH, layout.pipesM())
                + " of pipe on the roof, supply and return from the corner of the first row across the rows and along"
                + " each to its last bank, without the way up");
        CollectorArray.Filling filling = one.array.filling();
        double wet = filling.wetKgM2();
        points.add(one.array.name() + ": full of water "
                + numbers.show(Measure.MASS, layout.weightKg(wet)) + ", "
                + numbers.show(Measure.WEIGHT, wet) + " of collector and "
                + numbers.show(Measure.WEIGHT, layout.weightPerRoofKgM2(wet))
                + " over the whole roof"
                + (filling.dryKgM2() > 0
                        ? ""
                        : ", the water alone, because the collector's own weight (dry_weight) is not known")
                + "; headers, pipes, racks and ballast come on top. It holds "
                + numbers.show(Measure.CONTENT, layout.waterL(filling.waterLM2())) + " without headers and pipes");
        return points.stream();
    }

    private static String count(int number, String what) {
        return number + " " + what + (number == 1 ? "" : "s");
    }

    private List<Listed> pieces() {
        return laid.stream()
                .flatMap(one -> one.layout.pieces().stream()
                        .filter(piece -> piece.count() > 0)
                        .map(piece -> new Listed(one.array.name(), piece)))
                .toList();
    }

    private Table table(List<Listed> pieces, boolean all) {
        TableBuilder<Listed> table = new TableBuilder<Listed>(units);
        if (all || laid.size() > 1) {
            table.words("collectors", "collectors", Listed::array);
        }
        return table.words("piece", "piece", one -> word(one.piece.kind()))
                .count("number", "number", one -> one.piece.count())
                .optional("length", "length", Measure.LAID_LENGTH, one -> some(one.piece.lengthM()))
                .optional("width", "width", Measure.LAID_LENGTH, one -> some(one.piece.widthM()))
                .build(pieces);
    }

    private static OptionalDouble some(double metres) {
        return metres > 0 ? OptionalDouble.of(metres) : OptionalDouble.empty();
    }

    private static String word(Piece.Kind kind) {
        return switch (kind) {
            case PANEL -> "panel";
            case HEADER_JOINT -> "joint between headers";
            case HEADER_CAP -> "cap of a header";
            case CONNECTION -> "connection of a bank";
            case PIPE -> "pipe, supply and return";
        };
    }

    private Table banksTable() {
        List<Placed> banks = new ArrayList<>();
        for (Laid one : laid) {
            for (SurfaceLayout on : one.layout.surfaces()) {
                int number = 1;
                for (Bank bank : on.banks()) {
                    banks.add(new Placed(one.array.name(), on, number++, bank));
                }
            }
        }
        TableBuilder<Placed> table = new TableBuilder<Placed>(units);
        if (laid.size() > 1) {
            table.words("collectors", "collectors", Placed::array);
        }
        return table.words("surface", "surface", one -> one.on.surface().name())
                .count("bank", "bank", Placed::number)
                .count("row", "row", one -> one.bank.row())
                .number("along\nthe row", "along", Measure.LAID_LENGTH, one -> corner(one)
                        .xM())
                .number("across", "across", Measure.LAID_LENGTH, one -> corner(one)
                        .yM())
                .count("panels", "panels", one -> one.bank.panels())
                .number("panel\nlength", "panel_length", Measure.LAID_LENGTH, one -> one.bank.panelLengthM())
                .number("bank\nalong", "bank_along", Measure.LAID_LENGTH, one -> one.bank
                        .place()
                        .lengthM())
                .number("bank\nacross", "bank_across", Measure.LAID_LENGTH, one -> one.bank
                        .place()
                        .depthM())
                .build(banks);
    }

    private static RoofPoint corner(Placed one) {
        return one.on.fromCorner(one.bank.place().corner());
    }

    private List<Block.Plan> plans() {
        List<Block.Plan> plans = new ArrayList<>();
        for (Laid one : laid) {
            for (SurfaceLayout on : one.layout.surfaces()) {
                if (!on.banks().isEmpty()) {
                    String name = report + "-roof-plan" + (plans.isEmpty() ? "" : "-" + (plans.size() + 1));
                    String title = one.array.name() + ": " + on.surface().name();
                    plans.add(new Block.Plan(name, () -> new RoofSheet(name, title, on, one.layout.laying(), numbers)));
                }
            }
        }
        return plans;
    }
}
