/**
 * What the years do to a house with an expansion vessel: its charge fades, the seasons come and go, and some day the relief
 * valve drips again. {@link io.github.heatswell.ageing.Outlook} is where to begin.
 */
package io.github.heatswell.ageing;
