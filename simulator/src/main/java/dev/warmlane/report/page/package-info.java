/** Forecast and studies as pages to hand over, each with all its files together. */
@NullMarked
package dev.warmlane.report.page;

import org.jspecify.annotations.NullMarked;
