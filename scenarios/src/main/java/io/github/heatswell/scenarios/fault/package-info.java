/**
 * A fault in a text, with line and column. The exceptions for wrong files list
 * {@linkplain io.github.heatswell.scenarios.fault.Fault faults}.
 */
package io.github.heatswell.scenarios.fault;
