package dev.warmlane.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.collector.Mounting;
import dev.warmlane.irradiance.Rack;
import dev.warmlane.study.MountingOption;
import dev.warmlane.study.MountingOption.Flat;
import dev.warmlane.study.MountingOption.Pitched;
import dev.warmlane.study.MountingOption.Racks;
import dev.warmlane.study.MountingOption.RoofSide;
import dev.warmlane.study.RowSpacing;
import dev.warmlane.weather.WeatherReadOptions;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The sections {@code [[mountings]]}. */
class MountingSectionsTest {

    private static final WeatherReadOptions READING = WeatherReadOptions.defaults()
            .withUtcOffsetHours(-3.5)
            .withCentreHours(0.25)
            .withWindHeightM(2.5);
    private static final String WEATHER = "../../weather-samples/cool-coast.csv";

    @TempDir
    private Path folder;

    @Test
    void whatIsWrittenIsReadBack() throws IOException {
        Scenario demo = Demos.read(Demos.file("municipal-25m.toml"), folder);
        List<MountingOption> options = List.of(
                new Flat("mats", new Mounting.FlatOnRoof(0.008)),
                new Flat("mats at their price", new Mounting.FlatOnRoof(0.008)).pricedPerM2(120),
                racks("racks at theirs", new RowSpacing.FixedPitch(3.25), RoofSide.SHORT)
                        .pricedPerM2(187.5),
                new Pitched("slope", new Mounting.FlushOnPitchedRoof(27, 200, 7.5, 0.004), OptionalDouble.empty())
                        .pricedPerM2(131),
                racks("fixed", new RowSpacing.FixedPitch(3.25), RoofSide.SHORT),
                racks("tents", new RowSpacing.FixedPitch(6.5), RoofSide.LONG).withTents(true),
                racks("noon", new RowSpacing.Unshaded(12, 12, Optional.empty()), RoofSide.LONG),
                racks("hours", new RowSpacing.Unshaded(9.5, 15, Optional.of(MonthDay.of(12, 21))), RoofSide.LONG),
                new Pitched("own", new Mounting.FlushOnPitchedRoof(27, 200, 7.5, 0.004), OptionalDouble.of(120.5)),
                new Pitched(
                        "gable", new Mounting.FlushOnPitchedRoof(27, 110, 7.5, 0.004, true), OptionalDouble.empty()),
                new Pitched("same", new Mounting.FlushOnPitchedRoof(27, 200, 7.5, 0.004), OptionalDouble.empty()));

        String text = ScenarioWriter.write(demo.installation(), options, WEATHER, READING, demo.report());

        Scenario back = Demos.read(text, folder);
        assertThat(back.mountings()).isEqualTo(options);
        assertThat(back.weatherReading()).isEqualTo(READING);
    }

    private static Racks racks(String name, RowSpacing spacing, RoofSide along) {
        return new Racks(
                name,
                new Rack(4, 190, 2.5, 0.05),
                Mounting.Back.boarded(2.3),
                Mounting.WindRun.ROOF,
                0.6,
                spacing,
                along);
    }

    @Test
    void clubNamesItsMountingsInUsUnits() throws IOException {
        List<MountingOption> options =
                Demos.read(Demos.file("us-club.toml"), folder).mountings();

        assertThat(options)
                .extracting(MountingOption::name)
                .containsExactly("flat", "racks 20 deg, close", "racks 20 deg, unshaded", "pitched roof next door");
        Racks unshaded = (Racks) options.get(2);
        assertThat(unshaded.chordM()).isEqualTo(10 * 0.3048);
        assertThat(unshaded.spacing()).isEqualTo(new RowSpacing.Unshaded(12, 12, Optional.of(MonthDay.of(12, 21))));
    }

    @Test
    void usualValuesAreNamedAsAssumed() throws IOException {
        String demo = Files.readString(Demos.file("municipal-25m.toml"));

        Scenario scenario = Demos.read(demo + """

                        [[mountings]]
                        name = "racks"
                        mounting = "rack"
                        tilt = "30 deg"
                        azimuth = "180 deg"
                        """, folder);

        assertThat(scenario.assumed()).noneMatch(a -> a.section().startsWith("mountings"));
        assertThat(scenario.mountingsAssumed())
                .extracting(Assumption::key)
                .containsExactlyInAnyOrder(
                        "chord", "clearance", "back", "wind_run", "inner_wind", "spacing", "rows_along");
        assertThat(((Racks) scenario.mountings().get(0)).spacing()).isEqualTo(MountingOption.USUAL_SPACING);
    }

    @Test
    void aPriceOfItsOwnIsUnderstoodInEitherUnitAndNeedsACurrency() throws IOException {
        String demo = Files.readString(Demos.file("municipal-25m.toml"));
        String mats = """

                [[mountings]]
                name = "mats"
                mounting = "flat"
                price = "13 per ft2"
                """;

        // 1 ft² is 0.09290304 m²
        assertThat(Demos.read(demo + mats, folder)
                        .mountings()
                        .get(0)
                        .pricePerM2()
                        .orElseThrow())
                .isCloseTo(13 / 0.09290304, within(1e-9));
        String without = demo.replaceAll("(?s)\\[prices\\].*?\\[control\\]", "[control]");
        assertThatThrownBy(() -> Demos.read(without + mats, folder))
                .hasMessageContaining("[mountings] price: needs a section [prices]");
    }

    @Test
    void fileWithoutMountingsHasNone() throws IOException {
        assertThat(Demos.read(Demos.file("municipal-25m.toml"), folder).mountings())
                .isEmpty();
    }
}
