package dev.warmlane.weather;

/**
 * What a weather file has for an hour, in the units of {@link WeatherYear}, and the values that can be: outside them a
 * value is taken as missing. Limits are common practice around the records of the earth's surface, no single source;
 * those of irradiance follow from the solar constant and the brightening by broken cloud.
 */
enum WeatherColumn {
    GLOBAL("global horizontal irradiance", "W/m²", 0, 1500),
    DIRECT("direct normal irradiance", "W/m²", 0, 1300),
    /** Beam on the horizontal, where a file has it in place of {@link #DIRECT}, which is found from it. */
    DIRECT_HORIZONTAL("direct horizontal irradiance", "W/m²", 0, 1300),
    DIFFUSE("diffuse horizontal irradiance", "W/m²", 0, 1000),
    LONG_WAVE("horizontal infrared", "W/m²", 0, 800),
    AIR("air temperature", "°C", -65, 60),
    DEW("dew point", "°C", -80, 45),
    RELATIVE_HUMIDITY("relative humidity", "%", 0, 120),
    PRESSURE("pressure", "kPa", 45, 110),
    WIND("wind speed", "m/s", 0, 50),
    CLOUD("cloud cover", "tenths", 0, 10),
    /** Of each hour; irradiance is found from it where there is no other. */
    SUNSHINE("sunshine", "h", 0, 1);

    private final String label;
    private final String unit;
    private final double lowest;
    private final double highest;

    WeatherColumn(String label, String unit, double lowest, double highest) {
        this.label = label;
        this.unit = unit;
        this.lowest = lowest;
        this.highest = highest;
    }

    String label() {
        return label;
    }

    String unit() {
        return unit;
    }

    double lowest() {
        return lowest;
    }

    double highest() {
        return highest;
    }

    /** The values that can be, for example {@code -65 to 60}. */
    String range() {
        return Occurrences.number(lowest) + " to " + Occurrences.number(highest);
    }

    boolean isIrradiance() {
        return this == GLOBAL || this == DIRECT || this == DIRECT_HORIZONTAL || this == DIFFUSE;
    }
}
