/**
 * What is handed over, before anybody has decided how it looks. {@link dev.warmlane.report.ForecastReport},
 * {@link dev.warmlane.report.MountingReport}, {@link dev.warmlane.report.AreaReport},
 * {@link dev.warmlane.report.SensitivityReport} and {@link dev.warmlane.report.WeatherReport} turn results into a
 * {@link dev.warmlane.report.Report}: sections of words, points, large numbers, tables and pictures. They are the only
 * places with sentences for people; {@link dev.warmlane.report.write} makes text, page and files of any of them.
 */
@NullMarked
package dev.warmlane.report;

import org.jspecify.annotations.NullMarked;
