package dev.warmlane.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.collector.Absorber;
import dev.warmlane.collector.CollectorArray;
import dev.warmlane.collector.Mounting;
import dev.warmlane.pool.Pool;
import dev.warmlane.pool.PoolSetting;
import dev.warmlane.season.Installation;
import dev.warmlane.site.Roof;
import dev.warmlane.wind.PoolShelter;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AssumptionsTest {

    private static final String BAREST = """
            [site]
            name = "barest"
            weather = "../../weather-samples/cool-coast.csv"
            [pool]
            area = "200 m2"
            depth = "1.5 m"
            setting = "outdoor"
            [roof]
            length = "20 m"
            width = "10 m"
            height = "4 m"
            """;

    private static final String SWUM = BAREST.replace("[roof]", """
            bathers = 20
            [[schedule]]
            what = "bathers"
            months = "6-8"
            hours = "9-18"
            [roof]""");

    @TempDir
    private Path folder;

    @Test
    void usualValuesAreThoseOfTheRecords() throws IOException {
        Scenario scenario = Demos.read(
                BAREST + "[[collectors]]\nname = \"mats\"\narea = \"100 m2\"\nmounting = \"flat\"\n", folder);

        Installation usual = Installation.builder(
                        "barest",
                        Pool.of(200, 1.5, new PoolSetting.Outdoor(PoolShelter.SUBURBAN)),
                        Roof.builder(20, 10, 4).build())
                .arrays(new CollectorArray("mats", 100, Mounting.FlatOnRoof.USUAL, Absorber.USUAL_MAT))
                .build();
        SameInstallation.check(scenario.installation(), usual, SameInstallation.ROUNDING);
    }

    /** 300 m³ in 5 h against 12 m: 1/60 m³/s · 997.05 kg/m³ · 9.80665 m/s² · 12 m. */
    @Test
    void aTurnoverGivesTheHeatOfTheCirculationPump() throws IOException {
        String pumped = BAREST.replace("[roof]", "turnover = \"5 h\"\n[roof]");
        Scenario scenario = Demos.read(pumped, folder);
        assertThat(scenario.installation().pool().circulationW()).isCloseTo(1955.55, within(0.5));
        assertThat(scenario.assumed())
                .extracting(a -> a.section() + "." + a.key() + " = " + a.value())
                .contains("pool.circulation_head = 12 m")
                .doesNotContain("pool.circulation_power = 0 W");
    }

    @Test
    void everyUsualValueIsNamedWithItsUnitAndItsSource() throws IOException {
        List<Assumption> assumed = Demos.read(BAREST, folder).assumed();

        assertThat(assumed)
                .extracting(a -> a.section() + "." + a.key() + " = " + a.value())
                .containsExactly(
                        "site.terrain = suburban",
                        "pool.wind_shelter = suburban",
                        "pool.shaded_share = 0 %",
                        "pool.sky_share = 100 %",
                        "pool.finish = light",
                        "pool.water_emittance = 95 %",
                        "pool.evaporation = Smith, Löf and Jones 1994",
                        "pool.ground_conductance = 263.52 W/K",
                        "pool.circulation_power = 0 W",
                        "pool.bathers = 0",
                        "pool.make_up = 0 L/day",
                        "water.mains = from air",
                        "roof.albedo = 20 %",
                        "roof.emittance = 90 %",
                        "roof.u_value = 0.5 W/m²K",
                        "roof.room_temperature = 22 °C",
                        "roof.roughness = 1.13",
                        "roof.wind_speed_ratio = 1",
                        "roof.usable_share = 80 %",
                        "pipes.heat_loss = 0 W/K",
                        "pipes.pump_power = 0 W",
                        "money.cover_kind = bubble sheet",
                        "control.on_difference = 4 °C",
                        "control.off_difference = 0.3 °C",
                        "control.limit = 30 °C",
                        "control.pumping = all day",
                        "season.first_day = 1 January",
                        "season.last_day = 31 December",
                        "season.open = all day",
                        "season.days_standing = 30",
                        "season.comfort = 26 °C",
                        "season.comfort_maximum = 30 °C");
        assertThat(assumed).allSatisfy(a -> assertThat(a.why()).isNotBlank());
    }

    @Test
    void usReportsAreToldInUsUnits() throws IOException {
        Scenario metric = Demos.read(SWUM, folder);
        Scenario us = Demos.read(SWUM + "[report]\nunits = \"us\"\n", folder);

        assertThat(us.assumed())
                .extracting(a -> a.section() + "." + a.key() + " = " + a.value())
                .contains(
                        "roof.room_temperature = 71.6 °F",
                        "roof.u_value = 0.08806 Btu/h ft² °F",
                        "pool.make_up = 0 gal/day",
                        "pool.bather_heat = 2047 Btu/h", // 600 W · 3600 s / 1055.056 J
                        "season.first_day = January 1",
                        "control.on_difference = 7.2 °F",
                        "control.limit = 86 °F");
        assertThat(us.assumed())
                .extracting(Assumption::value)
                .noneMatch(value -> value.matches(".*(°C|W/K|m²K|L/day| K)$"));
        assertThat(us.assumed())
                .extracting(Assumption::words)
                .isEqualTo(metric.assumed().stream().map(Assumption::words).toList());
    }

    @Test
    void everythingThatMayBeAssumedHasWordsForItsReader() {
        Schema.SECTIONS.forEach(section -> {
            check(section.name(), section);
            section.parts().forEach(part -> check(section.name() + "." + part.name(), part));
        });
    }

    private static void check(String name, SectionSchema section) {
        assertThat(section.keys()).filteredOn(key -> !key.why().isEmpty()).allSatisfy(key -> assertThat(
                        KeyWords.knows(name, key.name()))
                .as(name + "." + key.name())
                .isTrue());
    }

    @Test
    void whatTheFileGivesIsNotAssumed() throws IOException {
        List<Assumption> assumed = Demos.read(BAREST + "albedo = 0.6\n[season]\ncomfort = \"24 degC\"\n", folder)
                .assumed();

        assertThat(assumed).extracting(Assumption::key).doesNotContain("albedo", "comfort");
    }

    @Test
    void kindOfCoverFillsTheNumbersThatAreNotGiven() throws IOException {
        Scenario scenario = Demos.read(BAREST + "[cover]\nkind = \"bubble\"\nresistance = \"0.05 m2K/W\"\n", folder);

        assertThat(scenario.installation().cover().orElseThrow().resistanceM2KW())
                .isEqualTo(0.05);
        assertThat(scenario.assumed())
                .filteredOn(a -> a.section().equals("cover"))
                .extracting(Assumption::toString)
                .containsExactly(
                        "cover drawn 20:00 to 8:00 (by night, common practice, no source)",
                        "cover evaporation_cut 94.9 % (usual for this kind of cover, trade press)",
                        "cover solar_loss 10 % (usual for this kind of cover, trade press)");
    }

    @Test
    void rulesTakeThePlaceOfUsualHours() throws IOException {
        Scenario scenario = Demos.read(
                BAREST
                        + "[cover]\nkind = \"foam\"\n[[schedule]]\nwhat = \"cover\"\nmonths = \"5-6\"\nhours = \"21-7\"\n",
                folder);

        assertThat(scenario.installation().cover().orElseThrow().drawn().hoursPerYear())
                .isEqualTo((31 + 30) * 10);
        assertThat(scenario.assumed()).extracting(Assumption::key).doesNotContain("drawn");
    }
}
