package dev.warmlane.study;

import dev.warmlane.season.PeriodSummary;
import dev.warmlane.units.Estimate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleBiFunction;
import java.util.stream.Stream;

/**
 * Two seasons whose numbers are set against each other, with the doubt that they share: each doubtful input is at the same
 * end in both, so that what moves both alike does not make their difference uncertain. An input that only one of them has
 * leaves the other as it is.
 *
 * @param one the band of the one
 * @param other the band of the other
 */
public record PairedBand(SeasonBand one, SeasonBand other) {

    /** A number that the two make together, such as a difference or a ratio. */
    public Estimate of(ToDoubleBiFunction<PeriodSummary, PeriodSummary> number) {
        double likely = number.applyAsDouble(one.likely(), other.likely());
        List<Estimate> alone = Stream.concat(one.doubts().stream(), other.doubts().stream())
                .map(Sensitivity::name)
                .distinct()
                .map(name -> Estimate.around(
                        likely, at(name, Sensitivity::low, number), at(name, Sensitivity::high, number)))
                .toList();
        return Estimate.combined(likely, alone);
    }

    private double at(
            String name,
            Function<Sensitivity, Sensitivity.End> end,
            ToDoubleBiFunction<PeriodSummary, PeriodSummary> number) {
        return number.applyAsDouble(season(one, name, end), season(other, name, end));
    }

    private static PeriodSummary season(SeasonBand band, String name, Function<Sensitivity, Sensitivity.End> end) {
        Optional<Sensitivity> doubt =
                band.doubts().stream().filter(d -> d.name().equals(name)).findFirst();
        return doubt.map(end).map(Sensitivity.End::season).orElse(band.likely());
    }
}
