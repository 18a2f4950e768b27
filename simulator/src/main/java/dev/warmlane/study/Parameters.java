package dev.warmlane.study;

import java.util.List;
import java.util.stream.Stream;

/** The parameters that a sensitivity study varies unless it is told otherwise. */
public final class Parameters {

    /** All of them: pool, roof, collectors, and what connects them. */
    public static final List<Parameter> ALL = Stream.of(
                    PoolParameters.ALL, RoofParameters.ALL, CollectorParameters.ALL, PlantParameters.ALL)
            .flatMap(List::stream)
            .toList();

    private Parameters() {}
}
