package dev.warmlane.scenario;

import dev.warmlane.circuit.Controller;
import dev.warmlane.collector.CollectorArray;
import dev.warmlane.physics.FilmCorrelation;
import dev.warmlane.pool.Evaporation;
import dev.warmlane.season.Installation;

/** What a programmer has made and no file can say. */
final class OwnParts {

    private OwnParts() {}

    /**
     * Refuses an installation that holds any.
     *
     * @throws IllegalArgumentException that says which, and what to give in its place
     */
    static void refuse(Installation installation) {
        if (!(installation.pool().evaporation() instanceof Evaporation)) {
            throw refused("an evaporation correlation", "one of Evaporation");
        }
        for (CollectorArray array : installation.arrays()) {
            if (array.model().curve().isPresent()) {
                throw refused("the collector curve of \"" + array.name() + "\"", "an absorber or a certificate");
            }
        }
        FilmCorrelation film = installation.collectorPhysics().film();
        boolean named = film instanceof FilmCorrelation.Linear || film instanceof FilmCorrelation.Mitchell;
        if (!named && !film.equals(FilmCorrelation.PHYSICAL)) {
            throw refused("a film correlation", "a published one or FilmCorrelation.PHYSICAL");
        }
        if (installation.control().controller() != Controller.USUAL) {
            throw refused("a controller", "Controller.USUAL");
        }
    }

    private static IllegalArgumentException refused(String what, String instead) {
        return new IllegalArgumentException(
                "a scenario file cannot hold " + what + " of one's own: give the installation " + instead
                        + " before writing it, and put your own in again after reading");
    }
}
