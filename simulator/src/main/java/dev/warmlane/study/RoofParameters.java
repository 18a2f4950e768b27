package dev.warmlane.study;

import dev.warmlane.season.Installation;
import dev.warmlane.site.Roof;
import dev.warmlane.study.Parameter.Ends;
import dev.warmlane.study.Parameter.Lens;
import dev.warmlane.units.Dimension;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

/** Parameters of the roof and the wind over it. */
final class RoofParameters {

    /** What a parapet keeps of the wind, one way only: nothing is known that it adds at the height of collectors. */
    static final Parameter PARAPET = new NumberParameter(
            "wind along the roof behind its parapet, ratio",
            Dimension.FRACTION,
            roof(RoofParameters::hasParapet, Roof::windSpeedRatio, Roof.Builder::windSpeedRatio),
            new Ends(ratio -> 0.7 * ratio, ratio -> ratio),
            "a parapet shelters the roof behind it; what is published of parapets is loads and not wind, 30 % less is common"
                    + " practice, no source",
            "no parapet is drawn");

    static final Parameter WIND_RATIO = new NumberParameter(
            "wind along the roof, ratio",
            Dimension.FRACTION,
            roof(i -> true, Roof::windSpeedRatio, Roof.Builder::windSpeedRatio),
            new Ends(ratio -> 0.7 * ratio, ratio -> Math.min(2, 1.3 * ratio)),
            "parapets and neighbours slow it, the windward edge speeds it up; published ratios differ too much,"
                    + " 30 % either way is common practice, no source",
            "");

    static final Parameter ALBEDO = new NumberParameter(
            "albedo of the roof",
            Dimension.FRACTION,
            roof(
                    i -> i.arrays().stream()
                            .anyMatch(a -> a.mounting().match(flat -> false, racks -> true, pitched -> true)),
                    Roof::albedo,
                    Roof.Builder::albedo),
            Ends.at(0.1, 0.6),
            "dark roofing to a white membrane; common practice, no source",
            "mats lie on the roof and do not see it");

    static final List<Parameter> ALL = List.of(
            new TerrainParameter(),
            WIND_RATIO,
            ALBEDO,
            new NumberParameter(
                    "emittance of the roof",
                    Dimension.FRACTION,
                    roof(RoofParameters::hasRacks, Roof::emittance, Roof.Builder::emittance),
                    Ends.at(0.80, 0.95),
                    "roofing other than bare metal; handbook tables, from memory",
                    "only racks see the roof"),
            new NumberParameter(
                    "U value of the roof",
                    Dimension.HEAT_TRANSFER_COEFFICIENT,
                    roof(RoofParameters::losesThroughRoof, Roof::uValueWm2K, Roof.Builder::uValueWm2K),
                    Ends.at(0.25, 2),
                    "an insulated roof to a bare deck; common practice, no source",
                    "a certificate holds what the collectors' backs lose"));

    private RoofParameters() {}

    private static boolean hasParapet(Installation installation) {
        return !installation.arrays().isEmpty()
                && installation
                        .plan()
                        .filter(plan -> plan.surfaces().stream().anyMatch(surface -> surface.parapetM() > 0))
                        .isPresent();
    }

    private static boolean hasRacks(Installation installation) {
        return installation.arrays().stream()
                .anyMatch(array -> array.mounting().racks().isPresent());
    }

    /** Racks see a roof whose temperature it moves; mats lose through it, unless a certificate has that already. */
    private static boolean losesThroughRoof(Installation installation) {
        return installation.arrays().stream()
                .anyMatch(array -> array.mounting().racks().isPresent()
                        || array.model().absorber().isPresent());
    }

    private static Lens roof(
            Predicate<Installation> matters,
            ToDoubleFunction<Roof> get,
            BiFunction<Roof.Builder, Double, Roof.Builder> set) {
        return new Lens(
                i -> matters.test(i) ? List.of(get.applyAsDouble(i.roof())) : List.of(), (i, to) -> i.toBuilder()
                        .roof(set.apply(i.roof().toBuilder(), to.applyAsDouble(get.applyAsDouble(i.roof())))
                                .build())
                        .build());
    }
}
