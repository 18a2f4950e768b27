package dev.warmlane.collector;

import java.util.Locale;
import java.util.OptionalDouble;

/** The heat of a mounted collector by a curve of one's own. Keeps the last hour, so use one for a thread. */
final class MeasuredBalance implements HourlyHeat {

    /** Where a dry plate is looked for: this much below and above the air, K; far wider than sky and sun can take it. */
    private static final double LOWEST_DRY_K = -60;

    private static final double HIGHEST_DRY_K = 240;

    private static final double SETTLED_K = 1e-6;

    private final MeasuredCurve curve;
    private final Exposure exposure;
    private final AirHours air;
    private final double[] windMs;

    MeasuredBalance(MeasuredCurve curve, Exposure exposure, AirHours air, double[] windMs) {
        this.curve = curve;
        this.exposure = exposure;
        this.air = air;
        this.windMs = windMs;
    }

    @Override
    public double heatWm2(int hour, double inletC) {
        return checked(curve.heatWm2(at(hour), inletC), "a heat", "W/m2", hour, inletC);
    }

    /** The root is halved in: a curve of one's own may have kinks. */
    @Override
    public double stagnationC(int hour) {
        CollectorHour at = at(hour);
        OptionalDouble measured = curve.dryPlateC(at);
        if (measured.isPresent()) {
            return checked(measured.getAsDouble(), "a dry plate", "degC", hour, at.airC());
        }
        double low = at.airC() + LOWEST_DRY_K;
        double high = at.airC() + HIGHEST_DRY_K;
        if (!(curve.heatWm2(at, low) > 0 && curve.heatWm2(at, high) < 0)) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "the collector's curve gives %.1f W/m2 at %.1f degC and %.1f W/m2 at %.1f degC at %s: it"
                            + " must pass through no heat between, at the temperature of the dry plate; let it"
                            + " lose heat to colder air, or give the dry plate's temperature",
                    curve.heatWm2(at, low),
                    low,
                    curve.heatWm2(at, high),
                    high,
                    air.label(hour)));
        }
        while (high - low > SETTLED_K) {
            double middle = (low + high) / 2;
            if (curve.heatWm2(at, middle) > 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    private CollectorHour at(int hour) {
        return new CollectorHour(
                exposure.irradiance[hour],
                exposure.modifiedFront[hour] + exposure.modifiedBack[hour],
                exposure.longWaveFront[hour],
                air.temperatureC[hour],
                windMs[hour]);
    }

    private double checked(double value, String what, String unit, int hour, double atC) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("the collector's curve gives " + what + " of " + value + " " + unit
                    + " at " + atC + " degC at " + air.label(hour) + "; allowed: any finite number");
        }
        return value;
    }
}
