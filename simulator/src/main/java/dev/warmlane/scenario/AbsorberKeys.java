package dev.warmlane.scenario;

import dev.warmlane.collector.Absorber;
import dev.warmlane.collector.PlateToFluid.TubeSheet;

/** Keys of the section collectors.absorber. */
final class AbsorberKeys {

    private static final String WITH_TUBES = "required with tube_pitch";

    static final Key<Double> ABSORPTANCE =
            Key.assumed("absorptance", Absorber.USUAL_ABSORPTANCE, "short-wave absorptance at normal incidence");
    static final Key<Double> EMITTANCE = Key.assumed("emittance", Absorber.USUAL_EMITTANCE, "long-wave emittance");
    static final Key<Double> ROUGHNESS = Key.assumed(
            "roughness",
            Absorber.USUAL_ROUGHNESS,
            "roughness factor of the surface for forced convection, very smooth 1 to very rough");
    static final Key<Double> CONDUCTANCE = Key.assumed(
            "conductance", Absorber.USUAL_CONDUCTANCE, "conductance from plate to fluid; or give the tubes instead");
    static final Key<Double> TUBE_PITCH = Key.optional(
            "tube_pitch", TubeSheet.TUBE_PITCH, "distance from tube to tube", "from conductance; not with conductance");
    static final Key<Double> OUTER_DIAMETER = Key.optional(
            "outer_diameter", TubeSheet.OUTER_DIAMETER, "outer diameter of a tube, at most tube_pitch", WITH_TUBES);
    static final Key<Double> INNER_DIAMETER = Key.optional(
            "inner_diameter",
            TubeSheet.INNER_DIAMETER,
            "inner diameter of a tube, less than outer_diameter",
            WITH_TUBES);
    static final Key<Double> FIN_THICKNESS =
            Key.optional("fin_thickness", TubeSheet.FIN_THICKNESS, "thickness of the plate between tubes", WITH_TUBES);
    static final Key<Double> CONDUCTIVITY =
            Key.optional("conductivity", TubeSheet.CONDUCTIVITY, "conductivity of the material", WITH_TUBES);
    static final Key<Double> INNER_FILM = Key.optional(
            "inner_film",
            TubeSheet.INNER_FILM,
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
