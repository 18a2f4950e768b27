package dev.warmlane.collector;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Roof;
import dev.warmlane.site.Terrain;
import dev.warmlane.weather.WeatherFiles;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HeatCurvesTest {

    /** What the Javadoc of {@link HeatCurves} promises for a season's heat. */
    private static final double SEASON_SHARE = 0.001;

    /** A single calm hour may be off by this much: the natural film has a kink where plate and air are equally warm. */
    private static final double ANY_HOUR_WM2 = 3;

    @ParameterizedTest
    @CsvSource({
        "cool-coast, flat",
        "hot-dry, flat",
        "cool-coast, rack",
        "hot-dry, rack",
        "warm-inland, pitched",
        "southern-temperate, flat"
    })
    void aCurveThroughFourTemperaturesIsAsGoodAsTheDirectSolution(String sample, String mounting) throws IOException {
        CollectorSurroundings around = new CollectorSurroundings(
                WeatherFiles.read(Path.of("..", "weather-samples", sample + ".csv")),
                Roof.builder(30, 14, 6).build(),
                Terrain.SUBURBAN);
        CollectorArray array = new CollectorArray("array", 100, mounting(mounting), Absorber.USUAL_MAT);
        Exposure exposure = CollectorForcing.parts(around, array).get(0).exposure();
        HourlyHeat direct = CollectorPlaces.heat(around, array, exposure);
        HeatCurves curves = new HeatCurves(HourOfYear.HOURS);
        for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
            curves.solve(hour, direct);
        }
        for (double inlet = 10; inlet <= 40; inlet += 3) {
            double fromCurves = 0;
            double solved = 0;
            double worst = 0;
            for (int hour = 0; hour < HourOfYear.HOURS; hour += 3) {
                double heat = direct.heatWm2(hour, inlet);
                if (heat > 0) {
                    double error = curves.heatWm2(hour, inlet) - heat;
                    worst = Math.max(worst, Math.abs(error));
                    fromCurves += curves.heatWm2(hour, inlet);
                    solved += heat;
                }
            }
            assertThat(fromCurves / solved - 1).isBetween(-SEASON_SHARE, SEASON_SHARE);
            assertThat(worst).isLessThan(ANY_HOUR_WM2);
        }
    }

    private static Mounting mounting(String name) {
        return switch (name) {
            case "flat" -> Mounting.FlatOnRoof.USUAL;
            case "rack" -> new Mounting.OpenRack(30, 180, 2, 4, 1, 0.3);
            default -> new Mounting.FlushOnPitchedRoof(25, 200, 6, 0.005);
        };
    }
}
