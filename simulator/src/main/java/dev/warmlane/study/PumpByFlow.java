package dev.warmlane.study;

import dev.warmlane.circuit.Pipes;
import dev.warmlane.collector.CollectorArray;
import dev.warmlane.season.Installation;
import java.util.List;

/**
 * Other collectors on the same circuit: the pump's power follows the flow. Power is flow times pressure over efficiency,
 * P = V&#775;&middot;&Delta;p/&eta;. Collectors of another area at the same flow for each m² are more or fewer of the same
 * ways side by side, each with the same drop of pressure; the lift to the roof stays, and pipes are chosen for their flow,
 * with the same drop along them. So &Delta;p stays, and with the same efficiency P is in proportion to the flow. In pipes
 * that stayed as they are the share of the pressure that is theirs would grow with the square of the flow instead. Where the
 * circuit is described, {@link WaterCircuit} takes the place of all this, in pipes that stay as they are.
 */
final class PumpByFlow {

    private PumpByFlow() {}

    /** An installation with other arrays, its pump's power in proportion to the flow of them all. */
    static Installation with(Installation template, List<CollectorArray> arrays) {
        Installation built = template.toBuilder().arrays(arrays).build();
        return built.toBuilder()
                .pipes(WaterCircuit.of(built).map(WaterCircuit::pipes).orElseGet(() -> pipes(template, arrays)))
                .build();
    }

    private static Pipes pipes(Installation template, List<CollectorArray> arrays) {
        Pipes pipes = template.pipes();
        return pipes.pumpPowerW() == 0
                ? pipes
                : pipes.withPumpPowerW(pipes.pumpPowerW() * flowKgS(arrays) / flowKgS(template.arrays()));
    }

    private static double flowKgS(List<CollectorArray> arrays) {
        return arrays.stream()
                .mapToDouble(array -> array.areaM2() * array.flowKgSM2())
                .sum();
    }
}
