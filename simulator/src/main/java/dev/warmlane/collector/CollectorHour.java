package dev.warmlane.collector;

/**
 * What a mounted collector meets in an hour, for a curve of one's own. Of racks in rows the first row and the others each
 * have their own.
 *
 * @param irradianceWm2 light on the front in the collector's plane, shade of rows taken off, W/m²
 * @param modifiedWm2 the same after incidence, {@link CollectorModel#incidence}, with what an open back takes, W/m²
 * @param longWaveWm2 long-wave that arrives at the front from sky, roof and neighbours, W/m²
 * @param airC temperature of the air, °C
 * @param windMs wind at the collector: at the roof for one that lies on it, at the middle of its slope for a rack, m/s
 */
public record CollectorHour(double irradianceWm2, double modifiedWm2, double longWaveWm2, double airC, double windMs) {}
