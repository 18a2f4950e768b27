package dev.warmlane.physics;

/** Water vapour in air. */
public final class MoistAir {

    /** Coefficients n1 to n10 of IAPWS-IF97 region 4 (IAPWS R7-97, table 34). */
    private static final double[] N = {
        0.11670521452767e4,
        -0.72421316703206e6,
        -0.17073846940092e2,
        0.12020824702470e5,
        -0.32325550322333e7,
        0.14915108613530e2,
        -0.48232657361591e4,
        0.40511340542057e6,
        -0.23855557567849,
        0.65017534844798e3
    };

    private MoistAir() {}

    /**
     * Saturation pressure over liquid water, kPa: IAPWS-IF97 region 4, equation 30, stated for 0 to 374 °C. Below 0 °C
     * the same equation is used for supercooled water, which is what relative humidity and dew point in weather files
     * refer to. There it departs from the equation for supercooled water of Murphy and Koop (Q. J. R. Meteorol. Soc.
     * 131, 2005, equation 10) by less than 0.01 % down to -10 °C, 0.05 % at -30 °C, 0.24 % at -40 °C, 1.5 % at -50 °C
     * and 4.9 % at -60 °C; over ice the pressure is 10 % lower at -10 °C already.
     *
     * @param temperatureC temperature, °C, -60 to 150
     */
    public static double saturationPressureKpa(double temperatureC) {
        double t = temperatureC + Constants.KELVIN;
        double theta = t + N[8] / (t - N[9]);
        double a = theta * theta + N[0] * theta + N[1];
        double b = N[2] * theta * theta + N[3] * theta + N[4];
        double c = N[5] * theta * theta + N[6] * theta + N[7];
        double root = 2 * c / (-b + Math.sqrt(b * b - 4 * a * c));
        return 1000 * root * root * root * root;
    }

    /**
     * Dew point, °C: IAPWS-IF97 region 4, equation 31, the exact inverse of {@link #saturationPressureKpa}.
     *
     * @param vapourPressureKpa partial pressure of the vapour, kPa, above 0
     */
    public static double dewPointC(double vapourPressureKpa) {
        double beta = Math.sqrt(Math.sqrt(vapourPressureKpa / 1000));
        double e = beta * beta + N[2] * beta + N[5];
        double f = N[0] * beta * beta + N[3] * beta + N[6];
        double g = N[1] * beta * beta + N[4] * beta + N[7];
        double d = 2 * g / (-f - Math.sqrt(f * f - 4 * e * g));
        double sum = N[9] + d;
        return (sum - Math.sqrt(sum * sum - 4 * (N[8] + N[9] * d))) / 2 - Constants.KELVIN;
    }
}
