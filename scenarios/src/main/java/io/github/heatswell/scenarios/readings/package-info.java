/**
 * Readings from files: the log of a pressure logger as delimited text ({@link
 * io.github.heatswell.scenarios.readings.LogReader}), and readings on site, written like a scenario file ({@link
 * io.github.heatswell.scenarios.readings.SpotReader}).
 */
package io.github.heatswell.scenarios.readings;
