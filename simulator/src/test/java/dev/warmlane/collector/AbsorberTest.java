package dev.warmlane.collector;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.collector.PlateToFluid.TubeSheet;
import dev.warmlane.physics.Water;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class AbsorberTest {

    /** The rows state four decimals. */
    private static final double ROW = 6e-5;

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/collector/absorber.csv", useHeadersInDisplayName = true)
    void meetsTheEquationsOfDuffieAndBeckman(
            String name, double lossWm2K, @Nullable Double flowKgSM2, double value, String what) {
        double found =
                switch (name) {
                    case "W9 Do7 Di5.5 mm k0.22 fin1.5 mm hfi484" ->
                        new TubeSheet(0.009, 0.007, 0.0055, 0.0015, 0.22, 484).efficiencyFactor(lossWm2K);
                    case "W20 Do8 Di6 mm k0.35 fin2 mm laminar" ->
                        new TubeSheet(0.020, 0.008, 0.006, 0.002, 0.35, TubeSheet.laminarFilmWm2K(0.006))
                                .efficiencyFactor(lossWm2K);
                    case "F'=0.93" -> removalFactor(0.93, lossWm2K, flowKgSM2);
                    default -> throw new IllegalArgumentException("unknown case " + name);
                };
        assertThat(found).as(what).isCloseTo(value, within(ROW));
    }

    private static double removalFactor(double efficiencyFactor, double lossWm2K, @Nullable Double flowKgSM2) {
        if (flowKgSM2 == null) {
            throw new IllegalArgumentException("F_R needs a flow");
        }
        return PlateBalance.heatRemovalFactor(efficiencyFactor, lossWm2K, flowKgSM2 * Water.specificHeatJKgK(25));
    }

    @Test
    void theLaminarFilmOfTheFirstRowIsWhatItsBoreGives() {
        assertThat(TubeSheet.laminarFilmWm2K(0.0055)).isCloseTo(484, within(0.5));
    }

    @Test
    void endlessFlowTakesAllThatThePlateCanPassOnAndNoFlowNothing() {
        assertThat(PlateBalance.heatRemovalFactor(0.93, 15, 1e7)).isCloseTo(0.93, within(1e-5));
        assertThat(PlateBalance.heatRemovalFactor(0.93, 15, 1e-7)).isCloseTo(0, within(1e-8));
    }

    @Test
    void aGivenConductanceLosesNothingWhereThePlateLosesNothing() {
        assertThat(new PlateToFluid.Conductance(250).efficiencyFactor(0)).isEqualTo(1);
        assertThat(new PlateToFluid.Conductance(250).efficiencyFactor(250)).isEqualTo(0.5);
    }
}
