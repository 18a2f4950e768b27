/**
 * The roof as it is drawn, and what fits on it.
 *
 * <p>A {@link dev.warmlane.roof.Surface} has an {@link dev.warmlane.roof.Outline} in its own plane, and
 * {@link dev.warmlane.roof.Obstacle obstacles}. {@link dev.warmlane.roof.PanelRules} say how panels are made and put
 * together to {@link dev.warmlane.roof.Bank banks}; {@link dev.warmlane.roof.RoofLayout} is the most that fits, or the
 * fewest banks for an area, whether mats lie or racks stand: {@link dev.warmlane.roof.Laying}. Several collectors on one
 * roof are a {@link dev.warmlane.roof.LaidRoof}. A drawing comes from a
 * scenario or from a file, {@link dev.warmlane.roof.RoofDrawing}.
 *
 * <p>Geometry alone: no equation of the model stands here, and the season is told only how much area there is, and in how
 * many rows. The distances that are assumed are common practice without a source; roof loads, edges, falls, ballast and
 * wind uplift are for licensed practice and local codes.
 *
 * <p>Start reading at {@code RoofLayout}.
 */
@NullMarked
package dev.warmlane.roof;

import org.jspecify.annotations.NullMarked;
