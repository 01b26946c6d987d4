/**
 * What happened in a run, why, what it means and what to do, in sentences: the same for screen, page, picture, lesson and
 * program. Quantities are written by a {@link io.github.heatswell.units.QuantityFormat}; nothing here knows a layout.
 */
package io.github.heatswell.narrative;
