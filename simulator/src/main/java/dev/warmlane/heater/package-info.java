/**
 * What burns to keep a pool warm: the heater and its fuel.
 *
 * <p>A {@link dev.warmlane.heater.GasHeater} gives heat to the water up to its capacity, as long as the pool is below its set
 * point in the open season; the loop in {@code season} runs it. A {@link dev.warmlane.heater.Fuel} turns heat of higher
 * heating value into what is sold and into carbon dioxide: natural gas by the Energy Information Administration and the
 * Environmental Protection Agency of the United States, propane by 40 CFR 98. The usual efficiency is the United States
 * minimum of 2013.
 *
 * <p>Start reading at {@code GasHeater}.
 */
@NullMarked
package dev.warmlane.heater;

import org.jspecify.annotations.NullMarked;
