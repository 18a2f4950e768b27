package dev.warmlane.examples;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.collector.Mounting;
import dev.warmlane.scenario.Scenario;
import dev.warmlane.scenario.ScenarioReader;
import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The scenarios that come of answers: pools, roofs and heaters of every kind. */
class DescribedPoolTest extends Described {

    private static final Offset<Double> ROUNDING = Offset.offset(1e-6);

    @Test
    void emptyLinesGiveAPoolThatRuns() throws IOException {
        assertThat(describe("", "", weather("my town.csv"), "\n".repeat(40)))
                .as(err)
                .isZero();

        Scenario scenario = ScenarioReader.read(file);
        assertThat(scenario.warnings()).isEmpty();
        assertThat(scenario.weatherFile()).isEqualTo(folder.resolve("my town.csv"));
        assertThat(scenario.installation().pool().areaM2()).isEqualTo(312.5);
        assertThat(scenario.installation().collectorAreaM2()).isEqualTo(180);
        assertThat(Files.readString(file))
                .contains("weather = \"my town.csv\"", "first_day = \"1 May\"", "# assumed: mean depth")
                .doesNotContain("[prices]", "[money]", "[heater]");
        assertThat(out)
                .contains("48.0° north, 123.0° west, 20 m above the sea, UTC-8")
                .contains("Quality: ")
                .contains("Next:\n  warmlane forecast ")
                .doesNotContain("Price of");
        assertThat(PROMPT.matcher(out).results().count()).as("questions").isLessThanOrEqualTo(15);
        forecasts();
    }

    /** Every value of the file is either answered or marked, so that nobody takes a usual value for a measured one. */
    @Test
    void whatWasAnsweredAndWhatWasAssumedAreToldApart() throws IOException {
        assertThat(describe(
                        "",
                        "Pool",
                        weather("my town.csv"),
                        "sheltered",
                        "20 x 10",
                        "",
                        "bubble",
                        "",
                        "10 May to 15 September",
                        "\n".repeat(40)))
                .as(err)
                .isZero();

        List<String> lines = Files.readAllLines(file).stream()
                .filter(line -> line.contains(" = ") && !line.startsWith("#"))
                .toList();
        assertThat(lines.stream().filter(line -> line.contains("# assumed")).map(DescribedPoolTest::key))
                .contains("depth", "terrain", "drawn", "comfort", "height", "pump_power", "limit", "open", "units")
                .doesNotContain("name", "weather", "wind_shelter", "kind", "first_day", "last_day");
        assertThat(lines.stream().filter(line -> !line.contains("# assumed")).map(DescribedPoolTest::key))
                .containsExactly("name", "weather", "area", "setting", "wind_shelter", "kind", "first_day", "last_day");
    }

    private static String key(String line) {
        return line.substring(0, line.indexOf(" = "));
    }

    @Test
    void aPitchedRoofInUsUnitsWithNumbersAlone() throws IOException {
        assertThat(describe(
                        "US",
                        "Club pool",
                        "\"" + weather("my town.csv") + "\"",
                        "sheltered",
                        "75 x 42",
                        "5'6",
                        "bubble",
                        "9pm to 7am",
                        "April 15 to 15 October",
                        "80",
                        "pitched",
                        "90 x 50 ft",
                        "25",
                        "4:12",
                        "SSW",
                        "1,600 sq ft",
                        "LPG",
                        "400 MBH",
                        "82 F",
                        "10 days",
                        "USD",
                        "$2.60",
                        "0.16",
                        "12 USD/ft2",
                        "2.50",
                        "yes",
                        "60",
                        "6 am to 9 pm",
                        "86",
                        "88",
                        "4 yd",
                        "",
                        "1 hp",
                        "80",
                        "9,500 gal",
                        "150",
                        "6"))
                .as(err + out)
                .isZero();

        Scenario scenario = ScenarioReader.read(file);
        var built = scenario.installation();
        assertThat(built.pool().areaM2()).isCloseTo(75 * 42 * 0.3048 * 0.3048, ROUNDING);
        assertThat(built.pool().depthM()).isCloseTo(5.5 * 0.3048, ROUNDING);
        assertThat(built.roof().heightM()).isCloseTo(12 * 0.3048, ROUNDING);
        assertThat(built.roof().widthM()).isCloseTo(50 * 0.3048, ROUNDING);
        assertThat(built.collectorAreaM2()).isCloseTo(1600 * 0.3048 * 0.3048, ROUNDING);
        assertThat(built.heater().orElseThrow().setPointC()).isCloseTo(50 / 1.8, ROUNDING);
        assertThat(built.prices().orElseThrow().collectorPerM2()).isCloseTo(12 / 0.3048 / 0.3048, ROUNDING);
        assertThat(built.pipes().pumpPowerW()).isCloseTo(745.69987, Offset.offset(1e-4));
        assertThat(built.control().limitC()).isCloseTo(30, ROUNDING);
        assertThat(Files.readString(file))
                .contains(
                        "bathers = 60",
                        "what = \"bathers\"",
                        "tilt = \"4:12\"",
                        "azimuth = \"SSW\"",
                        "slope_length = \"25 ft\"",
                        "upkeep = 150",
                        "depth = \"5'6\"",
                        "fuel = \"2.60 per gal\"",
                        "sold_in = \"gal\"",
                        "last_bill = \"9,500 gal\"",
                        "heater_before = 10",
                        "units = \"us\"")
                .doesNotContain("heating value");
        forecasts();
    }

    /** Half of the collectors on either slope: one question each for both, and room on both for what is usual. */
    @Test
    void bothSlopesOfAPitchedRoof() throws IOException {
        assertThat(describe(
                        "",
                        "",
                        weather("my town.csv"),
                        "",
                        "25 x 12.5",
                        "",
                        "",
                        "",
                        "",
                        "both slopes",
                        "yes",
                        "20 x 10",
                        "5.5",
                        "25",
                        "east",
                        "\n".repeat(40)))
                .as(err + out)
                .isZero();

        assertThat(out)
                .contains("did you mean \"gable\"?")
                .contains(
                        "Length of one slope",
                        "Which way does one of the slopes face",
                        "Collector area of both slopes");
        assertThat(Files.readString(file)).contains("mounting = \"gable\"", "slope_length = \"5.5 m\"");
        Scenario scenario = ScenarioReader.read(file);
        assertThat(scenario.warnings()).isEmpty();
        assertThat(scenario.installation().arrays().get(0).mounting())
                .isInstanceOfSatisfying(Mounting.FlushOnPitchedRoof.class, roof -> {
                    assertThat(roof.gable()).isTrue();
                    assertThat(roof.azimuthDeg()).isEqualTo(90);
                });
        // four fifths of two slopes of 20 m x 5.5 m are 176 m2, less than six tenths of the water, 187.5 m2; two digits
        assertThat(scenario.installation().collectorAreaM2()).isEqualTo(170);
        forecasts();
    }

    @Test
    void southOfTheEquatorTheSeasonRunsOverNewYearAndRacksFaceNorth() throws IOException {
        assertThat(describe("", "", weather("south.csv"), "", "", "", "", "", "", "rack", "\n".repeat(40)))
                .as(err)
                .isZero();

        assertThat(Files.readString(file))
                .contains(
                        "first_day = \"1 November\"",
                        "last_day = \"31 March\"",
                        "azimuth = \"north\"",
                        "row_length = \"25 m\"");
        assertThat(ScenarioReader.read(file).warnings()).isEmpty();
    }

    /** Without a heater there is no price of gas, and what the money could do is still asked for. */
    @Test
    void withoutAHeaterNobodyIsAskedForGas() throws IOException {
        assertThat(describe(
                        "",
                        "",
                        weather("south.csv"),
                        "",
                        "8 x 4",
                        "",
                        "",
                        "",
                        "",
                        "",
                        "12 x 8",
                        "",
                        "none",
                        "AUD",
                        "0.30",
                        "120",
                        "25",
                        "\n".repeat(40)))
                .as(err + out)
                .isZero();

        assertThat(out).contains("Price of a bubble cover").doesNotContain("Price of gas", "heating begin");
        assertThat(Files.readString(file))
                .contains("electricity = \"0.30 per kWh\"", "cover_price = \"25 per m2\"")
                .doesNotContain("gas =", "fuel =");
        assertThat(ScenarioReader.read(file).warnings()).isEmpty();
    }

    /** A hall is open all year and kept warm: it neither opens cold nor is anybody asked when heating begins. */
    @Test
    void anIndoorPoolIsAskedForItsHall() throws IOException {
        assertThat(describe(
                        "",
                        "",
                        weather("my town.csv"),
                        "indoor",
                        "",
                        "60",
                        "",
                        "",
                        "",
                        "",
                        "31",
                        "",
                        "",
                        "",
                        "gas",
                        "",
                        "32",
                        "\n".repeat(40)))
                .as(err)
                .isZero();

        assertThat(out).doesNotContain("heating begin");
        assertThat(Files.readString(file))
                .contains(
                        "hall_temperature = \"30 degC\"",
                        "hall_humidity = \"60 %\"",
                        "start_temperature = \"32 degC\"",
                        "limit = \"34 degC\"",
                        "comfort_maximum = \"34 degC\"")
                .doesNotContain("wind_shelter", "first_day");
        forecasts();
    }

    /** Racks in pairs fill the roof twice as far as single ones at the same distance, and face both ways. */
    @Test
    void tentsAreAskedForAsRacksAre() throws IOException {
        List<String> answers = new ArrayList<>(List.of("", "", weather("my town.csv"), "", "", "", "", "", ""));
        answers.addAll(List.of("tents", "", "15", "", "", "max", "\n".repeat(40)));
        assertThat(describe(answers.toArray(String[]::new))).as(err + out).isZero();

        assertThat(out).contains("Which way does one of their two sides face", "Distance from one ridge to the next");
        assertThat(Files.readString(file))
                .contains("mounting = \"tent\"", "azimuth = \"east\"", "pitch = \"4 m\"", "row_length = \"25 m\"")
                // 80 % of 25 m x 12 m, under tents of two times 2 m every 4 m
                .contains("area = \"240 m2\"");
        assertThat(ScenarioReader.read(file).warnings()).isEmpty();
        forecasts();
    }

    /** Heaters in the words of those who own them: what the file says of each, and what it costs. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    gas | boiler | natural-gas | 1.10/m3 | fuel = "1.10/m3" # of what the heater is fed with | m3
                    Natural Gas | boiler | natural-gas | 0.09 | fuel = "0.09 per kWh" # on the higher heating value, as gas is billed | kWh
                    condensing boiler | condensing | natural-gas | 2.93 per therm | fuel = "2.93 per therm" # on the higher heating value, as gas is billed | therm
                    LPG | boiler | propane | 0.85 | fuel = "0.85 per L" # of what the heater is fed with | L
                    condensing propane | condensing | propane | 2.50 per gallon | fuel = "2.50 per gallon" # of what the heater is fed with | gal
                    Heating oil | boiler | heating-oil | 1.05 | fuel = "1.05 per L" # of what the heater is fed with | L
                    district heating | district-heat | | 0.11 | fuel = "0.11 per kWh" # of what the heater is fed with | kWh
                    """)
    void whateverHeatsThePoolIsAskedForWhatItNeeds(
            String said, String kind, String fuel, String price, String priced, String unit) throws IOException {
        List<String> answers = new ArrayList<>(
                List.of("", "", weather("my town.csv"), "", "", "", "", "", "", "", "", "", said, "120", "", "14"));
        if (fuel == null) {
            answers.add("0.2");
        }
        answers.addAll(List.of("EUR", price));
        answers.add("\n".repeat(40));
        assertThat(describe(answers.toArray(String[]::new))).as(err + out).isZero();

        assertThat(Files.readString(file).replaceAll(" +#", " #"))
                .contains("kind = \"" + kind + "\"", "heater_before = 14", priced, "sold_in = \"" + unit + "\"");
        assertThat(Files.readString(file).contains("fuel = \"" + fuel + "\"")).isEqualTo(fuel != null);
        assertThat(ScenarioReader.read(file).warnings()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"electricity, electric", "Heat Pump, heat-pump"})
    void whatTakesElectricityHasNoOtherPrice(String said, String kind) throws IOException {
        String[] electric = {"", "", weather("my town.csv"), "", "", "", "", "", "", "", "", "", said, "", "", "", ""};
        String cop = kind.equals("heat-pump") ? "\n" : "";
        assertThat(describe(String.join("\n", electric) + "\n" + cop + "EUR", "\n".repeat(40)))
                .as(err + out)
                .isZero();

        assertThat(out).doesNotContain("Price of gas", "Efficiency");
        assertThat(Files.readString(file))
                .contains("kind = \"" + kind + "\"", "fuel_co2 = \"0.25 kg/kWh\"", "electricity = \"0.25 per kWh\"")
                .doesNotContain("gas =", "fuel =", "heating value");
        assertThat(ScenarioReader.read(file).warnings()).isEmpty();
    }
}
