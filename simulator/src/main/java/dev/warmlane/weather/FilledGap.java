package dev.warmlane.weather;

import java.time.LocalDateTime;

/**
 * Hours of a record that had no value in a column, and were filled.
 *
 * @param what the column, in words
 * @param from when the first of them begins, local standard time
 * @param hours how many, one after another
 */
public record FilledGap(String what, LocalDateTime from, int hours) {}
