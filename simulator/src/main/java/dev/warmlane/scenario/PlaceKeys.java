package dev.warmlane.scenario;

import dev.warmlane.site.Roof;
import dev.warmlane.site.Site;
import dev.warmlane.site.Terrain;
import dev.warmlane.units.DateOrder;
import dev.warmlane.units.NumberStyle;
import dev.warmlane.units.UnitSystem;
import dev.warmlane.weather.WeatherReadOptions;
import java.util.EnumSet;

/** Keys of the sections site, roof and report. */
final class PlaceKeys {

    static final Key<String> NAME =
            Key.optional("name", WordKinds.text(), "what the job is called", "the name of the scenario file");
    static final Key<String> WEATHER = Key.required(
            "weather", WordKinds.text(), "weather file of a typical year, seen from the folder of the scenario file");
    static final Key<String> YEARS = Key.optional(
            "years",
            WordKinds.text(),
            "weather files of real years of the same place: a folder of them, or one file of several years, seen from the"
                    + " folder of the scenario file; read with the three keys below as the typical year is",
            "no real years, unless the command is given some");
    static final Key<Double> UTC_OFFSET = Key.optional(
            "utc_offset",
            Site.UTC_OFFSET,
            "local standard time of the weather file minus UTC, such as \"-5 h\", where the file has it wrong or is in UTC",
            "the weather file's; for a file in UTC the one that goes with the longitude");
    static final Key<Double> IRRADIANCE_TIME = Key.optional(
            "irradiance_time",
            WeatherReadOptions.CENTRE,
            "time that the weather file's irradiance belongs to, after the start of its hour (the middle is \"0.5 h\");"
                    + " taken as it is, even where the sun contradicts",
            "what the file's format says, tested against the sun");
    static final Key<Double> WIND_HEIGHT = Key.optional(
            "wind_height",
            WeatherReadOptions.WIND_HEIGHT,
            "height above open ground that the weather file's wind was measured at, such as \"2 m\"",
            "the weather file's where it tells one, else 10 m");
    static final Key<Terrain> TERRAIN = Key.assumed(
            "terrain",
            WordKinds.choice(Terrain.class),
            "the ground that the wind crosses before it arrives at the roof",
            Terrain.SUBURBAN,
            "most pools stand among houses and trees");

    static final SectionSchema SITE = SectionSchema.needed(
            "site", "the place", NAME, WEATHER, YEARS, UTC_OFFSET, IRRADIANCE_TIME, WIND_HEIGHT, TERRAIN);

    static final Key<Double> LENGTH =
            Key.optional("length", Roof.LENGTH, "longer side of the roof", "required without area");
    static final Key<Double> WIDTH =
            Key.optional("width", Roof.WIDTH, "shorter side of the roof", "required without area");
    static final Key<Double> AREA = Key.optional(
            "area",
            Roof.AREA,
            "area of the roof, where a side is not known",
            "length times width; without a side the roof is taken for a square");
    static final Key<Double> HEIGHT = Key.required("height", Roof.HEIGHT, "height of the roof above the ground");
    static final Key<Double> ALBEDO = Key.assumed(
            "albedo", Roof.USUAL_ALBEDO, "share of short-wave that the bare roof reflects; a white membrane about 0.6");
    static final Key<Double> EMITTANCE =
            Key.assumed("emittance", Roof.USUAL_EMITTANCE, "long-wave emittance of the bare roof");
    static final Key<Double> U_VALUE = Key.assumed(
            "u_value",
            Roof.USUAL_U_VALUE,
            "heat transmission from the roof's surface to the room below; insulated 0.25, bare deck 2");
    static final Key<Double> ROOM_TEMPERATURE =
            Key.assumed("room_temperature", Roof.USUAL_ROOM_TEMPERATURE, "temperature of the room below");
    static final Key<Double> ROUGHNESS = Key.assumed(
            "roughness",
            Roof.USUAL_ROUGHNESS,
            "roughness factor of the bare roof for forced convection, very smooth 1 to very rough");
    static final Key<Double> WIND_SPEED_RATIO = Key.assumed(
            "wind_speed_ratio",
            Roof.USUAL_WIND_SPEED_RATIO,
            "wind speed along the roof over the undisturbed speed at its height; parapets and neighbours lower it");
    static final Key<Double> USABLE_SHARE =
            Key.assumed("usable_share", Roof.USUAL_USABLE_SHARE, "share of the roof's area that collectors may cover");

    static final SectionSchema ROOF = SectionSchema.needed(
            "roof",
            "the flat roof that collectors lie or stand on, or the building that carries a pitched one",
            LENGTH,
            WIDTH,
            AREA,
            HEIGHT,
            ALBEDO,
            EMITTANCE,
            U_VALUE,
            ROOM_TEMPERATURE,
            ROUGHNESS,
            WIND_SPEED_RATIO,
            USABLE_SHARE);

    static final Key<String> TITLE = Key.optional("title", WordKinds.text(), "title of the report", "the job's name");
    static final Key<UnitSystem> UNITS = Key.convention(
            "units",
            WordKinds.choice(EnumSet.of(UnitSystem.METRIC, UnitSystem.US)),
            "units of the report; those in this file may be of either kind whatever is chosen here. US reports tell heat in"
                    + " therms, of a pool that electricity heats in kWh",
            UnitSystem.METRIC);

    static final Key<NumberStyle> NUMBERS = Key.convention(
            "numbers",
            SampleKind.of(NumberStyle.class, NumberStyle::sample),
            "how the report writes numbers; csv files have a decimal point whatever is chosen here",
            NumberStyle.COMMA_POINT);
    static final Key<DateOrder> DATES = Key.optional(
            "dates",
            SampleKind.of(DateOrder.class, DateOrder::sample),
            "how the report writes dates",
            "\"May 31\" with US units, else \"31 May\"");

    static final Key<String> COMPANY = letterhead("company", "who hands the report over, printed at its head");
    static final Key<String> CONTACT =
            letterhead("contact", "how to reach them: a name, a telephone number, an address");
    static final Key<String> LOGO = letterhead(
            "logo",
            "picture at its head, a PNG or JPEG file of at most " + Logo.AT_MOST_BYTES / 1000
                    + " kB, seen from the folder of the scenario file");
    static final Key<String> PREPARED_FOR = letterhead("prepared_for", "whom the report is for");
    static final Key<String> OFFER = letterhead("offer", "number of the offer");
    static final Key<String> DATE = letterhead("date", "date of the report, written as it is to be printed");
    static final Key<String> PLACE = Key.optional("place", WordKinds.text(), "name of the place", "the weather file's");

    static final SectionSchema REPORT = SectionSchema.optional(
            "report",
            "how the report is wanted",
            TITLE,
            UNITS,
            NUMBERS,
            DATES,
            COMPANY,
            CONTACT,
            LOGO,
            PREPARED_FOR,
            OFFER,
            DATE,
            PLACE);

    private PlaceKeys() {}

    private static Key<String> letterhead(String name, String meaning) {
        return Key.optional(name, WordKinds.text(), meaning, "nothing is printed");
    }
}
