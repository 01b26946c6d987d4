/**
 * The interview: plain questions about a house, one at a time, whose answers become a scenario file. Package
 * {@code file} decides what a file may say; this package only asks, and validates every answer with the scenario
 * reader. {@code Guide} leads on from there, a step at a time, through the whole job.
 */
package io.github.heatswell.scenarios.interview;
