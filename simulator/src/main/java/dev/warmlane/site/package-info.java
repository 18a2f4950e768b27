/** The place: position and standard time, the hours of its year, its terrain and its roof. */
@NullMarked
package dev.warmlane.site;

import org.jspecify.annotations.NullMarked;
