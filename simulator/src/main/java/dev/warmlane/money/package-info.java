/**
 * Money as owners count it: what is paid today against what comes in over the years.
 *
 * <p>{@link dev.warmlane.money.Terms} are interest, growth of energy prices and years, all without inflation;
 * {@link dev.warmlane.money.Investment} is what is paid; {@link dev.warmlane.money.Worth} puts it beside what energy saves,
 * as present value, payback and the cost of a kWh. Pure functions of numbers
 * in one currency, after the life-cycle costing of NIST Handbook 135 and ISO 15686-5, both from memory.
 *
 * <p>Start reading at {@code Worth}.
 */
@NullMarked
package dev.warmlane.money;

import org.jspecify.annotations.NullMarked;
