package dev.warmlane.report;

import dev.warmlane.heater.SaleUnit;
import dev.warmlane.pool.Flow;
import dev.warmlane.season.GasSummary;
import dev.warmlane.season.Installation;
import dev.warmlane.season.MoneySummary;
import dev.warmlane.season.NextSquareMetre;
import dev.warmlane.season.OpeningSummary;
import dev.warmlane.season.PeriodSummary;
import dev.warmlane.season.SeasonSummary;
import dev.warmlane.study.AreaStudy;
import dev.warmlane.units.Measure;
import dev.warmlane.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Gas, carbon dioxide, money and the worth of more area. */
final class GasSection {

    /** Less than this is told of no more than of a lamp left burning, kWh; own choice. */
    private static final double LEAST_MORE_KWH = 1;

    /** What one more m² gives less than this share of what the area planned gives is mostly idle; own choice. */
    private static final double MOSTLY_IDLE = 0.5;

    /** Less room than this on a roof is no room, m²; own choice. */
    private static final double TOO_LITTLE_TO_LAY_M2 = 1;

    private final Numbers numbers;
    private final FuelWords fuel;

    private GasSection(Numbers numbers, FuelWords fuel) {
        this.numbers = numbers;
        this.fuel = fuel;
    }

    static Section of(Subject subject) {
        GasSection text = new GasSection(subject.numbers(), FuelWords.of(subject.season()));
        SeasonSummary summary = subject.summary();
        List<String> points = new ArrayList<>();
        if (!PeriodColumn.displaces(summary.season())) {
            // nothing is burned, so that nothing is said of it
            summary.nextSquareMetre().ifPresent(next -> points.add(text.next(next, subject)));
            return Section.of("More area", Place.OWNER).points(points).givingWay();
        }
        points.add(text.gas(summary.season()));
        text.whyNotTheHeat(summary.season()).ifPresent(points::add);
        text.whyMoreBeforeOpening(subject.forecast().opening()).ifPresent(points::add);
        subject.installation()
                .lastBill()
                .flatMap(bill -> summary.season()
                        .gas()
                        .displaced()
                        .map(gas -> BillWords.of(subject.numbers(), bill, gas, summary.money())))
                .ifPresent(points::add);
        boolean heated = PeriodColumn.displaces(summary.season());
        summary.money().ifPresent(money -> points.addAll(text.money(money, heated)));
        summary.nextSquareMetre().ifPresent(next -> points.add(text.next(next, subject)));
        return Section.of(
                        FuelWords.capital(text.fuel.word()) + (summary.money().isPresent() ? " and money" : ""),
                        Place.OWNER)
                .points(points)
                .givingWay();
    }

    /** Why the gas displaced is another number than the heat delivered, which everybody asks. */
    private Optional<String> whyNotTheHeat(PeriodSummary season) {
        double deliveredKwh = season.balance().deliveredKwh();
        double sparedKwh = numbers.apart(
                Measure.HEAT,
                season.balanceWithout().kwh(Flow.HEATER),
                season.balance().kwh(Flow.HEATER));
        return PeriodColumn.displaces(season) && sparedKwh > 0 && deliveredKwh > sparedKwh
                ? Optional.of("Of the " + numbers.show(Measure.HEAT, deliveredKwh) + " that the collectors deliver "
                        + numbers.show(Measure.HEAT, sparedKwh)
                        + " spare the heater work" + fuel.whyNotAsMuch()
                        + "; the rest keeps the pool warmer than the heater would")
                : Optional.empty();
    }

    /**
     * A heater that does not reach its set point before opening works as long with the collectors as without, and where it
     * is a heat pump or a condensing boiler it takes more for the same heat in the warmer water.
     */
    private Optional<String> whyMoreBeforeOpening(OpeningSummary opening) {
        double more = opening.boughtKwh() - opening.boughtWithoutKwh();
        return more >= LEAST_MORE_KWH
                ? Optional.of(
                        "Until opening the heater takes " + numbers.show(Measure.HEAT, opening.boughtKwh()) + " of "
                                + fuel.word() + " with the collectors, " + numbers.show(Measure.HEAT, more)
                                + " more than without: it works about as long in both, and in the water that they have warmed it needs"
                                + " more " + fuel.word() + " for the same heat")
                : Optional.empty();
    }

    private String gas(PeriodSummary season) {
        GasSummary gas = season.gas();
        boolean more = gas.replacedKwh() < 0;
        double kwh = Math.abs(displacedKwh(numbers, season));
        // what is sold by the kWh is told once
        boolean byTheKwh = gas.fuel().unit() == SaleUnit.KWH;
        double units = byTheKwh && numbers.units() != UnitSystem.US ? kwh : Math.abs(gas.replacedUnits());
        String sold = numbers.fuel(gas.fuel(), units);
        String amount = (byTheKwh
                        ? sold + " of " + gas.fuel().name()
                        : numbers.heat(kwh) + " of " + gas.fuel().name() + ", " + sold)
                + ", which gives " + numbers.show(Measure.MASS, Math.abs(displacedCo2Kg(gas))) + " of carbon dioxide";
        return gas.match(
                displaced -> more
                        ? FuelWords.capital(fuel.wordUsed()) + " beyond what the pool without collectors " + fuel.uses()
                                + ": " + amount
                        : FuelWords.capital(fuel.wordDisplaced()) + ": " + amount + Signs.pumpNotCounted(season.pump()),
                would -> more
                        ? "This pool has no heater, and the collectors gave no heat that gas could have given"
                        : "This pool has no heater, so no gas was displaced. A gas heater of efficiency "
                                + numbers.show(would.efficiency(), 2)
                                + " would have burned, to give the same solar heat: " + amount);
    }

    /** Gas displaced by a period's collectors, as what is shown of it with them and without differs. */
    static double displacedKwh(Numbers numbers, PeriodSummary period) {
        return period.gas()
                .match(gas -> numbers.apart(Measure.HEAT, gas.burnedWithoutKwh(), gas.burnedKwh()), none -> period.gas()
                        .replacedKwh());
    }

    private double displacedCo2Kg(GasSummary gas) {
        return gas.match(
                burned -> numbers.apart(Measure.MASS, burned.burnedCo2Kg() + gas.replacedCo2Kg(), burned.burnedCo2Kg()),
                none -> gas.replacedCo2Kg());
    }

    private List<String> money(MoneySummary money, boolean heated) {
        String currency = money.currency();
        double saved = numbers.apart(Measure.MONEY, money.gasCostWithout(), money.gasCost())
                - numbers.rounded(Measure.MONEY, money.pumpCost());
        List<String> points = new ArrayList<>();
        if (heated) {
            points.add(FuelWords.capital(fuel.word()) + " costs " + numbers.money(money.gasCost(), currency)
                    + " a season, without collectors "
                    + numbers.money(money.gasCostWithout(), currency) + "; pumping costs "
                    + numbers.money(money.pumpCost(), currency) + (saved < 0 ? "; in all " : "; saved: ")
                    + numbers.money(Math.abs(saved), currency)
                    + (saved < 0 ? " more than without collectors" : ""));
        } else {
            points.add((money.replacedGasWorth() < 0
                            ? "Pumping costs "
                            : "The gas that a heater would have burned is worth "
                                    + numbers.money(money.replacedGasWorth(), currency) + "; pumping costs ")
                    + numbers.money(money.pumpCost(), currency) + " a season");
        }
        return points;
    }

    /** What more area would bring, beside what the area planned brings; nothing to sell where the roof is full. */
    private String next(NextSquareMetre next, Subject subject) {
        Installation built = subject.installation();
        OptionalDouble limit = AreaStudy.roofLimitM2(built);
        if (limit.isPresent() && built.collectorAreaM2() > limit.getAsDouble() - TOO_LITTLE_TO_LAY_M2) {
            return "The roof has no room for more collectors laid out like these";
        }
        OptionalDouble planned = subject.season().collectors().deliveredKwhPerM2();
        if (planned.orElse(0) > 0 && next.deliveredKwhPerM2() < MOSTLY_IDLE * planned.getAsDouble()) {
            return "The area is large for this pool: of one more " + numbers.unitOfArea() + " it would take "
                    + (next.deliveredKwhPerM2() > 0
                            ? numbers.show(Measure.HEAT_PER_AREA, next.deliveredKwhPerM2()) + " of heat a season"
                            : "no heat at all")
                    + ", where each that is planned gives "
                    + numbers.show(Measure.HEAT_PER_AREA, planned.getAsDouble())
                    + ". Less may do; a study of areas shows how much less";
        }
        String text = "More area would "
                + change("add", "take away", next.deliveredKwhPerM2())
                + " of heat a season"
                + next.displacedKwhPerM2().stream()
                        .mapToObj(gas -> " and " + change("displace", fuel.use(), gas) + (gas < 0 ? " more " : " of ")
                                + fuel.word())
                        .findFirst()
                        .orElse("")
                + planned.stream()
                        .mapToObj(all ->
                                "; the area planned gives " + numbers.show(Measure.HEAT_PER_AREA, all) + " of heat")
                        .findFirst()
                        .orElse("");
        String currency = subject.summary().money().map(MoneySummary::currency).orElse("");
        return text
                + next.costPerKwh().stream()
                        .mapToObj(cost -> ". Over " + built.offer().terms().years()
                                + " years the heat that it adds costs "
                                + numbers.priceOfHeat(cost, currency))
                        .findFirst()
                        .orElse("");
    }

    private String change(String more, String less, double perM2) {
        return (perM2 < 0 ? less : more) + " " + numbers.show(Measure.HEAT_PER_AREA, Math.abs(perM2));
    }
}
