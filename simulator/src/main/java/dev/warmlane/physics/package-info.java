/** Moist air, water, sky long-wave and film coefficients: pure functions of published equations. */
@NullMarked
package dev.warmlane.physics;

import org.jspecify.annotations.NullMarked;
