package dev.warmlane.fit;

import dev.warmlane.heater.Boiler;
import dev.warmlane.pool.MakeUp;
import dev.warmlane.pool.Pool;
import dev.warmlane.pool.PoolSetting.Outdoor;
import dev.warmlane.season.Installation;
import java.util.Optional;

/** Reads unknowns of an installation, and puts others in. */
public final class PoolValues {

    private PoolValues() {}

    /** The surroundings of a pool under the sky. */
    static Outdoor outdoor(Installation built) {
        return built.pool()
                .setting()
                .outdoor()
                .orElseThrow(() -> new FitRefusal(
                        FitRefusal.Reason.INDOORS,
                        "\"" + built.name() + "\" is in a hall: wind and sun, which a fit finds, do not reach its water"));
    }

    /** Share of the sun on the surface that warms the water: what is absorbed of what is not shaded. */
    public static double sunShare(Installation built) {
        return built.pool().solarAbsorptance() * (1 - outdoor(built).shadedShare());
    }

    /**
     * The installation with another wind and sun. A share of the sun below the absorptance that is described is written as
     * shade, one above it as absorptance, because their product is all that a log can tell.
     *
     * @param windFactor see {@link Outdoor#windFactor}
     * @param sunShare see {@link #sunShare}
     */
    public static Installation with(Installation built, double windFactor, double sunShare) {
        Pool pool = built.pool();
        double absorptance = Math.max(pool.solarAbsorptance(), sunShare);
        Outdoor outdoor = outdoor(built);
        return built.toBuilder()
                .pool(pool.withSolarAbsorptance(absorptance)
                        .withSetting(new Outdoor(windFactor, 1 - sunShare / absorptance, outdoor.skyShare())))
                .build();
    }

    /** The installation with another make-up, L/day beyond what evaporates. */
    static Installation withMakeUp(Installation built, double litresPerDay) {
        return built.toBuilder()
                .makeUp(new MakeUp(litresPerDay, built.makeUp().mains()))
                .build();
    }

    /** The boiler, where that is what heats the pool. */
    static Optional<Boiler> boiler(Installation built) {
        return built.heater()
                .flatMap(heater -> heater.match(
                        Optional::of,
                        condensing -> Optional.empty(),
                        electric -> Optional.empty(),
                        heatPump -> Optional.empty(),
                        district -> Optional.empty()));
    }

    /** The installation with another efficiency of its boiler. */
    static Installation withEfficiency(Installation built, double efficiency) {
        Boiler boiler = boiler(built).orElseThrow();
        return built.toBuilder()
                .heater(new Boiler(
                        boiler.fuel(), efficiency, boiler.capacityKw(), boiler.setPointC(), boiler.hours()))
                .build();
    }
}
