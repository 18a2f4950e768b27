package dev.warmlane.report;

import dev.warmlane.study.TurningPoint;
import dev.warmlane.study.TurningPoints;
import dev.warmlane.study.TurningVariable;
import dev.warmlane.units.Measure;
import java.util.List;

/** Where the ranking of two mountings turns, in words. */
final class TurningWords {

    private TurningWords() {}

    static String opening(TurningPoints found) {
        return "With the same area, one thing changed at a time and everything else as it is: “" + found.flat()
                + "” against “" + found.racks() + "”.";
    }

    static List<String> of(Numbers numbers, TurningPoints found) {
        return found.points().stream().map(point -> point(numbers, point)).toList();
    }

    private static String point(Numbers numbers, TurningPoint point) {
        TurningVariable variable = point.variable();
        String asked = what(variable) + ", " + show(numbers, variable, point.from()) + " to "
                + show(numbers, variable, point.to()) + " (" + now(variable) + " "
                + show(numbers, variable, point.now()) + "): ";
        return asked
                + point.outcome()
                        .match(
                                turns -> turning(numbers, variable, turns.crossings()),
                                none -> "“" + none.ahead() + "” is ahead throughout, least at "
                                        + show(numbers, variable, none.at()) + ", there by "
                                        + numbers.show(Measure.LIGHT, none.smallestMarginKwhM2()));
    }

    private static String turning(Numbers numbers, TurningVariable variable, List<TurningPoint.Crossing> crossings) {
        StringBuilder text = new StringBuilder();
        for (TurningPoint.Crossing crossing : crossings) {
            text.append("“").append(crossing.aheadBelow()).append("” is ahead up to ");
            text.append(show(numbers, variable, crossing.value())).append(" (both ");
            text.append(numbers.show(Measure.HEAT_PER_AREA, crossing.heatKwhM2()))
                    .append("), then ");
        }
        return text.append("“")
                .append(crossings.get(crossings.size() - 1).aheadAbove())
                .append("”")
                .toString();
    }

    private static String what(TurningVariable variable) {
        return switch (variable) {
            case ROOF_WIND_RATIO -> "Wind along the roof, as a ratio to the undisturbed wind at its height";
            case ROOF_ALBEDO -> "Albedo of the bare roof";
            case POOL_TEMPERATURE -> "Water held at one temperature";
            case RACK_TILT -> "Tilt of the racks, their rows spaced anew";
            case INNER_WIND -> "Wind at every row of racks but the first, as a ratio to that at the first";
            case BOARD_U_VALUE -> "Conductance of the board behind the racks";
        };
    }

    private static String now(TurningVariable variable) {
        return variable == TurningVariable.POOL_TEMPERATURE ? "the season's mean is" : "now";
    }

    private static String show(Numbers numbers, TurningVariable variable, double value) {
        return switch (variable) {
            case ROOF_WIND_RATIO, ROOF_ALBEDO, INNER_WIND -> numbers.show(value, 2);
            case POOL_TEMPERATURE -> numbers.show(Measure.TEMPERATURE, value);
            case RACK_TILT -> numbers.show(value, 0) + "°";
            case BOARD_U_VALUE -> numbers.show(Measure.FILM, value);
        };
    }
}
