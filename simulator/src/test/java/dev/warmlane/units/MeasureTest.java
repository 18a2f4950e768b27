package dev.warmlane.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class MeasureTest {

    /** The expected values are given to five digits. */
    private static final double FIVE_DIGITS = 1e-4;

    /** From the definitions: foot 0.3048 m, gallon 231 in³, pound 0.45359237 kg, Btu 1055.056 J, therm 1e5 Btu. */
    @ParameterizedTest
    @CsvSource({
        "TEMPERATURE, 25, 77",
        "TEMPERATURE_DIFFERENCE, 5, 9",
        "HEAT, 1000, 34.121",
        "HEAT_PER_AREA, 100, 31.700",
        "ELECTRICITY, 10, 10",
        "POWER, 100, 341.21",
        "IRRADIANCE, 1000, 317.00",
        "LENGTH, 3.048, 10",
        "AREA, 100, 1076.4",
        "VOLUME, 1, 264.17",
        "FLOW, 10, 44.029",
        "MASS, 100, 220.46",
        "WEIGHT, 10, 2.0482",
        "SPEED, 10, 22.369",
        "SHARE, 0.5, 50"
    })
    void usUnits(Measure measure, double metric, double us) {
        assertThat(measure.in(UnitSystem.US, metric)).isCloseTo(us, within(FIVE_DIGITS * us));
    }

    /** 100 kWh/m² on 0.3048² m². */
    @Test
    void heatBesideElectricityIsInKwh() {
        assertThat(Measure.HEAT.in(UnitSystem.US_ELECTRIC, 1000)).isEqualTo(1000);
        assertThat(Measure.HEAT_PER_AREA.in(UnitSystem.US_ELECTRIC, 100)).isCloseTo(9.2903, within(1e-3));
        assertThat(Measure.AREA.in(UnitSystem.US_ELECTRIC, 100)).isEqualTo(Measure.AREA.in(UnitSystem.US, 100));
        assertThat(UnitSystem.METRIC.electric()).isEqualTo(UnitSystem.METRIC);
    }

    @ParameterizedTest
    @EnumSource(Measure.class)
    void metricNumbersStayAsTheyCome(Measure measure) {
        assertThat(measure.in(UnitSystem.METRIC, 0.25)).isEqualTo(measure == Measure.SHARE ? 25 : 0.25);
    }

    @Test
    void unitsOfColumnsAreSnakeCase() {
        // a factor has no unit, and its column keeps its plain name
        assertThat(Arrays.stream(Measure.values())
                        .filter(m -> m != Measure.FACTOR)
                        .flatMap(m -> Arrays.stream(UnitSystem.values()).map(m::suffix)))
                .allMatch(suffix -> suffix.matches("[a-z0-9_]+"));
    }

    @Test
    void isFoundByWhatItMeasures() {
        assertThat(Measure.of(Dimension.LENGTH, "mm")).hasValue(Measure.SMALL_LENGTH);
        assertThat(Measure.of(Dimension.LENGTH)).hasValue(Measure.LENGTH);
        assertThat(Measure.of(Dimension.PER_SPEED)).isEmpty();
    }

    @Test
    void unitsAreWrittenAsPeopleReadThemAndAsAFileTakesThem() {
        assertThat(Measure.FILM.unit(UnitSystem.US)).isEqualTo("Btu/h ft² °F");
        assertThat(Measure.RESISTANCE.unit(UnitSystem.METRIC)).isEqualTo("m²K/W");
        assertThat(Measure.written("W/m2K4")).isEqualTo("W/m²K⁴");
        for (Measure measure : Measure.values()) {
            for (UnitSystem units : UnitSystem.values()) {
                if (measure != Measure.YEARS) {
                    String written = "2 " + measure.unit(units);
                    assertThat(Quantity.parse(written, measure.dimension()))
                            .isEqualTo(Quantity.parse("2 " + measure.symbol(units), measure.dimension()));
                }
            }
        }
    }
}
