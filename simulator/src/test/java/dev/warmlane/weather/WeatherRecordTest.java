package dev.warmlane.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.warmlane.physics.DiffuseFraction;
import dev.warmlane.physics.MoistAir;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Site;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.Locale;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import net.e175.klaus.solarpositioning.DeltaT;
import net.e175.klaus.solarpositioning.SPA;
import net.e175.klaus.solarpositioning.SolarPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Records of real hours from columns and from files: their calendar, their sun, what is filled and what is refused. Invented. */
class WeatherRecordTest {

    private static final Site SITE = new Site("invented", -40.4, 175.6, 34, 12);
    private static final LocalDateTime START = LocalDateTime.of(2020, 2, 27, 22, 0);
    private static final int HOURS = 24 * 14;

    /** Refraction, which the reference call leaves out: a minute of arc times the tangent of the zenith angle. */
    private static final double SUN_DEG = 0.02;

    /** The sun's day moves by two minutes from one day to the next, in the hours of sunrise and sunset, W/m². */
    private static final double LIGHT_WM2 = 21;

    private final double[] global =
            column(hour -> Math.max(0, 700 * Math.cos(2 * Math.PI * (hourOfDay(hour) - 12.5) / 24)));
    private final double[] air =
            column(hour -> 15 + hour * 0.01 + 5 * Math.cos(2 * Math.PI * (hourOfDay(hour) - 15) / 24));
    private final double[] dew = column(hour -> 8);
    private final double[] wind = column(hour -> 1 + hour % 6);

    @Test
    void hasTheCalendarOfALeapYear() {
        WeatherRecord record = builder().build();
        assertThat(record.hours()).isEqualTo(HOURS);
        assertThat(record.label(2 + 24)).isEqualTo("2020-02-29 00:00");
        assertThat(record.hourOfYear(2 + 24 + 5)).isEqualTo(HourOfYear.of(2, 28, 5));
        assertThat(record.hourOfYear(2 + 48)).isEqualTo(HourOfYear.of(3, 1, 0));
        assertThat(record.hourAt(LocalDateTime.of(2020, 2, 29, 13, 59))).isEqualTo(2 + 24 + 13);
        assertThat(record.end()).isEqualTo(START.plusHours(HOURS));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> record.hourAt(START.minusMinutes(1)))
                .withMessageContaining("2020-02-27 21:59 lies outside");
    }

    @Test
    void theSunIsThatOfTheRealDate() {
        WeatherRecord record = builder().build();
        LocalDateTime noon = LocalDateTime.of(2020, 2, 29, 12, 0);
        SolarPosition outside = SPA.calculateSolarPosition(
                noon.plusMinutes(30).minusHours(12).atZone(ZoneOffset.UTC),
                SITE.latitudeDeg(),
                SITE.longitudeDeg(),
                SITE.elevationM(),
                DeltaT.estimate(noon.toLocalDate()));
        int hour = record.hourAt(noon);
        assertThat(record.sun().zenithDeg(hour)).isCloseTo(outside.zenithAngle(), within(SUN_DEG));
        assertThat(record.sun().azimuthDeg(hour)).isCloseTo(outside.azimuth(), within(SUN_DEG));
    }

    @Test
    void splitsLightAndFindsTheDewPointAsPublished() {
        double[] humidity = column(hour -> 60);
        WeatherRecord record = WeatherRecord.builder(SITE, "invented", START)
                .globalWm2(global)
                .airC(air)
                .relativeHumidityPercent(humidity)
                .windSpeedMs(wind)
                .build();
        int noon = record.hourAt(LocalDateTime.of(2020, 3, 3, 12, 0));
        double outside =
                record.sun().extraterrestrialNormalWm2(noon) * record.sun().cosZenith(noon);
        assertThat(record.diffuseHorizontalWm2(noon))
                .isCloseTo(global[noon] * DiffuseFraction.erbs(global[noon] / outside), within(1e-9));
        assertThat(record.vapourPressureKpa(noon))
                .isCloseTo(0.6 * MoistAir.saturationPressureKpa(air[noon]), within(1e-6));
        WeatherRecord other = builder()
                .options(RecordOptions.USUAL.withSplit(DiffuseSplit.ORGILL_HOLLANDS))
                .build();
        assertThat(other.diffuseHorizontalWm2(noon))
                .isCloseTo(global[noon] * DiffuseFraction.orgillHollands(global[noon] / outside), within(1e-9));
    }

    @Test
    void shortGapsAreFilledByALineAndTold() {
        Arrays.fill(air, 100, 104, Double.NaN);
        WeatherRecord record = builder().build();
        double step = (air[104] - air[99]) / 5;
        for (int i = 0; i < 4; i++) {
            assertThat(record.airTemperatureC(100 + i)).isCloseTo(air[99] + (i + 1) * step, within(1e-12));
        }
        assertThat(record.gaps()).containsExactly(new FilledGap("air temperature", START.plusHours(100), 4));
        assertThat(IntStream.range(0, HOURS).filter(record::isFilled)).containsExactly(100, 101, 102, 103);
        assertThat(record.findings())
                .anySatisfy(finding -> assertThat(finding.message()).contains("missing air temperature in hours 100"));
    }

    @Test
    void longGapsAreFilledFromTheDaysAroundOnlyIfThatIsSaid() {
        double[] whole = air.clone();
        Arrays.fill(air, 100, 112, Double.NaN);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> builder().build())
                .withMessageContaining("12 hours in a row without a value from 2020-03-03 02:00")
                .withMessageContaining("gaps of at most 6 hours")
                .withMessageContaining("a gap that is filled is a guess");
        WeatherRecord record =
                builder().options(RecordOptions.USUAL.withGapHours(12)).build();
        for (int hour = 100; hour < 112; hour++) {
            // its trend is straight and its day repeats, so that the days around give it back
            assertThat(record.airTemperatureC(hour)).isCloseTo(whole[hour], within(1e-9));
        }
        assertThat(record.findings()).anySatisfy(finding -> assertThat(finding.message())
                .contains("longer ones, of up to 12 hours, from the same hour of the nearest days before and after"));
    }

    @Test
    void longGapsOfLightAreFilledWithTheClearnessOfTheDaysAround() {
        double[] whole = global.clone();
        Arrays.fill(global, 100, 130, Double.NaN);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> builder().build())
                .withMessageContaining("global horizontal irradiance");
        WeatherRecord record =
                builder().options(RecordOptions.USUAL.withGapHours(48)).build();
        for (int hour = 100; hour < 130; hour++) {
            assertThat(record.globalHorizontalWm2(hour)).isCloseTo(whole[hour], within(LIGHT_WM2));
        }
    }

    /** A station that stands still writes 0; a storm of three hours is left alone. */
    @Test
    void daylightWithoutLightIsAGap() {
        double[] whole = global.clone();
        Arrays.fill(global, 100, 130, 0);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> builder().build())
                .withMessageContaining("global horizontal irradiance")
                .withMessageContaining("hours in a row without a value");
        WeatherRecord record =
                builder().options(RecordOptions.USUAL.withGapHours(48)).build();
        for (int hour = 100; hour < 130; hour++) {
            assertThat(record.globalHorizontalWm2(hour)).isCloseTo(whole[hour], within(LIGHT_WM2));
        }
        assertThat(record.isFilled(record.hourAt(LocalDateTime.of(2020, 3, 3, 12, 0))))
                .isTrue();
        assertThat(record.findings())
                .anySatisfy(finding -> assertThat(finding.message()).contains("no cloud is so dark"));
        System.arraycopy(whole, 0, global, 0, HOURS);
        int noon = 2 + 24 + 12;
        Arrays.fill(global, noon, noon + 3, 0);
        assertThat(builder().build().globalHorizontalWm2(noon + 1)).isZero();
    }

    /** The checks that a typical year gets, in their words; of a fortnight nobody can say that it has a clear day. */
    @Test
    void lightInAnotherUnitIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> builder()
                        .globalWm2(column(hour -> global[hour] * 0.001))
                        .build())
                .withMessageContaining("on the brightest day, 2020-0")
                .withMessageContaining("Is irradiance in kW/m² or MJ/m²?");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> builder()
                        .globalWm2(column(hour -> Math.min(1400, global[hour] * 2.5)))
                        .build())
                .withMessageContaining("Is irradiance in kJ/m² or scaled?");
        assertThat(builder()
                        .globalWm2(column(hour -> global[hour] * 0.2))
                        .build()
                        .findings())
                .noneMatch(finding -> finding.message().contains("brightest day"));
    }

    @Test
    void lightThatStandsStillWhileTheSunMovesIsTold() {
        double[] still = column(hour -> hour >= 60 && hour < 67 ? 300 : global[hour]);
        assertThat(builder().globalWm2(still).build().findings())
                .anyMatch(finding -> finding.message().contains("stands still while the sun moves"));
    }

    @Test
    void noGlobalBesideStrongPartsIsTakenForMissing() {
        double[] diffuse = column(hour -> 0.4 * global[hour]);
        double[] lost = global.clone();
        lost[2 + 24 * 3 + 12] = 0;
        assertThat(builder()
                        .globalWm2(lost)
                        .diffuseWm2(diffuse)
                        .directNormalWm2(direct(diffuse))
                        .build()
                        .findings())
                .anyMatch(finding -> finding.message().contains("global irradiance contradicts direct and diffuse"));
    }

    /** What makes the three agree. */
    private double[] direct(double[] diffuse) {
        WeatherRecord record = builder().build();
        return column(hour -> record.sun().cosZenith(hour) < 0.1
                ? 0
                : (global[hour] - diffuse[hour]) / record.sun().cosZenith(hour));
    }

    @Test
    void aRecordThatBeginsOrEndsInAGapIsRefused() {
        air[0] = Double.NaN;
        assertThatIllegalArgumentException()
                .isThrownBy(() -> builder().build())
                .withMessageContaining("no value in the first hour of the record");
        air[0] = 10;
        wind[HOURS - 1] = Double.NaN;
        assertThatIllegalArgumentException()
                .isThrownBy(() -> builder().build())
                .withMessageContaining("wind speed")
                .withMessageContaining("no value in the last hour of the record");
    }

    @Test
    void columnsMustBeThereAndOfOneLength() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> builder().windSpeedMs(new double[HOURS + 1]))
                .withMessageContaining("wind speed has 337 values");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> WeatherRecord.builder(SITE, "invented", START)
                        .globalWm2(global)
                        .airC(air)
                        .windSpeedMs(wind)
                        .build())
                .withMessageContaining("neither dew point nor relative humidity in the whole record");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> WeatherRecord.builder(SITE, "invented", START.plusMinutes(5)))
                .withMessageContaining("full hour");
    }

    @Test
    void knowsTheYearsSwingFrom300DaysOnOnly() {
        assertThat(builder().build().yearlyAir().cosineK()).isZero();
        assertThat(builder().build().findings())
                .anySatisfy(finding -> assertThat(finding.message()).contains("too short for the swing of the year"));
        int hours = 24 * 430;
        double[] year = new double[hours];
        Arrays.setAll(
                year,
                hour -> 13
                        + 5 * Math.cos(YearlyAir.angle(RecordTime.hourOfYear(START.plusHours(hour))))
                        - 2 * Math.sin(YearlyAir.angle(RecordTime.hourOfYear(START.plusHours(hour)))));
        YearlyAir fitted = WeatherRecord.builder(SITE, "invented", START)
                .globalWm2(column(
                        hours,
                        hour -> Math.max(
                                0,
                                // more in January than in July, as the sun stands there
                                (480 + 330 * Math.cos(YearlyAir.angle(RecordTime.hourOfYear(START.plusHours(hour)))))
                                        * Math.cos(2 * Math.PI * (hourOfDay(hour) - 12.5) / 24))))
                .airC(year)
                .relativeHumidityPercent(column(hours, hour -> 50 + hour % 7))
                .windSpeedMs(column(hours, hour -> 1 + hour % 6))
                .build()
                .yearlyAir();
        assertThat(fitted.meanC()).isCloseTo(13, within(1e-9));
        assertThat(fitted.cosineK()).isCloseTo(5, within(1e-9));
        assertThat(fitted.sineK()).isCloseTo(-2, within(1e-9));
        assertThat(fitted.monthlySpanK()).isCloseTo(2 * Math.sqrt(29), within(1e-9));
    }

    @Test
    void isReadFromAStationsFileAcrossNewYear(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("station.csv");
        Files.writeString(file, station(LocalDateTime.of(2019, 12, 30, 1, 0), 24 * 70, -1));
        WeatherRecord record = WeatherFiles.readRecord(file, RecordOptions.USUAL);
        // labels are the hour's end
        assertThat(record.start()).isEqualTo(LocalDateTime.of(2019, 12, 30, 0, 0));
        assertThat(record.hours()).isEqualTo(24 * 70);
        assertThat(record.airTemperatureC(24 * 61)).isEqualTo(10 + (24 * 61) % 17);
        assertThat(record.label(24 * 61)).isEqualTo("2020-02-29 00:00");
        LocalDateTime from = LocalDateTime.of(2020, 1, 10, 0, 0);
        WeatherRecord part =
                WeatherFiles.readRecord(file, RecordOptions.USUAL.withPeriod(new RecordPeriod(from, from.plusDays(5))));
        assertThat(part.start()).isEqualTo(from);
        assertThat(part.end()).isEqualTo(from.plusDays(5));
        assertThat(part.airTemperatureC(0)).isEqualTo(record.airTemperatureC(record.hourAt(from)));
    }

    @Test
    void aRowThatIsNotThereIsAGap(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("station.csv");
        Files.writeString(file, station(LocalDateTime.of(2019, 12, 30, 1, 0), 24 * 70, 100));
        WeatherRecord record = WeatherFiles.readRecord(file, RecordOptions.USUAL);
        assertThat(record.hours()).isEqualTo(24 * 70);
        assertThat(record.isFilled(100)).isTrue();
        assertThat(record.findings()).anySatisfy(finding -> assertThat(finding.message())
                .contains("a row is missing, the first that of 2020-01-03 04:00"));
        Files.writeString(file, station(LocalDateTime.of(2019, 12, 30, 1, 0), 48, -1) + "2019-12-30 05:00,0,9,60,2\n");
        assertThatExceptionOfType(WeatherFileException.class)
                .isThrownBy(() -> WeatherFiles.readRecord(file, RecordOptions.USUAL))
                .withMessageContaining("the hour 2019-12-30 04:00 a second time");
        Files.writeString(file, station(LocalDateTime.of(2019, 12, 30, 1, 0), 20, -1));
        assertThatExceptionOfType(WeatherFileException.class)
                .isThrownBy(() -> WeatherFiles.readRecord(file, RecordOptions.USUAL))
                .withMessageContaining("20 hours from 2019-12-30 00:00");
    }

    private static String station(LocalDateTime first, int hours, int without) {
        StringBuilder text = new StringBuilder("""
                # invented
                # latitude, degrees north: -40.4
                # longitude, degrees east: 175.6
                # elevation, m: 34
                # utc offset, h: 12
                # label: end of the hour
                time,global W/m2,air degC,relative humidity %,wind m/s
                """);
        for (int hour = 0; hour < hours; hour++) {
            if (hour != without) {
                LocalDateTime label = first.plusHours(hour);
                text.append(String.format(
                        Locale.ROOT,
                        "%s %02d:00,%d,%d,%d,%d%n",
                        label.toLocalDate(),
                        label.getHour(),
                        label.getHour() > 6 && label.getHour() < 20 ? 200 + hour % 50 : 0,
                        10 + hour % 17,
                        50 + hour % 7,
                        1 + hour % 5));
            }
        }
        return text.toString();
    }

    private WeatherRecord.Builder builder() {
        return WeatherRecord.builder(SITE, "invented", START)
                .globalWm2(global)
                .airC(air)
                .dewPointC(dew)
                .windSpeedMs(wind);
    }

    private static int hourOfDay(int hour) {
        return (START.getHour() + hour) % 24;
    }

    private static double[] column(IntToDoubleFunction value) {
        return column(HOURS, value);
    }

    private static double[] column(int hours, IntToDoubleFunction value) {
        return IntStream.range(0, hours).mapToDouble(value).toArray();
    }
}
