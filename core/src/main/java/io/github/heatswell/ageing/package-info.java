/**
 * How a house with an expansion vessel ages: it loses precharge, the seasons change, and some day the relief valve
 * drips again. {@link io.github.heatswell.ageing.Outlook} is where to begin.
 */
package io.github.heatswell.ageing;
