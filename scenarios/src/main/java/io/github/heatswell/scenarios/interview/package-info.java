/**
 * The interview: plain questions about a house, one at a time, whose answers become a scenario file. What a file may
 * say is decided by {@code file}; this package only asks, and shows every answer to the reader of files before it takes
 * it.
 */
package io.github.heatswell.scenarios.interview;
