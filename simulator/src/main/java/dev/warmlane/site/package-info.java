/**
 * The place: position and standard time, the hours of its year, its terrain, its roof, and schedules.
 *
 * <p>No equations. Hour h of the year, 0 to 8759, is the interval that starts h hours after 1 January, 00:00, local
 * standard time and never daylight saving time; there is no 29 February: {@link dev.warmlane.site.HourOfYear}. A
 * {@link dev.warmlane.site.Schedule} is a share for each of these hours, made from rules of which the last that fits
 * counts. {@link dev.warmlane.site.Terrain} has the boundary layer parameters of the ASHRAE Handbook of Fundamentals, from
 * memory; the defaults of a {@link dev.warmlane.site.Roof} say at its builder where they come from, mostly common
 * practice.
 *
 * <p>Start reading at {@code HourOfYear}.
 */
@NullMarked
package dev.warmlane.site;

import org.jspecify.annotations.NullMarked;
