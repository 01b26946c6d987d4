/** Substitutes in script for classes of core. */
package io.github.heatswell.scenarios.page.io.github.heatswell.simulation;
