/**
 * The program {@code heatswell}: reads scenario files, simulates them, and writes reports, tables and charts.
 *
 * <p>Programs that want the same without a command line start at
 * {@link io.github.heatswell.scenarios.file.ScenarioReader} and
 * {@link io.github.heatswell.scenarios.catalogue.Catalogue}.
 */
package io.github.heatswell.scenarios;
