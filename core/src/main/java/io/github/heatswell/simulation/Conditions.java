package io.github.heatswell.simulation;

import io.github.heatswell.system.Draw;

/**
 * What the world outside imposes during one segment: how mains pressure and cold temperature change, whether the supply
 * is open, and the draw that is running.
 *
 * @param until when something of it changes (s since the start of the run)
 * @param mainsRate how fast the mains pressure changes (Pa/s)
 * @param coldRate how fast the cold temperature changes (K/s)
 * @param supplyOpen whether the supply is open
 * @param draw the running draw, or null
 */
record Conditions(double until, double mainsRate, double coldRate, boolean supplyOpen, Draw draw) {}
