/**
 * The scenarios that come with Heatswell. Each is a file like any other, with the question it answers and the outcome it
 * expects; houses and places are invented.
 */
package io.github.heatswell.scenarios.catalogue;
