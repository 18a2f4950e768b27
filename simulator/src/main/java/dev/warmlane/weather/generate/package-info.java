/**
 * A typical year from twelve monthly normals, for sites that have normals but no weather file.
 *
 * <p>{@link dev.warmlane.weather.generate.TypicalYearGenerator} makes the year, in this order:
 *
 * <ul>
 *   <li>daily clearness from the distribution of Hollands and Huget (1983), in the order of a first-order autoregressive
 *       series (Graham, Hollands and Huget 1988);
 *   <li>hourly clearness by the time-dependent autoregressive Gaussian model of Aguiar and Collares-Pereira (1992);
 *   <li>diffuse by Erbs, Klein and Duffie (1982), beam by closure with the sun path;
 *   <li>air temperature from the daily profile of Erbs, Klein and Beckman (1983) and the hourly persistence of Knight,
 *       Klein and Duffie (1991), dew point coupled to it;
 *   <li>wind by a Weibull distribution (Justus and others 1978) with daily rhythm and persistence.
 * </ul>
 *
 * <p>Each month's means are met exactly, by solving for a parameter or by rescaling; each class says how.
 */
@NullMarked
package dev.warmlane.weather.generate;

import org.jspecify.annotations.NullMarked;
