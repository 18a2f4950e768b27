/** Wind from the station to the roof and to the water. */
@NullMarked
package dev.warmlane.wind;

import org.jspecify.annotations.NullMarked;
