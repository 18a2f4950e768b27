package dev.warmlane.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.DocBlock;
import dev.warmlane.physics.StandardAtmosphere;
import dev.warmlane.pool.Evaporation;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Measuring campaigns of which only published figures are at hand: docs/validation/campaigns.md. The figures lie in
 * reference/pool/campaigns.csv; {@code -Ddocs.write=true} writes the tables.
 */
@Tag("handbook")
class PublishedCampaignsTest {

    private static final String PAGE = "validation/campaigns.md";

    /** Fort Collins lies at about 1,525 m. */
    private static final double FORT_COLLINS_KPA = StandardAtmosphere.pressureKpa(1525);

    /** The Swiss midlands, 400 to 500 m. */
    private static final double MIDLANDS_KPA = StandardAtmosphere.pressureKpa(450);

    /** Winds of the tests at Fort Collins: near zero to 2.2 m/s at the water. */
    private static final double STRONGEST_MS = 2.2;

    /** Shares are printed to whole per cent. */
    private static final double PRINTED = 0.01;

    /**
     * Nights that fit: heated water of 26 to 30 °C, dew points of a dry place in late summer, no cloud or half the sky. From
     * general knowledge, not from the paper.
     */
    private static final List<double[]> NIGHTS = List.of(
            new double[] {28, 4, 0},
            new double[] {28, 8, 0},
            new double[] {28, 12, 0},
            new double[] {26, 8, 0},
            new double[] {30, 8, 0},
            new double[] {28, 8, 0.5});

    @Test
    void pageIsWhatIsComputed() throws IOException {
        DocBlock.check(PAGE, "fort collins", fortCollins());
        DocBlock.check(PAGE, "ashrae", ashrae());
        DocBlock.check(PAGE, "swiss coefficient", swissCoefficient());
        DocBlock.check(PAGE, "swiss order", swissOrder());
    }

    /** The three shares come back from a night that such a place has, at a wind that was measured. */
    @Test
    void fortCollinsNightsAreAmongThoseOfTheModel() {
        for (double[] of : NIGHTS) {
            Night night = night(of);
            double wind = night.windMs(published("fort-collins", "share_radiation"));
            assertThat(wind).as("wind of %s", night).isBetween(0.0, STRONGEST_MS);
            assertThat(night.airC()).as("air of %s", night).isBetween(5.0, 20.0);
            assertThat(night.evaporationWm2(wind) / night.allWm2(wind))
                    .isCloseTo(published("fort-collins", "share_evaporation"), within(PRINTED));
            assertThat(night.convectionWm2(wind) / night.allWm2(wind))
                    .isCloseTo(published("fort-collins", "share_convection"), within(PRINTED));
        }
    }

    @Test
    void quietWaterEvaporatesWhatWasMeasuredOfTheHandbooksEquation() {
        assertThat(overAshrae(0)).isCloseTo(published("fort-collins", "over_ashrae_still"), within(PRINTED));
        // 0.81 by the published equation itself, which rounds its own table
        assertThat(overAshrae(STRONGEST_MS))
                .isCloseTo(published("fort-collins", "over_ashrae_2.2_ms"), within(2 * PRINTED));
    }

    /** What five pools were fitted with lies at the correlations for quiet water, at every wind that pools meet. */
    @Test
    void fiveSwissPoolsEvaporateAsTheCorrelationsSay() {
        for (double wind : new double[] {0.5, 1, 2}) {
            assertThat(swissWm2Kpa(wind) / Evaporation.SMITH_LOF_JONES.heatWm2Kpa(wind))
                    .isBetween(0.85, 1.1);
        }
    }

    /** Radiation, evaporation, convection: ours in still air, and with the pools' own coefficient in a little more wind. */
    @Test
    void lossesOfASwissNightHaveThePublishedOrderInWeakWind() {
        Night night = swissNight();
        assertThat(night.radiationWm2()).isGreaterThan(night.evaporationWm2(0));
        assertThat(night.evaporationWm2(0)).isGreaterThan(night.convectionWm2(0));
        assertThat(turnsOursMs()).isBetween(0.1, turnsTheirsMs());
    }

    private static Night night(double[] of) {
        return Night.ofRatio(
                of[0],
                of[1],
                FORT_COLLINS_KPA,
                of[2],
                published("fort-collins", "share_convection") / published("fort-collins", "share_evaporation"));
    }

    /** A summer night of the midlands, own choice: 14 °C, dew point 11 °C, no cloud, over a pool of 24 °C. */
    private static Night swissNight() {
        return new Night(24, 14, 11, MIDLANDS_KPA, 0);
    }

    private static double overAshrae(double windMs) {
        return Evaporation.SMITH_LOF_JONES.heatWm2Kpa(windMs) / Evaporation.ASHRAE_CARRIER.heatWm2Kpa(windMs);
    }

    /** The Swiss film over Bowen's ratio at their pressure. */
    private static double swissWm2Kpa(double windMs) {
        double film = published("five-swiss-pools", "film_still_w_m2k")
                + published("five-swiss-pools", "film_per_ms_j_m3k") * windMs;
        return film / (Night.BOWEN_KPA_K * MIDLANDS_KPA / StandardAtmosphere.pressureKpa(0));
    }

    private static String fortCollins() {
        StringBuilder rows = new StringBuilder("""
                | water, dew point, cloud | air that the ratio of convection to evaporation wants | radiation, evaporation, convection in still air | at 1 m/s | at 2 m/s | published at |
                |---|---|---|---|---|---|
                """);
        for (double[] of : NIGHTS) {
            Night night = night(of);
            rows.append(String.format(
                    Locale.ROOT,
                    "| %.0f °C, %.0f °C, %.1f | %.1f °C | %s | %s | %s | %.1f m/s |\n",
                    of[0],
                    of[1],
                    of[2],
                    night.airC(),
                    shares(night, 0),
                    shares(night, 1),
                    shares(night, 2),
                    night.windMs(published("fort-collins", "share_radiation"))));
        }
        return rows.toString();
    }

    private static String shares(Night night, double wind) {
        double all = night.allWm2(wind);
        return String.format(
                Locale.ROOT,
                "%.0f, %.0f, %.0f %%",
                100 * night.radiationWm2() / all,
                100 * night.evaporationWm2(wind) / all,
                100 * night.convectionWm2(wind) / all);
    }

    private static String ashrae() {
        return String.format(
                Locale.ROOT,
                """
                | wind at the water | published | ours |
                |---|---|---|
                | near zero | %.2f | %.2f |
                | 2.2 m/s | %.2f | %.2f |
                """,
                published("fort-collins", "over_ashrae_still"),
                overAshrae(0),
                published("fort-collins", "over_ashrae_2.2_ms"),
                overAshrae(STRONGEST_MS));
    }

    private static String swissCoefficient() {
        StringBuilder rows = new StringBuilder("""
                | wind m/s | five pools, W/m²kPa | Smith, Löf and Jones | ISO/TR 12596 | ASHRAE, quiet water |
                |---|---|---|---|---|
                """);
        for (double wind : new double[] {0, 0.5, 1, 2}) {
            rows.append(String.format(
                    Locale.ROOT,
                    "| %.1f | %.0f | %.0f | %.0f | %.0f |\n",
                    wind,
                    swissWm2Kpa(wind),
                    Evaporation.SMITH_LOF_JONES.heatWm2Kpa(wind),
                    Evaporation.ISO_TR_12596.heatWm2Kpa(wind),
                    0.74 * Evaporation.ASHRAE_CARRIER.heatWm2Kpa(wind)));
        }
        return rows.toString();
    }

    private static String swissOrder() {
        Night night = swissNight();
        StringBuilder rows = new StringBuilder("""
                | wind at the water | radiation, evaporation, convection |
                |---|---|
                """);
        for (double wind : new double[] {0, 0.3, 0.6, 1.2}) {
            rows.append(String.format(Locale.ROOT, "| %.1f m/s | %s |\n", wind, shares(night, wind)));
        }
        return rows.append(String.format(
                        Locale.ROOT,
                        "\nEvaporation passes radiation at %.2f m/s, with the pools' own coefficient at %.2f m/s.\n",
                        turnsOursMs(),
                        turnsTheirsMs()))
                .toString();
    }

    /** The wind at which evaporation passes radiation, m/s. */
    private static double turnsOursMs() {
        Night night = swissNight();
        double still = night.evaporationWm2(0);
        return (night.radiationWm2() - still) / (night.evaporationWm2(1) - still);
    }

    private static double turnsTheirsMs() {
        Night night = swissNight();
        double perKpa = night.evaporationWm2(0) / Evaporation.SMITH_LOF_JONES.heatWm2Kpa(0);
        return (night.radiationWm2() / perKpa - swissWm2Kpa(0)) / (swissWm2Kpa(1) - swissWm2Kpa(0));
    }

    private static double published(String campaign, String figure) {
        try {
            String start = campaign + "," + figure + ",";
            return Files.readAllLines(Path.of("src", "test", "resources", "reference", "pool", "campaigns.csv"))
                    .stream()
                    .filter(line -> line.startsWith(start))
                    .mapToDouble(line ->
                            Double.parseDouble(line.substring(start.length()).split(",", 2)[0]))
                    .findFirst()
                    .orElseThrow();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
