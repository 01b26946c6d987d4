/**
 * Wording helpers for messages and tables: the nearest known word to a misspelt one, and external text made printable.
 */
package io.github.heatswell.scenarios.wording;
