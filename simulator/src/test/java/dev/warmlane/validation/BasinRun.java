package dev.warmlane.validation;

import dev.warmlane.pool.Pool;
import dev.warmlane.season.Installation;
import dev.warmlane.season.RecordLedger;
import dev.warmlane.season.RecordSimulator;
import dev.warmlane.season.RecordState;
import dev.warmlane.season.SeasonForcing;
import dev.warmlane.weather.WeatherRecord;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * The basin computed through all the weather, two months before its first value on, and held against the log by the hour: the mean of
 * an hour's values against the mean of the computed at the same moments. Hours whose weather was filled are left out, and the two days
 * after them, in which the basin forgets.
 */
final class BasinRun {

    private static final int FORGETS_HOURS = 48;

    /** Of four; in a shorter hour, at an end of a piece, the logger was in somebody's hand for a part of it. */
    private static final int WHOLE_HOUR = 3;

    /** Of a day's 24, so that its mean and swing are those of a whole one. */
    private static final int WHOLE_DAY = 23;

    private final WeatherRecord weather;
    private final List<LocalDateTime> hours = new ArrayList<>();
    private final Residuals byHour;

    private BasinRun(WeatherRecord weather, List<Hour> all) {
        this.weather = weather;
        all.forEach(hour -> hours.add(hour.start));
        this.byHour = new Residuals(
                all.stream().mapToDouble(hour -> hour.measured / hour.count).toArray(),
                all.stream().mapToDouble(hour -> hour.computed / hour.count).toArray());
    }

    /** Sums over an hour. */
    private static final class Hour {
        private final LocalDateTime start;
        private double measured;
        private double computed;
        private int count;

        Hour(LocalDateTime start) {
            this.start = start;
        }
    }

    /**
     * Runs a basin.
     *
     * @param shiftHours what is added to each piece's clock, whole hours
     */
    static BasinRun of(Pool pool, WeatherRecord weather, BasinLog log, List<Integer> shiftHours) {
        Installation built = Installation.builder("measured basin", pool).build();
        RecordLedger run = RecordSimulator.simulate(
                built,
                SeasonForcing.of(built, weather),
                RecordState.water(weather.start(), weather.airTemperatureC(0)),
                weather.end());
        TreeMap<LocalDateTime, Hour> all = new TreeMap<>();
        for (int p = 0; p < log.pieces().size(); p++) {
            BasinLog.Piece piece = log.pieces().get(p);
            for (int i = 0; i < piece.times().size(); i++) {
                LocalDateTime moment = piece.times().get(i).plusHours(shiftHours.get(p));
                LocalDateTime start = moment.truncatedTo(ChronoUnit.HOURS);
                if (isMeasured(weather, weather.hourAt(start))) {
                    Hour hour = all.computeIfAbsent(start, Hour::new);
                    hour.measured += piece.waterC().get(i);
                    hour.computed += run.waterC(moment);
                    hour.count++;
                }
            }
        }
        return new BasinRun(
                weather,
                all.values().stream().filter(hour -> hour.count >= WHOLE_HOUR).toList());
    }

    private static boolean isMeasured(WeatherRecord weather, int hour) {
        return IntStream.rangeClosed(Math.max(0, hour - FORGETS_HOURS), hour).noneMatch(weather::isFilled);
    }

    Residuals byHour() {
        return byHour;
    }

    /** The hour of the weather that a row is of. */
    int hour(int row) {
        return weather.hourAt(hours.get(row));
    }

    LocalDateTime start(int row) {
        return hours.get(row);
    }

    List<YearMonth> months() {
        return hours.stream().map(YearMonth::from).distinct().toList();
    }

    Residuals month(YearMonth month) {
        return byHour.where(row -> YearMonth.from(hours.get(row)).equals(month));
    }

    /** The rows of each whole day. */
    private List<int[]> days() {
        TreeMap<LocalDate, List<Integer>> rows = new TreeMap<>();
        for (int row = 0; row < hours.size(); row++) {
            rows.computeIfAbsent(hours.get(row).toLocalDate(), any -> new ArrayList<>())
                    .add(row);
        }
        return rows.values().stream()
                .filter(day -> day.size() >= WHOLE_DAY)
                .map(day -> day.stream().mapToInt(Integer::intValue).toArray())
                .toList();
    }

    /** Means of whole days. */
    Residuals byDay() {
        List<int[]> days = days();
        return new Residuals(
                days.stream()
                        .mapToDouble(day -> IntStream.of(day)
                                .mapToDouble(row -> byHour.measured()[row])
                                .average()
                                .orElseThrow())
                        .toArray(),
                days.stream()
                        .mapToDouble(day -> IntStream.of(day)
                                .mapToDouble(row -> byHour.computed()[row])
                                .average()
                                .orElseThrow())
                        .toArray());
    }

    /** The first hour of each whole day, for what is told of days. */
    List<LocalDateTime> dayStarts() {
        return days().stream().map(day -> hours.get(day[0])).toList();
    }

    /** Warmest less coldest hour of whole days. */
    Residuals swing() {
        List<int[]> days = days();
        return new Residuals(
                days.stream().mapToDouble(day -> swing(day, byHour.measured())).toArray(),
                days.stream().mapToDouble(day -> swing(day, byHour.computed())).toArray());
    }

    private static double swing(int[] day, double[] waterC) {
        return IntStream.of(day).mapToDouble(row -> waterC[row]).max().orElseThrow()
                - IntStream.of(day).mapToDouble(row -> waterC[row]).min().orElseThrow();
    }
}
