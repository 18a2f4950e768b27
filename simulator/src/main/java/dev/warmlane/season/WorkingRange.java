package dev.warmlane.season;

import dev.warmlane.collector.CollectorForcing;
import dev.warmlane.pool.BeforeOpening;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.units.Units;
import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The temperatures that collectors and pipes must stand over the whole year, open season or not. Of racks in rows the row
 * counts that is hottest or coldest in the hour.
 *
 * @param highestPlateC highest temperature of a dry plate without flow, °C: stagnation
 * @param lowestPlateC lowest temperature of a dry plate, °C
 * @param hoursAbove60C hours of the year in which a dry plate would be above 60 °C, where rigid plastic pipe softens
 * @param frostHoursByAir hours of the year with air below +1 °C
 * @param frostHoursByPlate hours of the year in which the lower of air and dry plate is below +1 °C: under a clear sky a
 *     plate freezes when the air does not
 * @param frostHoursInUse those of {@code frostHoursByPlate} from the day on from which the collectors may run to closing,
 *     when the circuit is full
 * @param firstFrostInUse the day of the first of those in the order of the season; nothing where there is none
 * @param lastFrostInUse the day of the last of them
 * @param drainDown the day of the first of {@code frostHoursByPlate} after the season has closed; nothing where there is
 *     none before it opens again
 * @param hottestFirstSlugC the hottest water that a pump can push out of a collector it stood still in, °C: the dry
 *     plate's temperature in or before an hour in which a pump starts. An upper bound, since water takes some minutes to
 *     get there. Nothing where no pump ever starts
 * @param hoursOutsideTest daylight hours of the year in which the wind lay outside the range that a collector's
 *     certificate was tested in, the most of all arrays
 */
public record WorkingRange(
        double highestPlateC,
        double lowestPlateC,
        int hoursAbove60C,
        int frostHoursByAir,
        int frostHoursByPlate,
        int frostHoursInUse,
        Optional<MonthDay> firstFrostInUse,
        Optional<MonthDay> lastFrostInUse,
        Optional<MonthDay> drainDown,
        OptionalDouble hottestFirstSlugC,
        int hoursOutsideTest) {

    /** Below this a plate or pipe counts as freezing, °C. */
    public static final double FROST_C = 1;

    /** Above this rigid plastic pipe softens, °C; common practice, no source. */
    public static final double RIGID_PIPE_LIMIT_C = 60;

    /** Thermal expansion of PVC pipe, 1/K, the low end of what handbooks give; from memory. */
    public static final double PVC_EXPANSION_LOW = 5.4e-5;

    /** Thermal expansion of PVC pipe, 1/K, the high end of what handbooks give; from memory. */
    public static final double PVC_EXPANSION_HIGH = 7e-5;

    /** Sums up a forecast; nothing where it has no collectors. */
    public static Optional<WorkingRange> of(SeasonForecast forecast) {
        List<CollectorForcing> collectors = forecast.forcing().collectors();
        if (collectors.isEmpty()) {
            return Optional.empty();
        }
        double highest = Double.NEGATIVE_INFINITY;
        double lowest = Double.POSITIVE_INFINITY;
        int hot = 0;
        int frostByAir = 0;
        int frostByPlate = 0;
        int frostInUse = 0;
        Optional<MonthDay> firstInUse = Optional.empty();
        Optional<MonthDay> lastInUse = Optional.empty();
        Optional<MonthDay> drainDown = Optional.empty();
        SeasonLedger ledger = forecast.with();
        BeforeOpening before = forecast.installation().season().before();
        for (int index = 0; index < HourOfYear.HOURS; index++) {
            // beyond the ledger's hours come those in which the pool is closed
            int hour = ledger.hourOfYear(index);
            double hottest = hottestPlateC(collectors, hour);
            double coldest = coldestPlateC(collectors, hour);
            double air = forecast.weather().airTemperatureC(hour);
            highest = Math.max(highest, hottest);
            lowest = Math.min(lowest, coldest);
            hot += hottest > RIGID_PIPE_LIMIT_C ? 1 : 0;
            frostByAir += air < FROST_C ? 1 : 0;
            if (Math.min(air, coldest) < FROST_C) {
                frostByPlate++;
                if (index >= ledger.hours()) {
                    drainDown = drainDown.isPresent() ? drainDown : Optional.of(HourOfYear.dateOf(hour));
                } else if (before.collectorsMay(ledger.opening() - index)) {
                    frostInUse++;
                    lastInUse = Optional.of(HourOfYear.dateOf(hour));
                    firstInUse = firstInUse.isPresent() ? firstInUse : lastInUse;
                }
            }
        }
        return Optional.of(new WorkingRange(
                highest,
                lowest,
                hot,
                frostByAir,
                frostByPlate,
                frostInUse,
                firstInUse,
                lastInUse,
                drainDown,
                hottestFirstSlugC(ledger, collectors),
                collectors.stream()
                        .mapToInt(CollectorForcing::hoursOutsideTest)
                        .max()
                        .orElse(0)));
    }

    /**
     * How far a rigid pipe moves between the coldest and the hottest plate: ΔL = α·L·ΔT, mm.
     *
     * @param bayM length between fixed points, m
     * @param expansionPerK thermal expansion α, 1/K
     */
    public double pipeMovementMm(double bayM, double expansionPerK) {
        return Units.millimetres(expansionPerK * bayM) * (highestPlateC - lowestPlateC);
    }

    private static double hottestPlateC(List<CollectorForcing> collectors, int hour) {
        double hottest = Double.NEGATIVE_INFINITY;
        for (CollectorForcing collector : collectors) {
            hottest = Math.max(hottest, collector.curves().highestPlateC(hour));
        }
        return hottest;
    }

    private static double coldestPlateC(List<CollectorForcing> collectors, int hour) {
        double coldest = Double.POSITIVE_INFINITY;
        for (CollectorForcing collector : collectors) {
            coldest = Math.min(coldest, collector.curves().lowestPlateC(hour));
        }
        return coldest;
    }

    private static OptionalDouble hottestFirstSlugC(SeasonLedger ledger, List<CollectorForcing> collectors) {
        double hottest = Double.NEGATIVE_INFINITY;
        for (int a = 0; a < collectors.size(); a++) {
            for (int index = 0; index < ledger.hours(); index++) {
                double before = index == 0 ? 0 : ledger.runShare(a, index - 1);
                double now = ledger.runShare(a, index);
                if (now > 0 && (before < 1 || now < 1)) {
                    hottest = Math.max(hottest, collectors.get(a).curves().highestPlateC(ledger.hourOfYear(index)));
                }
                if (now > 0 && before < 1 && index > 0) {
                    hottest = Math.max(hottest, collectors.get(a).curves().highestPlateC(ledger.hourOfYear(index - 1)));
                }
            }
        }
        return Double.isInfinite(hottest) ? OptionalDouble.empty() : OptionalDouble.of(hottest);
    }
}
