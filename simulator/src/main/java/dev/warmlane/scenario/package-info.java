/** One TOML file to and from an installation, with everything that was found wrong in it and everything assumed. */
@NullMarked
package dev.warmlane.scenario;

import org.jspecify.annotations.NullMarked;
