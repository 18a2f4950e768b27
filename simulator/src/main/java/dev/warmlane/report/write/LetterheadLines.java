package dev.warmlane.report.write;

import dev.warmlane.scenario.Letterhead;
import java.util.List;
import java.util.stream.Stream;

/** What a letterhead says, line by line; nothing for what was not given. */
final class LetterheadLines {

    private LetterheadLines() {}

    /** All of it but the picture. */
    static List<String> of(Letterhead head) {
        return Stream.concat(sender(head).stream(), offer(head).stream()).toList();
    }

    /** Who hands it over. */
    static List<String> sender(Letterhead head) {
        return Stream.of(head.company(), head.contact())
                .filter(line -> !line.isEmpty())
                .toList();
    }

    /** What is handed over, when and to whom. */
    static List<String> offer(Letterhead head) {
        return Stream.of(labelled("Prepared for ", head.preparedFor()), labelled("Offer ", head.offer()), head.date())
                .filter(line -> !line.isEmpty())
                .toList();
    }

    private static String labelled(String label, String words) {
        return words.isEmpty() ? "" : label + words;
    }
}
