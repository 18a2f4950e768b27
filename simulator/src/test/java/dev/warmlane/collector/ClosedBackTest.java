package dev.warmlane.collector;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.irradiance.RowPlace;
import dev.warmlane.season.Demo;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Terrain;
import dev.warmlane.weather.WeatherYear;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What goes through a board, against the balance of its outer face solved by halving an interval. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS) // its surroundings take longer than a test
class ClosedBackTest {

    private static final double SIGMA = 5.670374419e-8;

    private final WeatherYear weather = Demo.weather("warm-inland");
    private final CollectorSurroundings around = new CollectorSurroundings(weather, Demo.ROOF, Terrain.SUBURBAN);
    private final FaceFilm film = around.filmOfTilted(30, false, 2, 0.8, 1, 1.13);

    /**
     * The outer face is taken straight in the plate's temperature between 20 and 40 °C; a plate far outside tells how
     * straight it is. Measured over every hour of the year: with foam 0.3 W/m² from 10 to 50 °C and 1.3 at -10 and 80 °C,
     * with plywood 6 and 29: the film turns where the face is as warm as the air.
     */
    @ParameterizedTest
    @CsvSource({
        "1.5, 20, 0.01", "1.5, 40, 0.01", "1.5, 10, 0.35", "1.5, 50, 0.35", "1.5, -10, 1.2", "1.5, 80, 1.4",
        "11, 20, 0.01", "11, 30, 2.5", "11, 10, 6.5", "11, 50, 5", "11, -10, 20", "11, 80, 30"
    })
    void passesWhatItsOuterFaceLoses(double boardWm2K, double plateC, double withinWm2) {
        ClosedBack board = ClosedBack.board(HourOfYear.HOURS);
        for (int hour = 0; hour < HourOfYear.HOURS; hour += 7) {
            double airC = weather.airTemperatureC(hour);
            double light = 0.2 * weather.globalHorizontalWm2(hour);
            double longWave = SIGMA * Math.pow(airC + 275.15, 4);
            board.outside(hour, boardWm2K, film, airC, light, longWave);
            double face = faceC(hour, boardWm2K, plateC, airC, 0.6 * light + 0.9 * longWave);
            assertThat(board.lossWm2(hour, plateC))
                    .as(HourOfYear.label(hour))
                    .isCloseTo(boardWm2K * (plateC - face), within(withinWm2));
        }
    }

    private double faceC(int hour, double boardWm2K, double plateC, double airC, double gained) {
        double low = -60;
        double high = 150;
        for (int halving = 0; halving < 60; halving++) {
            double middle = (low + high) / 2;
            double lost = 0.9 * SIGMA * Math.pow(middle + 273.15, 4)
                    + film.coefficient(hour, middle - airC) * (middle - airC)
                    - boardWm2K * (plateC - middle);
            low = lost < gained ? middle : low;
            high = lost < gained ? high : middle;
        }
        return low;
    }

    /** In the dark, with long-wave of the air's own temperature: board and film of 1/U_b + 1/(h + 4εσT³). */
    @Test
    void isBoardAndFilmInSeries() {
        ClosedBack board = ClosedBack.board(HourOfYear.HOURS);
        for (int hour = 0; hour < HourOfYear.HOURS; hour += 13) {
            double airC = weather.airTemperatureC(hour);
            double kelvin = airC + 273.15;
            board.outside(hour, 1.5, film, airC, 0, SIGMA * Math.pow(kelvin, 4));
            double outer = film.coefficient(hour, 2) + 0.9 * 4 * SIGMA * Math.pow(kelvin, 3);
            assertThat(board.wm2K[hour]).isCloseTo(1 / (1 / 1.5 + 1 / outer), within(0.06));
            assertThat(board.lossWm2(hour, airC)).isCloseTo(0, within(0.8));
        }
    }

    /** What comes in behind warms the plate by the emittance times the face's share; the face itself lies on the straight. */
    @Test
    void theFaceIsWarmedByThePlateAndSharesWhatItReceives() {
        ClosedBack board = ClosedBack.board(HourOfYear.HOURS);
        int hour = HourOfYear.of(7, 2, 11);
        double airC = weather.airTemperatureC(hour);
        double longWave = SIGMA * Math.pow(airC + 275.15, 4);
        board.outside(hour, 1.5, film, airC, 100, longWave);
        double at20 = faceC(hour, 1.5, 20, airC, 60 + 0.9 * longWave);
        double at40 = faceC(hour, 1.5, 40, airC, 60 + 0.9 * longWave);
        assertThat(board.faceC(hour, 20)).isCloseTo(at20, within(1e-3));
        assertThat(board.faceC(hour, 40)).isCloseTo(at40, within(1e-3));
        assertThat(board.facePerK[hour]).isCloseTo((at40 - at20) / 20, within(1e-4));
        assertThat(board.longWaveShare(hour)).isCloseTo(0.9 * (at40 - at20) / 20, within(1e-4));
    }

    @Test
    void aMatsBackIsTheRoomInEveryHour() {
        ClosedBack back = ClosedBack.throughRoof(HourOfYear.HOURS, 0.8, 21);
        assertThat(back.lossWm2(0, 31)).isCloseTo(8, within(1e-12));
        assertThat(back.lossWm2(HourOfYear.HOURS - 1, 11)).isCloseTo(-8, within(1e-12));
        assertThat(back.longWaveShare(100)).isZero();
    }

    @Test
    void aPerfectBoardLetsNothingThroughWhateverIsBehindIt() {
        ClosedBack board = ClosedBack.board(HourOfYear.HOURS);
        board.outside(0, 0, film, 5, 300, 450);
        assertThat(board.lossWm2(0, 60)).isZero();
    }

    /** By night, when the roof below is cooler than a plate of 28 °C. By day sun and roof may warm a plate through it. */
    @Test
    void aBetterBoardKeepsMore() {
        double[] boards = {0, 0.7, 1.5, 11};
        PlateBalance[] plates = new PlateBalance[boards.length];
        for (int i = 0; i < boards.length; i++) {
            plates[i] = new PlateBalance(exposure(boards[i]), Absorber.USUAL_MAT, around.air(), 0.05);
        }
        for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
            if (weather.globalHorizontalWm2(hour) == 0 && weather.airTemperatureC(hour) < 25) {
                for (int i = 1; i < boards.length; i++) {
                    assertThat(plates[i].lossWm2(hour, 28))
                            .as(HourOfYear.label(hour))
                            .isGreaterThan(plates[i - 1].lossWm2(hour, 28));
                }
            }
        }
    }

    /** The roof throws light on the board, which is warmer for it; a perfect board does not notice. */
    @Test
    void sunOnTheBoardWarmsThePlate() {
        CollectorSurroundings pale = new CollectorSurroundings(
                weather, Demo.ROOF.toBuilder().albedo(0.6).uValueWm2K(0).build(), Terrain.SUBURBAN);
        int noon = HourOfYear.of(6, 21, 12);
        Exposure lit = exposures(pale).rack(rack(11), RowPlace.FIRST, HeldPlates.AT_30);
        assertThat(lit.closed.behindC[noon]).isGreaterThan(weather.airTemperatureC(noon) + 2);
        assertThat(lit.modifiedBack[noon]).isZero();
    }

    private Exposure exposure(double boardWm2K) {
        return exposures(around).rack(rack(boardWm2K), RowPlace.FIRST, HeldPlates.AT_30);
    }

    private static Exposures exposures(CollectorSurroundings around) {
        return new Exposures(around, Absorber.USUAL_MAT.incidence(), 1.13);
    }

    private static Mounting.OpenRack rack(double boardWm2K) {
        return new Mounting.OpenRack(30, 180, 2, 4, 1, 0.3).withBack(Mounting.Back.boarded(boardWm2K));
    }
}
