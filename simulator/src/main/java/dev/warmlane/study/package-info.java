/**
 * Many seasons side by side, run on all cores over shared forcing.
 *
 * <table>
 *   <caption>Which study answers what</caption>
 *   <tr><th>study</th><th>asks</th></tr>
 *   <tr><td>{@link dev.warmlane.study.MountingStudy}</td>
 *       <td>flat or tilted, with the same area and with the most that fits the roof</td></tr>
 *   <tr><td>{@link dev.warmlane.study.TurningPoints}</td>
 *       <td>at what wind, pool temperature, tilt that ranking turns</td></tr>
 *   <tr><td>{@link dev.warmlane.study.AreaStudy}</td><td>how much collector is worth it</td></tr>
 *   <tr><td>{@link dev.warmlane.study.ExposureStudy}</td><td>what more or less wind at pool and roof does</td></tr>
 *   <tr><td>{@link dev.warmlane.study.SensitivityStudy}</td><td>what each uncertain input does by itself</td></tr>
 *   <tr><td>{@link dev.warmlane.study.YearsStudy}</td><td>what real years would have done, the bad ones too</td></tr>
 * </table>
 *
 * <p>No physics of its own. A study is a list of installations: {@link dev.warmlane.study.SharedForcing} prepares each part
 * of their forcing once, {@link dev.warmlane.study.Runs} simulates them in any order and returns them in the order asked
 * for, with the same bits on any number of threads. How far an input is varied stands beside it with its source. Start
 * reading at {@code MountingStudy}.
 */
@NullMarked
package dev.warmlane.study;

import org.jspecify.annotations.NullMarked;
