/** Studies: many seasons side by side over shared forcing. */
@NullMarked
package dev.warmlane.study;

import org.jspecify.annotations.NullMarked;
