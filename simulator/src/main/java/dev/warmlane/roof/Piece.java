package dev.warmlane.roof;

/**
 * A row of the list of pieces.
 *
 * @param kind what it is
 * @param count how many
 * @param lengthM length of each, m; 0 where it has none that matters
 * @param widthM width of each, m; 0 where it has none that matters
 */
public record Piece(Kind kind, int count, double lengthM, double widthM) {

    /** What a piece is. */
    public enum Kind {
        /** A panel. */
        PANEL,
        /** A joint between the headers of two panels side by side; two to each pair of panels. */
        HEADER_JOINT,
        /** The closed end of a header; two to each bank. */
        HEADER_CAP,
        /** Where supply or return enters a header; two to each bank, at opposite corners. */
        CONNECTION,
        /** Pipe on the roof, supply and return together, counted as one piece. */
        PIPE
    }
}
