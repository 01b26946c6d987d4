/**
 * What the years will do to the house of a scenario: puts its numbers, their uncertainty and its prices to the
 * simulation of {@code io.github.heatswell.ageing}.
 */
package io.github.heatswell.scenarios.outlook;
