/** What is handed over: tables as text and csv, and the forecast in words. Nothing else of the library draws. */
@NullMarked
package dev.warmlane.report;

import org.jspecify.annotations.NullMarked;
