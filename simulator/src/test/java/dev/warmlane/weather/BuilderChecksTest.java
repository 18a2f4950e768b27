package dev.warmlane.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dev.warmlane.site.HourOfYear;
import dev.warmlane.weather.WeatherFinding.Kind;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Weather that a program gives goes through the same checks as a file, and is told by its own columns and hours. */
class BuilderChecksTest {

    private static final int NOON = HourOfYear.of(7, 14, 12);

    private final InventedYear year = InventedYear.sound();

    @Test
    void aSoundYearHasNoFindingsAndKeepsItsSun() {
        WeatherYear built = year.weather();
        assertThat(built.findings()).isEmpty();
        assertThat(built.sun()).isSameAs(year.sun);
        assertThat(built.closure()).isNotNull();
        assertThat(built.airTemperatureC(NOON)).isEqualTo(year.air[NOON]);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 52, -52, 70, 82, -89.9})
    void aSoundYearUnderAnySunHasNoFindings(double latitude) {
        assertThat(InventedYear.at(latitude).weather().findings()).isEmpty();
    }

    @Test
    void whatIsNotGivenIsEstimatedAndTold() {
        WeatherYear built = WeatherYear.builder(InventedYear.SITE, "a program", year.sun)
                .irradianceWm2(year.global, year.direct, year.diffuse)
                .airC(year.air, year.dew)
                .windSpeedMs(year.wind)
                .build();
        assertThat(built.longWaveOrigin()).isEqualTo(WeatherYear.LongWaveOrigin.CLEARNESS);
        assertThat(built.longWaveEstimatedHours()).isEqualTo(HourOfYear.HOURS);
        assertThat(built.findings()).anySatisfy(f -> assertThat(f.message()).startsWith("the year has no infrared"));
        assertThat(built.findings()).anySatisfy(f -> assertThat(f.message()).startsWith("the year has no pressure"));
    }

    @Test
    void hoursAreToldAsTheyAreCountedInTheColumns() {
        year.wind[100] = 98;
        year.air[300] = Double.NaN;
        WeatherYear built = year.weather();
        assertThat(built.findings())
                .contains(
                        new WeatherFinding(
                                Kind.REPAIR,
                                0,
                                1,
                                "impossible wind speed in hour 100 (98 m/s first, 0 to 50 can be): taken as missing and filled"),
                        new WeatherFinding(
                                Kind.REPAIR,
                                0,
                                1,
                                "missing air temperature in hour 300: filled by straight lines over gaps of at most 6"
                                        + " hours"));
        assertThat(built.airTemperatureC(300)).isEqualTo((year.air[299] + year.air[301]) / 2);
    }

    @Test
    void columnsAreCopied() {
        WeatherYear.Builder builder = builder();
        double before = year.air[NOON];
        year.air[NOON] += 5;
        assertThat(builder.build().airTemperatureC(NOON)).isEqualTo(before);
        assertThat(builder.build().findings()).isEmpty();
    }

    @Test
    void hoursOfUtcInsteadOfLocalTime() {
        for (double[] column : new double[][] {year.global, year.direct, year.diffuse, year.air, year.dew, year.wind}) {
            double[] local = column.clone();
            for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
                column[(hour + 5) % HourOfYear.HOURS] = local[hour];
            }
        }
        refused(
                "invented: found irradiance that follows the sun only 5 hours earlier",
                "Check longitude and UTC offset");
    }

    @Test
    void kilowattsInsteadOfWatts() {
        for (double[] column : new double[][] {year.global, year.direct, year.diffuse}) {
            Arrays.setAll(column, hour -> column[hour] / 1000);
        }
        refused("global horizontal irradiance: found 0.001 of the light outside", "Is irradiance in kW/m² or MJ/m²?");
    }

    @Test
    void aDewPointAboveTheAir() {
        Arrays.setAll(year.dew, hour -> year.air[hour] + 3);
        refused("invented, hour 0 (01-01 00:00): dew point: found", "and the like in 8760 hours");
    }

    @Test
    void aConstantTemperature() {
        Arrays.fill(year.air, 20);
        refused("air temperature: found 20 °C, the same value in the whole year");
    }

    @Test
    void aColumnThatIsMissingOrTooShort() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> builder().windSpeedMs(new double[24]))
                .withMessage("wind speed needs 8760 values, got 24");
        Arrays.fill(year.wind, Double.NaN);
        refused("invented: wind speed: found no value in the whole year; expected hourly values");
    }

    @Test
    void aGapIsToldByItsHour() {
        Arrays.fill(year.wind, 4000, 4010, Double.NaN);
        refused("invented, hour 4000 (06-16 16:00): wind speed: found 10 hours in a row without a value");
    }

    /** Who gave the columns has no file to fetch. */
    @Test
    void remediesAreThoseOfAProgram() {
        Arrays.fill(year.global, 24 * 150, 24 * 160, 0);
        refused("A column lost its values: correct the column given.");
    }

    private WeatherYear.Builder builder() {
        return WeatherYear.builder(InventedYear.SITE, "invented", year.sun)
                .irradianceWm2(year.global, year.direct, year.diffuse)
                .airC(year.air, year.dew)
                .pressureKpa(year.pressure)
                .windSpeedMs(year.wind)
                .skyLongWaveWm2(year.longWave, WeatherYear.LongWaveOrigin.FILE);
    }

    private void refused(String... words) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> builder().build())
                .havingCause()
                .isInstanceOf(Refusal.class);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> builder().build())
                .satisfies(e -> assertThat(e.getMessage()).contains(words));
    }
}
