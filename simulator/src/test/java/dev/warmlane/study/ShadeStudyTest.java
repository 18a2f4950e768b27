package dev.warmlane.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.collector.Absorber;
import dev.warmlane.collector.CollectorArray;
import dev.warmlane.collector.Mounting;
import dev.warmlane.irradiance.Rack;
import dev.warmlane.irradiance.RackRows;
import dev.warmlane.pool.Flow;
import dev.warmlane.pool.PoolSetting;
import dev.warmlane.pool.PoolSkyline;
import dev.warmlane.pool.Screen;
import dev.warmlane.roof.Obstacle;
import dev.warmlane.roof.Outline;
import dev.warmlane.roof.PanelRules;
import dev.warmlane.roof.RoofPlan;
import dev.warmlane.roof.RoofPoint;
import dev.warmlane.roof.Surface;
import dev.warmlane.season.Demo;
import dev.warmlane.season.HeatBalance;
import dev.warmlane.season.Installation;
import dev.warmlane.season.Period;
import dev.warmlane.season.PeriodSummary;
import dev.warmlane.season.Periods;
import dev.warmlane.season.SeasonForcing;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.season.SeasonLedger;
import dev.warmlane.season.SeasonSimulator;
import dev.warmlane.site.Horizon;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.weather.WeatherYear;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ShadeStudyTest {

    private static final WeatherYear WEATHER = Demo.weather("warm-inland");

    private static final Horizon HILLS =
            new Horizon(List.of(new Horizon.Height(60, 4), new Horizon.Height(180, 0), new Horizon.Height(270, 25)));

    private static final Mounting RACKS = new Mounting.OpenRack(
            new RackRows(new Rack(30, 200, 3, 0.3), 6, 2),
            Mounting.Back.OPEN,
            Mounting.WindRun.CHORD,
            Mounting.OpenRack.USUAL_INNER_WIND);

    private static final Mounting PITCHED = new Mounting.FlushOnPitchedRoof(25, 110, 6, 0.005);

    private static Stream<Mounting> mountings() {
        return Stream.of(Mounting.FlatOnRoof.USUAL, RACKS, PITCHED);
    }

    private static Installation built(Mounting mounting, Horizon horizon, PoolSkyline beside) {
        return Demo.pool(1.8)
                .arrays(new CollectorArray("any", 60, mounting, Absorber.USUAL_MAT))
                .roof(Demo.ROOF.toBuilder().horizon(horizon).build())
                .pool(Demo.pool(1.8).build().pool().withSetting(new PoolSetting.Outdoor(0.3).withSkyline(beside)))
                .build();
    }

    private static Installation drawn(Mounting mounting, double heightM) {
        Surface hall = Surface.flat("hall", Outline.rectangle(30, 14), 200, 6);
        Surface slope = new Surface("slope", Outline.rectangle(12, 6), 110, 25, 6, 0, 0.5, List.of());
        Obstacle stairs = new Obstacle("stairs", Obstacle.Block.around(new RoofPoint(15, 1.5), 12, 1), heightM, 0.3);
        Obstacle chimney = new Obstacle("chimney", new Obstacle.Disc(new RoofPoint(6, 3), 0.8), heightM, 0.3);
        return built(mounting, Horizon.LEVEL, PoolSkyline.OPEN).toBuilder()
                .plan(new RoofPlan(
                        List.of(hall.withObstacles(List.of(stairs)), slope.withObstacles(List.of(chimney))),
                        PanelRules.usual(1.2, 3.0)))
                .build();
    }

    @ParameterizedTest
    @MethodSource("mountings")
    void aHorizonOfZeroChangesNothing(Mounting mounting) {
        Horizon zero = new Horizon(List.of(new Horizon.Height(0, 0), new Horizon.Height(100, 0)));
        Screen low = new Screen("kerb", 90, 3, 10, 0);
        sameToTheLastBit(
                built(mounting, Horizon.LEVEL, PoolSkyline.OPEN),
                built(mounting, zero, new PoolSkyline(zero, List.of(low))));
        sameToTheLastBit(built(mounting, Horizon.LEVEL, PoolSkyline.OPEN), drawn(mounting, 0));
    }

    private static void sameToTheLastBit(Installation one, Installation other) {
        SeasonLedger first = SeasonSimulator.simulate(one, SeasonForcing.of(one, WEATHER));
        SeasonLedger second = SeasonSimulator.simulate(other, SeasonForcing.of(other, WEATHER));
        assertThat(IntStream.range(0, first.hours()).mapToDouble(second::waterC).toArray())
                .isEqualTo(IntStream.range(0, first.hours())
                        .mapToDouble(first::waterC)
                        .toArray());
    }

    @ParameterizedTest
    @MethodSource("mountings")
    void noHourIsLighterThanUnderAnOpenSkyNorBelowNought(Mounting mounting) {
        SeasonForcing open = SeasonForcing.of(built(mounting, Horizon.LEVEL, PoolSkyline.OPEN), WEATHER);
        SeasonForcing hills = SeasonForcing.of(built(mounting, HILLS, PoolSkyline.OPEN), WEATHER);
        SeasonForcing stairs = SeasonForcing.of(drawn(mounting, 4), WEATHER);
        double lost = 0;
        for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
            double whole = open.collectors().get(0).irradianceWm2(hour);
            double past = hills.collectors().get(0).irradianceWm2(hour);
            assertThat(past).isBetween(0.0, whole);
            assertThat(stairs.collectors().get(0).irradianceWm2(hour)).isBetween(0.0, whole);
            lost += whole - past;
        }
        assertThat(lost).isPositive();
    }

    /** Behind a wall of 90 degrees all around there is no light, and the sky that is left is as warm as the air. */
    @ParameterizedTest
    @MethodSource("mountings")
    void inAShaftThereIsNoLight(Mounting mounting) {
        Horizon shaft = Horizon.even(90);
        Installation dark = built(mounting, shaft, new PoolSkyline(shaft, List.of()));
        SeasonForcing forcing = SeasonForcing.of(dark, WEATHER);
        assertThat(IntStream.range(0, HourOfYear.HOURS)
                        .mapToDouble(hour -> forcing.collectors().get(0).irradianceWm2(hour))
                        .max()
                        .orElseThrow())
                .isCloseTo(0, within(1e-9));
        assertThat(SeasonForecast.of(dark, WEATHER).months())
                .allSatisfy(
                        month -> assertThat(month.balance().kwh().get(Flow.SUN)).isCloseTo(0, within(1e-6)));
    }

    /**
     * Water in a shaft under an even sky gets what the horizon leaves of it, cos²H, and no beam below H: between the two by
     * energy in every season.
     */
    @Test
    void aPoolLosesItsBeamBelowTheHorizonAndTheSkyThatIsHidden() {
        ShadeStudy study = ShadeStudy.of(SeasonForecast.of(
                        built(Mounting.FlatOnRoof.USUAL, Horizon.LEVEL, new PoolSkyline(Horizon.even(20), List.of())),
                        WEATHER))
                .orElseThrow();
        // of an even sky 1 - cos² 20° = 0.117 is hidden; in summer the sun stands above 20° for nearly all its energy
        assertThat(study.season().poolLight()).isBetween(0.01, 0.117);
        assertThat(study.season().collectorsLight()).isZero();
        assertThat(study.season().heat()).isZero();
        assertThat(study.season().open().water().meanC())
                .isGreaterThan(study.season().shaded().water().meanC());
        assertThat(study.months()).hasSize(5);
    }

    /** The hedge in the west takes the evening, the same hedge in the east the morning. */
    @Test
    void aHedgeShadesThePoolOnItsSideOfTheDay() {
        assertThat(lostInMornings(270)).isLessThan(lostInMornings(90));
    }

    private static double lostInMornings(double directionDeg) {
        Installation hedged = built(
                Mounting.FlatOnRoof.USUAL,
                Horizon.LEVEL,
                new PoolSkyline(Horizon.LEVEL, List.of(new Screen("hedge", directionDeg, 2, 40, 8))));
        SeasonLedger with = SeasonSimulator.simulate(hedged, SeasonForcing.of(hedged, WEATHER));
        Installation bare = built(Mounting.FlatOnRoof.USUAL, Horizon.LEVEL, PoolSkyline.OPEN);
        SeasonLedger without = SeasonSimulator.simulate(bare, SeasonForcing.of(bare, WEATHER));
        return IntStream.range(with.opening(), with.hours())
                .filter(index -> HourOfYear.hourOfDay(with.hourOfYear(index)) < 12)
                .mapToObj(index -> new Period("hour", index, index + 1))
                .mapToDouble(hour -> sun(without, hour) - sun(with, hour))
                .sum();
    }

    private static double sun(SeasonLedger ledger, Period period) {
        return HeatBalance.of(ledger, period).kwh().getOrDefault(Flow.SUN, 0.0);
    }

    @Test
    void obstaclesShadeEveryMountingAndArea() {
        Installation high = drawn(Mounting.FlatOnRoof.USUAL, 4);
        Installation low = drawn(Mounting.FlatOnRoof.USUAL, 0);
        MountingStudy shaded = MountingStudy.of(high, WEATHER, List.of(option()));
        MountingStudy open = MountingStudy.of(low, WEATHER, List.of(option()));
        assertThat(heat(shaded)).isLessThan(heat(open));
        AreaRange range = new AreaRange(30, 90, 2);
        assertThat(heat(AreaStudy.of(high, WEATHER, range))).isLessThan(heat(AreaStudy.of(low, WEATHER, range)));
        assertThat(ShadeStudy.isShaded(high)).isTrue();
        assertThat(ShadeStudy.isShaded(low)).isFalse();
    }

    @Test
    void everyAreaHasTheShadeOfItsOwnLayout() {
        AreaStudy study = AreaStudy.of(drawn(Mounting.FlatOnRoof.USUAL, 4), WEATHER, new AreaRange(30, 120, 2));

        assertThat(study.designs()).allSatisfy(design -> {
            SeasonForecast alone = SeasonForecast.of(design.built(), WEATHER);
            assertThat(design.season().collectors().deliveredKwh())
                    .isEqualTo(PeriodSummary.of(alone, Periods.season(alone.with()))
                            .collectors()
                            .deliveredKwh());
        });
    }

    @Test
    void collectorsUnderAnOpenSkyAreThoseOfTheStudy() {
        SeasonForecast high = SeasonForecast.of(drawn(Mounting.FlatOnRoof.USUAL, 4), WEATHER);
        SeasonForecast low = SeasonForecast.of(drawn(Mounting.FlatOnRoof.USUAL, 0), WEATHER);
        SharedForcing forcing = new SharedForcing(WEATHER);

        SeasonForecast open = ShadeStudy.withOpenCollectors(high, forcing).orElseThrow();

        assertThat(PeriodSummary.of(open, Periods.season(open.with())))
                .isEqualTo(ShadeStudy.of(high).orElseThrow().season().openCollectors());
        assertThat(ShadeStudy.withOpenCollectors(low, forcing)).isEmpty();
    }

    private static MountingOption option() {
        return new MountingOption.Flat("flat", Mounting.FlatOnRoof.USUAL);
    }

    private static double heat(MountingStudy study) {
        return study.sameRoof().get(0).season().collectors().deliveredKwh();
    }

    private static double heat(AreaStudy study) {
        return study.designs().get(0).season().collectors().deliveredKwh();
    }
}
