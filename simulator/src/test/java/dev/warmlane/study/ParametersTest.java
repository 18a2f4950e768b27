package dev.warmlane.study;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.circuit.Pipes;
import dev.warmlane.collector.Absorber;
import dev.warmlane.collector.CertificateCurve;
import dev.warmlane.collector.CollectorArray;
import dev.warmlane.collector.Mounting;
import dev.warmlane.collector.PlateToFluid;
import dev.warmlane.collector.UnglazedForm2013;
import dev.warmlane.irradiance.MatteBlack;
import dev.warmlane.pool.Bathers;
import dev.warmlane.pool.Cover;
import dev.warmlane.pool.Evaporation;
import dev.warmlane.scenario.ReportSettings;
import dev.warmlane.scenario.ScenarioWriter;
import dev.warmlane.season.Demo;
import dev.warmlane.season.Installation;
import dev.warmlane.site.Schedule;
import dev.warmlane.units.Dimension;
import dev.warmlane.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What a parameter changes of an installation, told from the scenario file that would be written for it. */
class ParametersTest {

    private static final ReportSettings REPORT = new ReportSettings("", UnitSystem.METRIC);

    private static final Absorber TUBES =
            Absorber.USUAL_MAT.withPlateToFluid(new PlateToFluid.TubeSheet(0.01, 0.008, 0.006, 0.001, 0.35, 400));

    private static final CertificateCurve CERTIFICATE = new UnglazedForm2013(0.86, 0.02, 10, 4, 0.98)
            .curve(new MatteBlack(), new CertificateCurve.TestStand(false, 2, 0.5, 4));

    /** Has everything that a parameter may want. */
    private static final Installation EVERYTHING = Demo.pumpedPool(1.8, 3000)
            .heater(Demo.HEATER)
            .arrays(
                    Demo.FLAT,
                    new CollectorArray(
                            "racks",
                            60,
                            new Mounting.OpenRack(30, 180, 2, 4, 3, 0.3).withBack(Mounting.Back.BOARDED),
                            TUBES),
                    new CollectorArray("slope", 40, new Mounting.FlushOnPitchedRoof(25, 180, 6, 0.005), CERTIFICATE))
            .cover(Cover.bubble(Schedule.daily(20, 8)))
            .bathers(new Bathers(40, 600, 0.5, Schedule.daily(10, 18)))
            .pipes(new Pipes(60, 900))
            .build();

    /** The keys of a scenario file that each parameter stands for. */
    private static final Map<String, Set<String>> KEYS = Map.ofEntries(
            Map.entry("wind at pool over the station's", Set.of("wind_factor")),
            Map.entry("evaporation correlation", Set.of("evaporation")),
            Map.entry("rise of evaporation by bathers", Set.of("bather_evaporation_rise")),
            Map.entry("absorptance of the basin", Set.of("absorptance")),
            Map.entry("heat loss to the ground", Set.of("ground_conductance")),
            Map.entry("heat of the circulation pump", Set.of("circulation_power")),
            Map.entry("terrain around the roof", Set.of("terrain")),
            Map.entry("wind along the roof, ratio", Set.of("wind_speed_ratio")),
            Map.entry("albedo of the roof", Set.of("albedo")),
            Map.entry("emittance of the roof", Set.of("emittance")),
            Map.entry("U value of the roof", Set.of("u_value")),
            Map.entry("absorptance of the collector", Set.of("absorptance")),
            Map.entry("emittance of the collector", Set.of("emittance")),
            Map.entry("wind's cooling of the collector", Set.of("roughness")),
            Map.entry("plate-to-fluid conductance", Set.of("conductance")),
            Map.entry("conductivity of the tubes", Set.of("conductivity")),
            Map.entry("flow per collector area", Set.of("flow")),
            Map.entry("gap below the mats", Set.of("gap")),
            Map.entry("clearance below the racks", Set.of("clearance")),
            Map.entry("conductance of the board behind racks", Set.of("board_u_value")),
            Map.entry("wind at inner rows over the first", Set.of("inner_wind")),
            Map.entry("back on the test stand", Set.of("test_back")),
            Map.entry("heat loss of the pipes", Set.of("heat_loss")),
            Map.entry("stop difference", Set.of("off_difference")));

    private static Stream<Parameter> parameters() {
        return Parameters.ALL.stream().filter(parameter -> !(parameter instanceof CoverHoursParameter));
    }

    @ParameterizedTest
    @MethodSource("parameters")
    void changesItsOwnKeyAndNoOther(Parameter parameter) {
        Variation.Range range = range(parameter, EVERYTHING);
        Set<String> changed = new TreeSet<>();
        for (Variation.End end : List.of(range.low(), range.high())) {
            changed.addAll(changedKeys(EVERYTHING, end.installation()));
        }
        assertThat(changed).isEqualTo(KEYS.get(parameter.name()));
    }

    @ParameterizedTest
    @MethodSource("parameters")
    void itsEndsLieOnBothSidesOfWhatIsDescribed(Parameter parameter) {
        Variation.Range range = range(parameter, EVERYTHING);
        if (range.described() instanceof Setting.Numbers described) {
            List<Double> low = ((Setting.Numbers) range.low().setting()).values();
            List<Double> high = ((Setting.Numbers) range.high().setting()).values();
            for (double value : described.values()) {
                assertThat(low).allMatch(v -> v < value);
                assertThat(high).allMatch(v -> v > value);
            }
        }
    }

    @Test
    void coverHoursChangeTheCoversScheduleAlone() {
        Variation.Range range = range(new CoverHoursParameter(), EVERYTHING);
        assertThat(hours(range.described())).isEqualTo(12);
        assertThat(hours(range.low().setting())).isEqualTo(10);
        assertThat(hours(range.high().setting())).isEqualTo(14);
        for (Variation.End end : List.of(range.low(), range.high())) {
            Cover cover = end.installation().cover().orElseThrow();
            Schedule expected = end.equals(range.low()) ? Schedule.daily(21, 7) : Schedule.daily(19, 9);
            assertThat(cover.drawn()).isEqualTo(expected);
            Installation back = end.installation().toBuilder()
                    .cover(cover.withDrawn(Schedule.daily(20, 8)))
                    .build();
            assertThat(changedKeys(EVERYTHING, back)).isEmpty();
        }
    }

    /** Quiet water of 1 m/s: 123.7 by ASHRAE, 130.7 by Smith and 134.3 by ISO outdoors; 83.6 by ASHRAE in a hall. */
    @Test
    void correlationsAreOrderedByWhatQuietWaterEvaporates() {
        Variation.Range range = range(new EvaporationParameter(), EVERYTHING);
        assertThat(range.low().installation().pool().evaporation()).isEqualTo(Evaporation.ASHRAE_CARRIER);
        assertThat(range.high().installation().pool().evaporation()).isEqualTo(Evaporation.ISO_TR_12596);
    }

    /** Against one of one's own stand all the published ones: Smith's lies between the ends. */
    @Test
    void aCorrelationOfOnesOwnIsHeldAgainstThePublishedOnes() {
        Installation own = EVERYTHING.toBuilder()
                .pool(EVERYTHING.pool().withEvaporation(wind -> 100))
                .build();
        Variation.Range range = range(new EvaporationParameter(), own);
        assertThat(range.described()).isEqualTo(new Setting.Words("own"));
        assertThat(range.low().installation().pool().evaporation()).isEqualTo(Evaporation.ASHRAE_CARRIER);
        assertThat(range.high().installation().pool().evaporation()).isEqualTo(Evaporation.ISO_TR_12596);
    }

    @Test
    void arraysThatDifferShowEachNumberOnce() {
        Installation two = EVERYTHING.toBuilder()
                .arrays(Demo.FLAT, Demo.FLAT, Demo.FLAT.withModel(Absorber.USUAL_MAT.withAbsorptance(0.9)))
                .build();
        Parameter absorptance = Parameters.ALL.stream()
                .filter(p -> p.name().equals("absorptance of the collector"))
                .findFirst()
                .orElseThrow();
        assertThat(range(absorptance, two).described())
                .isEqualTo(new Setting.Numbers(List.of(0.94, 0.9), Dimension.FRACTION));
    }

    private static double hours(Setting setting) {
        return ((Setting.Numbers) setting).values().get(0) / 3600;
    }

    private static Variation.Range range(Parameter parameter, Installation installation) {
        return (Variation.Range) parameter.in(installation);
    }

    private static Set<String> changedKeys(Installation one, Installation other) {
        List<String> before = lines(one);
        List<String> after = lines(other);
        assertThat(after).hasSameSizeAs(before);
        List<String> keys = new ArrayList<>();
        for (int i = 0; i < before.size(); i++) {
            if (!before.get(i).equals(after.get(i))) {
                String key = before.get(i).substring(0, before.get(i).indexOf(' '));
                assertThat(after.get(i)).startsWith(key + " ");
                keys.add(key);
            }
        }
        return keys.stream().collect(Collectors.toCollection(TreeSet::new));
    }

    private static List<String> lines(Installation installation) {
        return ScenarioWriter.write(installation, "weather.csv", REPORT).lines().toList();
    }
}
