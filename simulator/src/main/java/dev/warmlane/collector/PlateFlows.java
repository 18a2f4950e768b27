package dev.warmlane.collector;

/**
 * Where the light that falls on a running collector goes, W per m² of collector: what tells one mounting from another.
 * Losses are positive, gains from warm air or a warm roof negative. A mutable holder, filled again and again; not for
 * sharing between threads.
 *
 * <p>absorbedFront + absorbedBack = convectionFront + convectionBack + longWaveFront + longWaveBack + throughBack +
 * useful, at the plate's mean temperature and to the accuracy of the loss coefficient (0.1 %).
 */
public final class PlateFlows {

    /** Irradiance on the front, W/m². */
    public double irradiance;

    /** Short-wave absorbed by the front, W/m². */
    public double absorbedFront;

    /** Short-wave absorbed by an open back, W/m². */
    public double absorbedBack;

    /** Convection from the front, W/m². */
    public double convectionFront;

    /** Convection from an open back, W/m². */
    public double convectionBack;

    /** Net long-wave from the front, W/m². */
    public double longWaveFront;

    /** Net long-wave from an open back, W/m². */
    public double longWaveBack;

    /** Conduction through a closed back, to the room or to the outer face of a board, W/m². */
    public double throughBack;

    /** Useful heat, W/m². */
    public double useful;

    /** Film coefficient of the front, W/m²K. */
    public double filmFront;

    /** Film coefficient of an open back, W/m²K; 0 where the back is closed. */
    public double filmBack;

    /** Mean temperature of the plate, °C. */
    public double plateC;

    /** Makes an empty holder. */
    public PlateFlows() {}

    /** Empties the holder. */
    void clear() {
        irradiance = 0;
        absorbedFront = 0;
        absorbedBack = 0;
        convectionFront = 0;
        convectionBack = 0;
        longWaveFront = 0;
        longWaveBack = 0;
        throughBack = 0;
        useful = 0;
        filmFront = 0;
        filmBack = 0;
        plateC = 0;
    }
}
