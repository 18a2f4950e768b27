/** Charts of a forecast, drawn without a screen as PNG for print and as SVG for the page. */
@NullMarked
package dev.warmlane.report.chart;

import org.jspecify.annotations.NullMarked;
