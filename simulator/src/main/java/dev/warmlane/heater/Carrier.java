package dev.warmlane.heater;

/** What kind of energy a heater is fed with, as a bill calls it. */
public enum Carrier {
    /** A gas that is burned. */
    GAS("gas", true),
    /** Heating oil that is burned. */
    OIL("oil", true),
    /** Anything else that is burned; it goes by its own name. */
    OTHER("fuel", true),
    /** Electricity. */
    ELECTRICITY("electricity", false),
    /** Heat from a network. */
    HEAT("district heat", false);

    private final String word;
    private final boolean burned;

    Carrier(String word, boolean burned) {
        this.word = word;
        this.burned = burned;
    }

    /** The word for it, in lower case. */
    public String word() {
        return word;
    }

    /** Whether it is burned at the pool; otherwise it is only bought. */
    public boolean burned() {
        return burned;
    }
}
