/** Conversions, and quantities written with their units. */
@NullMarked
package dev.warmlane.units;

import org.jspecify.annotations.NullMarked;
