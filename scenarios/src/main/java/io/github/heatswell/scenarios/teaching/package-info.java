/**
 * A course for class and for home: why a relief valve drips in a closed system, one idea at a time, each shown by runs.
 *
 * <p>A lesson is one text in YAML. It asks a question, lets the reader predict, names the houses to compare, and says what to
 * notice. It writes no number down: its sentences hold expressions in braces, such as {@code {peak(closed)}}, which
 * the runs fill in. Where a sentence compares, an expression beside it must hold. {@link
 * io.github.heatswell.scenarios.teaching.Course} reads the lessons and makes pages of them that need no server.
 *
 * <p>Nothing but the command {@code lessons} depends on this package. All houses are invented.
 */
package io.github.heatswell.scenarios.teaching;
