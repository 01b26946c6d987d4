/**
 * When hot water is drawn: a {@link io.github.heatswell.draw.Draw}, the {@link io.github.heatswell.draw.DrawProfile} of a
 * day, and the {@link io.github.heatswell.draw.StandardProfiles published profiles} of the European and the United States
 * regulations.
 *
 * <p>A profile says what people do at the taps. How much of it comes out of the tank depends on how hot the tank is, and is
 * found by the simulation.
 */
package io.github.heatswell.draw;
