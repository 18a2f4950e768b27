/**
 * Unglazed collectors: how they are mounted, what they are, and the heat they give in every hour.
 *
 * <p>Two sealed kinds meet here. A {@link dev.warmlane.collector.Mounting} is flat on a roof, racks in rows, or flush on a
 * pitched roof; a {@link dev.warmlane.collector.CollectorModel} is an {@link dev.warmlane.collector.Absorber} known by its
 * build, or a {@link dev.warmlane.collector.CertificateCurve} of ISO 9806. From both comes
 * {@link dev.warmlane.collector.CollectorForcing}, in this order:
 *
 * <ol>
 *   <li>{@link dev.warmlane.collector.CollectorSurroundings}: roof, wind at a height, films of faces;
 *   <li>{@code Exposures}: what the two faces of a mounting see and what the wind has run over, with the roof below racks
 *       ({@code RoofUnderRacks}) and what closes a back ({@code ClosedBack});
 *   <li>{@code PlateBalance} (Duffie and Beckman, chapter 6) or {@code CertificateBalance}: heat at an inlet temperature,
 *       solved directly;
 *   <li>{@link dev.warmlane.collector.HeatCurves}: a curve through these solutions every five kelvin, so that the hourly
 *       loop solves nothing.
 * </ol>
 *
 * <p>All of it is per m² of collector, for the whole year, and stands for any area. The usual mat is from memory and of low
 * certainty. Start reading at {@code Mounting} and {@code CollectorForcing}.
 */
@NullMarked
package dev.warmlane.collector;

import org.jspecify.annotations.NullMarked;
