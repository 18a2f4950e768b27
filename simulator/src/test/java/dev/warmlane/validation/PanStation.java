package dev.warmlane.validation;

import dev.warmlane.site.Site;
import dev.warmlane.sun.SunPath;
import dev.warmlane.weather.WeatherRecord;
import java.io.IOException;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * The weather of a station in Adelaide and its class A pan, from the folder of measured data. The station wrote every three
 * hours and the day's hours of sunshine; hours between and irradiance are made of that here.
 */
final class PanStation {

    private static final Site SITE = new Site("Kent Town, Adelaide", -34.92, 138.62, 48, 9.5);

    private static final int EVERY_H = 3;

    /** Angström and Prescott as FAO-56 gives them: clearness of a day 0.25 + 0.50 n/N; from memory. */
    private static final double DULL = 0.25;

    private static final double BY_SUNSHINE = 0.50;

    private final LocalDateTime start;
    private final WeatherRecord weather;
    private final Table months;

    private PanStation(LocalDateTime start, WeatherRecord weather, Table months) {
        this.start = start;
        this.weather = weather;
        this.months = months;
    }

    static PanStation read() throws IOException {
        Table table = Table.read("pan-weather.csv");
        LocalDateTime start =
                LocalDateTime.of((int) table.at("year", 0), (int) table.at("month", 0), (int) table.at("day", 0), 0, 0);
        int hours = table.rows() * EVERY_H;
        double[] sunshine = table.column("sunshine_hours_day");
        int[] years = IntStream.range(0, hours)
                .map(hour -> start.plusHours(hour).getYear())
                .toArray();
        double[] global = new double[hours];
        double[] cloud = new double[hours];
        light(start, years, sunshine, global, cloud);
        WeatherRecord weather = WeatherRecord.builder(SITE, "station of the weather bureau", start)
                .globalWm2(global)
                .airC(hourly(table.column("air_degc")))
                .dewPointC(hourly(table.column("dew_point_degc")))
                .windSpeedMs(hourly(table.column("wind_source_unit")))
                .cloudTenths(cloud)
                .build();
        return new PanStation(start, weather, Table.read("pan-months.csv"));
    }

    WeatherRecord weather() {
        return weather;
    }

    /** Months that the pan was measured in. */
    int months() {
        return months.rows();
    }

    /** Evaporation as it was measured, mm. */
    double[] measuredMm() {
        return months.column("evaporation_mm");
    }

    /** Month of the year, 1 to 12. */
    int monthOfYear(int month) {
        return (int) months.at("month", month);
    }

    /** First hour of a measured month in the record. */
    int firstHour(int month) {
        LocalDateTime first = LocalDateTime.of((int) months.at("year", month), monthOfYear(month), 1, 0, 0);
        return weather.hourAt(first);
    }

    int endHour(int month) {
        LocalDateTime first = LocalDateTime.of((int) months.at("year", month), monthOfYear(month), 1, 0, 0);
        return weather.hourAt(first.plusMonths(1));
    }

    double meanWindMs(int month) {
        return IntStream.range(firstHour(month), endHour(month))
                .mapToDouble(weather::windSpeedMs)
                .average()
                .orElseThrow();
    }

    LocalDateTime start() {
        return start;
    }

    /** Each day's clearness on the extraterrestrial irradiance of its hours; cloud is what of the day is no sunshine. */
    private static void light(LocalDateTime start, int[] years, double[] sunshine, double[] global, double[] cloud) {
        SunPath sun = SunPath.ofRecord(SITE, start, years.length, 0.5, true);
        for (int day = 0; day < years.length / 24; day++) {
            double hoursOfSun = 0;
            for (int hour = 24 * day; hour < 24 * (day + 1); hour++) {
                hoursOfSun += sun.upFraction(hour);
            }
            double share = Math.min(1, mean(sunshine, day) / hoursOfSun);
            for (int hour = 24 * day; hour < 24 * (day + 1); hour++) {
                double outside =
                        sun.extraterrestrialNormalWm2(hour) * Math.max(0, sun.cosZenith(hour)) * sun.upFraction(hour);
                global[hour] = (DULL + BY_SUNSHINE * share) * outside;
                cloud[hour] = 10 * (1 - share);
            }
        }
    }

    private static double mean(double[] everyThree, int day) {
        return Arrays.stream(everyThree, 8 * day, 8 * (day + 1))
                .filter(Double::isFinite)
                .average()
                .orElseThrow();
    }

    /** Straight between three hours, over what is missing too; the last stands still. */
    private static double[] hourly(double[] everyThree) {
        double[] hours = new double[everyThree.length * EVERY_H];
        int before = 0;
        for (int hour = 0; hour < hours.length; hour++) {
            int next = (hour + EVERY_H - 1) / EVERY_H;
            if (hour % EVERY_H == 0 && Double.isFinite(everyThree[hour / EVERY_H])) {
                before = hour / EVERY_H;
            }
            next = Math.max(next, before);
            while (next < everyThree.length && !Double.isFinite(everyThree[next])) {
                next++;
            }
            double from = everyThree[before];
            double to = next < everyThree.length ? everyThree[next] : from;
            double share = next > before ? (hour / (double) EVERY_H - before) / (next - before) : 0;
            hours[hour] = from + share * (to - from);
        }
        return hours;
    }
}
