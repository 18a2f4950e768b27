/**
 * The collectors' circuit: its pipes, and the control that starts and stops its pump.
 *
 * <p>{@link dev.warmlane.circuit.Control} holds the differences that start and stop the pump, the pool temperature at which
 * the collectors stop giving heat, the hours of pumping and, if asked for, cooling by night. When a circuit hunts follows
 * Duffie and Beckman, section 10.4 (from memory); the usual differences are common practice without a source.
 * {@link dev.warmlane.circuit.Pipes} is what supply and return lose to the air, and the pump's power.
 *
 * <p>What they make of an hour is in {@code season}. Start reading at {@code Control}.
 */
@NullMarked
package dev.warmlane.circuit;

import org.jspecify.annotations.NullMarked;
