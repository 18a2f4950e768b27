package dev.warmlane.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class FrictionTest {

    /** Churchill's one equation for all flows is a fit to Colebrook's: within a few per cent of it. */
    private static final double CHURCHILL = 0.035;

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/hydraulics/friction.csv", useHeadersInDisplayName = true)
    void meetsThePublishedTables(double reynolds, double roughness, double factor, double tolerance) {
        assertThat(Friction.factor(reynolds, roughness)).isCloseTo(factor, within(tolerance * factor));
    }

    @ParameterizedTest
    @CsvSource({"500, 0.001", "1500, 0", "6000, 0", "2e4, 1e-4", "2e5, 0.001", "3e6, 1e-5", "1e7, 0.02"})
    void agreesWithChurchillsEquation(double reynolds, double roughness) {
        assertThat(Friction.factor(reynolds, roughness))
                .isCloseTo(churchill(reynolds, roughness), within(CHURCHILL * churchill(reynolds, roughness)));
    }

    /** Churchill, Chemical Engineering, 7 November 1977, 91-92, from memory; Darcy's factor. */
    private static double churchill(double reynolds, double roughness) {
        double a = Math.pow(2.457 * Math.log(1 / (Math.pow(7 / reynolds, 0.9) + 0.27 * roughness)), 16);
        double b = Math.pow(37530 / reynolds, 16);
        return 8 * Math.pow(Math.pow(8 / reynolds, 12) + Math.pow(a + b, -1.5), 1.0 / 12);
    }

    @Test
    void pressureRisesWithTheFlowThroughout() {
        double before = 0;
        for (double reynolds = 100; reynolds < 20000; reynolds += 10) {
            double drop = Friction.factor(reynolds, 0.002) * reynolds * reynolds;
            assertThat(drop).isGreaterThan(before);
            before = drop;
        }
    }
}
