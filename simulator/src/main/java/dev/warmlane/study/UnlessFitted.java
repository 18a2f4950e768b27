package dev.warmlane.study;

import dev.warmlane.season.Installation;

/**
 * A parameter whose doubt is in that of a fit, where there was one: wind and sun themselves, and evaporation, which was held
 * fixed while the wind made up for it.
 *
 * @param parameter the parameter
 */
record UnlessFitted(Parameter parameter) implements Parameter {

    @Override
    public String name() {
        return parameter.name();
    }

    @Override
    public String why() {
        return parameter.why();
    }

    @Override
    public Variation in(Installation installation) {
        return installation.fitted().isPresent()
                ? new Variation.NotHere("wind and sun were fitted to a log of the water")
                : parameter.in(installation);
    }
}
