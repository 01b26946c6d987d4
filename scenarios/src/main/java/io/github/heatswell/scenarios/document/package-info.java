/**
 * A text in YAML as a tree in which every part knows its line and column. Only what a hand-written description needs is
 * supported: one document of plain keys, values and lists. Anchors, aliases, tags and deep nesting, which can expand a
 * short text without bound, are refused.
 *
 * <p>Faults are collected in {@link io.github.heatswell.scenarios.document.Faults}, so that whoever wrote the text sees
 * everything at once.
 */
package io.github.heatswell.scenarios.document;
