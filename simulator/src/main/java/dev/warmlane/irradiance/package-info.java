/**
 * Short-wave light on planes: transposition, incidence, rows that shade each other, the strips of roof below them.
 *
 * <p>{@link dev.warmlane.irradiance.PlaneIrradiance} splits the light on a plane that nothing shades into beam, circumsolar
 * and background, by Perez and others 1990, or by Hay and Davies 1980 or an even sky as cross-checks
 * ({@link dev.warmlane.irradiance.SkyModel}). {@link dev.warmlane.irradiance.IncidenceModifier} says how much less of
 * slanting light a surface takes: matte black after Duffie and Beckman with the effective angles of Brandemuehl and
 * Beckman 1980, or as a certificate has it.
 *
 * <p>{@link dev.warmlane.irradiance.Rack} is one rack, and {@link dev.warmlane.irradiance.RackRows} the geometry of equal
 * rows of it, in two dimensions: shade by the profile angle, views by crossed strings. An array of N rows is one row
 * alone and N - 1 times an interior row. How warm the roof below is decides the comparison of mountings, so it is cut into
 * {@link dev.warmlane.irradiance.RoofStrips}, each with what it sees and what sees it; the method is derived in
 * {@code docs/model.md}.
 *
 * <p>Start reading at {@code PlaneIrradiance}, then {@code RackRows}.
 */
@NullMarked
package dev.warmlane.irradiance;

import org.jspecify.annotations.NullMarked;
