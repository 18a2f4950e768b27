package dev.warmlane.study;

import dev.warmlane.collector.Absorber;
import dev.warmlane.collector.CollectorArray;
import dev.warmlane.collector.Mounting;
import dev.warmlane.collector.PlateToFluid;
import dev.warmlane.study.Parameter.Ends;
import dev.warmlane.study.Parameter.Lens;
import dev.warmlane.units.Dimension;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;

/** Parameters of the collectors. Where there are several arrays, those that have the thing are varied together. */
final class CollectorParameters {

    private static final String CERTIFICATE =
            "the collectors are described by a certificate or a curve, which holds it";

    static final Parameter ROUGHNESS = new NumberParameter(
            "wind's cooling of the collector",
            Dimension.FRACTION,
            absorbers(Absorber::roughnessFactor, Absorber::withRoughnessFactor),
            Ends.at(1, 1.52),
            "very smooth to medium rough (ASHRAE after Walton, from memory)",
            CERTIFICATE);

    static final Parameter INNER_WIND = new NumberParameter(
            "wind at inner rows over the first",
            Dimension.FRACTION,
            arrays(CollectorParameters::innerWind, CollectorParameters::withInnerWind),
            Ends.at(0.5, 1.2),
            "wind load falls from row to row (Warsido et al. 2014, abstract), rows may stir the air too; what heat"
                    + " feels of either is not known",
            "there are no racks in several rows");

    static final List<Parameter> ALL = List.of(
            new NumberParameter(
                    "absorptance of the collector",
                    Dimension.FRACTION,
                    absorbers(Absorber::absorptance, Absorber::withAbsorptance),
                    Ends.around(0.03, 0.3, 1),
                    "black plastics lie within about 0.03 of each other; from memory, low certainty",
                    CERTIFICATE),
            new NumberParameter(
                    "emittance of the collector",
                    Dimension.FRACTION,
                    absorbers(Absorber::emittance, Absorber::withEmittance),
                    Ends.around(0.03, 0.05, 1),
                    "black plastics lie between 0.90 and 0.95; from memory, low certainty",
                    CERTIFICATE),
            ROUGHNESS,
            new NumberParameter(
                    "plate-to-fluid conductance",
                    Dimension.HEAT_TRANSFER_COEFFICIENT,
                    arrays(CollectorParameters::conductance, CollectorParameters::withConductance),
                    new Ends(given -> Math.max(5, given / 2), given -> Math.min(10_000, given * 2)),
                    "half and double: about the span of tubes of usual plastic mats (Duffie and Beckman chapter 6)",
                    "no conductance is given, but tubes, a certificate or a curve"),
            new NumberParameter(
                    "conductivity of the tubes",
                    Dimension.CONDUCTIVITY,
                    arrays(CollectorParameters::conductivity, CollectorParameters::withConductivity),
                    Ends.at(0.2, 0.5),
                    "polypropylene to dense polyethylene; handbook tables, from memory",
                    "no tubes are given, but a conductance, a certificate or a curve"),
            new NumberParameter(
                    "flow per collector area",
                    Dimension.MASS_FLOW_PER_AREA,
                    pumped(arrays(array -> Optional.of(array.flowKgSM2()), CollectorArray::withFlowKgSM2)),
                    Ends.at(0.03, 0.07),
                    "the range of common practice, no source",
                    ""),
            new NumberParameter(
                    "gap below the mats",
                    Dimension.LENGTH,
                    arrays(CollectorParameters::gap, CollectorParameters::withGap),
                    Ends.at(0.001, 0.02),
                    "mats pressed to the roof to mats on a grid; common practice, no source",
                    "no collectors lie on a roof, or a certificate or curve holds what their backs lose"),
            new NumberParameter(
                    "clearance below the racks",
                    Dimension.LENGTH,
                    arrays(CollectorParameters::clearance, CollectorParameters::withClearance),
                    Ends.at(0.1, 1),
                    "low frames to frames that one can reach under; common practice, no source",
                    "there are no racks"),
            new NumberParameter(
                    "conductance of the board behind racks",
                    Dimension.HEAT_TRANSFER_COEFFICIENT,
                    arrays(CollectorParameters::board, CollectorParameters::withBoard),
                    Ends.at(0.7, 11),
                    "50 mm of foam to 12 mm of plywood: conductivity over thickness, handbook tables, from memory",
                    "no racks are boarded, or a certificate or curve holds what their backs lose"),
            INNER_WIND,
            new TestBackParameter());

    private CollectorParameters() {}

    private static Lens arrays(
            Function<CollectorArray, Optional<Double>> get, BiFunction<CollectorArray, Double, CollectorArray> with) {
        return new Lens(
                i -> i.arrays().stream().map(get).flatMap(Optional::stream).toList(), (i, to) -> i.toBuilder()
                        .arrays(i.arrays().stream()
                                .map(array -> get.apply(array)
                                        .map(value -> with.apply(array, to.applyAsDouble(value)))
                                        .orElse(array))
                                .toList())
                        .build());
    }

    /** Where the circuit is described, another flow asks for another power of the pump and divides otherwise. */
    private static Lens pumped(Lens flow) {
        return new Lens(
                flow.get(), (i, to) -> WaterCircuit.applied(flow.change().apply(i, to)));
    }

    private static Lens absorbers(ToDoubleFunction<Absorber> get, BiFunction<Absorber, Double, Absorber> with) {
        return arrays(array -> absorber(array).map(get::applyAsDouble), (array, value) -> absorber(array)
                .map(absorber -> array.withModel(with.apply(absorber, value)))
                .orElse(array));
    }

    private static Optional<Absorber> absorber(CollectorArray array) {
        return array.model().absorber();
    }

    private static Optional<Double> conductance(CollectorArray array) {
        return absorber(array).flatMap(absorber -> absorber.plateToFluid()
                .match(conductance -> Optional.of(conductance.wm2K()), tubes -> Optional.empty()));
    }

    private static CollectorArray withConductance(CollectorArray array, double wm2K) {
        return withWay(array, new PlateToFluid.Conductance(wm2K));
    }

    private static Optional<PlateToFluid.TubeSheet> tubes(CollectorArray array) {
        return absorber(array)
                .flatMap(absorber -> absorber.plateToFluid().match(conductance -> Optional.empty(), Optional::of));
    }

    private static Optional<Double> conductivity(CollectorArray array) {
        return tubes(array).map(PlateToFluid.TubeSheet::conductivityWmK);
    }

    private static CollectorArray withConductivity(CollectorArray array, double wmK) {
        return tubes(array)
                .map(tubes -> withWay(array, tubes.withConductivityWmK(wmK)))
                .orElse(array);
    }

    private static CollectorArray withWay(CollectorArray array, PlateToFluid way) {
        return absorber(array)
                .map(absorber -> array.withModel(absorber.withPlateToFluid(way)))
                .orElse(array);
    }

    private static Optional<Double> gap(CollectorArray array) {
        if (absorber(array).isEmpty()) {
            return Optional.empty();
        }
        return array.mounting()
                .match(
                        flat -> Optional.of(flat.gapM()),
                        racks -> Optional.empty(),
                        pitched -> Optional.of(pitched.gapM()));
    }

    private static CollectorArray withGap(CollectorArray array, double gapM) {
        return array.withMounting(array.mounting()
                .match(flat -> new Mounting.FlatOnRoof(gapM), racks -> racks, pitched -> pitched.withGapM(gapM)));
    }

    private static Optional<Double> clearance(CollectorArray array) {
        return array.mounting().racks().map(Mounting.OpenRack::clearanceM);
    }

    private static Optional<Double> board(CollectorArray array) {
        boolean told = array.model()
                .match(absorber -> false, certificate -> !certificate.test().backOpen(), curve -> true);
        return array.mounting()
                .racks()
                .filter(racks -> !told && !racks.back().open())
                .map(racks -> racks.back().boardWm2K());
    }

    private static CollectorArray withBoard(CollectorArray array, double boardWm2K) {
        return withRacks(array, racks -> racks.withBack(Mounting.Back.boarded(boardWm2K)));
    }

    private static Optional<Double> innerWind(CollectorArray array) {
        return array.mounting().racks().filter(racks -> racks.rows() > 1).map(Mounting.OpenRack::innerWind);
    }

    private static CollectorArray withInnerWind(CollectorArray array, double share) {
        return withRacks(array, racks -> racks.withInnerWind(share));
    }

    private static CollectorArray withClearance(CollectorArray array, double clearanceM) {
        return withRacks(array, racks -> racks.withClearanceM(clearanceM));
    }

    private static CollectorArray withRacks(CollectorArray array, UnaryOperator<Mounting.OpenRack> change) {
        return array.mounting().racks().map(change).map(array::withMounting).orElse(array);
    }
}
