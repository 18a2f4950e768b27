package dev.warmlane.report;

import dev.warmlane.collector.CollectorArray;
import dev.warmlane.report.chart.RoofSheet;
import dev.warmlane.roof.Bank;
import dev.warmlane.roof.LaidSurface;
import dev.warmlane.roof.Piece;
import dev.warmlane.roof.RoofLayout;
import dev.warmlane.roof.SurfaceLayout;
import dev.warmlane.season.Installation;
import dev.warmlane.study.ArrayLayout;
import dev.warmlane.study.MountingResult;
import dev.warmlane.study.MountingStudy;
import dev.warmlane.units.Measure;
import dev.warmlane.units.UnitSystem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** How collectors are laid on a roof that is drawn: words, list of pieces, where each bank begins, and the plan. */
final class RoofSection {

    private static final Set<Place> TECHNICAL = Set.of(Place.TECHNICAL);

    private static final String LICENSED =
            "Loads on the roof, distances from edges and guards against falls, ballast and"
                    + " hold against the wind's uplift: licensed practice and the local code decide, not this drawing. It knows"
                    + " nothing of what the roof is made of.";

    private static final String TOGETHER =
            "Collectors that share a surface are laid in the order in which they are described, each on what those before it"
                    + " leave: a walkway lies between them, and behind racks as much room as to their own next row";

    /** A layout and whose it is. */
    private record Laid(CollectorArray array, RoofLayout layout, boolean fits) {}

    /** A row of the list of pieces. */
    private record Listed(String array, Piece piece) {}

    /** A row of the list of banks. */
    private record Placed(LaidSurface surface, LaidSurface.On on, Bank bank) {

        LaidSurface.Place place() {
            return surface.place(on, bank);
        }
    }

    private final String report;
    private final List<Laid> laid;
    private final List<LaidSurface> surfaces;
    private final UnitSystem units;
    private final Numbers numbers;

    /** What lies on the roof together, once or several times. */
    private RoofSection(String report, List<List<Laid>> together, Numbers numbers) {
        this.report = report;
        this.laid = together.stream().flatMap(List::stream).toList();
        this.surfaces = together.stream().flatMap(all -> surfaces(all).stream()).toList();
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
                List.of(ArrayLayout.of(installation).stream()
                        .map(one -> new Laid(one.array(), one.layout(), one.fits()))
                        .toList()),
                numbers);
    }

    /** The most of every mounting that is compared; its files are named as above. */
    static RoofSection of(String report, MountingStudy study, Numbers numbers) {
        return new RoofSection(
                report,
                study.sameRoof().stream()
                        .flatMap(result -> laid(study.template(), result).map(List::of).stream())
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

    /** The surfaces on which anything lies, in the order in which they come up. */
    private static List<LaidSurface> surfaces(List<Laid> together) {
        Map<String, List<LaidSurface.On>> byName = new LinkedHashMap<>();
        for (Laid one : together) {
            for (SurfaceLayout layout : one.layout.surfaces()) {
                if (!layout.banks().isEmpty()) {
                    byName.computeIfAbsent(layout.surface().name(), name -> new ArrayList<>())
                            .add(new LaidSurface.On(one.array.name(), layout, one.layout.laying()));
                }
            }
        }
        return byName.values().stream().map(LaidSurface::new).toList();
    }

    /** The section; nothing in it where nothing is drawn. */
    Section section() {
        Section section = Section.of("On the roof", Place.DETAIL);
        if (laid.isEmpty()) {
            return section;
        }
        section = section.points(Stream.concat(laid.stream().flatMap(this::points), together().stream())
                        .toList())
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

    /** What is to be said of collectors that share surfaces; none where none do. */
    private List<String> together() {
        List<LaidSurface> shared = surfaces.stream()
                .filter(surface -> surface.collectors().size() > 1)
                .toList();
        return Stream.concat(
                        shared.isEmpty() ? Stream.empty() : Stream.of(TOGETHER),
                        shared.stream().map(this::weight))
                .toList();
    }

    private String weight(LaidSurface surface) {
        double kg = surface.collectors().stream()
                .mapToDouble(on -> on.layout().areaM2()
                        * laid.stream()
                                .filter(one -> one.layout.surfaces().contains(on.layout()))
                                .mapToDouble(one -> one.array.filling().wetKgM2())
                                .findFirst()
                                .orElseThrow())
                .sum();
        return surface.surface().name() + ": all collectors on it together are, full of water, "
                + numbers.show(Measure.MASS, kg) + ", "
                + numbers.show(Measure.WEIGHT, kg / surface.surface().outline().areaM2()) + " over all of it";
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
        List<Placed> banks = surfaces.stream()
                .flatMap(surface -> surface.collectors().stream()
                        .flatMap(on -> on.layout().banks().stream().map(bank -> new Placed(surface, on, bank))))
                .toList();
        TableBuilder<Placed> table = new TableBuilder<Placed>(units);
        if (laid.size() > 1) {
            table.words("collectors", "collectors", one -> one.on.name());
        }
        table.words("surface", "surface", one -> one.surface.surface().name())
                .count("bank", "bank", one -> one.on.layout().number(one.bank))
                .count("row", "row", one -> one.bank.row())
                .number("along\nthe row", "along", Measure.LAID_LENGTH, one -> one.place()
                        .alongM())
                .number("across", "across", Measure.LAID_LENGTH, one -> one.place()
                        .acrossM())
                .count("panels", "panels", one -> one.bank.panels())
                .number("panel\nlength", "panel_length", Measure.LAID_LENGTH, one -> one.bank.panelLengthM())
                .number("bank\nalong", "bank_along", Measure.LAID_LENGTH, one -> one.place()
                        .lengthM())
                .number("bank\nacross", "bank_across", Measure.LAID_LENGTH, one -> one.place()
                        .depthM());
        if (banks.stream().anyMatch(one -> one.place().askewDeg() != 0)) {
            table.optional(
                    "turned to\nthe left",
                    "turned_left",
                    Measure.ANGLE,
                    one -> one.place().askewDeg() == 0
                            ? OptionalDouble.empty()
                            : OptionalDouble.of(one.place().askewDeg()));
        }
        return table.build(banks);
    }

    private List<Block.Plan> plans() {
        List<Block.Plan> plans = new ArrayList<>();
        for (LaidSurface surface : surfaces) {
            String name = report + "-roof-plan" + (plans.isEmpty() ? "" : "-" + (plans.size() + 1));
            String title =
                    surface.collectors().stream().map(LaidSurface.On::name).collect(Collectors.joining(", ")) + ": "
                            + surface.surface().name();
            plans.add(new Block.Plan(name, () -> new RoofSheet(name, title, surface, numbers)));
        }
        return plans;
    }
}
