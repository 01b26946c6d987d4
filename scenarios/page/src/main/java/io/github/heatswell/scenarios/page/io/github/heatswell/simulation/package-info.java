/** What takes the place of classes of core in script. */
package io.github.heatswell.scenarios.page.io.github.heatswell.simulation;
