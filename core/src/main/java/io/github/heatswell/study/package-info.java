/**
 * Studies of uncertain numbers: how what is known only within limits spreads into the answers.
 *
 * <p>An {@link io.github.heatswell.study.UncertainInput} has a {@link io.github.heatswell.study.Distribution}.
 */
package io.github.heatswell.study;
