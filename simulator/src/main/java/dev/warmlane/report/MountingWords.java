package dev.warmlane.report;

import dev.warmlane.collector.Mounting;
import dev.warmlane.study.MountingOption;
import dev.warmlane.study.MountingStudy;
import dev.warmlane.study.RowSpacing;
import dev.warmlane.units.Measure;

/** A mounting option in a line. */
final class MountingWords {

    private MountingWords() {}

    static String of(Numbers numbers, MountingStudy study, MountingStudy.Compared one) {
        return one.option()
                .match(
                        flat -> "mats lying on the roof",
                        racks -> racks(numbers, study, racks),
                        pitched -> pitched(numbers, study, pitched));
    }

    private static String racks(Numbers numbers, MountingStudy study, MountingOption.Racks racks) {
        return (racks.tents() ? "tents of two racks back to back, " : "")
                + "tilt " + angle(numbers, racks.tiltDeg()) + ", facing " + angle(numbers, racks.azimuthDeg())
                + (racks.tents()
                        ? " and " + angle(numbers, racks.rack().turned().azimuthDeg())
                        : "")
                + " from north, " + numbers.show(Measure.LENGTH, racks.chordM()) + " up the slope, "
                + numbers.show(Measure.LENGTH, racks.clearanceM()) + " above the roof, back "
                + (racks.back().open()
                        ? "open"
                        : "boarded, " + numbers.show(Measure.FILM, racks.back().boardWm2K()))
                + (study.template().plan().isPresent() ? ", " : ", rows along the " + side(racks) + " side, ")
                + spacing(numbers, study, racks);
    }

    private static String side(MountingOption.Racks racks) {
        return racks.along() == MountingOption.RoofSide.LONG ? "longer" : "shorter";
    }

    private static String pitched(Numbers numbers, MountingStudy study, MountingOption.Pitched pitched) {
        Mounting.FlushOnPitchedRoof roof = pitched.mounting();
        return "flush on " + (roof.gable() ? "both slopes of " : "") + "a roof pitched "
                + angle(numbers, roof.tiltDeg())
                + ", facing " + angle(numbers, roof.azimuthDeg())
                + (roof.gable() ? " and " + angle(numbers, roof.otherAzimuthDeg()) : "") + " from north, "
                + (pitched.roofAreaM2().isPresent()
                        ? numbers.show(Measure.AREA, pitched.roofAreaM2().getAsDouble()) + " of it to cover"
                        : study.template().plan().isPresent()
                                ? "on a surface of the drawn roof, or with room for as much as its flat ones"
                                : "taken to have the usable area of the flat roof"
                                        + (roof.gable() ? ", half of it on either slope" : ""));
    }

    private static String spacing(Numbers numbers, MountingStudy study, MountingOption.Racks racks) {
        return racks.spacing()
                .match(
                        fixed -> (racks.tents() ? "a ridge every " : "a row every ")
                                + numbers.show(Measure.LENGTH, fixed.pitchM()),
                        unshaded -> unshaded(numbers, study, unshaded));
    }

    private static String unshaded(Numbers numbers, MountingStudy study, RowSpacing.Unshaded unshaded) {
        boolean noon = unshaded.fromSolarHour() == 12 && unshaded.toSolarHour() == 12;
        return "unshaded "
                + (noon
                        ? "at solar noon"
                        : "from " + hour(numbers, unshaded.fromSolarHour()) + " to "
                                + hour(numbers, unshaded.toSolarHour()) + " o'clock solar time")
                + " on "
                + numbers.show(unshaded.dateAt(
                        study.weather().site().latitudeDeg(), study.template().season()));
    }

    private static String hour(Numbers numbers, double hour) {
        return numbers.show(hour, hour == Math.rint(hour) ? 0 : 1);
    }

    private static String angle(Numbers numbers, double degrees) {
        return numbers.show(degrees, 0) + "°";
    }
}
