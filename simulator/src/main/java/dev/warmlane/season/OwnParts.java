package dev.warmlane.season;

import dev.warmlane.circuit.Controller;
import dev.warmlane.physics.FilmCorrelation;
import dev.warmlane.pool.Evaporation;
import java.util.ArrayList;
import java.util.List;

/** What a programmer has made in place of what is built in: no scenario file can say it, and every report must. */
public final class OwnParts {

    /**
     * One such part.
     *
     * @param what what it is, with its article: {@code a film correlation}
     * @param source where it comes from, as it says itself
     * @param builtIn what there is in its place, for who wants to have that
     */
    public record Part(String what, String source, String builtIn) {}

    private OwnParts() {}

    /** Those of an installation; none where all is built in. */
    public static List<Part> of(Installation built) {
        List<Part> parts = new ArrayList<>();
        if (!(built.pool().evaporation() instanceof Evaporation)) {
            parts.add(new Part(
                    "an evaporation correlation", built.pool().evaporation().source(), "one of Evaporation"));
        }
        built.arrays().forEach(array -> array.model()
                .curve()
                .ifPresent(curve -> parts.add(new Part(
                        "the collector curve of \"" + array.name() + "\"",
                        curve.source(),
                        "an absorber or a certificate"))));
        FilmCorrelation film = built.collectorPhysics().film();
        if (!isBuiltIn(film)) {
            parts.add(new Part("a film correlation", film.source(), "a published one or FilmCorrelation.PHYSICAL"));
        }
        Controller controller = built.control().controller();
        if (controller != Controller.USUAL) {
            parts.add(new Part("a controller", controller.source(), "Controller.USUAL"));
        }
        return List.copyOf(parts);
    }

    private static boolean isBuiltIn(FilmCorrelation film) {
        return film.match(
                physical -> true,
                fit -> fit instanceof FilmCorrelation.Linear || fit instanceof FilmCorrelation.Mitchell,
                face -> false);
    }
}
