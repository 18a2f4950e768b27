package dev.warmlane.report;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.units.UnitSystem;
import org.junit.jupiter.api.Test;

class RoofMapWordsTest {

    private static final Numbers NUMBERS = new Numbers(UnitSystem.METRIC);

    @Test
    void distanceToTheTurningIsSaid() {
        assertThat(new RoofMapWords(NUMBERS, InventedRoofMap.of(true)).conclusion())
                .contains("reflects 20 % of the sun")
                .contains("inner rows have 100 % of the wind at the first, “flat” leads by 43 %.")
                .contains("With its roof no wind at the inner rows from 30 % to 120 % turns it.")
                .contains(
                        "With its wind both would give the same at a share of the sun reflected of 50 %, 30 points more.");
        assertThat(new RoofMapWords(NUMBERS, InventedRoofMap.of(false)).conclusion())
                .contains("With its wind no share of the sun reflected from 5 % to 85 % turns it.");
    }

    @Test
    void everyPlaceIsInTheCsv() {
        Table table = LeadMapCsv.roof(InventedRoofMap.of(true), UnitSystem.METRIC);

        assertThat(table.rows()).hasSize(3 * 2 + 20 + 1);
    }
}
