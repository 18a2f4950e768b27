package dev.warmlane.collector;

import dev.warmlane.irradiance.Skylines;
import dev.warmlane.physics.Water;
import dev.warmlane.site.HourSpan;
import dev.warmlane.site.Roof;
import dev.warmlane.site.Terrain;
import dev.warmlane.weather.HourlyWeather;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A collector of some model and flow, mounted some way on a roof in its weather, per m² and for every hour: its heat
 * curves, and the irradiance they stand on. Immutable; serves any area of it.
 */
public final class CollectorForcing {

    private final CollectorSurroundings around;
    private final CollectorArray array;
    private final List<Part> parts;
    private final HeatCurves curves;
    private final double[] irradiance;
    private final int hoursOutsideTest;

    private CollectorForcing(
            CollectorSurroundings around,
            CollectorArray array,
            List<Part> parts,
            HeatCurves curves,
            double[] irradiance,
            int hoursOutsideTest) {
        this.around = around;
        this.array = array;
        this.parts = parts;
        this.curves = curves;
        this.irradiance = irradiance;
        this.hoursOutsideTest = hoursOutsideTest;
    }

    /**
     * Prepares a collector.
     *
     * @param around roof, weather and the models chosen
     * @param array what is mounted; its area does not matter
     */
    public static CollectorForcing of(CollectorSurroundings around, CollectorArray array) {
        return of(around, array, Skylines.of(around.roof().horizon()));
    }

    /**
     * Prepares a collector among things that hide sky from it.
     *
     * @param around roof, weather and the models chosen
     * @param array what is mounted; its area does not matter
     * @param skylines what it sees of the sky, the roof's horizon counted in
     */
    public static CollectorForcing of(CollectorSurroundings around, CollectorArray array, Skylines skylines) {
        return CollectorPlaces.of(around, array, skylines).of(array);
    }

    /** Puts the places of an array together, each by its share. */
    static CollectorForcing of(CollectorSurroundings around, CollectorArray array, List<CollectorPlaces.Place> places) {
        int hours = around.weather().hours();
        boolean one = places.size() == 1;
        boolean even = array.split().parts().isEmpty();
        // what one place has already is not kept twice
        double[] irradiance = one ? places.get(0).exposure().irradiance : new double[hours];
        HeatCurves curves = one && even ? places.get(0).curves() : new HeatCurves(hours);
        int outside = 0;
        List<Double> shares = CollectorPlaces.shares(array.mounting());
        List<Part> parts = new ArrayList<>();
        for (int i = 0; i < places.size(); i++) {
            CollectorPlaces.Place place = places.get(i);
            double share = shares.get(i);
            for (int hour = 0; hour < hours && !one; hour++) {
                irradiance[hour] += share * place.exposure().irradiance[hour];
            }
            if (curves != place.curves()) {
                curves.add(share, place.curves());
            }
            outside = Math.max(outside, place.hoursOutside());
            parts.add(new Part(share, place.exposure()));
        }
        boolean filmOfFace = around.physics().film().match(physical -> false, fit -> false, face -> true);
        if (!even) {
            curves.divide(array.split(), array.flowKgSM2() * Water.specificHeatJKgK(25));
        }
        if (array.model().curve().isPresent() || filmOfFace) {
            for (int hour : around.solved()) {
                curves.checkFalls(hour, around.weather());
            }
        }
        return new CollectorForcing(around, array, parts, curves, irradiance, outside);
    }

    /** The weather it was prepared in. */
    public HourlyWeather weather() {
        return around.weather();
    }

    /** Whether it was prepared for some hours of the year. */
    public boolean covers(HourSpan hours) {
        return around.covers(hours);
    }

    /**
     * What it was prepared for that another array has otherwise, in a word; nothing where it serves that array. Its area,
     * panels, filling and name have no part in it.
     *
     * @param other the array
     * @param roof the roof it is on
     * @param terrain the ground around the roof
     * @param physics the models chosen
     */
    public Optional<String> differsFrom(CollectorArray other, Roof roof, Terrain terrain, CollectorPhysics physics) {
        if (!array.mounting().equals(other.mounting())) {
            return Optional.of("mounting");
        }
        if (!array.model().equals(other.model())) {
            return Optional.of("absorber or certificate");
        }
        if (array.flowKgSM2() != other.flowKgSM2()) {
            return Optional.of("flow");
        }
        if (!array.split().equals(other.split())) {
            return Optional.of("division of the flow");
        }
        return around.differsFrom(roof, terrain, physics);
    }

    /** Heat over inlet temperature in every hour. */
    public HeatCurves curves() {
        return curves;
    }

    /** Irradiance on the front in the collector's plane, mean over its rows, W/m². */
    public double irradianceWm2(int hour) {
        return irradiance[hour];
    }

    /** Temperature of the air around the collectors and their pipes, °C. */
    public double airC(int hour) {
        return around.air().temperatureC[hour];
    }

    /** Daylight hours in which the wind lay outside the range the certificate was tested in; 0 without certificate. */
    public int hoursOutsideTest() {
        return hoursOutsideTest;
    }

    /**
     * An account of where the light goes, for one thread; empty where the collector is described by a certificate or a curve, which
     * does not tell one loss from another.
     */
    public Optional<PlateAccount> account() {
        return array.model().absorber().map(absorber -> new PlateAccount(around, absorber, array.flowKgSM2(), parts));
    }

    /** A share of an array that sees the same things. */
    record Part(double weight, Exposure exposure) {}

    /** The parts of an array under the roof's horizon. */
    static List<Part> parts(CollectorSurroundings around, CollectorArray array) {
        List<Exposure> exposures = CollectorPlaces.exposures(
                around, array, Skylines.of(around.roof().horizon()));
        List<Double> shares = CollectorPlaces.shares(array.mounting());
        return IntStream.range(0, exposures.size())
                .mapToObj(i -> new Part(shares.get(i), exposures.get(i)))
                .toList();
    }
}
