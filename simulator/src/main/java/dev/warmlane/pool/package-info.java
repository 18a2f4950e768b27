/** The pool: its heat flows at a water temperature. */
@NullMarked
package dev.warmlane.pool;

import org.jspecify.annotations.NullMarked;
