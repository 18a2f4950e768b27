package dev.warmlane.collector;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.collector.CertificateCurve.TestStand;
import dev.warmlane.irradiance.MatteBlack;
import dev.warmlane.physics.Constants;
import dev.warmlane.physics.Film;
import dev.warmlane.physics.FilmAir;
import dev.warmlane.physics.PlateFace;
import dev.warmlane.physics.Water;
import org.junit.jupiter.api.Test;

/** A collector that stands alone, asked for one moment. */
class HeatAtMomentTest {

    private static final TestStand STAND = new TestStand(false, 1.7, 1, 4);

    /** Coefficients as a certificate prints them, for the plain wind: Jonas et al. 2019, Solar Energy 193:51-64. */
    private static final CertificateCurve PRINTED = CertificateCurve.plainWindBuilder(0.475, 7.411, STAND)
            .a3(1.7)
            .a4(0.437)
            .a6(0.003)
            .build();

    /** The same numbers taken for those of the form of 2017. */
    private static final CertificateCurve MISREAD = CertificateCurve.builder(0.475, 7.411, STAND)
            .a3(1.7)
            .a4(0.437)
            .a6(0.003)
            .build();

    private static final double FLOW = 0.02;

    /** Only rounding lies between an equation and itself. */
    private static final double ROUNDING = 1e-9;

    /** What the balance of a plate is settled to, W/m². */
    private static final double SETTLED = 0.05;

    private static CollectorMoment moment(double incidenceDeg, double windMs) {
        return new CollectorMoment(new PlaneLight(700, 100, incidenceDeg, 45), 380, 25, windMs);
    }

    @Test
    void plainWindIsThePrintedEquation() {
        for (double wind : new double[] {0, 1, 3.6}) {
            CollectorMoment at = moment(0, wind);
            double diffuse = new MatteBlack().skyDiffuse(45);
            double net = 380 - Constants.blackBody(25);
            // aslant light has no K in the term of c6 as it is printed, and one in 3 c6 as it is turned
            double turned = 3 * 0.003 * 100 * (1 - diffuse);
            double printed =
                    0.475 * (700 + diffuse * 100) - 0.003 * wind * 800 - (7.411 + 1.7 * wind) * 10 + 0.437 * net;

            assertThat(PRINTED.heatAtMeanWm2(at, 35)).isCloseTo(printed + turned, within(ROUNDING));
        }
    }

    @Test
    void curveCalledAloneTakesItsOwnIncidence() {
        double straight = PRINTED.heatAtMeanWm2(moment(0, 2), 30);
        double aslant = PRINTED.heatAtMeanWm2(moment(60, 2), 30);

        assertThat(straight - aslant)
                .isCloseTo(PRINTED.eta0() * 700 * (1 - new MatteBlack().beam(60)), within(ROUNDING));
    }

    @Test
    void certificateTakenForAnotherFormIsDoubted() {
        assertThat(PRINTED.doubt()).isEmpty();
        assertThat(MISREAD.doubt())
                .hasValueSatisfying(words -> assertThat(words).contains("2.3 W/m2K in still air", "plain wind"));
        assertThat(MISREAD.withTest(STAND.withBackOpen(false)).doubt()).isPresent();
        assertThat(new UnglazedForm2013(0.85, 0.02, 10, 4, 0.95)
                        .curve(new MatteBlack(), STAND)
                        .doubt())
                .isEmpty();
    }

    @Test
    void waterCarriesAwayWhatTheCurveGives() {
        CollectorMoment at = moment(30, 2);

        double heat = PRINTED.heatAtInletWm2(at, 20, FLOW);

        double rise = heat / (FLOW * Water.specificHeatJKgK(25));
        assertThat(PRINTED.heatAtMeanWm2(at, 20 + rise / 2)).isCloseTo(heat, within(1e-6));
        assertThat(rise).isPositive();
        // and where it only cools
        double cold = PRINTED.heatAtInletWm2(new CollectorMoment(new PlaneLight(0, 0, 90, 45), 300, 5, 3), 30, FLOW);
        assertThat(cold).isNegative();
    }

    /** The balance written down once more, for plate and water of one temperature each. */
    @Test
    void plateAloneBalances() {
        double between = 32;
        Absorber absorber = new Absorber(0.76, 0.88, 1, new PlateToFluid.Conductance(between));
        FreePlate plate = new FreePlate(absorber, 1.65, 1, 0.8, 99);
        CollectorMoment at = moment(40, 3.5);
        double absorbed = 0.76 * at.light().afterWm2(new MatteBlack());

        double heat = plate.heatAtMeanWm2(at, 30);

        double plateC = 30 + heat / between;
        FilmAir air = FilmAir.at((plateC + 25) / 2, 99);
        double film = Film.rack(
                Film.forcedTurbulent(3.5, 1.65, 1, air),
                Film.natural(new PlateFace(45, true, 1.65, 1.65 / 5.3), plateC, 25, air));
        double lost = (film + 0.8) * (plateC - 25) + 0.88 * (Constants.blackBody(plateC) - 380);
        assertThat(heat).isCloseTo(absorbed - lost, within(0.01 * lost));
        assertThat(heat).isGreaterThan(100);
    }

    @Test
    void plateAloneGivesLessTheWarmerItsWaterEnters() {
        FreePlate plate = new FreePlate(Absorber.USUAL_MAT, 2, 1, 0, 101.325);
        double at20 = plate.heatAtInletWm2(moment(0, 2), 20, FLOW);
        double rise = at20 / (FLOW * Water.specificHeatJKgK(25));

        assertThat(plate.heatAtInletWm2(moment(0, 2), 30, FLOW)).isLessThan(at20);
        // the mean of inlet and outlet stands for the plate to a thousandth at this flow (NTU²/12)
        assertThat(plate.heatAtMeanWm2(moment(0, 2), 20 + rise / 2)).isCloseTo(at20, within(0.005 * at20));
        assertThat(plate.heatAtMeanWm2(moment(0, 2), 20)).isGreaterThan(at20 + SETTLED);
    }
}
