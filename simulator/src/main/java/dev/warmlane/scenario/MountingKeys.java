package dev.warmlane.scenario;

import dev.warmlane.collector.Mounting;
import dev.warmlane.season.Prices;
import dev.warmlane.study.MountingOption;
import dev.warmlane.study.RowSpacing;
import dev.warmlane.study.UsualMountings;
import java.time.MonthDay;

/** Keys of the section mountings; those that mean what they mean for collectors are the same. */
final class MountingKeys {

    static final Key<String> NAME =
            Key.required("name", WordKinds.text(), "what this mounting is called, no two alike");
    static final Key<Double> CHORD = Key.assumed(
            "chord",
            MountingOption.USUAL_CHORD,
            "length of a rack's collector up the slope; a panel is panel_area over chord wide");
    static final Key<Double> CLEARANCE =
            Key.assumed("clearance", MountingOption.USUAL_CLEARANCE, "height of a rack's lower edge above the roof");
    static final Key<Double> PITCH = Key.optional(
            "pitch",
            Mounting.OpenRack.PITCH,
            "distance from row to row on the roof, at least chord times cosine of tilt, for tents twice that",
            "from spacing; not with spacing");
    static final Key<SolarHoursKind.SolarHours> SPACING = Key.assumed(
            "spacing",
            new SolarHoursKind(),
            "rows of racks stand as close as they can without shading each other's fronts at these hours",
            usualHours(),
            "six hours around noon, no source");
    static final Key<MonthDay> SPACING_DATE = Key.optional(
            "spacing_date",
            WordKinds.date(),
            "the day that spacing holds on, such as \"12-21\"",
            "the day of the season with the lowest sun at noon");
    static final Key<MountingOption.RoofSide> ROWS_ALONG = Key.assumed(
            "rows_along",
            WordKinds.choice(MountingOption.RoofSide.class),
            "side of the roof that rows of racks run along",
            MountingOption.RoofSide.LONG,
            "few long rows");
    static final Key<Double> ROOF_AREA = Key.optional(
            "roof_area",
            MountingOption.Pitched.ROOF_AREA,
            "area of a pitched roof that collectors may cover",
            "the usable area of the flat roof");

    static final Key<Double> PRICE = Key.optional(
            "price",
            Prices.COLLECTOR,
            "cost of the collectors installed in this way, with what they stand on",
            "prices.collectors");

    static final SectionSchema MOUNTINGS = SectionSchema.repeated(
            "mountings",
            "a mounting to compare with others on the same roof; without any: " + UsualMountings.WORDS,
            NAME,
            CollectorKeys.MOUNTING,
            CollectorKeys.GAP,
            CollectorKeys.TILT,
            CollectorKeys.AZIMUTH,
            CHORD,
            CLEARANCE,
            CollectorKeys.BACK,
            CollectorKeys.BOARD_U_VALUE,
            CollectorKeys.WIND_RUN,
            CollectorKeys.INNER_WIND,
            SPACING,
            SPACING_DATE,
            PITCH,
            ROWS_ALONG,
            CollectorKeys.SLOPE_LENGTH,
            ROOF_AREA,
            PRICE);

    private MountingKeys() {}

    private static SolarHoursKind.SolarHours usualHours() {
        RowSpacing.Unshaded usual = MountingOption.USUAL_SPACING;
        return new SolarHoursKind.SolarHours(usual.fromSolarHour(), usual.toSolarHour());
    }
}
