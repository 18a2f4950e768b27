package dev.warmlane.scenario;

import dev.warmlane.scenario.CollectorKeys.MountingKind;
import dev.warmlane.study.MountingOption;
import dev.warmlane.study.RowSpacing;

/** Writes one section {@code [[mountings]]}. */
final class MountingWriter {

    private MountingWriter() {}

    static void write(TomlText out, MountingOption option) {
        out.section("[[mountings]]").key(MountingKeys.NAME, option.name());
        if (option instanceof MountingOption.Flat flat) {
            out.key(CollectorKeys.MOUNTING, MountingKind.FLAT)
                    .key(CollectorKeys.GAP, flat.mounting().gapM());
        } else if (option instanceof MountingOption.Racks racks) {
            out.key(CollectorKeys.MOUNTING, MountingKind.RACK)
                    .key(CollectorKeys.TILT, racks.tiltDeg())
                    .key(CollectorKeys.AZIMUTH, racks.azimuthDeg())
                    .key(MountingKeys.CHORD, racks.chordM())
                    .key(MountingKeys.CLEARANCE, racks.clearanceM());
            CollectorWriter.back(out, racks.back());
            out.key(CollectorKeys.WIND_RUN, racks.windRun()).key(CollectorKeys.INNER_WIND, racks.innerWind());
            spacing(out, racks.spacing());
            out.key(MountingKeys.ROWS_ALONG, racks.along());
        } else if (option instanceof MountingOption.Pitched pitched) {
            out.key(CollectorKeys.MOUNTING, MountingKind.PITCHED)
                    .key(CollectorKeys.TILT, pitched.mounting().tiltDeg())
                    .key(CollectorKeys.AZIMUTH, pitched.mounting().azimuthDeg())
                    .key(CollectorKeys.SLOPE_LENGTH, pitched.mounting().slopeLengthM())
                    .key(CollectorKeys.GAP, pitched.mounting().gapM());
            pitched.roofAreaM2().ifPresent(area -> out.key(MountingKeys.ROOF_AREA, area));
        }
    }

    private static void spacing(TomlText out, RowSpacing spacing) {
        if (spacing instanceof RowSpacing.FixedPitch fixed) {
            out.key(MountingKeys.PITCH, fixed.pitchM());
        } else if (spacing instanceof RowSpacing.Unshaded unshaded) {
            out.key(
                    MountingKeys.SPACING,
                    new SolarHoursKind.SolarHours(unshaded.fromSolarHour(), unshaded.toSolarHour()));
            unshaded.date().ifPresent(date -> out.key(MountingKeys.SPACING_DATE, date));
        }
    }
}
