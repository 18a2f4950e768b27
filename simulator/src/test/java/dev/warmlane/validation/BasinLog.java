package dev.warmlane.validation;

import dev.warmlane.MeasuredData;
import dev.warmlane.site.Site;
import dev.warmlane.weather.RecordOptions;
import dev.warmlane.weather.WeatherRecord;
import java.io.IOException;
import java.nio.file.Files;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/** The water temperatures of the measured basin, and the station's weather, both in memory only. */
final class BasinLog {

    private static final Site SITE = new Site("Palmerston North", -40.38, 175.61, 34, 12);

    /** The first label is the end of the hour before. */
    private static final LocalDateTime FIRST_HOUR = LocalDateTime.of(2016, 5, 31, 23, 0);

    /** Begins after eleven days without humidity. */
    private static final LocalDateTime WEATHER_FROM = LocalDateTime.of(2016, 6, 14, 0, 0);

    /** The longest gap of the station is 78 h. */
    private static final int GAP_HOURS = 80;

    /** Time without a value that parts one piece of the log from the next: whoever reads a logger out may set its clock. */
    private static final long PIECE_HOURS = 20;

    private final List<Piece> pieces;

    private BasinLog(List<Piece> pieces) {
        this.pieces = List.copyOf(pieces);
    }

    /** Values of the logger one after another, by the logger's clock. */
    record Piece(List<LocalDateTime> times, List<Double> waterC) {

        LocalDateTime first() {
            return times.get(0);
        }

        LocalDateTime last() {
            return times.get(times.size() - 1);
        }
    }

    List<Piece> pieces() {
        return pieces;
    }

    static BasinLog read() throws IOException {
        List<Piece> pieces = new ArrayList<>();
        LocalDateTime before = LocalDateTime.MIN;
        for (String line : Files.readAllLines(MeasuredData.file("basin-b.csv")).stream()
                .skip(1)
                .toList()) {
            String[] cells = line.split(",", -1);
            LocalDateTime time = LocalDateTime.parse(cells[0].replace(' ', 'T'));
            if (pieces.isEmpty() || ChronoUnit.HOURS.between(before, time) > PIECE_HOURS) {
                pieces.add(new Piece(new ArrayList<>(), new ArrayList<>()));
            }
            Piece piece = pieces.get(pieces.size() - 1);
            piece.times.add(time);
            piece.waterC.add(Double.valueOf(cells[1]));
            before = time;
        }
        return new BasinLog(pieces);
    }

    /** The station's weather, gaps filled. */
    static WeatherRecord weather() throws IOException {
        return weather(Input.AS_MEASURED);
    }

    /** The station's weather, one of its columns moved. */
    static WeatherRecord weather(Input moved) throws IOException {
        Table station = Table.read("basin-weather.csv");
        WeatherRecord.Builder builder = WeatherRecord.builder(SITE, "NIWA station", WEATHER_FROM)
                .globalWm2(from(station, "global_wm2", value -> value * moved.light))
                .airC(from(station, "air_degc", value -> value + moved.airK))
                .dewPointC(from(station, "dew_point_degc", value -> value + moved.dewK))
                .windSpeedMs(from(station, "wind_ms", value -> value))
                .options(RecordOptions.USUAL.withGapHours(GAP_HOURS));
        if (moved.longWaveWm2 == 0) {
            return builder.build();
        }
        WeatherRecord usual = weather();
        double[] sky = new double[usual.hours()];
        Arrays.setAll(sky, hour -> usual.skyLongWaveWm2(hour) + moved.longWaveWm2);
        return builder.skyLongWaveWm2(sky).build();
    }

    private static double[] from(Table station, String column, DoubleUnaryOperator moved) {
        int skip = (int) ChronoUnit.HOURS.between(FIRST_HOUR, WEATHER_FROM);
        return Arrays.stream(station.column(column)).skip(skip).map(moved).toArray();
    }

    /** By how much columns of the weather are moved. */
    record Input(String name, double light, double airK, double dewK, double longWaveWm2) {

        static final Input AS_MEASURED = new Input("as measured", 1, 0, 0, 0);
    }
}
