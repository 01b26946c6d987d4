/**
 * The command line. Commands read their scenarios, hand them to the simulation and print the report; what a scenario is
 * and how results look is decided elsewhere.
 */
package io.github.heatswell.scenarios.cli;
