package dev.warmlane.weather;

import java.util.function.DoublePredicate;

/**
 * Where a column of weather stands in a comma separated row.
 *
 * @param column what it is
 * @param index its place, from 0
 * @param name what the file calls it
 * @param scale what the file's number is multiplied by
 * @param missing whether a number of the file stands for a missing value
 */
record CsvField(WeatherColumn column, int index, String name, double scale, DoublePredicate missing) {}
