package dev.warmlane.extending;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.warmlane.collector.Absorber;
import dev.warmlane.collector.CollectorPhysics;
import dev.warmlane.collector.Mounting;
import dev.warmlane.irradiance.SkyModel;
import dev.warmlane.physics.FilmCorrelation;
import dev.warmlane.season.Installation;
import org.junit.jupiter.api.Test;

/** A film of one's own, by the wind alone or by mounting. */
class OwnFilmTest {

    private static final FilmCorrelation.WindFit FIT = windMs -> 2.8 + 3.0 * windMs;

    /** Mats by one line, everything else by another. */
    private static final FilmCorrelation.OfFace BY_MOUNTING =
            (face, windMs, differenceK) -> face.onRoof() ? 2.8 + 3.0 * windMs : 5.7 + 3.8 * windMs;

    @Test
    void aFitWithAPublishedOnesNumbersIsThatOne() {
        assertThat(water(FIT, Mounting.FlatOnRoof.USUAL))
                .isEqualTo(water(FilmCorrelation.Linear.WATMUFF, Mounting.FlatOnRoof.USUAL))
                .isNotEqualTo(water(FilmCorrelation.PHYSICAL, Mounting.FlatOnRoof.USUAL));
    }

    @Test
    void eachMountingMayHaveItsOwn() {
        assertThat(water(BY_MOUNTING, Mounting.FlatOnRoof.USUAL))
                .isEqualTo(water(FilmCorrelation.Linear.WATMUFF, Mounting.FlatOnRoof.USUAL));
        assertThat(water(BY_MOUNTING, Lido.RACKS)).isEqualTo(water(FilmCorrelation.Linear.MCADAMS, Lido.RACKS));
    }

    /** The face that it is asked for is the one that is mounted. */
    @Test
    void knowsItsFace() {
        FilmCorrelation.OfFace watching = (face, windMs, differenceK) -> {
            assertThat(face.tiltDeg()).isEqualTo(30);
            assertThat(face.runM()).isEqualTo(1.2);
            assertThat(face.onRoof()).isFalse();
            return face.facesUp() ? 10 + Math.abs(differenceK) / 10 : 6;
        };
        FilmCorrelation.OfFace without = (face, windMs, differenceK) -> face.facesUp() ? 10 : 6;
        assertThat(water(watching, Lido.RACKS)).isNotEqualTo(water(without, Lido.RACKS));
    }

    @Test
    void mustBeAFilm() {
        FilmCorrelation.WindFit falling = windMs -> 1 - windMs;
        FilmCorrelation.OfFace nothing = (face, windMs, differenceK) -> Double.NaN;
        assertRefused(falling, "W/m2K at a wind of");
        assertRefused(nothing, "the film correlation gives NaN W/m2K");
    }

    private static void assertRefused(FilmCorrelation own, String why) {
        assertThatThrownBy(() -> water(own, Mounting.FlatOnRoof.USUAL))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(why)
                .hasMessageContaining("allowed: 0 or more");
    }

    @Test
    void hasNoWordsInAFile() {
        for (FilmCorrelation own : new FilmCorrelation[] {FIT, BY_MOUNTING}) {
            assertThatThrownBy(() -> Lido.written(built(own, Lido.RACKS)))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("cannot hold a film correlation of one's own");
        }
    }

    private static double[] water(FilmCorrelation film, Mounting mounting) {
        return Lido.waterC(built(film, mounting));
    }

    private static Installation built(FilmCorrelation film, Mounting mounting) {
        return Lido.built()
                .arrays(Lido.array(mounting, Absorber.USUAL_MAT))
                .collectorPhysics(new CollectorPhysics(SkyModel.PEREZ, film))
                .build();
    }
}
