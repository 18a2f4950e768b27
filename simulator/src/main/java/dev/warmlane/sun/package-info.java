/** The sun's position through the year, and nothing else. */
@NullMarked
package dev.warmlane.sun;

import org.jspecify.annotations.NullMarked;
