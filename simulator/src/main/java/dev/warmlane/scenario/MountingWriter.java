package dev.warmlane.scenario;

import dev.warmlane.scenario.CollectorKeys.MountingKind;
import dev.warmlane.study.MountingOption;
import dev.warmlane.study.RowSpacing;

/** Writes one section {@code [[mountings]]}. */
final class MountingWriter {

    private MountingWriter() {}

    static void write(TomlText out, MountingOption option) {
        out.section("[[mountings]]").key(MountingKeys.NAME, option.name());
        option.match(
                flat -> out.key(CollectorKeys.MOUNTING, MountingKind.FLAT)
                        .key(CollectorKeys.GAP, flat.mounting().gapM()),
                racks -> racks(out, racks),
                pitched -> {
                    CollectorWriter.pitched(out, pitched.mounting());
                    pitched.roofAreaM2().ifPresent(area -> out.key(MountingKeys.ROOF_AREA, area));
                    return out;
                });
        option.pricePerM2().ifPresent(price -> out.key(MountingKeys.PRICE, price));
    }

    private static TomlText racks(TomlText out, MountingOption.Racks racks) {
        out.key(CollectorKeys.MOUNTING, racks.tents() ? MountingKind.TENT : MountingKind.RACK)
                .key(CollectorKeys.TILT, racks.tiltDeg())
                .key(CollectorKeys.AZIMUTH, racks.azimuthDeg())
                .key(MountingKeys.CHORD, racks.chordM())
                .key(MountingKeys.CLEARANCE, racks.clearanceM());
        CollectorWriter.back(out, racks.back());
        out.key(CollectorKeys.WIND_RUN, racks.windRun()).key(CollectorKeys.INNER_WIND, racks.innerWind());
        racks.spacing().match(fixed -> out.key(MountingKeys.PITCH, fixed.pitchM()), unshaded -> spacing(out, unshaded));
        return out.key(MountingKeys.ROWS_ALONG, racks.along());
    }

    private static TomlText spacing(TomlText out, RowSpacing.Unshaded unshaded) {
        out.key(MountingKeys.SPACING, new SolarHoursKind.SolarHours(unshaded.fromSolarHour(), unshaded.toSolarHour()));
        unshaded.date().ifPresent(date -> out.key(MountingKeys.SPACING_DATE, date));
        return out;
    }
}
