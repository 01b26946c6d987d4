/**
 * Makes a {@link io.github.heatswell.charts.picture.Picture} visible. The drawing libraries are known here and nowhere
 * else, and none of their types leaves.
 *
 * <p>JFreeChart draws scales, grids, curves and levels; words, marks and bars are laid over them by the classes here, which
 * know where the data lie ({@code Frame}) and look for room that is still free ({@code Spread}, {@code FreeSpots}).
 */
package io.github.heatswell.charts.drawing;
