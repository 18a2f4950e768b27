package dev.warmlane.weather;

import dev.warmlane.physics.MoistAir;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Site;
import dev.warmlane.sun.SunPath;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;

/**
 * Weather hour by hour in local standard time, every gap resolved: a {@link WeatherYear} of 8760 hours, or a
 * {@link WeatherRecord} of any real period. Immutable and safe to share between threads.
 *
 * <p>An hour is named by its index, from 0 on. Irradiance stands for that hour and belongs to the sun position that
 * {@link #sun()} has for it; temperature, humidity, pressure and wind are the source's values for it, unshifted.
 */
public abstract sealed class HourlyWeather permits WeatherYear, WeatherRecord {

    private final Origin origin;
    private final SunPath sun;
    private final double[] globalHorizontal;
    private final double[] directNormal;
    private final double[] diffuseHorizontal;
    private final double[] skyLongWave;
    private final double[] airTemperature;
    private final double[] dewPoint;
    private final double[] vapourPressure;
    private final double[] pressure;
    private final double[] windSpeed;

    /** What weather says of itself. */
    record Origin(
            Site site,
            String source,
            boolean fromFile,
            WeatherYear.LongWaveOrigin longWaveOrigin,
            int longWaveEstimatedHours,
            List<WeatherFinding> findings) {}

    /** Takes over columns in which every gap is resolved. */
    HourlyWeather(Origin origin, SunPath sun, Function<WeatherColumn, double[]> columns) {
        this.origin = origin;
        this.sun = sun;
        this.globalHorizontal = columns.apply(WeatherColumn.GLOBAL);
        this.directNormal = columns.apply(WeatherColumn.DIRECT);
        this.diffuseHorizontal = columns.apply(WeatherColumn.DIFFUSE);
        this.skyLongWave = columns.apply(WeatherColumn.LONG_WAVE);
        this.airTemperature = columns.apply(WeatherColumn.AIR);
        this.dewPoint = columns.apply(WeatherColumn.DEW);
        this.pressure = columns.apply(WeatherColumn.PRESSURE);
        this.windSpeed = columns.apply(WeatherColumn.WIND);
        this.vapourPressure =
                Arrays.stream(dewPoint).map(MoistAir::saturationPressureKpa).toArray();
    }

    /** How many hours it has. */
    public final int hours() {
        return airTemperature.length;
    }

    /**
     * The hour of the year, 0 to 8759, that an hour is: what schedules and rules of the calendar are asked for, see
     * {@link HourOfYear}. 29 February, which that year lacks, has the hours of 28 February.
     */
    public abstract int hourOfYear(int hour);

    /** Answers for whichever of the two it is. */
    public abstract <T> T match(Function<WeatherYear, T> year, Function<WeatherRecord, T> record);

    /** The hour as a person reads it, for messages. */
    public abstract String label(int hour);

    /** Mean and yearly swing of the air, which ground and mains water follow. */
    public abstract YearlyAir yearlyAir();

    /** Where the weather was measured or made. */
    public Site site() {
        return origin.site();
    }

    /** Where the data come from, in a few words. */
    public String source() {
        return origin.source();
    }

    /** Whether a weather file was read; else a program has made it, from columns or by the generator. */
    public boolean fromFile() {
        return origin.fromFile();
    }

    /** The sun positions that belong to the irradiance. */
    public SunPath sun() {
        return sun;
    }

    /** Where {@link #skyLongWaveWm2} comes from in most hours. */
    public WeatherYear.LongWaveOrigin longWaveOrigin() {
        return origin.longWaveOrigin();
    }

    /**
     * In how many hours {@link #skyLongWaveWm2} was estimated while reading, because the file had no value or one that
     * cannot be.
     */
    public int longWaveEstimatedHours() {
        return origin.longWaveEstimatedHours();
    }

    /** What was found, mended or estimated while reading, the gravest first. */
    public List<WeatherFinding> findings() {
        return origin.findings();
    }

    /** A column as it stands, not to be written to. */
    double[] column(WeatherColumn column) {
        return switch (column) {
            case GLOBAL -> globalHorizontal;
            case DIRECT -> directNormal;
            case DIFFUSE -> diffuseHorizontal;
            case LONG_WAVE -> skyLongWave;
            case AIR -> airTemperature;
            case DEW -> dewPoint;
            case PRESSURE -> pressure;
            case WIND -> windSpeed;
            case RELATIVE_HUMIDITY, CLOUD, DIRECT_HORIZONTAL, SUNSHINE ->
                throw new IllegalArgumentException("weather keeps no " + column.label());
        };
    }

    /** Global irradiance on the horizontal, W/m². */
    public double globalHorizontalWm2(int hour) {
        return globalHorizontal[hour];
    }

    /** Beam irradiance on a plane normal to the sun, W/m². */
    public double directNormalWm2(int hour) {
        return directNormal[hour];
    }

    /** Diffuse irradiance on the horizontal, W/m². */
    public double diffuseHorizontalWm2(int hour) {
        return diffuseHorizontal[hour];
    }

    /** Beam irradiance on the horizontal as the file has it, global less diffuse, never below 0, W/m². */
    public double beamHorizontalWm2(int hour) {
        return Math.max(0, globalHorizontal[hour] - diffuseHorizontal[hour]);
    }

    /** Long-wave irradiance of the sky on the horizontal, W/m². */
    public double skyLongWaveWm2(int hour) {
        return skyLongWave[hour];
    }

    /** Air temperature, °C. */
    public double airTemperatureC(int hour) {
        return airTemperature[hour];
    }

    /** Dew point, °C. */
    public double dewPointC(int hour) {
        return dewPoint[hour];
    }

    /** Partial pressure of water vapour, kPa. */
    public double vapourPressureKpa(int hour) {
        return vapourPressure[hour];
    }

    /** Relative humidity over liquid water, 0 to 1. */
    public double relativeHumidity(int hour) {
        return vapourPressure[hour] / MoistAir.saturationPressureKpa(airTemperature[hour]);
    }

    /** Air pressure, kPa. */
    public double pressureKpa(int hour) {
        return pressure[hour];
    }

    /** Wind speed of the station at 10 m over open ground, m/s. */
    public double windSpeedMs(int hour) {
        return windSpeed[hour];
    }
}
