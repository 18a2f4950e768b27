package dev.warmlane.collector;

import dev.warmlane.irradiance.RowPlace;
import dev.warmlane.irradiance.Skylines;
import dev.warmlane.physics.Water;
import dev.warmlane.site.Roof;
import dev.warmlane.site.Terrain;
import dev.warmlane.weather.HourlyWeather;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

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
        int hours = around.weather().hours();
        double[] irradiance = new double[hours];
        HeatCurves curves = new HeatCurves(hours);
        int outside = 0;
        List<Part> parts = parts(around, array, skylines);
        for (Part part : parts) {
            HourlyHeat heat = heat(around, array, part.exposure);
            outside = Math.max(outside, heat.hoursOutside());
            for (int hour = 0; hour < hours; hour++) {
                irradiance[hour] += part.weight * part.exposure.irradiance[hour];
                curves.add(hour, part.weight, heat);
            }
        }
        boolean filmOfFace = around.physics().film().match(physical -> false, fit -> false, face -> true);
        if (!array.split().parts().isEmpty()) {
            curves.divide(array.split(), array.flowKgSM2() * Water.specificHeatJKgK(25));
        }
        if (array.model().curve().isPresent() || filmOfFace) {
            for (int hour = 0; hour < hours; hour++) {
                curves.checkFalls(hour, around.weather());
            }
        }
        return new CollectorForcing(around, array, parts, curves, irradiance, outside);
    }

    /** The weather it was prepared in. */
    public HourlyWeather weather() {
        return around.weather();
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

    /** The parts of an array: one, or for racks in rows the first row and the rest, for tents of both sides. */
    static List<Part> parts(CollectorSurroundings around, CollectorArray array) {
        return parts(around, array, Skylines.of(around.roof().horizon()));
    }

    private static List<Part> parts(CollectorSurroundings around, CollectorArray array, Skylines skylines) {
        double roughness = array.model()
                .match(
                        Absorber::roughnessFactor,
                        certificate -> CertificateBalance.ROUGHNESS,
                        curve -> CertificateBalance.ROUGHNESS);
        Exposures exposures = new Exposures(around, array.model().incidence(), roughness, skylines);
        Function<Exposure, HourlyHeat> collector = exposure -> heat(around, array, exposure);
        return array.mounting()
                .match(
                        flat -> List.of(new Part(1, exposures.flat(flat))),
                        racks -> sides(racks, exposures, collector),
                        pitched -> List.of(new Part(1, exposures.pitched(pitched))));
    }

    private static List<Part> sides(
            Mounting.OpenRack racks, Exposures exposures, Function<Exposure, HourlyHeat> collector) {
        List<Mounting.OpenRack> sides = racks.layout().tents() ? List.of(racks, racks.fromOtherSide()) : List.of(racks);
        double single = 1.0 / (sides.size() * racks.rows());
        List<Part> parts = new ArrayList<>();
        for (Mounting.OpenRack side : sides) {
            parts.add(new Part(single, exposures.rack(side, RowPlace.FIRST, collector)));
            if (racks.rows() > 1) {
                parts.add(new Part(1.0 / sides.size() - single, exposures.rack(side, RowPlace.INTERIOR, collector)));
            }
        }
        return parts;
    }

    static HourlyHeat heat(CollectorSurroundings around, CollectorArray array, Exposure exposure) {
        double flow = array.flowKgSM2();
        return array.model()
                .match(
                        absorber -> new PlateBalance(exposure, absorber, around.air(), flow),
                        certificate -> new CertificateBalance(exposure, certificate, around.air(), flow),
                        curve -> new MeasuredBalance(
                                curve, exposure, around.air(), around.windMs(exposure.aboveRoofM, exposure.windShare)));
    }
}
