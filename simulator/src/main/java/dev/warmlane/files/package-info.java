/** Files and text that come from outside or go there: bounded reading, printable words, sets written whole. */
@NullMarked
package dev.warmlane.files;

import org.jspecify.annotations.NullMarked;
