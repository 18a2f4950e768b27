package dev.warmlane.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.circuit.Control;
import dev.warmlane.season.Demo;
import dev.warmlane.season.Installation;
import dev.warmlane.season.SeasonForcing;
import dev.warmlane.site.Schedule;
import dev.warmlane.weather.WeatherYear;
import org.junit.jupiter.api.Test;

class HeldPoolTest {

    private static final double WATER_C = 24;

    private final WeatherYear weather = Demo.weather("warm-inland");

    @Test
    void hoursWithoutThePumpGiveNothing() {
        double always = heat(Schedule.ALWAYS);
        double morning = heat(Schedule.daily(0, 12));
        double afternoon = heat(Schedule.daily(12, 24));

        assertThat(heat(Schedule.NEVER)).isZero();
        assertThat(morning).isPositive();
        assertThat(afternoon).isPositive();
        assertThat(morning + afternoon).isCloseTo(always, within(1e-9));
    }

    private double heat(Schedule pumping) {
        Control usual = Control.withLimit(30);
        Installation installation = Demo.pool(1.5)
                .control(new Control(usual.onDifferenceK(), usual.offDifferenceK(), 30, usual.shedAboveC(), pumping))
                .build();
        return HeldPool.heatKwhM2(installation, SeasonForcing.of(installation, weather), WATER_C);
    }
}
