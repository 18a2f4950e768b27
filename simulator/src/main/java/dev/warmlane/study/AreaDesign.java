package dev.warmlane.study;

import dev.warmlane.money.Worth;
import dev.warmlane.season.ArraySummary;
import dev.warmlane.season.CollectorsWorth;
import dev.warmlane.season.Installation;
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
 * @param built what is built then
 * @param asDescribed whether it is the installation that the study started from
 * @param fitsRoof whether it leaves room on the flat roof: what its mats and rows of racks take is no more than the
 *     roof's usable area. Collectors on a pitched roof always fit, because its size is not known
 * @param season the season with these collectors and without any
 * @param larger the next larger size
 * @param next what each further m² adds, on the mean up to the next larger design
 */
public record AreaDesign(
        Installation built,
        boolean asDescribed,
        boolean fitsRoof,
        PeriodSummary season,
        Installation larger,
        NextSquareMetre next) {

    /** What the arrays are made of. */
    public List<ArraySummary> arrays() {
        return built.arrays().stream().map(ArraySummary::of).toList();
    }

    /** Money of a season; nothing where no prices are given. */
    public Optional<MoneySummary> money() {
        return MoneySummary.of(built, season);
    }

    /** What the collectors are worth over the years; nothing where their price is not known or there is no heater. */
    public Optional<Worth> worth() {
        return CollectorsWorth.of(built, season);
    }

    /** Collector area of all arrays, m². */
    public double areaM2() {
        return season.collectors().areaM2();
    }

    /** Panels of all arrays; nothing where not all of them are made of panels. */
    public OptionalInt panels() {
        List<ArraySummary> arrays = arrays();
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
}
