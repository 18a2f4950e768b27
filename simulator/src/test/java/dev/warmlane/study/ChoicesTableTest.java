package dev.warmlane.study;

import dev.warmlane.DocBlock;
import dev.warmlane.circuit.Control;
import dev.warmlane.collector.Absorber;
import dev.warmlane.collector.CollectorArray;
import dev.warmlane.collector.Mounting;
import dev.warmlane.pool.Bathers;
import dev.warmlane.pool.Evaporation;
import dev.warmlane.pool.Flow;
import dev.warmlane.pool.Pool;
import dev.warmlane.pool.PoolSetting;
import dev.warmlane.season.Demo;
import dev.warmlane.season.Installation;
import dev.warmlane.season.Periods;
import dev.warmlane.season.SeasonLedger;
import dev.warmlane.season.SeasonSimulator;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Schedule;
import dev.warmlane.weather.WeatherYear;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

/** What the model's choices and inputs move: the tables of docs/model.md. {@code -Ddocs.write=true} writes them. */
class ChoicesTableTest {

    private static final double DEPTH_M = 1.8;
    private static final double SIX_HOURS_S = 6 * 3600;
    private static final Pool POOL = Demo.pool(DEPTH_M).build().pool();
    private static final Installation DESCRIBED = Demo.pool(DEPTH_M).build();
    private static final Installation PUMPED = Demo.pumpedPool(
                    DEPTH_M, Pool.circulationPowerW(POOL.volumeM3(), SIX_HOURS_S, Pool.CIRCULATION_HEAD_M))
            .build();

    private final List<SharedForcing> climates = List.of("cool-coast", "warm-inland", "hot-dry").stream()
            .map(sample -> new SharedForcing(Demo.weather(sample)))
            .toList();

    @Test
    void unheatedPool() throws IOException {
        StringBuilder rows = new StringBuilder("""
                | changed | cool coast | warm inland | hot dry |
                |---|---|---|---|
                """);
        moved(rows, "wind at the water 0.15 of the station's, not 0.30", pool(wind(0.15)));
        moved(rows, "wind at the water 0.40", pool(wind(0.40)));
        moved(rows, "evaporation by ISO/TR 12596", pool(POOL.withEvaporation(Evaporation.ISO_TR_12596)));
        moved(rows, "evaporation by ASHRAE, Carrier", pool(POOL.withEvaporation(Evaporation.ASHRAE_CARRIER)));
        moved(rows, "one swimmer, 9 to 20 o'clock", swimmers(1));
        moved(rows, "60 swimmers, 9 to 20 o'clock", swimmers(60));
        moved(rows, "circulation pump, turnover 6 h against 12 m", PUMPED);
        moved(
                rows,
                "stop difference 1 K, not 0.3 K",
                changed().control(DESCRIBED.control().withOffDifferenceK(1)).build());
        moved(
                rows,
                "roof a bare deck, U 2 W/m²K, not 0.5",
                changed().roof(Demo.ROOF.toBuilder().uValueWm2K(2).build()).build());
        moved(rows, "one row of open racks of 30°, not flat", racks(new Mounting.OpenRack(30, 180, 2, 4, 1, 0.3)));
        DocBlock.check("model.md", "choices", rows.toString());
    }

    /** The same pool with ten rows of racks instead of mats, against racks with the first of two choices. */
    @Test
    void poolWithRacks() throws IOException {
        StringBuilder rows = new StringBuilder("""
                | ten rows of racks of 30° | cool coast | warm inland | hot dry |
                |---|---|---|---|
                """);
        Mounting.OpenRack open = new Mounting.OpenRack(30, 180, 2, 4, 10, 0.3);
        Installation tight = racks(open.withBack(Mounting.Back.boarded(0)));
        moved(rows, "a board of 1.5 W/m²K, not of 0", racks(open.withBack(Mounting.Back.boarded(1.5))), tight);
        moved(rows, "a board of 11 W/m²K, not of 0", racks(open.withBack(Mounting.Back.boarded(11))), tight);
        moved(rows, "open, wind at inner rows 0.7, not 1", racks(open.withInnerWind(0.7)), racks(open));
        moved(rows, "open, wind at inner rows 0.5, not 1", racks(open.withInnerWind(0.5)), racks(open));
        DocBlock.check("model.md", "racks", rows.toString());
    }

    private static Installation racks(Mounting mounting) {
        return changed()
                .arrays(new CollectorArray("rack", 200, mounting, Absorber.USUAL_MAT))
                .build();
    }

    /** Gas goes with the heater's heat. */
    @Test
    void heatedPool() throws IOException {
        StringBuilder rows = new StringBuilder("""
                | heated to 26 °C | cool coast | warm inland | hot dry |
                |---|---|---|---|
                """);
        row(rows, "gas with the circulation pump, without collectors and with them", climate -> {
            Installation plain = heated(DESCRIBED);
            Installation pumped = heated(PUMPED);
            return String.format(
                    Locale.ROOT,
                    "%s, %s %%",
                    DocBlock.signed(
                            percent(climate, pumped.withoutCollectors(), plain.withoutCollectors(), Flow.HEATER), 0),
                    DocBlock.signed(percent(climate, pumped, plain, Flow.HEATER), 0));
        });
        row(
                rows,
                "September's loss to the ground, by its yearly swing",
                climate -> DocBlock.signed(bySwing(climate, heated(DESCRIBED)), 0) + " %");
        DocBlock.check("model.md", "heated pool", rows.toString());
    }

    private static Installation.Builder changed() {
        return DESCRIBED.toBuilder();
    }

    private static Installation pool(Pool pool) {
        return changed().pool(pool).build();
    }

    private static Pool wind(double factor) {
        return POOL.withSetting(new PoolSetting.Outdoor(factor));
    }

    private static Installation swimmers(int number) {
        return changed()
                .bathers(new Bathers(number, Bathers.USUAL_HEAT_W, Bathers.USUAL_RISE, Schedule.daily(9, 20)))
                .build();
    }

    private static Installation heated(Installation installation) {
        return installation.toBuilder()
                .heater(Demo.HEATER)
                .control(Control.withLimit(30))
                .build();
    }

    private void moved(StringBuilder rows, String what, Installation changed) {
        moved(rows, what, changed, DESCRIBED);
    }

    private void moved(StringBuilder rows, String what, Installation changed, Installation described) {
        row(rows, what, climate -> {
            double kelvin = mean(season(climate, changed)) - mean(season(climate, described));
            return DocBlock.signed(kelvin, 2) + " K, "
                    + DocBlock.signed(percent(climate, changed, described, Flow.COLLECTORS), 1) + " %";
        });
    }

    private interface Cell {
        String of(SharedForcing climate);
    }

    private void row(StringBuilder rows, String what, Cell cell) {
        rows.append("| ").append(what);
        climates.forEach(climate -> rows.append(" | ").append(cell.of(climate)));
        rows.append(" |\n");
    }

    private static SeasonLedger season(SharedForcing climate, Installation installation) {
        return SeasonSimulator.simulate(installation, climate.of(installation));
    }

    private static double percent(SharedForcing climate, Installation changed, Installation described, Flow flow) {
        ToDoubleFunction<Installation> heat = one -> {
            SeasonLedger ledger = season(climate, one);
            return ledger.heatKwh(flow, Periods.season(ledger));
        };
        return 100 * (heat.applyAsDouble(changed) / heat.applyAsDouble(described) - 1);
    }

    /** How much more September loses than to a ground that stands at the year's mean of the air, %. */
    private static double bySwing(SharedForcing climate, Installation installation) {
        SeasonLedger ledger = season(climate, installation);
        double mean = yearMeanC(climate.weather());
        double loss = 0;
        double lossWithout = 0;
        for (int index = 0; index < ledger.hours(); index++) {
            if (HourOfYear.monthOf(ledger.hourOfYear(index)) == 9) {
                loss -= ledger.heatKwh(Flow.GROUND, index);
                lossWithout += installation.pool().groundConductanceWK() * (ledger.waterC(index) - mean) / 1000;
            }
        }
        return 100 * (loss / lossWithout - 1);
    }

    private static double yearMeanC(WeatherYear weather) {
        double sum = 0;
        for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
            sum += weather.airTemperatureC(hour);
        }
        return sum / HourOfYear.HOURS;
    }

    private static double mean(SeasonLedger ledger) {
        double sum = 0;
        for (int index = 0; index < ledger.hours(); index++) {
            sum += ledger.waterC(index);
        }
        return sum / ledger.hours();
    }
}
