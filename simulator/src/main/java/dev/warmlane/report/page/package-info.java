/** The forecast as a page to hand over, and all its files together. */
@NullMarked
package dev.warmlane.report.page;

import org.jspecify.annotations.NullMarked;
