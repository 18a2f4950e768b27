/**
 * Wind from the station to the roof and to the water.
 *
 * <p>{@link dev.warmlane.wind.WindProfile} carries the station's wind, at 10 m over open ground, to a height in another
 * terrain by the power law of the ASHRAE Handbook of Fundamentals (from memory). {@link dev.warmlane.wind.RoofRun} is the
 * run over a rectangular roof that yields its mean film coefficient over all places and directions (derived).
 * {@link dev.warmlane.wind.PoolShelter} has usual factors from the station to 0.3 m above the water, after ISO/TR
 * 12596:1995 (from memory) and the logarithmic profile; they hold the terrain already and are never joined with the
 * profile.
 *
 * <p>The wind at the water is the largest uncertainty of an outdoor pool, so start reading at {@code PoolShelter}.
 */
@NullMarked
package dev.warmlane.wind;

import org.jspecify.annotations.NullMarked;
