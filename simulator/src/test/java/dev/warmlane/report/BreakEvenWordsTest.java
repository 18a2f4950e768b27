package dev.warmlane.report;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.report.write.CsvWriter;
import dev.warmlane.study.BreakEvenMap;
import dev.warmlane.units.UnitSystem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class BreakEvenWordsTest {

    private static final Numbers NUMBERS = new Numbers(UnitSystem.METRIC);

    @Test
    void theConclusionSaysWhoLeadsHowNearItTurnsAndOnWhichSideTheHeatCame() {
        assertThat(new BreakEvenWords(NUMBERS, InventedMap.of(true)).conclusion())
                .isEqualTo(
                        "The season, 3.0 m/s of wind along the roof and water of 25.0 °C, lies where “flat” leads by 3 %."
                                + " With its wind both would give the same to water of 22.0 °C, 3.0 degrees colder, below the 23.0 °C that"
                                + " its heater keeps."
                                + " With its water no wind up to 6.0 m/s along the roof turns it."
                                + " Of the heat of “flat” 60 % came on days that lie where “flat” leads, 10 % where “racks” leads,"
                                + " 20 % where none does, 10 % in wind or water beyond the map."
                                + " The season as simulated comes out otherwise: “racks” leads by 10 %. The map leaves out the"
                                + " pool's limit and how its temperature goes up and down: go by the simulated season.");
    }

    @Test
    void whereNothingTurnsItIsSaid() {
        assertThat(new BreakEvenWords(NUMBERS, InventedMap.of(false)).conclusion())
                .contains("“flat” leads by 23 %", "With its wind no water of 10.0 to 40.0 °C turns the ranking.")
                .doesNotContain("otherwise");
    }

    /** Both sides of each bound: a pool may be as warm as its limit, and as its heater keeps it. */
    @Test
    void waterThatThePoolIsKeptFromIsSaidToBe() {
        assertThat(nearest(OptionalDouble.empty(), 21.9))
                .contains("3.0 degrees colder, above the 21.9 °C at which its collectors stop.");
        assertThat(nearest(OptionalDouble.of(22), 22)).contains("3.0 degrees colder. With its water");
    }

    private static String nearest(OptionalDouble setPointC, double limitC) {
        BreakEvenMap map = InventedMap.of(true);
        return new BreakEvenWords(
                        NUMBERS,
                        new BreakEvenMap(
                                map.map(),
                                map.undisturbedMs(),
                                map.simulated(),
                                new BreakEvenMap.Reach(setPointC, limitC),
                                map.days()))
                .conclusion();
    }

    @Test
    void csvHasLinesAndDays() throws IOException {
        Table lines = LeadMapCsv.windAndWater(InventedMap.of(true), UnitSystem.METRIC);
        Table days = LeadMapCsv.days(InventedMap.of(true), UnitSystem.METRIC);

        assertThat(CsvWriter.csv(lines).lines())
                .hasSize(1 + 3 * 2)
                .contains(
                        "line,branch,roof_wind_m_per_s,water_degc,season_flat_kwh_per_m2,season_racks_kwh_per_m2",
                        "same heat,1,0,22,100,100",
                        "flat leads by 2 %,1,6,24,102,100",
                        "racks lead by 2 %,1,0,20,100,102");
        assertThat(CsvWriter.csv(days).lines())
                .hasSize(1 + 4)
                .contains(
                        "06-01,600,2,26,104,100,flat",
                        "06-02,200,4,21,100,101,neither",
                        "06-04,100,7,25,0,0,off the map");
        String document = Files.readString(Path.of("..", "docs", "csv.md"));
        for (Table table : new Table[] {lines, days}) {
            assertThat(table.columns())
                    .allSatisfy(column -> assertThat(document).contains("`" + column.csvName() + "`"));
        }
    }
}
