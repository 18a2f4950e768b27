/** Irradiance on a plane: transposition, incidence, rows shading each other, the roof strips below them. */
@NullMarked
package dev.warmlane.irradiance;

import org.jspecify.annotations.NullMarked;
