/**
 * Moist air, water, the long-wave of the sky and film coefficients: pure functions of published equations.
 *
 * <p>Each method says in one sentence what it gives, with formula, units, valid range, what happens outside it, and the
 * source; "from memory" where that was recalled and not read again.
 *
 * <ul>
 *   <li>{@link dev.warmlane.physics.MoistAir}: saturation pressure and dew point, IAPWS-IF97;
 *   <li>{@link dev.warmlane.physics.Water}: Popiel and Wojtkowiak 1998;
 *   <li>{@link dev.warmlane.physics.Air}: air in a film, U.S. Standard Atmosphere 1976;
 *   <li>{@link dev.warmlane.physics.SkyLongWave}: Berdahl and Martin 1984, where a weather file brings no long-wave;
 *   <li>{@link dev.warmlane.physics.Film}: forced flow after Incropera and DeWitt, natural flow after Churchill and Chu 1975,
 *       Lloyd and Moran 1974 and McAdams 1954, joined by Clear, Gartland and Winkelmann 2003 on a roof and by Churchill
 *       1977 in the open. {@link dev.warmlane.physics.NaturalFace} is its natural part split for the hourly loop, and
 *       {@link dev.warmlane.physics.FilmCorrelation} the choice between it and published fits of the wind alone.
 * </ul>
 *
 * <p>The film decides the comparison of mountings, and one set of equations serves them all: start reading at
 * {@code Film}.
 */
@NullMarked
package dev.warmlane.physics;

import org.jspecify.annotations.NullMarked;
