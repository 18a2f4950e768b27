/** Unglazed collectors: mounting, absorber or certificate curve, and the heat they give in every hour. */
@NullMarked
package dev.warmlane.collector;

import org.jspecify.annotations.NullMarked;
