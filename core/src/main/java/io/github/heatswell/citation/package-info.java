/**
 * Where numbers, formulas and rules come from, and how far that was checked.
 */
package io.github.heatswell.citation;
