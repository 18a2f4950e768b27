package dev.warmlane.scenario;

import dev.warmlane.collector.Absorber;
import dev.warmlane.collector.CertificateCurve;
import dev.warmlane.collector.CollectorArray;
import dev.warmlane.collector.Mounting;
import dev.warmlane.irradiance.IncidenceModifier;
import dev.warmlane.scenario.CollectorKeys.MountingKind;

/** Writes one section {@code [[collectors]]}. */
final class CollectorWriter {

    private CollectorWriter() {}

    static void write(TomlText out, CollectorArray array) {
        out.section("[[collectors]]").key(CollectorKeys.NAME, array.name()).key(CollectorKeys.AREA, array.areaM2());
        if (array.panelAreaM2() > 0) {
            out.key(CollectorKeys.PANEL_AREA, array.panelAreaM2());
        }
        out.key(CollectorKeys.FLOW, FlowKind.Flow.perArea(array.flowKgSM2()))
                .key(CollectorKeys.WATER_CONTENT, array.filling().waterLM2());
        if (array.filling().dryKgM2() > 0) {
            out.key(CollectorKeys.DRY_WEIGHT, array.filling().dryKgM2());
        }
        mounting(out, array.mounting());
        array.model()
                .match(absorber -> absorber(out, absorber), certificate -> certificate(out, certificate), curve -> {
                    throw new IllegalArgumentException("no collector of the file is a curve of one's own");
                });
        incidence(out, array.model().incidence());
    }

    private static TomlText mounting(TomlText out, Mounting mounting) {
        return mounting.match(
                flat -> out.key(CollectorKeys.MOUNTING, MountingKind.FLAT).key(CollectorKeys.GAP, flat.gapM()),
                rack -> {
                    out.key(CollectorKeys.MOUNTING, MountingKind.of(rack.layout()))
                            .key(CollectorKeys.TILT, rack.tiltDeg())
                            .key(CollectorKeys.AZIMUTH, rack.azimuthDeg())
                            .key(CollectorKeys.CHORD, rack.chordM())
                            .key(CollectorKeys.PITCH, rack.pitchM())
                            .key(CollectorKeys.ROWS, rack.rows())
                            .key(CollectorKeys.CLEARANCE, rack.clearanceM());
                    back(out, rack.back());
                    return out.key(CollectorKeys.WIND_RUN, rack.windRun())
                            .key(CollectorKeys.INNER_WIND, rack.innerWind());
                },
                pitched -> pitched(out, pitched));
    }

    /** Lying on a pitched roof. */
    static TomlText pitched(TomlText out, Mounting.FlushOnPitchedRoof pitched) {
        return out.key(CollectorKeys.MOUNTING, MountingKind.of(pitched))
                .key(CollectorKeys.TILT, pitched.tiltDeg())
                .key(CollectorKeys.AZIMUTH, pitched.azimuthDeg())
                .key(CollectorKeys.SLOPE_LENGTH, pitched.slopeLengthM())
                .key(CollectorKeys.GAP, pitched.gapM());
    }

    /** The back of racks, with what its board lets through. */
    static void back(TomlText out, Mounting.Back back) {
        out.key(CollectorKeys.BACK, CollectorKeys.BackKind.of(back));
        if (!back.open()) {
            out.key(CollectorKeys.BOARD_U_VALUE, back.boardWm2K());
        }
    }

    private static TomlText absorber(TomlText out, Absorber absorber) {
        out.section("[collectors.absorber]")
                .key(AbsorberKeys.ABSORPTANCE, absorber.absorptance())
                .key(AbsorberKeys.EMITTANCE, absorber.emittance())
                .key(AbsorberKeys.ROUGHNESS, absorber.roughnessFactor());
        return absorber.plateToFluid()
                .match(conductance -> out.key(AbsorberKeys.CONDUCTANCE, conductance.wm2K()), tubes -> out.key(
                                AbsorberKeys.TUBE_PITCH, tubes.tubePitchM())
                        .key(AbsorberKeys.OUTER_DIAMETER, tubes.outerDiameterM())
                        .key(AbsorberKeys.INNER_DIAMETER, tubes.innerDiameterM())
                        .key(AbsorberKeys.FIN_THICKNESS, tubes.finThicknessM())
                        .key(AbsorberKeys.CONDUCTIVITY, tubes.conductivityWmK())
                        .key(AbsorberKeys.INNER_FILM, tubes.innerFilmWm2K()));
    }

    private static TomlText certificate(TomlText out, CertificateCurve curve) {
        return out.section("[collectors.certificate]")
                .key(CertificateKeys.FORM, CertificateKeys.Form.ISO_9806_2017)
                .key(CertificateKeys.ETA0, curve.eta0())
                .key(CertificateKeys.A1, curve.a1())
                .key(CertificateKeys.A2, curve.a2())
                .key(CertificateKeys.A3, curve.a3())
                .key(CertificateKeys.A4, curve.a4())
                .key(CertificateKeys.A6, curve.a6())
                .key(CertificateKeys.A7, curve.a7())
                .key(CertificateKeys.A8, curve.a8())
                .key(
                        CertificateKeys.TEST_BACK,
                        curve.test().backOpen() ? CertificateKeys.TestBack.OPEN : CertificateKeys.TestBack.CLOSED)
                .key(CertificateKeys.TEST_LENGTH, curve.test().lengthM())
                .key(CertificateKeys.TEST_WIND_LOWEST, curve.test().lowestWindMs())
                .key(CertificateKeys.TEST_WIND_HIGHEST, curve.test().highestWindMs());
    }

    private static void incidence(TomlText out, IncidenceModifier incidence) {
        out.section("[collectors.incidence]");
        incidence.match(
                black -> out.key(IncidenceKeys.SURFACE, IncidenceKeys.Surface.MATTE_BLACK),
                table -> out.key(IncidenceKeys.BEAM, table.beamAtTens()).key(IncidenceKeys.DIFFUSE, table.diffuse()),
                coefficient ->
                        out.key(IncidenceKeys.B0, coefficient.b0()).key(IncidenceKeys.DIFFUSE, coefficient.diffuse()));
    }
}
