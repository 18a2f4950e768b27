/** Many seasons side by side: mountings, areas, exposure and sensitivity, run on all cores over shared forcing. */
@NullMarked
package dev.warmlane.study;

import org.jspecify.annotations.NullMarked;
