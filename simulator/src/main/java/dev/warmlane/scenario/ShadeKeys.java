package dev.warmlane.scenario;

import dev.warmlane.irradiance.Plane;
import dev.warmlane.pool.Screen;
import dev.warmlane.site.Horizon;

/** Keys of what hides sun and sky: the sections horizon and beside_pool. */
final class ShadeKeys {

    static final Key<String> FILE = Key.optional(
            "file",
            WordKinds.text(),
            "horizon around collectors and pool: a horizon profile of PVGIS as csv, or a csv of azimuth (clockwise from north)"
                    + " and height in degrees, seen from the folder of the scenario file",
            "what heights says, or level");
    static final Key<Horizon> HEIGHTS = Key.optional(
            "heights",
            new HorizonKind(),
            "the same written here: directions, clockwise from north, with the height of the horizon above the level there;"
                    + " straight between them, all the way round",
            "what file says, or level");
    static final Key<String> POOL_FILE =
            Key.optional("pool_file", WordKinds.text(), "the same for the pool where it differs", "as the collectors'");
    static final Key<Horizon> POOL_HEIGHTS = Key.optional(
            "pool_heights",
            new HorizonKind(),
            "the same for the pool where it differs; \"0 deg, 0 deg\" alone is level",
            "as the collectors'");

    static final SectionSchema HORIZON = SectionSchema.optional(
            "horizon",
            "how high hills, woods and far buildings reach; leave out what the weather file has in it already, as years of PVGIS do"
                    + " of hills unless they are asked for without",
            FILE,
            HEIGHTS,
            POOL_FILE,
            POOL_HEIGHTS);

    static final Key<String> NAME =
            Key.optional("name", WordKinds.text(), "what it is called", "its section and a number");
    static final Key<Double> DIRECTION = Key.required(
            "direction", Plane.AZIMUTH, "where it stands from the middle of the pool, clockwise from north");
    static final Key<Double> DISTANCE =
            Key.required("distance", Screen.DISTANCE, "how far it stands from the edge of the water");
    static final Key<Double> BREADTH =
            Key.required("breadth", Screen.BREADTH, "how broad it stands before whoever looks there from the pool");
    static final Key<Double> HEIGHT = Key.required("height", Screen.HEIGHT, "how high it stands above the water");

    static final SectionSchema BESIDE_POOL = SectionSchema.repeated(
            "beside_pool",
            "something tall beside the pool that shades it: a building, a hedge, a row of trees; taken as opaque",
            NAME,
            DIRECTION,
            DISTANCE,
            BREADTH,
            HEIGHT);

    private ShadeKeys() {}
}
