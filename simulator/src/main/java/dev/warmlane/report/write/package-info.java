/**
 * Reports as text, page, csv and picture files. What is here knows blocks and tables, and nothing of pools: a new section
 * of a report needs no change.
 */
@NullMarked
package dev.warmlane.report.write;

import org.jspecify.annotations.NullMarked;
