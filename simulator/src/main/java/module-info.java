/**
 * Simulates, hour by hour over a typical weather year, unglazed solar collectors that heat a swimming pool.
 *
 * <p>Data flows one way through the packages: {@link dev.warmlane.weather a weather file} becomes a year, the year and
 * {@link dev.warmlane.season.Installation what is built} become forcing, forcing becomes
 * {@link dev.warmlane.season a season}, seasons become {@link dev.warmlane.study studies} and
 * {@link dev.warmlane.report reports}. {@link dev.warmlane.scenario A scenario file} describes a whole job.
 *
 * <p>Which of the exported packages are promised to stay as they are, and which may change with any version, stands in
 * DEVELOPERS.md; hydraulics, irradiance, physics, sun, the drawn roof, files and charts may.
 */
module dev.warmlane {
    requires static transitive org.jspecify;
    requires java.desktop;
    requires com.fasterxml.jackson.core;
    requires com.samskivert.jmustache;
    requires commons.math3;
    requires net.e175.klaus.solarpositioning;
    requires org.apache.commons.rng.api;
    requires org.apache.commons.rng.sampling;
    requires org.locationtech.jts;
    requires org.tomlj;
    requires univocity.parsers;
    requires VectorGraphics2D;
    requires xchart;

    exports dev.warmlane.circuit;
    exports dev.warmlane.collector;
    exports dev.warmlane.files;
    exports dev.warmlane.fit;
    exports dev.warmlane.heater;
    exports dev.warmlane.hydraulics;
    exports dev.warmlane.irradiance;
    exports dev.warmlane.money;
    exports dev.warmlane.physics;
    exports dev.warmlane.pool;
    exports dev.warmlane.report;
    exports dev.warmlane.report.chart;
    exports dev.warmlane.report.write;
    exports dev.warmlane.roof;
    exports dev.warmlane.scenario;
    exports dev.warmlane.season;
    exports dev.warmlane.site;
    exports dev.warmlane.study;
    exports dev.warmlane.sun;
    exports dev.warmlane.units;
    exports dev.warmlane.weather;
    exports dev.warmlane.weather.generate;
    exports dev.warmlane.wind;
}
