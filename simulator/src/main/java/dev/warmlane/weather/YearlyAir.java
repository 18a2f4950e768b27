package dev.warmlane.weather;

import dev.warmlane.site.HourOfYear;
import java.util.function.IntUnaryOperator;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;

/**
 * The air of a place over the year: mean + cosine·cos(2π·h/8760) + sine·sin(2π·h/8760) at hour h of the year.
 *
 * @param meanC mean of the year, °C
 * @param cosineK cosine part of the first harmonic, K
 * @param sineK sine part of the first harmonic, K
 * @param monthlySpanK mean of the warmest month less that of the coldest, K
 */
public record YearlyAir(double meanC, double cosineK, double sineK, double monthlySpanK) {

    /** The angle of an hour of the year, radians. */
    public static double angle(int hourOfYear) {
        return 2 * Math.PI * hourOfYear / HourOfYear.HOURS;
    }

    /** The yearly range of a first harmonic, K: twice its amplitude, which the means of the months hardly flatten (by 1 %). */
    private static double spanK(double cosineK, double sineK) {
        return 2 * Math.hypot(cosineK, sineK);
    }

    /** Of a year and more, which need not be whole years, by least squares. */
    static YearlyAir fitted(double[] airC, IntUnaryOperator hourOfYear) {
        double[][] normal = new double[3][3];
        double[] right = new double[3];
        for (int hour = 0; hour < airC.length; hour++) {
            double angle = angle(hourOfYear.applyAsInt(hour));
            double[] terms = {1, Math.cos(angle), Math.sin(angle)};
            for (int i = 0; i < 3; i++) {
                right[i] += terms[i] * airC[hour];
                for (int j = 0; j < 3; j++) {
                    normal[i][j] += terms[i] * terms[j];
                }
            }
        }
        double[] fit = new LUDecomposition(new Array2DRowRealMatrix(normal, false))
                .getSolver()
                .solve(new ArrayRealVector(right, false))
                .toArray();
        return new YearlyAir(fit[0], fit[1], fit[2], spanK(fit[1], fit[2]));
    }

    /** Of a year's 8760 hours. */
    static YearlyAir ofYear(WeatherYear weather) {
        double mean = 0;
        double cosine = 0;
        double sine = 0;
        for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
            double air = weather.airTemperatureC(hour) / HourOfYear.HOURS;
            mean += air;
            cosine += 2 * air * Math.cos(angle(hour));
            sine += 2 * air * Math.sin(angle(hour));
        }
        double coldest = Double.MAX_VALUE;
        double warmest = -Double.MAX_VALUE;
        for (int month = 1; month <= 12; month++) {
            double sum = 0;
            for (int hour = HourOfYear.firstHourOf(month); hour < HourOfYear.firstHourOf(month + 1); hour++) {
                sum += weather.airTemperatureC(hour);
            }
            double monthly = sum / (24 * HourOfYear.daysIn(month));
            coldest = Math.min(coldest, monthly);
            warmest = Math.max(warmest, monthly);
        }
        return new YearlyAir(mean, cosine, sine, warmest - coldest);
    }
}
