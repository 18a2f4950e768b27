package dev.warmlane.season;

import dev.warmlane.collector.CollectorArray;
import dev.warmlane.collector.CollectorArray.Filling;
import dev.warmlane.physics.Water;
import dev.warmlane.units.Units;
import java.util.OptionalInt;

/**
 * What a collector array is made of.
 *
 * @param name what the designer calls it
 * @param areaM2 collector area, m²
 * @param panels number of panels, rounded to whole ones; nothing where the area is not made of panels
 * @param rows rows of racks; nothing where it does not stand on racks
 * @param flowM3h water flow of the whole array while running, m³/h
 * @param waterL water in the array, L
 * @param filling what it holds and weighs per m²
 */
public record ArraySummary(
        String name,
        double areaM2,
        OptionalInt panels,
        OptionalInt rows,
        double flowM3h,
        double waterL,
        Filling filling) {

    /** Sums up an array; its flow has the density of water at 25 °C. */
    public static ArraySummary of(CollectorArray array) {
        return new ArraySummary(
                array.name(),
                array.areaM2(),
                array.panelAreaM2() > 0
                        ? OptionalInt.of((int) Math.round(array.areaM2() / array.panelAreaM2()))
                        : OptionalInt.empty(),
                array.mounting()
                        .racks()
                        .map(racks -> OptionalInt.of(racks.rows()))
                        .orElse(OptionalInt.empty()),
                array.areaM2() * array.flowKgSM2() / Water.densityKgM3(25) * Units.HOUR,
                array.areaM2() * array.filling().waterLM2(),
                array.filling());
    }
}
