/** The season: what is built, the hourly loop, the ledger of every flow, and its summaries. */
@NullMarked
package dev.warmlane.season;

import org.jspecify.annotations.NullMarked;
