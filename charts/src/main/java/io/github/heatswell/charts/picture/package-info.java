/**
 * The contents of a picture, independent of any drawing library: numbers in the units of its axes, and text.
 *
 * <p>A {@link io.github.heatswell.charts.picture.Picture} is composed from results and handed to the drawing. Its
 * contents can be tested as values; only the drawing decides how it looks. These types are internal and may change;
 * callers use {@link io.github.heatswell.charts.Chart}.
 */
package io.github.heatswell.charts.picture;
