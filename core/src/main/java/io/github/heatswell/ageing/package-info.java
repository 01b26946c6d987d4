/**
 * How a house with an expansion vessel ages: it loses precharge, the seasons change, and one day the relief valve
 * drips again. Start at {@link io.github.heatswell.ageing.Outlook}.
 */
package io.github.heatswell.ageing;
