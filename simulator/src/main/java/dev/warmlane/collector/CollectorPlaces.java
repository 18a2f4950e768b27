package dev.warmlane.collector;

import dev.warmlane.irradiance.RackRows;
import dev.warmlane.irradiance.RowPlace;
import dev.warmlane.irradiance.Skylines;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A collector of some model and flow, mounted some way on a roof in its weather, at every place that one of an array may
 * stand at: one, or for racks in rows the first row and the rest, for tents of both sides,
 * for a gable both slopes. What most of the work of a
 * {@link CollectorForcing} goes into, and the same for every number of rows, 2 and more, and however the flow divides.
 * Immutable.
 */
public final class CollectorPlaces {

    private final CollectorSurroundings around;
    private final CollectorArray array;
    private final Skylines skylines;
    private final List<Place> places;

    private CollectorPlaces(CollectorSurroundings around, CollectorArray array, Skylines skylines, List<Place> places) {
        this.around = around;
        this.array = array;
        this.skylines = skylines;
        this.places = places;
    }

    /**
     * Prepares the places of an array.
     *
     * @param around roof, weather and the models chosen
     * @param array what is mounted; its area does not matter
     * @param skylines what it sees of the sky, the roof's horizon counted in
     */
    public static CollectorPlaces of(CollectorSurroundings around, CollectorArray array, Skylines skylines) {
        return new CollectorPlaces(
                around,
                array,
                skylines,
                spots(array.mounting()).stream()
                        .map(spot -> Place.of(around, array, spot, skylines))
                        .toList());
    }

    /** The same racks with another wind at their inner rows: the first row stands as it did. */
    public CollectorPlaces withInnerWind(double value) {
        Mounting.OpenRack racks = array.mounting().racks().orElseThrow().withInnerWind(value);
        CollectorArray windy = array.withMounting(racks);
        List<Spot> spots = spots(racks);
        return new CollectorPlaces(
                around,
                windy,
                skylines,
                IntStream.range(0, spots.size())
                        .mapToObj(i -> spots.get(i).place == RowPlace.FIRST
                                ? places.get(i)
                                : Place.of(around, windy, spots.get(i), skylines))
                        .toList());
    }

    /**
     * The mounting that stands for all with the same places.
     *
     * @param mounting any
     */
    public static Mounting alike(Mounting mounting) {
        return mounting.match(
                flat -> mounting,
                racks -> {
                    RackRows layout = racks.layout();
                    RackRows few =
                            new RackRows(layout.rack(), layout.pitchM(), Math.min(2, layout.rows()), layout.tents());
                    return new Mounting.OpenRack(few, racks.back(), racks.windRun(), racks.innerWind());
                },
                pitched -> mounting);
    }

    /**
     * The forcing of an array of them.
     *
     * @param of the same as what they were prepared for, save its area, the number of its rows and how its flow divides
     * @throws IllegalArgumentException if it stands otherwise, or has another model or flow
     */
    public CollectorForcing of(CollectorArray of) {
        if (!alike(of.mounting()).equals(alike(array.mounting()))
                || !of.model().equals(array.model())
                || of.flowKgSM2() != array.flowKgSM2()) {
            throw new IllegalArgumentException(
                    "the places of " + array.name() + " are not those of " + of.name() + ": prepare them anew");
        }
        return CollectorForcing.of(around, of, places);
    }

    /** What collectors at the places of an array are exposed to. */
    static List<Exposure> exposures(CollectorSurroundings around, CollectorArray array, Skylines skylines) {
        return spots(array.mounting()).stream()
                .map(spot -> spot.exposure(around, array, skylines))
                .toList();
    }

    /** Where the collectors of a mounting stand, in the order of their {@link #shares}. */
    private static List<Spot> spots(Mounting mounting) {
        return mounting.match(
                flat -> List.of(new Spot(flat, RowPlace.FIRST)),
                racks -> sides(racks).stream()
                        .<Spot>flatMap(side -> placesOfRow(side).stream().map(place -> new Spot(side, place)))
                        .toList(),
                pitched -> pitched.slopes().stream()
                        .map(slope -> new Spot(slope, RowPlace.FIRST))
                        .toList());
    }

    /** Where one collector stands: a side of a mounting, and the row of racks. */
    private record Spot(Mounting side, RowPlace place) {

        Exposure exposure(CollectorSurroundings around, CollectorArray array, Skylines skylines) {
            double roughness = array.model()
                    .match(
                            Absorber::roughnessFactor,
                            certificate -> CertificateBalance.ROUGHNESS,
                            curve -> CertificateBalance.ROUGHNESS);
            Exposures exposures = new Exposures(around, array.model().incidence(), roughness, skylines);
            return side.match(
                    exposures::flat,
                    racks -> exposures.rack(racks, place, exposure -> heat(around, array, exposure)),
                    exposures::pitched);
        }
    }

    /** Shares of the places of an array in its area, in their order. */
    static List<Double> shares(Mounting mounting) {
        return mounting.match(
                flat -> List.of(1.0),
                racks -> {
                    List<Double> shares = new ArrayList<>();
                    int sides = sides(racks).size();
                    double single = 1.0 / (sides * racks.rows());
                    for (int side = 0; side < sides; side++) {
                        shares.add(single);
                        if (racks.rows() > 1) {
                            shares.add(1.0 / sides - single);
                        }
                    }
                    return shares;
                },
                pitched -> pitched.gable() ? List.of(0.5, 0.5) : List.of(1.0));
    }

    private static List<Mounting.OpenRack> sides(Mounting.OpenRack racks) {
        return racks.layout().tents() ? List.of(racks, racks.fromOtherSide()) : List.of(racks);
    }

    private static List<RowPlace> placesOfRow(Mounting.OpenRack racks) {
        return racks.rows() > 1 ? List.of(RowPlace.FIRST, RowPlace.INTERIOR) : List.of(RowPlace.FIRST);
    }

    static HourlyHeat heat(CollectorSurroundings around, CollectorArray array, Exposure exposure) {
        double flow = array.flowKgSM2();
        return array.model()
                .match(
                        absorber -> new PlateBalance(exposure, absorber, around.air(), flow),
                        certificate -> new CertificateBalance(exposure, certificate, around.air(), flow),
                        curve -> new MeasuredBalance(
                                curve, exposure, around.air(), around.windMs(exposure.aboveRoofM, exposure.windShare)));
    }

    /**
     * A place.
     *
     * @param exposure what a collector there is exposed to
     * @param curves its heat
     * @param hoursOutside daylight hours in which the wind lay outside the range its certificate was tested in
     */
    record Place(Exposure exposure, HeatCurves curves, int hoursOutside) {

        private static Place of(CollectorSurroundings around, CollectorArray array, Spot spot, Skylines skylines) {
            Exposure exposure = spot.exposure(around, array, skylines);
            HourlyHeat heat = heat(around, array, exposure);
            return new Place(
                    exposure, HeatCurves.of(around.weather().hours(), around.solved(), heat), heat.hoursOutside());
        }
    }
}
