package dev.warmlane.scenario;

import java.util.List;
import java.util.Optional;

/** All sections of a scenario file, in the order a person thinks. */
final class Schema {

    static final List<SectionSchema> SECTIONS = List.of(
            PlaceKeys.SITE,
            PoolKeys.POOL,
            FitKeys.FIT,
            PoolKeys.WATER,
            PoolKeys.COVER,
            PlaceKeys.ROOF,
            DrawnKeys.SURFACE,
            DrawnKeys.OBSTACLE,
            DrawnKeys.LAYOUT,
            ShadeKeys.HORIZON,
            ShadeKeys.BESIDE_POOL,
            CollectorKeys.COLLECTORS,
            MountingKeys.MOUNTINGS,
            CircuitKeys.PIPES,
            CircuitKeys.PANEL,
            CircuitKeys.PUMP,
            HeaterKeys.HEATER,
            PlantKeys.PRICES,
            MoneyKeys.MONEY,
            PlantKeys.CONTROL,
            PlantKeys.SEASON,
            PlantKeys.SCHEDULE,
            ModelKeys.MODELS,
            PlaceKeys.REPORT);

    private Schema() {}

    /** The section of a name. */
    static Optional<SectionSchema> section(String name) {
        return SECTIONS.stream().filter(s -> s.name().equals(name)).findFirst();
    }

    /** The names of all sections. */
    static List<String> names() {
        return SECTIONS.stream().map(SectionSchema::name).toList();
    }
}
