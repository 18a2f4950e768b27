/** A typical year of weather: reading it, checking it, generating it. */
@NullMarked
package dev.warmlane.weather;

import org.jspecify.annotations.NullMarked;
