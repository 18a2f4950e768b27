package dev.warmlane.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HorizonFileTest {

    /**
     * Invented heights in the layout that PVGIS publishes: "A_hor [°] - Azimuth angle of the horizon information (0° = S,
     * 90° = W, -90° = E)", "H_hor [°] - Horizon height", then azimuth and height of the sun at both solstices.
     */
    private static final String PUBLISHED = """
            Latitude (decimal degrees):\t48.000
            Longitude (decimal degrees):\t-4.000

            A\t\tH_hor\t\tA_sun(w)\t\tH_sun(w)\t\tA_sun(s)\t\tH_sun(s)
            -180.0\t\t1.5\t\t-180.0\t\t0.0\t\t-180.0\t\t0.0
            -90.0\t\t12.0\t\t-120.2\t\t0.0\t\t-119.0\t\t4.1
            0.0\t\t0.0\t\t0.0\t\t18.6\t\t0.0\t\t65.4
            90.0\t\t7.25\t\t120.2\t\t0.0\t\t119.0\t\t4.1
            180.0\t\t1.5\t\t180.0\t\t0.0\t\t180.0\t\t0.0

            A: Azimuth (0 = S, 90 = W, -90 = E) (degree)
            H_hor: Horizon height (degree)
            """;

    private static final Horizon HORIZON = new Horizon(List.of(
            new Horizon.Height(0, 1.5),
            new Horizon.Height(90, 12),
            new Horizon.Height(180, 0),
            new Horizon.Height(270, 7.25)));

    @TempDir
    Path folder;

    @Test
    void readsAProfileAsItIsPublished() throws Exception {
        Path file = Files.writeString(folder.resolve("horizon.csv"), PUBLISHED);
        assertThat(HorizonFile.read(file)).isEqualTo(HORIZON);
        assertThat(HorizonFile.parse(PUBLISHED.replaceFirst("A\t", "A_hor\t"))).isEqualTo(HORIZON);
        assertThat(HorizonFile.parse(PUBLISHED.replaceAll("\t+", ","))).isEqualTo(HORIZON);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "'azimuth,height\n0,1.5\n90,12\n180,0\n270,7.25'",
                "'0,1.5\n90,12\n180,0\n270,7.25\n360,1.5\n'",
                "'Azimuth;Height\n270;7,25\n0;1,5\n90;12\n180;0'"
            })
    void readsPlainPairs(String text) {
        assertThat(HorizonFile.parse(text)).isEqualTo(HORIZON);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "'0,1\n90,high'|line 2: found \"high\"; wanted a number of degrees",
                "'0,1\n90'|line 2: found \"90\"; wanted an azimuth and a height, as in 90,12.5",
                "'0,1,2'|line 1: found \"0,1,2\"; wanted an azimuth and a height",
                "'0,95'|line 1: height of the horizon must be 0 to 90 deg, was 95",
                "'400,5'|line 1: direction of the horizon must be -360 to 360 deg, was 400",
                "'0,5\n360,6'|two heights at 0.0 deg",
                "''|holds no horizon",
                "'direction,elevation\n0,5'|line 1: found \"direction\"; wanted a number"
            })
    void saysWhatIsWrongAndWhere(String text, String message) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> HorizonFile.parse(text))
                .withMessageContaining(message);
    }
}
