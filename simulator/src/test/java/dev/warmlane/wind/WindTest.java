package dev.warmlane.wind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.site.Terrain;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.EnumSource;

class WindTest {

    /** Half a unit of the last digit of the rows, and rounding. */
    private static final double ROW = 6e-4;

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/wind/wind_profile.csv", useHeadersInDisplayName = true)
    void meetsTheProfileRows(String terrain, double heightM, double ratio) {
        assertThat(WindProfile.ratio(Terrain.valueOf(terrain.toUpperCase(Locale.ROOT)), heightM))
                .isCloseTo(ratio, within(ROW));
    }

    @ParameterizedTest
    @EnumSource
    void windRisesWithHeightUpToTheLayer(Terrain terrain) {
        double before = 0;
        for (double heightM = 0.5; heightM < terrain.layerM(); heightM *= 1.3) {
            double ratio = WindProfile.ratio(terrain, heightM);
            assertThat(ratio).isGreaterThan(before);
            before = ratio;
        }
        assertThat(WindProfile.ratio(terrain, 900)).isEqualTo(WindProfile.ratio(terrain, terrain.layerM()));
    }

    @Test
    void allTerrainsShareTheWindAboveTheirLayers() {
        assertThat(WindProfile.ratio(Terrain.CITY, 1000))
                .isCloseTo(WindProfile.ratio(Terrain.WATER, 1000), within(1e-12));
    }

    @Test
    void refusesAHeightBelowTheGround() {
        assertThatThrownBy(() -> WindProfile.ratio(Terrain.OPEN, -1))
                .hasMessageContaining("height above the ground must be 0.1 to 1000 m, was -1");
    }

    @Test
    void openPoolFollowsFromTheLogarithmicProfile() {
        double grass = 0.03; // roughness length, m
        double derived = Math.log(0.3 / grass) / Math.log(WindProfile.STATION_HEIGHT_M / grass);
        assertThat(PoolShelter.EXPOSED.factor()).isCloseTo(derived, within(0.005)); // stated to two digits
    }

    @Test
    void shelterLevelsAreOrdered() {
        assertThat(PoolShelter.SHELTERED.factor()).isLessThan(PoolShelter.SUBURBAN.factor());
        assertThat(PoolShelter.SUBURBAN.factor()).isLessThan(PoolShelter.EXPOSED.factor());
    }
}
