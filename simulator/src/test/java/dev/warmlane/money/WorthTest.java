package dev.warmlane.money;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class WorthTest {

    private static final double CENT = 0.01;

    private static final Terms TERMS = new Terms(0.04, 0.02, 5);

    private static final Investment COLLECTORS = new Investment(12_000, 2_000, 100, 20);

    /**
     * As a spreadsheet has it, one line a year, every number written out: saved at the year's price, upkeep, what both are
     * worth today, and what has come together.
     */
    @Test
    void presentValueIsTheSumThatASpreadsheetMakes() {
        double[][] sheet = {
            // year, saved at the price of the year, upkeep, worth of 1 today, worth today
            {0, 0, 10_000, 1.000000, -10_000.00},
            {1, 2_550.0000, 100, 0.961538, 2_355.77},
            {2, 2_601.0000, 100, 0.924556, 2_312.31},
            {3, 2_653.0200, 100, 0.888996, 2_269.63},
            {4, 2_706.0804, 100, 0.854804, 2_227.69},
            {5, 2_760.2020, 100, 0.821927, 2_186.49},
        };
        Worth worth = new Worth(COLLECTORS, 2_500, TERMS);

        double together = 0;
        for (double[] line : sheet) {
            assertThat((line[1] - line[2]) * line[3]).isCloseTo(line[4], within(CENT));
            together += line[4];
            assertThat(worth.after((int) line[0])).as("after year " + line[0]).isCloseTo(together, within(5 * CENT));
        }
        assertThat(worth.netPresentValue()).isCloseTo(1_351.89, within(5 * CENT));
        assertThat(worth.savedPerYear()).isEqualTo(2_400);
        // it is -10,000 + 2,355.77 + 2,312.31 + 2,269.63 + 2,227.69 = -834.60 after 4 years, and 2,186.49 come in the
        // fifth
        assertThat(years(worth.payback())).isCloseTo(4 + 834.60 / 2_186.49, within(1e-4));
    }

    @Test
    void withoutInterestAndGrowthItIsPlainDivision() {
        Worth worth = new Worth(new Investment(9_000, 0, 0, 40), 1_000, new Terms(0, 0, 20));

        assertThat(worth.netPresentValue()).isCloseTo(11_000, within(1e-9));
        assertThat(years(worth.payback())).isCloseTo(9, within(1e-9));
    }

    /** The factor of a uniform series, (1 − (1 + i)^−n)/i, which every book on engineering economics has. */
    @Test
    void factorsAreThoseOfAnAnnuity() {
        Terms terms = new Terms(0.05, 0.05, 25);

        assertThat(terms.factor(25)).isCloseTo((1 - Math.pow(1.05, -25)) / 0.05, within(1e-12));
        assertThat(terms.factor(25)).isCloseTo(14.0939, within(1e-4)); // printed in tables of it
        assertThat(terms.factorOfEnergy(25)).isCloseTo(25, within(1e-12)); // price and interest grow alike
    }

    @Test
    void whatNeverPaysSaysSo() {
        assertThat(new Worth(COLLECTORS, 300, TERMS).payback()).isEqualTo(new Payback.NotWithin());
        assertThat(new Worth(COLLECTORS, -50, TERMS).payback()).isEqualTo(new Payback.NotWithin());
        assertThat(new Worth(COLLECTORS, -50, TERMS).netPresentValue()).isLessThan(-10_000);
    }

    @Test
    void whatIsGivenHasPaidAtOnce() {
        assertThat(new Worth(new Investment(1_000, 1_000, 0, 20), 10, TERMS).payback())
                .isEqualTo(new Payback.After(0));
    }

    @Test
    void whatWearsOutIsBoughtAgainWithoutTheGrant() {
        Terms terms = new Terms(0, 0, 12);
        // bought at once, after 5 and after 10 years
        assertThat(new Investment(400, 100, 0, 5).presentCost(terms)).isEqualTo(300 + 400 + 400);
        // nobody buys it for the day on which the years end
        assertThat(new Investment(400, 100, 0, 6).presentCost(terms)).isEqualTo(300 + 400);
    }

    /** 10,000 paid, 150 a year for upkeep and pumping, 30,000 kWh a year, over 20 years at 0 %: 13,000 over 600,000. */
    @Test
    void costOfAKwhIsWhatIsPaidOverTheHeat() {
        Worth worth = new Worth(COLLECTORS, 2_500, new Terms(0, 0, 20));

        assertThat(worth.costPerKwh(30_000, 50).orElseThrow()).isCloseTo(13_000 / 600_000.0, within(1e-12));
        assertThat(worth.costPerKwh(0, 50)).isEmpty();
        // with interest, capital recovery: 10,000/11.4699 a year at 6 % over 20 years, and 150 beside it
        Worth borrowed = new Worth(COLLECTORS, 2_500, new Terms(0.06, 0, 20));
        assertThat(borrowed.costPerKwh(30_000, 50).orElseThrow())
                .isCloseTo((10_000 / 11.4699 + 150) / 30_000, within(1e-6));
    }

    @Test
    void refusesWhatCannotBe() {
        assertThatThrownBy(() -> new Terms(-0.01, 0, 20)).hasMessageContaining("real interest");
        assertThatThrownBy(() -> new Terms(0.03, 0.5, 20)).hasMessageContaining("growth of energy prices");
        assertThatThrownBy(() -> new Terms(0.03, 0, 0)).hasMessageContaining("years looked at");
        assertThatThrownBy(() -> new Investment(-1, 0, 0, 20)).hasMessageContaining("price");
    }

    private static double years(Payback payback) {
        return payback.match(after -> after, () -> Double.NaN);
    }
}
