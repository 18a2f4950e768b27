/**
 * What keeps a pool warm beside the collectors, and what is bought for it.
 *
 * <p>A {@link dev.warmlane.heater.Heater} gives heat to the water up to its capacity, as long as the pool is below its set
 * point and the hour is one of its own; the loop in {@code season} runs it. It is one of five kinds: a boiler of constant
 * efficiency, a condensing boiler whose efficiency falls with the pool's temperature, electric resistance, a heat pump that
 * reaches a share of what Carnot allows, a station of a heat network. A {@link dev.warmlane.heater.Fuel} turns the energy
 * that is bought into the units it is sold in and into carbon dioxide: natural gas by the Energy Information Administration
 * and the Environmental Protection Agency of the United States, propane and oil by 40 CFR 98; the carbon of electricity and
 * of a heat network is the user's to give.
 *
 * <p>Start reading at {@code Heater}.
 */
@NullMarked
package dev.warmlane.heater;

import org.jspecify.annotations.NullMarked;
