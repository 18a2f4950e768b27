package dev.warmlane.collector;

/** The heat of a mounted collector in an hour, solved directly: what {@link HeatCurves} are drawn through. */
interface HourlyHeat {

    /** Temperature of the dry plate without flow, °C. */
    double stagnationC(int hour);

    /** Useful heat with water entering at a temperature, W/m². */
    double heatWm2(int hour, double inletC);

    /** Daylight hours in which the wind lay outside what a certificate was tested in; 0 for what was not tested. */
    default int hoursOutside() {
        return 0;
    }
}
