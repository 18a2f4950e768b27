/** The command, and short programs that use the library. */
@NullMarked
package dev.warmlane.examples;

import org.jspecify.annotations.NullMarked;
