package io.github.heatswell.simulation;

import io.github.heatswell.system.Draw;

/**
 * Boundary conditions of one segment: rates of mains pressure and cold temperature, whether the supply is open, and the
 * running draw.
 *
 * @param until when a condition changes (s since the start of the run)
 * @param mainsRate how fast the mains pressure changes (Pa/s)
 * @param coldRate how fast the cold temperature changes (K/s)
 * @param supplyOpen whether the supply is open
 * @param draw the running draw, or null
 */
record Conditions(double until, double mainsRate, double coldRate, boolean supplyOpen, Draw draw) {}
