package io.github.heatswell.diagnosis;

import io.github.heatswell.result.Regime;
import java.util.Map;

/**
 * What a house would have let us read.
 *
 * @param gauge the gauge at the times of the log (Pa, gauge)
 * @param temperature the water at the top of the tank at these times (K)
 * @param regimes what fixed the pressure at these times
 * @param firstBurn how long the heater was on at first (s), NaN if it was not or did not go off
 * @param spots the readings on site that were asked for
 */
record Forecast(
        double[] gauge, double[] temperature, Regime[] regimes, double firstBurn, Map<SiteCheck, Double> spots) {}
