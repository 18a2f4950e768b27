package dev.warmlane.study;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
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
        return best(study, MountingOption.Flat.class)
                .flatMap(flat -> best(study, MountingOption.Racks.class).map(racks -> new TracedPair(flat, racks)));
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
        Optional<MountingOption.Flat> flat = only(found, MountingOption.Flat.class);
        Optional<MountingOption.Racks> racks = only(found, MountingOption.Racks.class);
        if (found.size() != 2 || names.size() != 2 || flat.isEmpty() || racks.isEmpty()) {
            throw new IllegalArgumentException("the ranking is traced for one flat mounting and one of racks; found "
                    + quoted(names) + "; flat: " + quoted(namesOf(study, MountingOption.Flat.class)) + "; racks: "
                    + quoted(namesOf(study, MountingOption.Racks.class)));
        }
        return new TracedPair(flat.get(), racks.get());
    }

    private static <T extends MountingOption> Optional<T> best(MountingStudy study, Class<T> kind) {
        Comparator<MountingResult> byRoom =
                Comparator.comparing(result -> result.fit().fits());
        return study.sameArea().stream()
                .filter(result -> kind.isInstance(result.option()))
                .max(byRoom.thenComparingDouble(MountingResult::deliveredKwh))
                .map(result -> kind.cast(result.option()));
    }

    private static <T> Optional<T> only(List<MountingOption> found, Class<T> kind) {
        return found.stream().filter(kind::isInstance).map(kind::cast).findFirst();
    }

    private static List<String> namesOf(MountingStudy study, Class<?> kind) {
        return study.compared().stream()
                .map(MountingStudy.Compared::option)
                .filter(kind::isInstance)
                .map(MountingOption::name)
                .toList();
    }

    private static String quoted(List<String> names) {
        return names.isEmpty()
                ? "none"
                : names.stream().map(name -> "\"" + name + "\"").collect(Collectors.joining(", "));
    }
}
