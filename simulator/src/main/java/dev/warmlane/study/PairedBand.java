package dev.warmlane.study;

import dev.warmlane.season.PeriodSummary;
import dev.warmlane.units.Estimate;
import java.util.Comparator;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.ToDoubleBiFunction;
import java.util.stream.Stream;

/**
 * Two seasons side by side whose doubtful inputs are the same: what is told of both together, such as by how much the one
 * is ahead, is doubtful only as far as an input moves them apart. The same water in the same wind stands under both
 * mountings and under both areas, so that taking the doubts of the two seasons for unrelated would make far too much of it.
 *
 * @param one the one season with its doubts
 * @param other the other; a doubt that only one of them has leaves the other as described
 */
public record PairedBand(SeasonBand one, SeasonBand other) {

    /**
     * A number of both seasons with its doubt, put together as {@link Estimate#combined} says.
     *
     * @param number from the one season and the other, finite as described and at all ends of the doubts
     */
    public Estimate of(ToDoubleBiFunction<PeriodSummary, PeriodSummary> number) {
        return Estimate.combined(
                number.applyAsDouble(one.likely(), other.likely()),
                doubts().stream().map(doubt -> alone(doubt, number)).toList());
    }

    /**
     * The input that leaves such a number least certain.
     *
     * @param number from the one season and the other, finite at all ends
     * @return nothing where none of them moves it
     */
    public Optional<Sensitivity> leastCertain(ToDoubleBiFunction<PeriodSummary, PeriodSummary> number) {
        return Stream.of(one, other)
                .flatMap(band -> band.doubts().stream())
                .filter(doubt -> span(doubt.name(), number) > 0)
                .max(Comparator.comparingDouble(doubt -> span(doubt.name(), number)));
    }

    private double span(String doubt, ToDoubleBiFunction<PeriodSummary, PeriodSummary> number) {
        Estimate alone = alone(doubt, number);
        return alone.high() - alone.low();
    }

    private Estimate alone(String doubt, ToDoubleBiFunction<PeriodSummary, PeriodSummary> number) {
        return Estimate.around(
                number.applyAsDouble(one.likely(), other.likely()),
                number.applyAsDouble(end(one, doubt, Sensitivity::low), end(other, doubt, Sensitivity::low)),
                number.applyAsDouble(end(one, doubt, Sensitivity::high), end(other, doubt, Sensitivity::high)));
    }

    private TreeSet<String> doubts() {
        TreeSet<String> names = new TreeSet<>();
        Stream.of(one, other).flatMap(band -> band.doubts().stream()).forEach(doubt -> names.add(doubt.name()));
        return names;
    }

    /** The season at an end of a doubt, as described where it has not this doubt. */
    static PeriodSummary end(SeasonBand band, String name, Function<Sensitivity, Sensitivity.End> end) {
        return band.doubts().stream()
                .filter(doubt -> doubt.name().equals(name))
                .findFirst()
                .map(doubt -> end.apply(doubt).season())
                .orElse(band.likely());
    }
}
