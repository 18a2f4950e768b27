package dev.warmlane.report;

import dev.warmlane.units.Notation;
import dev.warmlane.units.UnitSystem;
import java.util.List;
import java.util.stream.IntStream;

/** Reports whose first sheet is more or less full. */
public final class InventedSheets {

    private static final Notation PLAIN = Notation.usual(UnitSystem.METRIC);

    private InventedSheets() {}

    /** An answer, then two lists of so many lines that may give way, then one that may not. */
    public static Report of(int points) {
        return new Report(
                "sheets",
                "Märchenbad",
                "",
                PLAIN,
                List.of(
                        Section.of("Answer", Place.ANSWER).words("A paragraph."),
                        Section.of("Early", Place.ANSWER)
                                .points(lines("early", points))
                                .givingWay(),
                        Section.of("Late", Place.ANSWER)
                                .points(lines("late", points))
                                .givingWay(),
                        Section.of("Last", Place.ANSWER).words("It stays.")),
                List.of());
    }

    /** An answer, then a list of so many lines before which the sheet is set tighter, then one that goes at once. */
    public static Report firm(int points) {
        return new Report(
                "sheets",
                "Märchenbad",
                "",
                PLAIN,
                List.of(
                        Section.of("Answer", Place.ANSWER).words("A paragraph."),
                        Section.of("Firm", Place.ANSWER)
                                .points(lines("firm", points))
                                .staying(Section.Stay.TIGHTLY),
                        Section.of("Loose", Place.ANSWER)
                                .points(lines("loose", 20))
                                .givingWay()),
                List.of());
    }

    private static List<String> lines(String word, int count) {
        return IntStream.range(0, count)
                .mapToObj(i -> "a point that is " + word + ", no. " + i)
                .toList();
    }
}
