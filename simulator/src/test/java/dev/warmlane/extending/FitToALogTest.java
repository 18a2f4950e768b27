package dev.warmlane.extending;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.fit.FittedPool;
import dev.warmlane.fit.Found;
import dev.warmlane.fit.PoolFit;
import dev.warmlane.fit.WaterBand;
import dev.warmlane.fit.WaterLog;
import dev.warmlane.pool.Pool;
import dev.warmlane.pool.PoolSetting;
import dev.warmlane.season.Installation;
import dev.warmlane.season.RecordLedger;
import dev.warmlane.season.RecordSimulator;
import dev.warmlane.season.RecordState;
import dev.warmlane.season.SeasonForcing;
import dev.warmlane.weather.RecordOptions;
import dev.warmlane.weather.WeatherFiles;
import dev.warmlane.weather.WeatherRecord;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A program fits a pool to its log and foretells the weeks after. Pool, weather and log are invented. */
class FitToALogTest {

    /** Wind and sun of a pool from its logger's readings, and what they make of the weeks after. */
    static WaterBand fitted(Installation described, WeatherRecord weather, List<WaterLog.Reading> readings) {
        WaterLog log = new WaterLog("our own logger", weather.site().utcOffsetHours(), readings);
        FittedPool fit = new PoolFit(described, weather, log).fit();
        for (Found found : fit.found()) {
            System.out.printf(
                    "%s: %.3f (%.3f to %.3f)%n", found.of().label(), found.likely(), found.low(), found.high());
        }
        RecordLedger run = fit.run();
        LocalDateTime end = run.time(run.hours());
        return WaterBand.of(fit, RecordState.water(end, run.waterC(end)), weather.end());
    }

    @Test
    void theWeeksAfterLieWithinTheBand() throws IOException {
        WeatherRecord weather = WeatherFiles.readRecord(
                Path.of("..", "weather-samples", "cool-coast.csv"), RecordOptions.USUAL.withYear(2002));
        Installation described = Installation.builder("pool alone", Pool.of(80, 1.4, new PoolSetting.Outdoor(0.3)))
                .build();
        Installation truth = described.toBuilder()
                .pool(described.pool().withSetting(new PoolSetting.Outdoor(0.2)))
                .build();
        LocalDateTime from = LocalDateTime.of(2002, 6, 1, 0, 0);
        RecordLedger run = RecordSimulator.simulate(
                truth, SeasonForcing.of(truth, weather), RecordState.water(from, 18), weather.end());
        List<WaterLog.Reading> readings = new ArrayList<>();
        for (int hour = 0; hour < 24 * 30; hour++) {
            readings.add(new WaterLog.Reading(
                    run.time(hour), run.waterStartC(hour) + 0.2 * Math.sin(hour / 30.0) + 0.1 * Math.sin(hour * 2.7)));
        }
        WaterBand band = fitted(described, weather, readings);
        int held = 0;
        for (int hour = 0; hour < 24 * 30; hour++) {
            double water = run.waterC(band.time(hour).plusMinutes(30));
            held += band.lowC(hour) <= water && water <= band.highC(hour) ? 1 : 0;
        }
        assertThat(held).isGreaterThan(24 * 30 * 8 / 10);
        // four days on wind, sun and sky have departed by a fifth of a season's
        assertThat(band.highC(100) - band.lowC(100)).isBetween(0.2, 2.0);
    }
}
