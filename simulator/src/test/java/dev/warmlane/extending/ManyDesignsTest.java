package dev.warmlane.extending;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.warmlane.collector.Absorber;
import dev.warmlane.collector.Mounting;
import dev.warmlane.season.Installation;
import dev.warmlane.season.SeasonForcing;
import dev.warmlane.season.SeasonSimulator;
import dev.warmlane.study.SharedForcing;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Many designs in one weather. */
class ManyDesignsTest {

    /** Water at the end of the season for designs of many areas and a few gaps, on all cores. */
    static double[] designs(SharedForcing shared, int count) {
        return IntStream.range(0, count)
                .parallel()
                .mapToObj(ManyDesignsTest::design)
                .mapToDouble(design -> SeasonSimulator.simulate(design, shared.of(design))
                        .endState()
                        .waterC())
                .toArray();
    }

    private static Installation design(int number) {
        Mounting mats = new Mounting.FlatOnRoof(number % 3 == 0 ? 0.002 : 0.005);
        return Lido.built()
                .arrays(Lido.array(mats, Absorber.USUAL_MAT).withAreaM2(50 + 5 * number))
                .build();
    }

    @Test
    void prepareEachThingOnceWhateverTheArea() {
        SharedForcing shared = new SharedForcing(Lido.WEATHER);
        double[] water = designs(shared, 40);
        assertThat(shared.holds()).isEqualTo(new SharedForcing.Held(1, 1, 2));
        assertThat(water[39]).isGreaterThan(water[0]);
        SeasonForcing handedOut = shared.of(design(7));
        assertThat(shared.of(design(8)).collectors().get(0))
                .isSameAs(handedOut.collectors().get(0));
        shared.clear();
        assertThat(shared.holds()).isEqualTo(new SharedForcing.Held(0, 0, 0));
        assertThat(SeasonSimulator.simulate(design(7), handedOut).endState().waterC())
                .isEqualTo(water[7]);
    }

    /** A bound that is too small costs time, and moves no bit. */
    @Test
    void holdNoMoreThanTheyMay() {
        SharedForcing one = new SharedForcing(Lido.WEATHER, 1);
        SeasonForcing first = one.of(design(0));
        assertThat(one.of(design(3)).collectors().get(0))
                .isSameAs(first.collectors().get(0));
        one.of(design(1));
        assertThat(one.holds()).isEqualTo(new SharedForcing.Held(1, 1, 1));
        assertThat(one.of(design(0)).collectors().get(0))
                .isNotSameAs(first.collectors().get(0));
        assertThat(designs(new SharedForcing(Lido.WEATHER, 1), 6))
                .isEqualTo(designs(new SharedForcing(Lido.WEATHER), 6));
        assertThatThrownBy(() -> new SharedForcing(Lido.WEATHER, 0)).hasMessageContaining("forcings held");
    }
}
