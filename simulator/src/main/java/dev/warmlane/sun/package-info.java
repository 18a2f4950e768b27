/**
 * The sun's position through the year, and nothing else.
 *
 * <p>{@link dev.warmlane.sun.SunPath} gives each hour of a weather year the one position that belongs to its irradiance: the
 * middle of the hour, or of the part of it in which the sun is up. It is made once for a weather file and serves every
 * plane. Positions, also those for the scan for the right time of a file, are of {@link dev.warmlane.sun.SunClock}: Reda and
 * Andreas 2004 (NREL/TP-560-34302), with refraction, from an open library. The irradiance outside the atmosphere is
 * 1361 W/m² (Kopp and Lean 2011) times the series of Spencer 1971, both from memory.
 *
 * <p>{@link dev.warmlane.sun.SolarDay} is the sun by solar time, for laying out rows, by Spencer's declination. Start
 * reading at {@code SunPath}.
 */
@NullMarked
package dev.warmlane.sun;

import org.jspecify.annotations.NullMarked;
