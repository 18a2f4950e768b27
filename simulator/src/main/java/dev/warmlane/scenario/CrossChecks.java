package dev.warmlane.scenario;

import dev.warmlane.collector.CollectorArray;
import dev.warmlane.plant.Control;
import dev.warmlane.season.Installation;
import java.util.Locale;

/** Values that are allowed each by itself but hardly meant together. */
final class CrossChecks {

    /**
     * Largest stop difference over start difference that does not hunt, about F_R·U_L/(m'c) at usual flow (Duffie and
     * Beckman §10.4, from memory).
     */
    private static final double STOP_OVER_START = 0.1;

    private CrossChecks() {}

    static void run(Installation built, Section roof, Section control, Section heater, Section season) {
        differences(built.control(), control);
        temperatures(built, control, heater, season);
        roofArea(built, roof);
    }

    private static void differences(Control built, Section control) {
        double most = STOP_OVER_START * built.onDifferenceK();
        if (built.offDifferenceK() > most) {
            control.warning(
                    PlantKeys.OFF_DIFFERENCE,
                    text("is more than a tenth of on_difference: the pump will hunt; at most %.2f K is advised", most));
        }
    }

    private static void temperatures(Installation built, Section control, Section heater, Section season) {
        double limit = built.control().limitC();
        built.heater().ifPresent(h -> {
            if (h.setPointC() > limit && !built.arrays().isEmpty()) {
                heater.warning(
                        PlantKeys.SET_POINT,
                        text("is above control.limit, %.1f degC: from there on gas alone warms the pool", limit));
            }
            if (h.setPointC() > built.comfortMaximumC()) {
                heater.warning(
                        PlantKeys.SET_POINT,
                        text("is above season.comfort_maximum, %.1f degC", built.comfortMaximumC()));
            }
        });
        if (limit < built.comfortC() && !built.arrays().isEmpty()) {
            control.warning(
                    PlantKeys.LIMIT,
                    text(
                            "is below season.comfort, %.1f degC: the collectors stop before it is reached",
                            built.comfortC()));
        }
        if (built.season().openHours().hoursPerYear() == 0) {
            season.warning(PlantKeys.OPEN, "the pool is never open");
        }
    }

    private static void roofArea(Installation built, Section roof) {
        double taken = built.arrays().stream()
                .mapToDouble(CollectorArray::flatRoofTakenM2)
                .sum();
        double usable = built.roof().usableAreaM2();
        if (taken > usable) {
            roof.warning(
                    PlaceKeys.USABLE_SHARE,
                    text("collectors take %.1f m2 of roof, but only %.1f m2 is usable", taken, usable));
        }
    }

    private static String text(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }
}
