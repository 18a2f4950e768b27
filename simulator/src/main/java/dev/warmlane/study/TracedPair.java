package dev.warmlane.study;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * The two mountings of a comparison whose ranking is traced to where it turns: mats lying flat, and racks.
 *
 * @param flat the mats
 * @param racks the racks
 */
public record TracedPair(MountingOption.Flat flat, MountingOption.Racks racks) {

    /** The best mats and the best racks with the same area, of those that fit the roof; else of all; nothing without both. */
    public static Optional<TracedPair> best(MountingStudy study) {
        return best(study, TracedPair::flatOf)
                .flatMap(flat -> best(study, TracedPair::racksOf).map(racks -> new TracedPair(flat, racks)));
    }

    /**
     * Two that somebody has named, in any order.
     *
     * @throws IllegalArgumentException if they are not the names of one flat mounting and of racks; says which there are
     */
    public static TracedPair named(MountingStudy study, List<String> names) {
        List<MountingOption> found = study.compared().stream()
                .map(MountingStudy.Compared::option)
                .filter(option -> names.contains(option.name()))
                .toList();
        Optional<MountingOption.Flat> flat = only(found, TracedPair::flatOf);
        Optional<MountingOption.Racks> racks = only(found, TracedPair::racksOf);
        if (found.size() != 2 || names.size() != 2 || flat.isEmpty() || racks.isEmpty()) {
            throw new IllegalArgumentException("the ranking is traced for one flat mounting and one of racks; found "
                    + quoted(names) + "; flat: " + quoted(namesOf(study, TracedPair::flatOf)) + "; racks: "
                    + quoted(namesOf(study, TracedPair::racksOf)));
        }
        return new TracedPair(flat.get(), racks.get());
    }

    private static Optional<MountingOption.Flat> flatOf(MountingOption option) {
        return option.match(Optional::of, racks -> Optional.empty(), pitched -> Optional.empty());
    }

    private static Optional<MountingOption.Racks> racksOf(MountingOption option) {
        return option.match(flat -> Optional.empty(), Optional::of, pitched -> Optional.empty());
    }

    private static <T> Optional<T> best(MountingStudy study, Function<MountingOption, Optional<T>> kind) {
        Comparator<MountingResult> byRoom =
                Comparator.comparing(result -> result.fit().fits());
        return study.sameArea().stream()
                .filter(result -> kind.apply(result.option()).isPresent())
                .max(byRoom.thenComparingDouble(MountingResult::deliveredKwh))
                .flatMap(result -> kind.apply(result.option()));
    }

    private static <T> Optional<T> only(List<MountingOption> found, Function<MountingOption, Optional<T>> kind) {
        return found.stream().flatMap(option -> kind.apply(option).stream()).findFirst();
    }

    private static <T> List<String> namesOf(MountingStudy study, Function<MountingOption, Optional<T>> kind) {
        return study.compared().stream()
                .map(MountingStudy.Compared::option)
                .filter(option -> kind.apply(option).isPresent())
                .map(MountingOption::name)
                .toList();
    }

    private static String quoted(List<String> names) {
        return names.isEmpty()
                ? "none"
                : names.stream().map(name -> "\"" + name + "\"").collect(Collectors.joining(", "));
    }
}
