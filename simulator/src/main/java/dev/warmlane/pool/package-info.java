/**
 * The pool: basin, cover, bathers, water from the mains, and its heat flows at a water temperature.
 *
 * <p>One well-mixed basin, per m² of water, every flow positive into the water.
 * {@link dev.warmlane.pool.PoolForcing} prepares for each hour what does not depend on the water's temperature, and fills
 * {@link dev.warmlane.pool.PoolFlows} at one that does:
 *
 * <ul>
 *   <li>evaporation by {@link dev.warmlane.pool.Evaporation}: Smith, Löf and Jones 1994, ISO/TR 12596:1995 or ASHRAE after
 *       Carrier 1918, raised by swimmers ({@link dev.warmlane.pool.Bathers}); convection from it by Bowen's ratio;
 *   <li>heat to the ground by {@link dev.warmlane.pool.GroundLoss}, the basement form of ISO 13370, with the ground's yearly
 *       swing;
 *   <li>make-up water from the mains, by the rule of Burch and Christensen 2007 where its temperature is not given.
 * </ul>
 *
 * <p>When the pool is open, {@link dev.warmlane.pool.OpeningSeason}, and how warm it starts,
 * {@link dev.warmlane.pool.StartWater}, stand here too. Start reading at {@code PoolForcing}.
 */
@NullMarked
package dev.warmlane.pool;

import org.jspecify.annotations.NullMarked;
