/** What is connected: gas heater, fuel, pump, pipes, differential control, opening season and hours. */
@NullMarked
package dev.warmlane.plant;

import org.jspecify.annotations.NullMarked;
