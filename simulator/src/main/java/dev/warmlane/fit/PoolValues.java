package dev.warmlane.fit;

import dev.warmlane.heater.Boiler;
import dev.warmlane.pool.MakeUp;
import dev.warmlane.pool.PoolSetting.Outdoor;
import dev.warmlane.season.Installation;
import java.util.Optional;

/** Reads unknowns of an installation, and puts others in. */
final class PoolValues {

    private PoolValues() {}

    /** The surroundings of a pool under the sky. */
    static Outdoor outdoor(Installation built) {
        return built.pool()
                .setting()
                .outdoor()
                .orElseThrow(() -> new FitRefusal(
                        FitRefusal.Reason.INDOORS,
                        "\"" + built.name()
                                + "\" is in a hall: wind and sun, which a fit finds, do not reach its water"));
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
                .heater(new Boiler(boiler.fuel(), efficiency, boiler.capacityKw(), boiler.setPointC(), boiler.hours()))
                .build();
    }
}
