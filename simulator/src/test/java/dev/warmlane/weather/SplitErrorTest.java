package dev.warmlane.weather;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.DocBlock;
import dev.warmlane.RealWeather;
import dev.warmlane.physics.DiffuseFraction;
import dev.warmlane.physics.MoistAir;
import dev.warmlane.site.HourOfYear;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/**
 * How wrong the estimates are that stand in for what a file never had, in real years that hold all of it: the diffuse part
 * from global irradiance alone, and humidity from the day's lowest temperature.
 */
class SplitErrorTest {

    private static final List<String> FILES = List.of(
            "toronto-cwec.epw",
            "greensboro-tmy3.csv",
            "miami-tmy3.csv",
            "fortaleza-swera.epw",
            "pvgis-53-tmy.csv",
            "nsrdb-psm3-one-year.csv");

    /** Sums and errors of one year by one correlation. */
    private record Split(double rmsWm2, double yearPercent, double beamPercent) {}

    @Test
    void diffuseFromGlobalAlone() throws IOException {
        StringBuilder table = new StringBuilder(
                "| year | diffuse, kWh/m² | Erbs: rms by day, W/m² | year's diffuse | year's beam | Orgill and Hollands: rms |"
                        + " year's diffuse | year's beam |\n|---|---|---|---|---|---|---|---|\n");
        double worstRms = 0;
        double worstYear = 0;
        for (String file : FILES) {
            WeatherYear year = WeatherFiles.read(RealWeather.file(file));
            Split erbs = split(year, DiffuseFraction::erbs);
            Split other = split(year, DiffuseFraction::orgillHollands);
            table.append(String.format(
                    Locale.ROOT,
                    "| %s | %.0f | %.0f | %s %% | %s %% | %.0f | %s %% | %s %% |%n",
                    file,
                    WeatherSummary.of(year).year().diffuseKwhM2(),
                    erbs.rmsWm2,
                    DocBlock.signed(erbs.yearPercent, 0),
                    DocBlock.signed(erbs.beamPercent, 0),
                    other.rmsWm2,
                    DocBlock.signed(other.yearPercent, 0),
                    DocBlock.signed(other.beamPercent, 0)));
            worstRms = Math.max(worstRms, erbs.rmsWm2);
            worstYear = Math.max(worstYear, Math.abs(erbs.yearPercent));
        }
        DocBlock.check("formats.md", "split", table.toString());
        assertThat(LightParts.DIFFUSE_RMS_WM2).isEqualTo(Math.rint(worstRms));
        assertThat(LightParts.DIFFUSE_YEAR_PERCENT).isEqualTo(Math.rint(worstYear));
    }

    private static Split split(WeatherYear year, DoubleUnaryOperator fraction) {
        double squares = 0;
        int daylight = 0;
        double estimated = 0;
        double diffuse = 0;
        double estimatedBeam = 0;
        double beam = 0;
        for (int h = 0; h < HourOfYear.HOURS; h++) {
            double outside = year.sun().extraterrestrialNormalWm2(h)
                    * year.sun().cosZenith(h)
                    * year.sun().upFraction(h);
            if (outside <= 0) {
                continue;
            }
            double global = year.globalHorizontalWm2(h);
            double part = global * fraction.applyAsDouble(global / outside);
            squares += Math.pow(part - year.diffuseHorizontalWm2(h), 2);
            daylight++;
            estimated += part;
            diffuse += year.diffuseHorizontalWm2(h);
            estimatedBeam += Math.min(
                    (global - part) / year.sun().cosZenith(h), year.sun().extraterrestrialNormalWm2(h));
            beam += year.directNormalWm2(h);
        }
        return new Split(
                Math.sqrt(squares / daylight), 100 * (estimated / diffuse - 1), 100 * (estimatedBeam / beam - 1));
    }

    @Test
    void dewPointFromTheDaysLowestTemperature() throws IOException {
        StringBuilder table = new StringBuilder(
                "| year | dew point: mean error, K | rms, K | vapour pressure: mean error |\n|---|---|---|---|\n");
        for (String file : FILES) {
            WeatherYear year = WeatherFiles.read(RealWeather.file(file));
            double sum = 0;
            double squares = 0;
            double vapour = 0;
            double estimatedVapour = 0;
            for (int day = 0; day < HourOfYear.DAYS; day++) {
                double lowest = Double.MAX_VALUE;
                for (int h = 24 * day; h < 24 * day + 24; h++) {
                    lowest = Math.min(lowest, year.airTemperatureC(h));
                }
                for (int h = 24 * day; h < 24 * day + 24; h++) {
                    double error = lowest - year.dewPointC(h);
                    sum += error;
                    squares += error * error;
                    vapour += year.vapourPressureKpa(h);
                    estimatedVapour += MoistAir.saturationPressureKpa(lowest);
                }
            }
            table.append(String.format(
                    Locale.ROOT,
                    "| %s | %s | %.1f | %s %% |%n",
                    file,
                    DocBlock.signed(sum / HourOfYear.HOURS, 1),
                    Math.sqrt(squares / HourOfYear.HOURS),
                    DocBlock.signed(100 * (estimatedVapour / vapour - 1), 0)));
        }
        DocBlock.check("formats.md", "dew point", table.toString());
    }
}
