/**
 * A text in YAML as a tree in which every part knows its line and column. Only what a hand-written description needs is
 * taken: one document of plain keys, values and lists. Anchors, aliases, tags and deep nesting, which make a short text
 * into an unbounded one, are refused.
 *
 * <p>What is wrong is collected in {@link io.github.heatswell.scenarios.document.Faults}, so that whoever wrote the text
 * sees everything at once.
 */
package io.github.heatswell.scenarios.document;
