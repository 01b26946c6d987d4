/**
 * Where a house is, the rules there as far as they were read, and what is usual there.
 */
package io.github.heatswell.place;
