package dev.warmlane.report;

import dev.warmlane.season.ComfortSummary;
import dev.warmlane.season.GasSummary;
import dev.warmlane.season.Installation;
import dev.warmlane.season.PeriodSummary;
import dev.warmlane.units.Measure;

/** Which numbers of a season say something of the collectors, and what is said where they do not. */
final class Telling {

    /** Heat that a heater gives an outdoor pool in a day or two of use, for each m² of water, kWh/m²; own choice. */
    private static final double TRIVIAL_KWH_M2 = 5;

    /** A heater that reaches comfort on fewer of the open days does not hold it; own choice. */
    private static final double HELD = 0.9;

    private Telling() {}

    /**
     * Whether the heater holds the comfort temperature by itself, so that days at comfort say nothing of the collectors. One
     * that is set to it but too small, or runs by night alone, does not.
     */
    static boolean heldByHeater(Installation built, PeriodSummary season) {
        ComfortSummary alone = season.comfortWithout();
        return built.heater()
                .filter(heater -> built.comfortC() <= heater.setPointC())
                .filter(heater -> alone.daysAtComfort() >= HELD * alone.openDays())
                .isPresent();
    }

    /** That it does, as the beginning of a sentence: {@code The heater is set to hold 26 °C with and without collectors}. */
    static String held(Numbers numbers, Installation built) {
        String comfort = numbers.show(Measure.TEMPERATURE, built.comfortC());
        String set = built.heater()
                .map(heater -> numbers.show(Measure.TEMPERATURE, heater.setPointC()))
                .orElse(comfort);
        return (set.equals(comfort)
                        ? "The heater is set to hold " + comfort
                        : "The heater is set to " + set + ", above the " + comfort + " that is wanted,")
                + " with and without collectors";
    }

    /** Whether the heater of the pool without collectors has next to nothing to do, so that a share of it says nothing. */
    static boolean trivial(Installation built, GasSummary.Displaced gas) {
        return gas.burnedWithoutKwh() < TRIVIAL_KWH_M2 * built.pool().areaM2();
    }

    /** What is said where it is, with a space before it; empty where it is not. */
    static String hardlyNeeded(Installation built, PeriodSummary season) {
        return season.gas().match(gas -> trivial(built, gas), none -> false)
                ? " Without collectors the heater has next to nothing to do: this pool hardly needs them."
                : "";
    }
}
