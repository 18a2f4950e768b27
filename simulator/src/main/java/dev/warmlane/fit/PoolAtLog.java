package dev.warmlane.fit;

import dev.warmlane.pool.Departure;
import dev.warmlane.pool.OpeningSeason;
import dev.warmlane.pool.PoolForcing;
import dev.warmlane.season.Installation;
import dev.warmlane.season.RecordLedger;
import dev.warmlane.season.RecordSimulator;
import dev.warmlane.season.RecordState;
import dev.warmlane.season.SeasonForcing;
import dev.warmlane.season.WindAndSun;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.weather.WeatherRecord;
import java.time.LocalDateTime;
import java.util.List;

/**
 * What the model says a log should show, for any values of the unknowns. Collectors, sky and ground are
 * prepared once; of the pool only what wind and sun change is computed again.
 */
final class PoolAtLog {

    private final Installation described;
    private final WeatherRecord weather;
    private final Observations seen;
    private final List<Unknown> unknowns;
    private final SeasonForcing prepared;

    PoolAtLog(Installation described, WeatherRecord weather, Observations seen, List<Unknown> unknowns) {
        // an earlier fit says nothing of this one: what was found then is described by now
        this.described = described.toBuilder().fitted(null).build();
        this.weather = weather;
        this.seen = seen;
        this.unknowns = unknowns;
        this.prepared = SeasonForcing.of(this.described, weather);
    }

    /** The installation with values of the unknowns, in their order. */
    Installation built(double[] values) {
        Installation built = new WindAndSun(at(values, Unknown.WIND), at(values, Unknown.SUN)).in(described);
        if (unknowns.contains(Unknown.EFFICIENCY)) {
            built = PoolValues.withEfficiency(built, at(values, Unknown.EFFICIENCY));
        }
        if (unknowns.contains(Unknown.MAKE_UP)) {
            built = PoolValues.withMakeUp(built, at(values, Unknown.MAKE_UP));
        }
        return built;
    }

    /** Every hour of the log's time. */
    RecordLedger run(double[] values) {
        return run(
                built(values),
                Departure.longWave(at(values, Unknown.SKY)),
                RecordState.water(seen.from, at(values, Unknown.START)),
                seen.to);
    }

    /** The same for any installation, departure from it, start and end. */
    RecordLedger run(Installation built, Departure departure, RecordState start, LocalDateTime end) {
        PoolForcing pool = prepared.pool()
                .with(
                        built.pool(),
                        built.makeUp(),
                        departure,
                        weather.hourAt(start.time()),
                        weather.hourAt(end.minusHours(1)) + 1);
        return RecordSimulator.simulate(built, new SeasonForcing(pool, prepared.collectors()), start, end);
    }

    /** What log, bills and meter should show, one after the other. */
    double[] expected(double[] values) {
        return expected(values, run(values));
    }

    double[] expected(double[] values, RecordLedger ledger) {
        double clock = at(values, Unknown.CLOCK);
        double[] out = new double[seen.count()];
        int row = 0;
        for (double hours : seen.hours) {
            out[row++] = waterC(ledger, hours - clock);
        }
        for (Metered bill : seen.bills) {
            double sum = 0;
            for (int hour = seen.hour(bill.from()); hour < seen.hour(bill.to()); hour++) {
                sum += ledger.boughtKwh(hour);
            }
            out[row++] = sum;
        }
        for (Metered reading : seen.meter) {
            out[row++] = litres(ledger, reading);
        }
        return out;
    }

    private double litres(RecordLedger ledger, Metered reading) {
        OpeningSeason season = described.season();
        double inUse = ledger.installation().makeUp().litresPerDay() / 24;
        double sum = 0;
        for (int hour = seen.hour(reading.from()); hour < seen.hour(reading.to()); hour++) {
            int ofYear = weather.hourOfYear(weather.hourAt(ledger.time(hour)));
            boolean open = Math.floorMod(ofYear - season.firstHour(), HourOfYear.HOURS) < season.hours();
            sum += ledger.evaporatedKg(hour) + (open ? inUse : 0);
        }
        return sum;
    }

    /** On a straight line within the hour. */
    private static double waterC(RecordLedger ledger, double hours) {
        int index = Math.max(0, Math.min(ledger.hours() - 1, (int) Math.floor(hours)));
        double part = hours - index;
        return (1 - part) * ledger.waterStartC(index) + part * ledger.waterEndC(index);
    }

    private double at(double[] values, Unknown unknown) {
        return values[unknowns.indexOf(unknown)];
    }
}
