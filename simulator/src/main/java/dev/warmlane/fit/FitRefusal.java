package dev.warmlane.fit;

/** Why nothing can be fitted, in words for who brought the log: what was found, what is needed, and what to do. */
public final class FitRefusal extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    /** Which of the reasons it is. */
    public enum Reason {
        /** The weather is of a typical year, not of the hours of the log. */
        TYPICAL_YEAR,
        /** Log and weather have no time, or too little, in common. */
        NO_OVERLAP,
        /** There are too few readings, or over too short a time. */
        TOO_FEW,
        /** The log does not move. */
        FLAT,
        /** By night the log cools faster than water of that depth can. */
        OUT_OF_WATER,
        /** Bills are given of a heater whose efficiency no fit finds, or of none. */
        BILLS,
        /** The pool is one that sun and wind do not reach. */
        INDOORS,
        /** The log says no more of wind and sun than was known before. */
        NO_INFORMATION,
        /** The chain does not move, so that nothing can be said of how sure it is; a log without any error does that. */
        NOT_SETTLED,
        /** The best fit is at the end of what is possible. */
        AT_THE_EDGE
    }

    private final Reason reason;

    FitRefusal(Reason reason, String message) {
        super(message);
        this.reason = reason;
    }

    /** Which of the reasons it is. */
    public Reason reason() {
        return reason;
    }
}
