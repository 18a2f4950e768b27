package dev.warmlane.validation;

import dev.warmlane.collector.CollectorMoment;
import dev.warmlane.collector.HeatAtMoment;
import dev.warmlane.collector.PlaneLight;
import dev.warmlane.collector.WarmingCollector;
import dev.warmlane.physics.Constants;
import dev.warmlane.physics.MoistAir;
import dev.warmlane.physics.SkyLongWave;
import java.io.IOException;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * A day of an unglazed photovoltaic-thermal collector outdoors, every two minutes: the insulated collector of Jonas et al. 2019,
 * Solar Energy 193:51-64, from the folder of measured data. What its owner did not measure, the long-wave, is estimated here.
 */
final class CollectorDay {

    static final double APERTURE_M2 = 1.66;
    static final double TILT_DEG = 45;

    /** Rows are two minutes apart; their stamps are printed to hundreds of seconds. */
    static final double STEP_S = 120;

    /** A step in the stamps that no rounding makes: rows are missing, s. */
    private static final double GAP_S = 350;

    /** Direct normal irradiance of sunshine: WMO, Guide to Instruments and Methods of Observation, from memory, W/m². */
    private static final double SUNSHINE_WM2 = 120;

    /** Farther from the normal than this the diffuse column takes in the beam, by its own behaviour, degrees. */
    private static final double DIFFUSE_GOOD_DEG = 50;

    private final Table table;
    private final double cloud;

    private CollectorDay(Table table) {
        this.table = table;
        this.cloud = 1 - sunshine();
    }

    static CollectorDay read(int number) throws IOException {
        return new CollectorDay(Table.read("collector-day-" + number + ".csv"));
    }

    int rows() {
        return table.rows();
    }

    /** Share of the sky that is taken as cloudy: what of the day is no sunshine. */
    double cloud() {
        return cloud;
    }

    double windMs(int row) {
        return table.at("wind_ms", row);
    }

    double globalWm2(int row) {
        return table.at("global_plane_wm2", row);
    }

    double flowKgSM2(int row) {
        return table.at("flow_kg_s", row) / APERTURE_M2;
    }

    double meanWaterC(int row) {
        return table.at("mean_fluid_degc_inferred", row);
    }

    double airC(int row) {
        return table.at("air_degc", row);
    }

    /** Heat as it was measured, W/m² of aperture. */
    double[] heatWm2() {
        return IntStream.range(0, rows())
                .mapToDouble(row -> table.at("heat_w", row) / APERTURE_M2)
                .toArray();
    }

    /** Electricity drawn over light on the plane, of the day. */
    double electricShare() {
        return sum(row -> table.at("electric_w_inferred", row)) / (APERTURE_M2 * sum(this::globalWm2));
    }

    double energyMjM2() {
        return sum(row -> heatWm2()[row]) * STEP_S / 1e6;
    }

    /** What the collector met in a row. */
    CollectorMoment moment(int row) {
        return moment(row, Moved.NOTHING);
    }

    /** The same with its inputs moved. */
    CollectorMoment moment(int row, Moved moved) {
        double global = Math.max(0, globalWm2(row));
        double diffuse = Math.min(global, Math.max(0, table.at("diffuse_plane_wm2", row)));
        PlaneLight light = new PlaneLight(
                (global - diffuse) * moved.light,
                diffuse * moved.light,
                table.at("incidence_deg_inferred", row),
                TILT_DEG);
        double air = airC(row) + moved.airK;
        return new CollectorMoment(
                light, longWaveWm2(row) + moved.longWaveWm2, air, Math.max(0, windMs(row) + moved.windMs));
    }

    /** Sky by Berdahl and Martin with the day's cloud; the ground as black and as warm as the air. */
    private double longWaveWm2(int row) {
        double air = airC(row);
        double dew =
                MoistAir.dewPointC(table.at("relative_humidity_pct", row) / 100 * MoistAir.saturationPressureKpa(air));
        double sky = SkyLongWave.allSkyIrradianceWm2(air, SkyLongWave.clearSkyEmissivity(dew), cloud);
        double seen = (1 + Math.cos(Math.toRadians(TILT_DEG))) / 2;
        return seen * sky + (1 - seen) * Constants.blackBody(air);
    }

    /** Heat of a collector without capacity at the measured mean temperature of every row, W/m². */
    double[] steady(HeatAtMoment collector) {
        return IntStream.range(0, rows())
                .mapToDouble(row -> collector.heatAtMeanWm2(moment(row), meanWaterC(row)))
                .toArray();
    }

    /** Heat of a collector that holds heat, from inlet and flow alone; it begins, also after a gap, as warm as measured. */
    double[] warming(HeatAtMoment collector, double capacityJM2K, Moved moved) {
        double[] heat = new double[rows()];
        WarmingCollector warming = new WarmingCollector(collector, capacityJM2K, meanWaterC(0));
        for (int row = 0; row < rows(); row++) {
            if (row > 0 && table.at("second_of_year", row) - table.at("second_of_year", row - 1) > GAP_S) {
                warming = new WarmingCollector(collector, capacityJM2K, meanWaterC(row));
            }
            heat[row] = warming.step(moment(row, moved), table.at("inlet_degc", row), flowKgSM2(row), STEP_S);
        }
        return heat;
    }

    /** Share of the day with the sun well in front of the collector in which it shone. */
    private double sunshine() {
        int[] told = IntStream.range(0, rows())
                .filter(row -> table.at("incidence_deg_inferred", row) < DIFFUSE_GOOD_DEG)
                .toArray();
        return IntStream.of(told)
                .mapToDouble(row -> (globalWm2(row) - table.at("diffuse_plane_wm2", row))
                                        / Math.cos(Math.toRadians(table.at("incidence_deg_inferred", row)))
                                > SUNSHINE_WM2
                        ? 1
                        : 0)
                .average()
                .orElseThrow();
    }

    private double sum(ToDoubleFunction<Integer> of) {
        return IntStream.range(0, rows()).mapToDouble(of::applyAsDouble).sum();
    }

    /**
     * Inputs moved by what they are uncertain by.
     *
     * @param light factor on all light
     * @param longWaveWm2 added to the long-wave on the front, W/m²
     * @param airK added to the air's temperature, K
     * @param windMs added to the wind, m/s
     */
    record Moved(double light, double longWaveWm2, double airK, double windMs) {
        static final Moved NOTHING = new Moved(1, 0, 0, 0);
    }
}
