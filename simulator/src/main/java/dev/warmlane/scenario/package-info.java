/**
 * One TOML file to and from an installation, with everything that was found wrong in it and everything assumed.
 *
 * <p>{@link dev.warmlane.scenario.ScenarioReader} reads a file and {@link dev.warmlane.scenario.ScenarioWriter} writes one
 * that reads back to the same bits. The schema is declared, section by section, in the {@code *Keys} classes: a key has a
 * name, a kind, a meaning and, where there is one, a usual value with where that comes from. What a number may be is not
 * said there but by the {@link dev.warmlane.units.Range} of the record it ends in. {@code docs/scenario.md} is made from
 * the schema.
 *
 * <p>The file is read to a tree that knows lines, and the schema is walked over it, collecting every
 * {@link dev.warmlane.scenario.Finding}: unknown and missing keys, wrong units, values out of range, keys that exclude each
 * other. All are told at once; what is left open becomes an {@link dev.warmlane.scenario.Assumption}. No value is repaired
 * in silence. Start reading at {@code ScenarioAssembly} and {@code Section}.
 */
@NullMarked
package dev.warmlane.scenario;

import org.jspecify.annotations.NullMarked;
