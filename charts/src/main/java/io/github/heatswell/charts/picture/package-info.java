/**
 * What a picture shows, said without any drawing library: numbers in the units of its axes, and words.
 *
 * <p>A {@link io.github.heatswell.charts.picture.Picture} is composed from results and handed to the drawing. What it
 * holds can be tested as values; how it looks is the business of the drawing alone. These types are the inner joint of
 * this library and may change; callers use {@link io.github.heatswell.charts.Chart}.
 */
package io.github.heatswell.charts.picture;
