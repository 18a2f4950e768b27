/**
 * Numbers with their units, what an input may be, and every conversion of the library.
 *
 * <p>Inside, numbers are SI, save that temperatures are in °C, angles in degrees and pressures in kPa. What comes from
 * people or goes to them passes through here:
 *
 * <ul>
 *   <li>{@link dev.warmlane.units.Dimension} has the kinds of quantity and the units that each may be written in;
 *   <li>{@link dev.warmlane.units.Quantity} reads a text such as "8000 ft2", and says what is wrong with one that is none;
 *   <li>{@link dev.warmlane.units.Range} is what an input may be, its ends and its unit. It stands as a constant beside the
 *       value that it bounds, and the scenario's key refers to it, so that the numbers are written once;
 *   <li>{@link dev.warmlane.units.Units} has the factors, for results.
 * </ul>
 *
 * <p>Factors are exact by definition, after NIST Special Publication 811 (2008), appendix B; the Btu is that of the
 * International Table and a therm is 100,000 of them. Start reading at {@code Range}.
 */
@NullMarked
package dev.warmlane.units;

import org.jspecify.annotations.NullMarked;
