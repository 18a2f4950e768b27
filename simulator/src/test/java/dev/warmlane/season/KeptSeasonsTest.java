package dev.warmlane.season;

import dev.warmlane.KeptNumbers;
import dev.warmlane.SyntheticYear;
import dev.warmlane.circuit.Control;
import dev.warmlane.circuit.Controller;
import dev.warmlane.circuit.Pipes;
import dev.warmlane.collector.Absorber;
import dev.warmlane.collector.CollectorArray;
import dev.warmlane.collector.Mounting;
import dev.warmlane.heater.Boiler;
import dev.warmlane.heater.Fuel;
import dev.warmlane.heater.HeatPump;
import dev.warmlane.heater.HeatPumpRating;
import dev.warmlane.heater.RatedPoint;
import dev.warmlane.pool.Bathers;
import dev.warmlane.pool.Cover;
import dev.warmlane.pool.Flow;
import dev.warmlane.pool.OpeningSeason;
import dev.warmlane.pool.PoolSetting;
import dev.warmlane.pool.StartWater;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Schedule;
import dev.warmlane.weather.WeatherYear;
import java.time.MonthDay;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.DoubleStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every flow of seasons that between them switch everything that the hourly loop can switch. */
class KeptSeasonsTest {

    /** A cooler limit in the evening, a cooler set point by night, and the pump for a part of each warm hour. */
    private record ByARule() implements Controller {

        @Override
        public Optional<PumpRule> pumps() {
            return Optional.of((hour, poolC, dryPlateC, riseK) -> riseK > 0.2 && dryPlateC > poolC + 5 ? 0.6 : 0);
        }

        @Override
        public double limitC(int hour, double usualC) {
            return HourOfYear.hourOfDay(hour) >= 15 ? 26.5 : usualC;
        }

        @Override
        public double setPointC(int hour, double usualC) {
            return HourOfYear.hourOfDay(hour) < 6 ? 24 : usualC;
        }
    }

    /** Three weeks of frost, then spring. */
    private static final WeatherYear FROST = SyntheticYear.at(50)
            .sunless()
            .airC(hour -> hour < 21 * 24 ? -8 : 12)
            .dewPointC(hour -> hour < 21 * 24 ? -12 : 6)
            .build();

    private static final WeatherYear SAMPLE = Demo.weather("warm-inland");

    @ParameterizedTest
    @MethodSource("names")
    void runsAsItRan(String name) {
        Installation installation = Objects.requireNonNull(seasons().get(name));
        SeasonLedger ledger = SeasonSimulator.simulate(
                installation, SeasonForcing.of(installation, name.equals("ice") ? FROST : SAMPLE));
        KeptNumbers kept = new KeptNumbers("seasons/" + name);
        for (Period month : Periods.months(ledger)) {
            kept.add(month.label(), numbers(ledger, month));
        }
        kept.hold(
                "month,"
                        + String.join(" kWh,", KINDS.stream().map(Flow::name).toList())
                        + " kWh,left kWh,evaporated kg,water degC,ice J/m2,pumps h,outlets Kh,heat of arrays kWh,delivered kWh");
    }

    /** Walls above the ground and through-flow, which none of these pools has, are told elsewhere. */
    private static final List<Flow> KINDS = Demo.pool(1.8).build().pool().flows();

    static Set<String> names() {
        return seasons().keySet();
    }

    private static double[] numbers(SeasonLedger ledger, Period month) {
        double run = 0;
        double outletHours = 0;
        double heat = 0;
        double delivered = 0;
        for (int index = month.from(); index < month.to(); index++) {
            delivered += ledger.deliveredKwh(index);
            for (int array = 0; array < ledger.installation().arrays().size(); array++) {
                double share = ledger.runShare(array, index);
                run += share;
                outletHours += share > 0 ? share * ledger.outletC(array, index) : 0;
                heat += (array + 1) * ledger.arrayHeatKwh(array, index);
            }
        }
        int last = month.to() - 1;
        return DoubleStream.concat(
                        KINDS.stream().mapToDouble(flow -> ledger.heatKwh(flow, month)),
                        DoubleStream.of(
                                ledger.refusedKwh(month),
                                ledger.evaporatedKg(month),
                                ledger.waterEndC(last),
                                ledger.iceJm2(last),
                                run,
                                outletHours,
                                heat,
                                delivered))
                .toArray();
    }

    private static Map<String, Installation> seasons() {
        Schedule night = Schedule.daily(21, 8);
        Map<String, Installation> seasons = new LinkedHashMap<>();
        seasons.put("heated", Demo.pool(1.5).heater(Demo.HEATER).build());
        seasons.put(
                "weak heater and cover",
                Demo.pumpedPool(1.2, 800)
                        .heater(new Boiler(Fuel.PROPANE, 0.9, 40, 27))
                        .cover(Cover.bubble(night))
                        .bathers(new Bathers(30, 600, 0.7, Schedule.daily(10, 19)))
                        .build());
        seasons.put(
                "too much sun",
                Demo.pool(0.8)
                        .control(Control.withLimit(27).sheddingAboveC(28))
                        .pipes(new Pipes(60, 700))
                        .build());
        seasons.put(
                "two arrays",
                Demo.pool(1.5)
                        .arrays(
                                Demo.FLAT,
                                new CollectorArray(
                                        "racks",
                                        60,
                                        Mounting.OpenRack.builder(30, 180, 2)
                                                .rows(3, 4)
                                                .clearanceM(0.3)
                                                .build(),
                                        Absorber.USUAL_MAT))
                        .build());
        seasons.put("paddling", Demo.pool(0.2).heater(Demo.HEATER).build());
        seasons.put(
                "hall",
                Demo.pool(2)
                        .pool(Demo.pool(2).build().pool().withSetting(new PoolSetting.Indoor(28, 0.6, 0.05)))
                        .heater(Demo.HEATER)
                        .build());
        seasons.put(
                "ice",
                Demo.pool(0.5)
                        .season(new OpeningSeason(MonthDay.of(1, 1), MonthDay.of(2, 20), Schedule.ALWAYS))
                        .startWater(new StartWater.Given(3))
                        .build());
        seasons.put(
                "standing filled",
                Demo.pool(1.5).startWater(StartWater.StandingFilled.USUAL).build());
        seasons.put(
                "by a rule",
                Demo.pool(1)
                        .heater(Demo.HEATER)
                        .pipes(new Pipes(40, 0))
                        .control(Control.withLimit(30).sheddingAboveC(31).decidedBy(new ByARule()))
                        .build());
        seasons.put(
                "heat pump",
                Demo.pool(1.2)
                        .heater(new HeatPump(
                                Fuel.electricity(100),
                                HeatPumpRating.of(new RatedPoint(27, 27, 6, 40), new RatedPoint(10, 27, 3.5, 23)),
                                14,
                                27,
                                Schedule.daily(7, 22)))
                        .build());
        seasons.put(
                "long pipes",
                Demo.pool(0.4)
                        .arrays(Demo.FLAT.withAreaM2(25))
                        .pipes(new Pipes(150, 0))
                        .control(Control.withLimit(25).sheddingAboveC(26))
                        .build());
        seasons.put(
                "all year",
                Demo.pool(1.5)
                        .season(new OpeningSeason(MonthDay.of(3, 1), MonthDay.of(2, 28), Schedule.ALWAYS))
                        .startWater(new StartWater.StandingFilled(5))
                        .build());
        return seasons;
    }
}
