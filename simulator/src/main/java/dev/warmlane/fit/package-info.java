/**
 * What the logs beside a pool say about it: {@link dev.warmlane.fit.PoolFit} holds a season of logged water temperatures
 * against the model in the weather of the same hours and finds what nobody knows from a drawing, with its interval.
 *
 * <p>Unknown are, of every pool, the wind at the water, the share of the sun that warms it, and how much more or less
 * long-wave its sky sent than the weather says; of a pool with bills the efficiency of its heater, with a meter the water
 * that is replaced; and of the log its clock and the water that it began with. Evaporation's correlation and the ground
 * stay as described: they cannot be told apart from the wind, and the wind found holds whatever is wrong with either.
 *
 * <p>What model and log disagree in is an Ornstein-Uhlenbeck process, errors that fade over a time that is found with
 * them, and noise of the reading. Prior and likelihood make a posterior: its mode by least squares of whitened residuals,
 * the priors among them, its width there by Laplace's method, and all of it again by a Metropolis chain on a fixed seed
 * (Gelman and others, Bayesian Data Analysis, from memory). A {@link dev.warmlane.fit.WaterBand} carries it to other
 * hours, of other seasons too.
 */
@NullMarked
package dev.warmlane.fit;

import org.jspecify.annotations.NullMarked;
