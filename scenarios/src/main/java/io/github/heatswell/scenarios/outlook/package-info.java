/**
 * What the years will do to the house of a scenario: its numbers, how well they are known and its prices, put to the
 * simulation of {@code io.github.heatswell.ageing}.
 */
package io.github.heatswell.scenarios.outlook;
