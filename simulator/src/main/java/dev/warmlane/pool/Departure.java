package dev.warmlane.pool;

/** By how much the weather at a pool's water is another than its description makes of the station's, hour by hour. */
public interface Departure {

    /** As described. */
    Departure NONE = longWave(0);

    /** Wind at the water over what the description makes of the station's, 0 or more. */
    double windRatio(int hour);

    /** Sun that warms the water over what the description makes of the weather's, 0 or more. */
    double sunRatio(int hour);

    /** What the water's sky sends beyond the long-wave of the weather, W/m². */
    double longWaveWm2(int hour);

    /** The same long-wave beyond the weather's in every hour, W/m², and wind and sun as described. */
    static Departure longWave(double wm2) {
        return new Departure() {
            @Override
            public double windRatio(int hour) {
                return 1;
            }

            @Override
            public double sunRatio(int hour) {
                return 1;
            }

            @Override
            public double longWaveWm2(int hour) {
                return wm2;
            }
        };
    }
}
