package dev.warmlane.study;

import dev.warmlane.circuit.Hydraulics;
import dev.warmlane.circuit.PanelTubes;
import dev.warmlane.hydraulics.Course;
import dev.warmlane.hydraulics.Liquid;
import dev.warmlane.hydraulics.Manifold;
import dev.warmlane.hydraulics.Pipe;
import dev.warmlane.hydraulics.Way;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * How the water of one array goes over the roof: from the pipes across the rows into the rows, from the pipes along a row
 * into its banks, and there into the panels. Surfaces hang side by side at the end of the pipe that comes up.
 */
final class FieldFlow {

    /** Flows between which banks and rows are drawn, over that at an even split; beyond they go on as powers. */
    private static final double LEAST = 0.15;

    private static final double MOST = 3;

    private static final Liquid WATER = Hydraulics.WATER;

    /**
     * A bank where it hangs.
     *
     * @param surface name of its surface
     * @param number its number there, from 1
     * @param row row of banks, from 1
     * @param panels number of panels
     * @param panelLengthM length of a panel, m
     * @param panelWidthM width of a panel, m
     */
    record Hung(String surface, int number, int row, int panels, double panelLengthM, double panelWidthM) {

        double areaM2() {
            return panels * panelLengthM * panelWidthM;
        }
    }

    /**
     * Banks along a row.
     *
     * @param acrossM to the row from where the water comes up, m
     * @param alongM to each of its banks, m
     * @param banks its banks
     */
    record HungRow(double acrossM, List<Double> alongM, List<Hung> banks) {

        double areaM2() {
            return banks.stream().mapToDouble(Hung::areaM2).sum();
        }
    }

    /**
     * A bank with what flows through it.
     *
     * @param bank the bank
     * @param panels how its flow divides among its panels
     */
    record Flowing(Hung bank, Manifold.Split panels) {

        double kgS() {
            return panels.kgS().stream().mapToDouble(flow -> flow).sum();
        }
    }

    private record Kind(int panels, double lengthM) {}

    private record RowWay(HungRow row, Manifold banks, Way way) {}

    private record SurfaceWay(List<RowWay> rows, Manifold manifold, Way way) {}

    private final Hydraulics hydraulics;
    private final Manifold surfaces;
    private final List<SurfaceWay> surfaceWays;
    private final double evenKgSM2;
    private final Map<Kind, Way> bankWays = new HashMap<>();
    private final double pipesM;

    /**
     * Prepares the ways.
     *
     * @param rows the rows of each surface, none of them empty
     * @param evenKgSM2 flow for each m² around which it will be asked, kg/s m²
     */
    FieldFlow(Hydraulics hydraulics, List<List<HungRow>> rows, double evenKgSM2) {
        this.hydraulics = hydraulics;
        this.evenKgSM2 = evenKgSM2;
        this.surfaceWays = rows.stream().map(this::surface).toList();
        List<Pipe> none =
                Collections.nCopies(surfaceWays.size() - 1, hydraulics.pipe().straight(0));
        this.surfaces = new Manifold(
                surfaceWays.stream().map(SurfaceWay::way).toList(), none, none, hydraulics.banks(), false, WATER);
        double ways = hydraulics.banks() == Manifold.Outlet.FAR_END ? 3 : 2;
        this.pipesM = ways
                * rows.stream()
                        .flatMap(surface -> IntStream.range(0, surface.size()).mapToObj(i -> {
                            HungRow row = surface.get(i);
                            double across = row.acrossM - (i == 0 ? 0 : surface.get(i - 1).acrossM);
                            return across + row.alongM.get(row.alongM.size() - 1);
                        }))
                        .mapToDouble(metres -> metres)
                        .sum();
    }

    /** Length of all pipes on the roof, a reversed return with them, m. */
    double pipesM() {
        return pipesM;
    }

    /** Pressure that a flow uses up on the roof, Pa. */
    double dropPa(double kgS) {
        return surfaces.split(kgS).dropPa();
    }

    /** What flows through every bank. */
    List<Flowing> divide(double kgS) {
        List<Flowing> all = new ArrayList<>();
        List<Double> ofSurfaces = surfaces.split(kgS).kgS();
        for (int s = 0; s < surfaceWays.size(); s++) {
            SurfaceWay surface = surfaceWays.get(s);
            List<Double> ofRows = surface.manifold.split(ofSurfaces.get(s)).kgS();
            for (int r = 0; r < surface.rows.size(); r++) {
                RowWay row = surface.rows.get(r);
                List<Double> ofBanks = row.banks.split(ofRows.get(r)).kgS();
                for (int b = 0; b < ofBanks.size(); b++) {
                    Hung bank = row.row.banks.get(b);
                    all.add(new Flowing(bank, panels(bank).split(ofBanks.get(b))));
                }
            }
        }
        return all;
    }

    private Manifold panels(Hung bank) {
        return hydraulics.panel().bank(bank.panels, bank.panelLengthM, bank.panelWidthM, WATER);
    }

    private SurfaceWay surface(List<HungRow> rows) {
        List<RowWay> ways = rows.stream().map(this::row).toList();
        List<Double> across = rows.stream().map(HungRow::acrossM).toList();
        Manifold manifold = along(ways.stream().map(RowWay::way).toList(), across);
        double even = evenKgSM2 * rows.stream().mapToDouble(HungRow::areaM2).sum();
        Way whole = way(manifold, across).then(lead(across.get(0)));
        return new SurfaceWay(ways, manifold, drawn(whole, even));
    }

    private RowWay row(HungRow row) {
        Manifold manifold = along(row.banks.stream().map(this::bank).toList(), row.alongM);
        Way whole = way(manifold, row.alongM).then(lead(row.alongM.get(0)));
        return new RowWay(row, manifold, drawn(whole, evenKgSM2 * row.areaM2()));
    }

    /** All banks of a kind are one way. */
    private Way bank(Hung bank) {
        return bankWays.computeIfAbsent(new Kind(bank.panels, bank.panelLengthM), kind -> {
            Manifold panels = panels(bank);
            PanelTubes tubes = hydraulics.panel();
            Way whole = kgS -> panels.split(kgS).dropPa() + tubes.connection().dropPa(kgS, WATER);
            return drawn(whole, evenKgSM2 * bank.areaM2());
        });
    }

    private static Way drawn(Way way, double evenKgS) {
        return Course.of(way, LEAST * evenKgS, MOST * evenKgS);
    }

    private Manifold along(List<Way> ways, List<Double> atM) {
        List<Pipe> between = IntStream.range(1, ways.size())
                .mapToObj(i -> hydraulics.pipe().straight(atM.get(i) - atM.get(i - 1)))
                .toList();
        return new Manifold(ways, between, between, hydraulics.banks(), false, WATER);
    }

    /** A manifold with the way home of a reversed return. */
    private Way way(Manifold manifold, List<Double> atM) {
        double home = hydraulics.banks() == Manifold.Outlet.FAR_END ? atM.get(atM.size() - 1) - atM.get(0) : 0;
        Pipe back = hydraulics.pipe().straight(home);
        return kgS -> manifold.split(kgS).dropPa() + back.dropPa(kgS, WATER);
    }

    /** Supply and return to the first of them, on a way of a length each. */
    private Way lead(double metres) {
        return hydraulics.pipe().straight(2 * metres).way(WATER);
    }
}
