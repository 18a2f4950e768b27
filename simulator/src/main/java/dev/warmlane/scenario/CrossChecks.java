package dev.warmlane.scenario;

import dev.warmlane.collector.CollectorArray;
import dev.warmlane.season.Installation;
import dev.warmlane.units.Dimension;

/** Values that are allowed each by itself but hardly meant together. */
final class CrossChecks {

    /**
     * Largest stop difference over start difference that does not hunt, about F_R·U_L/(m'c) at usual flow (Duffie and
     * Beckman §10.4, from memory).
     */
    private static final double STOP_OVER_START = 0.1;

    private final Installation built;
    private final ReportSettings.Units units;

    private CrossChecks(Installation built, ReportSettings.Units units) {
        this.built = built;
        this.units = units;
    }

    static void run(
            Installation built,
            ReportSettings.Units units,
            Section roof,
            Section control,
            Section heater,
            Section season) {
        CrossChecks checks = new CrossChecks(built, units);
        checks.differences(control);
        checks.temperatures(control, heater, season);
        checks.roofArea(roof);
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
                        PlantKeys.SET_POINT,
                        "is above control.limit, " + temperature(limit) + ": from there on gas alone warms the pool");
            }
            if (h.setPointC() > built.comfortMaximumC()) {
                heater.warning(
                        PlantKeys.SET_POINT,
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
        }
    }

    private void roofArea(Section roof) {
        double taken = built.arrays().stream()
                .mapToDouble(CollectorArray::flatRoofTakenM2)
                .sum();
        double usable = built.roof().usableAreaM2();
        if (taken > usable) {
            roof.warning(
                    PlaceKeys.USABLE_SHARE,
                    "collectors take " + area(taken) + " of roof, but only " + area(usable) + " is usable");
        }
    }

    private String temperature(double celsius) {
        return ReportUnits.show(celsius, "degC", Dimension.TEMPERATURE, units);
    }

    private String area(double m2) {
        return ReportUnits.show(m2, "m2", Dimension.AREA, units);
    }
}
