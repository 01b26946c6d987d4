/**
 * Draws a {@link io.github.heatswell.charts.picture.Picture}. Only this package uses the drawing libraries, and none of
 * their types leave it.
 *
 * <p>JFreeChart draws scales, grids, curves and levels; labels, marks and bars are drawn over them by the classes here,
 * which map data to the sheet ({@code Frame}) and find free space ({@code Spread}, {@code FreeSpots}).
 */
package io.github.heatswell.charts.drawing;
