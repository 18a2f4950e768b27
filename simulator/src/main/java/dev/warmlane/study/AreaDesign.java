package dev.warmlane.study;

import dev.warmlane.season.ArraySummary;
import dev.warmlane.season.MoneySummary;
import dev.warmlane.season.NextSquareMetre;
import dev.warmlane.season.PeriodSummary;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * One size of an {@link AreaStudy}.
 *
 * @param arrays what the arrays are made of
 * @param asDescribed whether it is the installation that the study started from
 * @param fitsRoof whether it leaves room on the flat roof: what its mats and rows of racks take is no more than the
 *     roof's usable area. Collectors on a pitched roof always fit, because its size is not known
 * @param season the season with these collectors and without any
 * @param next what each further m² adds, on the mean up to the next larger design
 * @param money money of a season; nothing where no prices are given
 */
public record AreaDesign(
        List<ArraySummary> arrays,
        boolean asDescribed,
        boolean fitsRoof,
        PeriodSummary season,
        NextSquareMetre next,
        Optional<MoneySummary> money) {

    /** Keeps its own copy of the list. */
    public AreaDesign {
        arrays = List.copyOf(arrays);
    }

    /** Collector area of all arrays, m². */
    public double areaM2() {
        return season.collectors().areaM2();
    }

    /** Panels of all arrays; nothing where not all of them are made of panels. */
    public OptionalInt panels() {
        return arrays.stream().allMatch(array -> array.panels().isPresent())
                ? OptionalInt.of(arrays.stream()
                        .mapToInt(array -> array.panels().orElseThrow())
                        .sum())
                : OptionalInt.empty();
    }

    /**
     * Share of the heat that the collectors could have given and the pool, at its limit, did not take, 0 to 1; nothing
     * where they could have given none.
     */
    public OptionalDouble refusedShare() {
        double refused = season.collectors().refusedKwh();
        double possible = season.collectors().deliveredKwh() + refused;
        return possible > 0 ? OptionalDouble.of(refused / possible) : OptionalDouble.empty();
    }

    /** Simple payback, see {@link MoneySummary#paybackSeasons}. */
    public OptionalDouble paybackSeasons() {
        return money.map(MoneySummary::paybackSeasons).orElse(OptionalDouble.empty());
    }
}
