package dev.warmlane.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dev.warmlane.collector.Absorber;
import dev.warmlane.collector.CollectorForcing;
import dev.warmlane.collector.CollectorPhysics;
import dev.warmlane.collector.CollectorSurroundings;
import dev.warmlane.collector.Mounting;
import dev.warmlane.pool.Cover;
import dev.warmlane.site.HourSpan;
import dev.warmlane.site.Schedule;
import dev.warmlane.site.Terrain;
import dev.warmlane.weather.WeatherYear;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Forcing serves what it was prepared for and nothing else. */
class ForcingServesTest {

    private static final WeatherYear WEATHER = Demo.weather("warm-inland");
    private static final Installation BUILT = Demo.pool(1.5).build();
    private static final SeasonForcing FORCING = SeasonForcing.of(BUILT, WEATHER);

    @Test
    void isRefusedForAnythingElseAndSaysWhatDiffers() {
        Map<String, Installation> others = Map.of(
                "another mounting than that of \"flat\"",
                with(Demo.pool(1.5).arrays(Demo.FLAT.withMounting(new Mounting.FlatOnRoof(0.01)))),
                "another absorber or certificate",
                with(Demo.pool(1.5).arrays(Demo.FLAT.withModel(Absorber.USUAL_MAT.withAbsorptance(0.9)))),
                "another flow",
                with(Demo.pool(1.5).arrays(Demo.FLAT.withFlowKgSM2(0.04))),
                "another roof",
                with(Demo.pool(1.5).roof(Demo.ROOF.toBuilder().albedo(0.5).build())),
                "another terrain",
                with(Demo.pool(1.5).terrain(Terrain.OPEN)),
                "another pool",
                Demo.pool(1.6).build(),
                "another cover",
                with(Demo.pool(1.5).cover(Cover.bubble(Schedule.daily(20, 8)))),
                "for 1 arrays, the installation has 2",
                with(Demo.pool(1.5).arrays(Demo.FLAT, Demo.FLAT)));
        others.forEach((what, other) -> assertThatIllegalArgumentException()
                .isThrownBy(() -> SeasonSimulator.simulate(other, FORCING))
                .withMessageContaining(what));
    }

    /** What was prepared for some hours of the year knows nothing of the others. */
    @Test
    void isRefusedForMoreHoursThanItHas() {
        HourSpan season = BUILT.season().running();
        CollectorSurroundings around = new CollectorSurroundings(
                WEATHER, Demo.ROOF, Terrain.SUBURBAN, CollectorPhysics.USUAL, new HourSpan(season.first(), 24 * 60));
        SeasonForcing some = new SeasonForcing(FORCING.pool(), List.of(CollectorForcing.of(around, Demo.FLAT)));

        assertThatIllegalArgumentException()
                .isThrownBy(() -> SeasonSimulator.simulate(BUILT, some))
                .withMessageContaining("another season than that of \"flat\"");
    }

    @Test
    void isRefusedInAnotherWeather() {
        WeatherYear other = Demo.weather("cool-coast");
        SeasonForcing mixed =
                new SeasonForcing(FORCING.pool(), SeasonForcing.of(BUILT, other).collectors());
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SeasonForecast.of(BUILT, FORCING, other))
                .withMessageContaining("another weather year");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SeasonSimulator.simulate(BUILT, mixed))
                .withMessageContaining("another weather year");
    }

    @Test
    void servesAnotherAreaAndName() {
        Installation larger = with(Demo.pool(1.5).arrays(List.of(Demo.FLAT.withAreaM2(300))));
        assertThat(SeasonSimulator.simulate(larger, FORCING).hours())
                .isEqualTo(larger.season().hours());
    }

    /** One cannot grow, the other cannot shrink. */
    @Test
    void theSmallestArrayBesideTheLargestHasANextSquareMetre() {
        Installation both = with(Demo.pool(1.5).arrays(Demo.FLAT.withAreaM2(0.5), Demo.FLAT.withAreaM2(100_000)));
        NextSquareMetre next =
                SeasonForecast.of(both, WEATHER).summary().nextSquareMetre().orElseThrow();
        assertThat(next.deliveredKwhPerM2()).isBetween(0.0, 10.0);
    }

    @Test
    void moreArraysThanMemoryHoldsAreRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> with(Demo.pool(1.5).arrays(java.util.Collections.nCopies(21, Demo.FLAT))))
                .withMessageContaining("number of collector arrays");
    }

    private static Installation with(Installation.Builder builder) {
        return builder.build();
    }
}
