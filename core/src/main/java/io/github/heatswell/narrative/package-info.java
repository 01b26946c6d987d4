/**
 * What happened in a run, why, what it means and what to do, in sentences: the same for screen, page, picture, lesson and
 * program. Sentences are values until a {@link io.github.heatswell.units.QuantityFormat} writes their quantities; nothing
 * here knows a layout, a file or a thread.
 */
package io.github.heatswell.narrative;
