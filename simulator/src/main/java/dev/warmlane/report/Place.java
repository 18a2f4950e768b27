package dev.warmlane.report;

import java.util.Set;

/** Where a part of a report is shown. */
public enum Place {
    /** What a terminal prints first. */
    BRIEF,
    /** The whole report as text. */
    FULL,
    /** The first sheet of the page, for the pool's owner. */
    FIRST_SHEET,
    /** The sheets after it, for whoever checks it. */
    TECHNICAL;

    /** All of them. */
    static final Set<Place> EVERYWHERE = Set.of(values());

    /** What is asked for first. */
    static final Set<Place> ANSWER = Set.of(BRIEF, FULL, FIRST_SHEET);

    /** What is printed at once, and is for the technical reader of a page. */
    static final Set<Place> PRINTED = Set.of(BRIEF, FULL, TECHNICAL);

    /** What the pool's owner looks up. */
    static final Set<Place> OWNER = Set.of(FULL, FIRST_SHEET);

    /** What whoever checks it looks up. */
    static final Set<Place> DETAIL = Set.of(FULL, TECHNICAL);

    /** Where room is short. */
    static final Set<Place> SHORT = Set.of(BRIEF, FIRST_SHEET);
}
