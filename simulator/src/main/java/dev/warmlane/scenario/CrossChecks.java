package dev.warmlane.scenario;

import dev.warmlane.collector.CollectorArray;
import dev.warmlane.pool.OpeningSeason;
import dev.warmlane.scenario.WordKinds.Span;
import dev.warmlane.season.Installation;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.units.Dimension;
import dev.warmlane.units.UnitSystem;
import java.util.List;

/** Values that are allowed each by itself but hardly meant together. */
final class CrossChecks {

    /**
     * Largest stop difference over start difference that does not hunt, about F_R·U_L/(m'c) at usual flow (Duffie and
     * Beckman §10.4, from memory).
     */
    /** Hardly a pool is open for less; own choice. */
    private static final int FEW_HOURS = 3;

    private static final int NOON = 12;

    /** A roof that is filled to the last foot is not overrun by what is lost between two units. */
    private static final double ROUNDING = 1 + 1e-9;

    private static final double STOP_OVER_START = 0.1;

    private final Installation built;
    private final UnitSystem units;

    private CrossChecks(Installation built, UnitSystem units) {
        this.built = built;
        this.units = units;
    }

    /**
     * The sections that warnings are about.
     *
     * @param schedules all sections [[schedule]]
     */
    record Sections(
            Section pool,
            Section cover,
            Section roof,
            Section heater,
            Section control,
            Section season,
            List<Section> schedules) {}

    static void run(Installation built, UnitSystem units, Sections in) {
        CrossChecks checks = new CrossChecks(built, units);
        checks.differences(in.control);
        checks.temperatures(in.control, in.heater, in.season);
        checks.roofArea(in.roof);
        checks.bathersWhileClosed(in.pool);
        allDay(in.cover, PoolKeys.DRAWN);
        allDay(in.control, PlantKeys.PUMPING);
        allDay(in.season, PlantKeys.OPEN);
        allDay(in.heater, HeaterKeys.HOURS);
        in.schedules.forEach(schedule -> allDay(schedule, PlantKeys.HOURS));
    }

    private void differences(Section control) {
        double most = STOP_OVER_START * built.control().onDifferenceK();
        if (built.control().offDifferenceK() > most) {
            control.warning(
                    PlantKeys.OFF_DIFFERENCE,
                    "is more than a tenth of on_difference: the pump will hunt; at most "
                            + ReportUnits.show(most, "K", Dimension.TEMPERATURE_DIFFERENCE, units) + " is advised");
        }
    }

    private void temperatures(Section control, Section heater, Section season) {
        double limit = built.control().limitC();
        built.heater().ifPresent(h -> {
            if (h.setPointC() > limit && !built.arrays().isEmpty()) {
                heater.warning(
                        HeaterKeys.SET_POINT,
                        "is above control.limit, " + temperature(limit) + ": from there on "
                                + h.fuel().word() + " alone warms the pool");
            }
            if (h.setPointC() > built.comfortMaximumC()) {
                heater.warning(
                        HeaterKeys.SET_POINT,
                        "is above season.comfort_maximum, " + temperature(built.comfortMaximumC()));
            }
        });
        if (limit < built.comfortC() && !built.arrays().isEmpty()) {
            control.warning(
                    PlantKeys.LIMIT,
                    "is below season.comfort, " + temperature(built.comfortC())
                            + ": the collectors stop before it is reached");
        }
        if (built.season().openHours().hoursPerYear() == 0) {
            season.warning(PlantKeys.OPEN, "the pool is never open");
        } else if (season.has(PlantKeys.OPEN)) {
            fewHours(season);
        }
    }

    /** "8-10" is two hours in the morning; who means the evening has to write so. */
    private static void fewHours(Section season) {
        WordKinds.Span open = season.get(PlantKeys.OPEN);
        int hours = open.to() - open.from();
        if (hours > 0 && hours <= FEW_HOURS && open.to() <= NOON) {
            season.warning(
                    PlantKeys.OPEN,
                    "is " + hours + " hours a day, in the morning; if the evening is meant write hours up to 24, \""
                            + open.from() + "-" + (open.to() + NOON) + "\"");
        }
    }

    private void roofArea(Section roof) {
        double taken = built.arrays().stream()
                .mapToDouble(CollectorArray::flatRoofTakenM2)
                .sum();
        double usable = built.roof().usableAreaM2();
        if (taken > ROUNDING * usable && built.plan().isEmpty()) {
            roof.warning(
                    PlaceKeys.USABLE_SHARE,
                    "collectors take " + area(taken) + " of roof, but only " + area(usable) + " is usable");
        }
    }

    /** Outside the season nobody is counted, so that a schedule may say nothing of it. */
    private void bathersWhileClosed(Section pool) {
        if (built.bathers().whenFull() == 0) {
            return;
        }
        OpeningSeason season = built.season();
        int present = 0;
        int closed = 0;
        int first = -1;
        for (int i = 0; i < season.hours(); i++) {
            int hour = (season.firstHour() + i) % HourOfYear.HOURS;
            if (built.bathers().presence().at(hour) > 0) {
                present++;
                if (season.openHours().at(hour) == 0) {
                    closed++;
                    first = first < 0 ? hour : first;
                }
            }
        }
        if (present == 0) {
            pool.warning(
                    PoolKeys.BATHERS, "nobody is ever in the water in the season, by the [[schedule]] for bathers");
        } else if (closed > 0) {
            pool.warning(
                    PoolKeys.BATHERS,
                    "are in the water in " + closed + " hours of the season in which the pool is closed, the first "
                            + HourOfYear.label(first) + "; add a [[schedule]] for bathers with share = 0 there");
        }
    }

    private static void allDay(Section section, Key<Span> key) {
        if (section.has(key) && section.sound(key)) {
            Span hours = section.get(key);
            if (hours.from() == hours.to()) {
                section.warning(
                        key,
                        "\"" + hours.from() + "-" + hours.to()
                                + "\" runs over midnight and is all 24 hours; write \"0-24\" if that is meant");
            }
        }
    }

    private String temperature(double celsius) {
        return ReportUnits.show(celsius, "degC", Dimension.TEMPERATURE, units);
    }

    private String area(double m2) {
        return ReportUnits.show(m2, "m2", Dimension.AREA, units);
    }
}
