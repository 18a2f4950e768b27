package dev.warmlane.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.site.HourOfYear;
import dev.warmlane.weather.WeatherFinding.Kind;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Irradiance that the sun cannot make, put into a sound file on purpose: found, told with its line, mended or refused. */
class LightFaultsTest extends EpwFaults {

    @Test
    void directIrradianceAtNight() throws IOException {
        Breakage.set(lines, FIRST + 2, DIRECT, "120");
        WeatherYear read = Breakage.read(folder, lines);
        expect(read, Kind.REPAIR, FIRST + 2, "direct irradiance at night on line 11 (120 W/m² first): set to 0");
        assertThat(read.directNormalWm2(2)).isZero();
    }

    @Test
    void negativeIrradiance() throws IOException {
        Breakage.set(lines, FIRST + 1, GLOBAL, "-3");
        Breakage.set(lines, FIRST + 3, GLOBAL, "-400");
        WeatherYear read = Breakage.read(folder, lines);
        expect(read, Kind.REPAIR, FIRST + 1, "negative global horizontal irradiance on line 10 (-3 W/m² first)");
        expect(read, Kind.REPAIR, FIRST + 3, "impossible global horizontal irradiance on line 12 (-400 W/m² first");
        assertThat(read.globalHorizontalWm2(1)).isZero();
        assertThat(read.globalHorizontalWm2(3)).isZero();
    }

    @Test
    void aLostGlobalBesideStrongDirect() throws IOException {
        Breakage.set(lines, FIRST + NOON, GLOBAL, "0");
        WeatherYear read = Breakage.read(folder, lines);
        expect(
                read,
                Kind.REPAIR,
                FIRST + NOON,
                "global irradiance contradicts direct and diffuse on line " + (FIRST + NOON) + " (0 W/m² beside direct "
                        + Breakage.get(lines, FIRST + NOON, DIRECT),
                "all three taken as missing");
        assertThat(read.globalHorizontalWm2(NOON)).isCloseTo(year.global[NOON], within(0.05 * year.global[NOON]));
    }

    @Test
    void aJuneWithoutGlobal() {
        set(HourOfYear.firstHourOf(6), HourOfYear.firstHourOf(7), "0", GLOBAL);
        refused("global horizontal irradiance: found 0 W/m² beside direct 138 and diffuse 81", "in 411 hours");
    }

    /** A satellite takes the thickest cloud for night; no weather stays so long as four days. */
    @Test
    void daysOfDarkness() throws IOException {
        int from = HourOfYear.of(6, 10, 0);
        set(from, from + 3 * 24, "0", GLOBAL, DIRECT, DIFFUSE);
        expect(
                Breakage.read(folder, lines),
                Kind.NOTE,
                FIRST + from + 6,
                "no light for 39 hours of daylight on end from 06-10 06:00 (line " + (FIRST + from + 6)
                        + "): kept, but no cloud is so dark; values were lost");
        set(from + 3 * 24, from + 4 * 24, "0", GLOBAL, DIRECT, DIFFUSE);
        refused("no light at all on 4 days on end from 06-10", "some light under any cloud");
    }

    @Test
    void aWeekOfDarknessInWinter() {
        int from = HourOfYear.of(1, 10, 0);
        set(from, from + 7 * 24, "0", GLOBAL, DIRECT, DIFFUSE);
        refused("no light at all on 7 days on end from 01-10");
    }

    @Test
    void darknessThatCostsMuchOfTheYearIsAWarning() throws IOException {
        for (int day = 1; day <= 25; day += 4) {
            set(HourOfYear.of(6, day, 0), HourOfYear.of(6, day + 2, 0), "0", GLOBAL, DIRECT, DIFFUSE);
        }
        expect(
                Breakage.read(folder, lines),
                Kind.WARNING,
                FIRST + HourOfYear.of(6, 1, 6),
                "no light for 26 hours of daylight on end from 06-01 06:00, and 182 such hours in all");
    }

    /** Whatever hour of the sun is insisted on. */
    @ParameterizedTest
    @CsvSource({"0.5, 14", "4.5, 14", "0.5, 16", "-11, 14"})
    void aMonthWithoutLightIsFoundWhereAUserInsistsOnTheTime(double centre, int part) throws IOException {
        set(HourOfYear.firstHourOf(6), HourOfYear.firstHourOf(7), "0", GLOBAL);
        if (part == DIFFUSE) {
            set(HourOfYear.firstHourOf(6), HourOfYear.firstHourOf(7), "0", DIRECT, DIFFUSE);
        }
        Path file = Breakage.write(folder, String.join("\n", lines));
        WeatherReadOptions options = WeatherReadOptions.defaults().withCentreHours(centre);
        assertThatThrownBy(() -> WeatherFiles.read(file, options))
                .isInstanceOf(WeatherFileException.class)
                .satisfies(e -> assertThat(e.getMessage())
                        .contains(part == DIFFUSE ? "no light at all on 30 days on end from 06-01" : "0 W/m² beside"));
    }

    @ParameterizedTest
    @ValueSource(doubles = {4.5, -11})
    void aSoundYearIsNotDarkWhateverTimeAUserInsistsOn(double centre) throws IOException {
        Path file = Breakage.write(folder, String.join("\n", lines));
        assertThat(WeatherFiles.read(file, WeatherReadOptions.defaults().withCentreHours(centre))
                        .findings())
                .noneMatch(f -> f.message().contains("no light"));
    }

    @Test
    void aMonthOfDarkness() {
        set(HourOfYear.firstHourOf(6), HourOfYear.firstHourOf(7), "0", GLOBAL, DIRECT, DIFFUSE);
        refused("no light at all on 30 days on end from 06-01", "some light under any cloud", "fetch this file again");
    }

    @Test
    void aWeekOfFogIsKept() throws IOException {
        int from = HourOfYear.of(1, 10, 0);
        for (int h = from; h < from + 7 * 24; h++) {
            String light = Double.toString(Math.rint(0.03 * year.global[h]));
            set(h, h + 1, "0", DIRECT);
            set(h, h + 1, light, GLOBAL, DIFFUSE);
        }
        assertThat(Breakage.read(folder, lines).findings()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "0.317, 0.222, Is irradiance in Btu/ft² or scaled?",
        "0.001, 0.001, Is irradiance in kW/m² or MJ/m²?",
        "1.45, 1.016, Is irradiance in kJ/m² or scaled?"
    })
    void irradianceInOtherUnits(double factor, String share, String guess) {
        scaleIrradiance(factor);
        refused("global horizontal irradiance: found " + share + " of the light outside", "0.45 to 0.85", guess);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.55, 1.3})
    void irradianceThatIsScaled(double factor) throws IOException {
        scaleIrradiance(factor);
        expect(
                Breakage.read(folder, lines),
                Kind.WARNING,
                FIRST + HourOfYear.of(12, 11, 0),
                "of the light outside the atmosphere on the brightest day",
                "is irradiance in another unit, or scaled?");
    }

    @ParameterizedTest
    @ValueSource(ints = {DIRECT, DIFFUSE})
    void aPartOfIrradianceThatIsNothingAllYear(int part) {
        for (int h = 0; h < HourOfYear.HOURS; h++) {
            double beam = year.direct[h] * year.sun.cosZenith(h);
            set(h, h + 1, "0", part);
            set(h, h + 1, Double.toString(part == DIRECT ? year.global[h] : Math.rint(beam)), GLOBAL);
            if (part == DIRECT) {
                set(h, h + 1, Double.toString(year.global[h]), DIFFUSE);
            }
        }
        refused("found 0 W/m², the same value in the whole year", "global irradiance is split into direct and diffuse");
    }

    @Test
    void aMonthWithoutDirect() throws IOException {
        for (int h = HourOfYear.firstHourOf(6); h < HourOfYear.firstHourOf(7); h++) {
            set(h, h + 1, "0", DIRECT);
            set(h, h + 1, Double.toString(year.global[h]), DIFFUSE);
        }
        expect(
                Breakage.read(folder, lines),
                Kind.WARNING,
                0,
                "no direct irradiance in all of June",
                "tilted collectors");
    }

    @Test
    void lightThatStandsStill() throws IOException {
        int from = HourOfYear.of(6, 10, 8);
        set(from, from + 8, "0", DIRECT);
        set(from, from + 8, "300", GLOBAL, DIFFUSE);
        expect(
                Breakage.read(folder, lines),
                Kind.WARNING,
                FIRST + from,
                "global horizontal irradiance stands still while the sun moves on lines " + (FIRST + from),
                "(300 W/m² first)");
    }

    private void scaleIrradiance(double factor) {
        for (int h = 0; h < HourOfYear.HOURS; h++) {
            for (int cell : new int[] {GLOBAL, DIRECT, DIFFUSE}) {
                double value = Double.parseDouble(Breakage.get(lines, FIRST + h, cell));
                Breakage.set(lines, FIRST + h, cell, Double.toString(factor * value));
            }
        }
    }
}
