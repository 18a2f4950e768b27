package dev.warmlane.scenario;

import dev.warmlane.collector.CollectorArray;
import dev.warmlane.season.Installation;
import java.util.List;
import java.util.Locale;

/** Collectors, their pump and their roof out of proportion to each other, mostly a slip of the unit. The limits are our own choice. */
final class CollectorProportions {

    /** A pump on top of the filter pump takes 2 to 10 W for each m² of collector; common practice, no source. */
    private static final double PUMP_AT_MOST_W_M2 = 50;

    /** A pitched roof that is this much smaller than what lies on it is no matter of rounding. */
    private static final double ROUNDING = 1.01;

    private CollectorProportions() {}

    /**
     * Runs all of them.
     *
     * @param built what is built
     * @param pipes the section pipes
     * @param collectors the sections of the collectors, in the installation's order
     */
    static void run(Installation built, Section pipes, List<Section> collectors) {
        pump(built, pipes);
        if (!collectors.isEmpty()) {
            pitchedRoof(built, collectors);
        }
    }

    private static void pump(Installation built, Section pipes) {
        double areaM2 = built.collectorAreaM2();
        double powerW = built.pipes().pumpPowerW();
        boolean computed = built.hydraulics().isPresent();
        if (areaM2 > 0 && powerW > PUMP_AT_MOST_W_M2 * areaM2 && computed) {
            pipes.warning(text(
                    "the pump comes to %.0f W for each m2 of collector, 2 to 10 are usual: check diameters, lift and pump",
                    powerW / areaM2));
        } else if (areaM2 > 0 && powerW > PUMP_AT_MOST_W_M2 * areaM2) {
            pipes.warning(
                    CircuitKeys.PUMP_POWER,
                    text(
                            "is %.0f W for each m2 of collector, 2 to 10 are usual: give what the pump takes on top of the"
                                    + " filter pump",
                            powerW / areaM2));
        }
    }

    /** The roof is described by its ground plan; a slope of it has that plan over the cosine of its tilt. */
    private static void pitchedRoof(Installation built, List<Section> sections) {
        double planM2 = 0;
        int last = -1;
        for (int i = 0; i < Math.min(sections.size(), built.arrays().size()); i++) {
            CollectorArray array = built.arrays().get(i);
            boolean pitched = array.mounting().match(flat -> false, racks -> false, slope -> true);
            if (pitched) {
                planM2 += array.areaM2()
                        * Math.cos(Math.toRadians(array.mounting().tiltDeg()));
                last = i;
            }
        }
        if (last >= 0 && planM2 > ROUNDING * built.roof().areaM2()) {
            sections.get(last)
                    .warning(text(
                            "what lies on pitched roofs covers %.0f m2 of ground plan, the roof has %.0f m2;"
                                    + " check both",
                            planM2, built.roof().areaM2()));
        }
    }

    private static String text(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }
}
