package dev.warmlane.study;

import dev.warmlane.season.Installation;
import dev.warmlane.site.Terrain;
import java.util.Locale;

/** The ground that the wind crosses before it arrives at the roof. */
record TerrainParameter() implements Parameter {

    @Override
    public String name() {
        return "terrain around the roof";
    }

    @Override
    public String why() {
        return "the wind profile of a city and of open ground (ASHRAE Handbook of Fundamentals, from memory)";
    }

    @Override
    public Variation in(Installation installation) {
        return new Variation.Range(
                words(installation.terrain()),
                with(installation, WindExposure.SHELTERED),
                with(installation, WindExposure.EXPOSED));
    }

    private static Variation.End with(Installation installation, WindExposure exposure) {
        Terrain terrain = exposure.terrain(installation.terrain());
        return new Variation.End(
                words(terrain), installation.toBuilder().terrain(terrain).build());
    }

    private static Setting words(Terrain terrain) {
        return new Setting.Words(terrain.name().toLowerCase(Locale.ROOT));
    }
}
