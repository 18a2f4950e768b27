package dev.warmlane.collector;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.irradiance.Rack;
import dev.warmlane.irradiance.RowPlace;
import dev.warmlane.season.Demo;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Terrain;
import dev.warmlane.study.MountingOption;
import dev.warmlane.weather.WeatherYear;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The wind at racks: at inner rows, and over the roof for those that lie on it. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS) // its surroundings take longer than a test
class RackWindTest {

    /** A hundredth of the way from the roof to a tenth of a chord up changes the film by a hundredth of their difference. */
    private static final double STEP_SHARE = 0.02;

    private final WeatherYear weather = Demo.weather("warm-inland");
    private final CollectorSurroundings around = new CollectorSurroundings(weather, Demo.ROOF, Terrain.SUBURBAN);

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void theFilmGoesFromTheRoofsToTheChordsWithoutAStep(boolean facesUp) {
        FaceFilm before = around.filmOfRack(low(0, 0), 1, facesUp, 1.13);
        for (int step = 1; step <= 100; step++) {
            FaceFilm film = around.filmOfRack(low(0, 0.2 * step / 100), 1, facesUp, 1.13);
            for (int hour = 0; hour < HourOfYear.HOURS; hour += 97) {
                assertThat(film.coefficient(hour, 10) / before.coefficient(hour, 10))
                        .isCloseTo(1, within(STEP_SHARE));
            }
            before = film;
        }
    }

    @Test
    void aTenthOfAChordUpItIsTheFilmOfTheChord() {
        Mounting.OpenRack low = low(0, 0.2);
        Mounting.OpenRack chord = new Mounting.OpenRack(0, 180, 2, 2, 1, 0.2);
        FaceFilm film = around.filmOfRack(low, 1, true, 1.13);
        FaceFilm ofChord = around.filmOfRack(chord, 1, true, 1.13);
        FaceFilm onRoof = around.filmOfRack(low(0, 0), 1, true, 1.13);
        double largest = 0;
        for (int hour = 0; hour < HourOfYear.HOURS; hour += 7) {
            assertThat(film.coefficient(hour, 10)).isEqualTo(ofChord.coefficient(hour, 10));
            largest = Math.max(largest, ofChord.coefficient(hour, 10) / onRoof.coefficient(hour, 10));
        }
        assertThat(largest).as("there is something to go between").isGreaterThan(1.2);
    }

    /** The steepest that lies on a chord of 2 m: sin β = 0.2. */
    @ParameterizedTest
    @CsvSource({"0, 0.21, 0.21", "12, 0, 0.21", "30, 0.3, 0.80"})
    void refusesTheRoofsRunWhereThePlateStandsHighOrSteep(double tiltDeg, double clearanceM, String middleM) {
        String message = "the middle of the rack stands " + middleM + " m above the roof";
        assertThatIllegalArgumentException()
                .isThrownBy(() -> low(tiltDeg, clearanceM))
                .withMessageContaining(message)
                .withMessageContaining("a tenth of the chord, 0.20 m");
        MountingOption.Racks racks = MountingOption.racks("racks", tiltDeg, 180);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new MountingOption.Racks(
                        "low",
                        new Rack(tiltDeg, 180, 2, clearanceM),
                        racks.back(),
                        Mounting.WindRun.ROOF,
                        1,
                        racks.spacing(),
                        racks.along()))
                .withMessageContaining(message);
    }

    /** A study may lift a rack out of the range: it then has the film to which the blend has come there. */
    @Test
    void liftedOutOfTheRangeItHasTheFilmOfItsChord() {
        assertThat(low(2, 0.05).withClearanceM(0.1).windRun()).isEqualTo(Mounting.WindRun.ROOF);
        assertThat(low(2, 0.05).withClearanceM(1).windRun()).isEqualTo(Mounting.WindRun.CHORD);
    }

    @Test
    void shelterReachesInnerRowsAlone() {
        Mounting.OpenRack rows = new Mounting.OpenRack(30, 180, 2, 4, 5, 0.3);
        Mounting.OpenRack sheltered = rows.withInnerWind(0.5);
        Exposures exposures = new Exposures(around, Absorber.USUAL_MAT.incidence(), 1.13);
        FaceFilm first = exposures.rack(rows, RowPlace.FIRST, HeldPlates.AT_30).front;
        FaceFilm firstSheltered = exposures.rack(sheltered, RowPlace.FIRST, HeldPlates.AT_30).front;
        Exposure inner = exposures.rack(rows, RowPlace.INTERIOR, HeldPlates.AT_30);
        Exposure innerSheltered = exposures.rack(sheltered, RowPlace.INTERIOR, HeldPlates.AT_30);
        double warmer = 0;
        for (int hour = 0; hour < HourOfYear.HOURS; hour += 3) {
            assertThat(firstSheltered.coefficient(hour, 10)).isEqualTo(first.coefficient(hour, 10));
            assertThat(inner.front.coefficient(hour, 10)).isEqualTo(first.coefficient(hour, 10));
            if (weather.windSpeedMs(hour) > 3) {
                // the forced part alone would be 0.5^0.8 = 0.574 of it
                assertThat(innerSheltered.front.coefficient(hour, 1) / first.coefficient(hour, 1))
                        .isBetween(0.57, 0.75);
            }
            warmer += innerSheltered.longWaveBack[hour] - inner.longWaveBack[hour];
        }
        assertThat(warmer)
                .as("the roof between sheltered rows is warmer by day")
                .isPositive();
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.09, 1.6})
    void refusesAWindAtInnerRowsThatIsNone(double share) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Mounting.OpenRack(30, 180, 2, 4, 5, 0.3).withInnerWind(share))
                .withMessageContaining("wind at inner rows");
    }

    private static Mounting.OpenRack low(double tiltDeg, double clearanceM) {
        return new Mounting.OpenRack(tiltDeg, 180, 2, 2, 1, clearanceM, Mounting.Back.BOARDED, Mounting.WindRun.ROOF);
    }
}
