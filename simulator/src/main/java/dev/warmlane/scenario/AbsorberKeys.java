package dev.warmlane.scenario;

import dev.warmlane.collector.Absorber;
import dev.warmlane.collector.PlateToFluid;
import dev.warmlane.units.Dimension;

/** Keys of the section collectors.absorber. */
final class AbsorberKeys {

    private static final String USUAL_MAT = "usual black plastic mat, from memory, low certainty";
    private static final String WITH_TUBES = "required with tube_pitch";

    static final Key<Double> ABSORPTANCE = Key.assumed(
            "absorptance",
            Kinds.share(0.3, 1),
            "short-wave absorptance at normal incidence",
            Absorber.USUAL_MAT.absorptance(),
            USUAL_MAT);
    static final Key<Double> EMITTANCE = Key.assumed(
            "emittance", Kinds.share(0.05, 1), "long-wave emittance", Absorber.USUAL_MAT.emittance(), USUAL_MAT);
    static final Key<Double> ROUGHNESS = Key.assumed(
            "roughness",
            Kinds.factor(1, 2.2),
            "roughness factor of the surface for forced convection, very smooth 1 to very rough",
            Absorber.USUAL_MAT.roughnessFactor(),
            "medium smooth, ASHRAE after Walton, from memory");
    static final Key<Double> CONDUCTANCE = Key.assumed(
            "conductance",
            Kinds.quantity(Dimension.HEAT_TRANSFER_COEFFICIENT, "W/m2K", 5, 10_000),
            "conductance from plate to fluid; or give the tubes instead",
            ((PlateToFluid.Conductance) Absorber.USUAL_MAT.plateToFluid()).wm2K(),
            USUAL_MAT);
    static final Key<Double> TUBE_PITCH = Key.optional(
            "tube_pitch",
            Kinds.quantity(Dimension.LENGTH, "mm", 3, 500),
            "distance from tube to tube",
            "from conductance; not with conductance");
    static final Key<Double> OUTER_DIAMETER = Key.optional(
            "outer_diameter",
            Kinds.quantity(Dimension.LENGTH, "mm", 2, 500),
            "outer diameter of a tube, at most tube_pitch",
            WITH_TUBES);
    static final Key<Double> INNER_DIAMETER = Key.optional(
            "inner_diameter",
            Kinds.quantity(Dimension.LENGTH, "mm", 1, 500),
            "inner diameter of a tube, less than outer_diameter",
            WITH_TUBES);
    static final Key<Double> FIN_THICKNESS = Key.optional(
            "fin_thickness",
            Kinds.quantity(Dimension.LENGTH, "mm", 0.2, 20),
            "thickness of the plate between tubes",
            WITH_TUBES);
    static final Key<Double> CONDUCTIVITY = Key.optional(
            "conductivity",
            Kinds.quantity(Dimension.CONDUCTIVITY, "W/mK", 0.05, 400),
            "conductivity of the material",
            WITH_TUBES);
    static final Key<Double> INNER_FILM = Key.optional(
            "inner_film",
            Kinds.quantity(Dimension.HEAT_TRANSFER_COEFFICIENT, "W/m2K", 20, 20_000),
            "film coefficient inside the tube",
            "assumed with tube_pitch: laminar flow, 4.364 k/D");

    static final SectionSchema ABSORBER = SectionSchema.optional(
            "absorber",
            "the absorber by its surface and build; without it and without a certificate a usual mat is assumed",
            ABSORPTANCE,
            EMITTANCE,
            ROUGHNESS,
            CONDUCTANCE,
            TUBE_PITCH,
            OUTER_DIAMETER,
            INNER_DIAMETER,
            FIN_THICKNESS,
            CONDUCTIVITY,
            INNER_FILM);

    private AbsorberKeys() {}
}
