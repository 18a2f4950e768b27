package dev.warmlane.season;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.circuit.Control;
import dev.warmlane.circuit.Pipes;
import dev.warmlane.heater.Boiler;
import dev.warmlane.heater.Fuel;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The hourly loop against a general integrator that shares its flows and switches, but neither its steps nor its events. */
class AdaptiveSeasonTest {

    /** Ten times what the two were found to differ by; a twentieth of the accuracy that is promised. */
    private static final double RMS_K = 0.001;

    private static final double TIGHT_K = 1e-9;

    @ParameterizedTest
    @ValueSource(strings = {"cool-coast", "hot-dry"})
    void agreesWithTheHourlyLoop(String sample) {
        Installation installation = Demo.pool(1.5)
                .heater(new Boiler(Fuel.PROPANE, 0.9, 60, 24))
                .control(Control.withLimit(26))
                .pipes(new Pipes(40, 500))
                .build();
        SeasonForcing forcing = SeasonForcing.of(installation, Demo.weather(sample));
        SeasonLedger ledger = SeasonSimulator.simulate(installation, forcing);
        double[] adaptive = AdaptiveSeason.waterC(installation, forcing, ledger.waterStartC(0), TIGHT_K);
        double square = 0;
        for (int index = 0; index < adaptive.length; index++) {
            double error = adaptive[index] - ledger.waterEndC(index);
            square += error * error;
        }
        assertThat(Math.sqrt(square / adaptive.length)).isLessThan(RMS_K);
    }
}
