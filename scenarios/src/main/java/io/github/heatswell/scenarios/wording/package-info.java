/**
 * Small matters of wording that messages and tables share: the nearest known word to a misspelt one, and text from
 * outside made fit to be printed.
 */
package io.github.heatswell.scenarios.wording;
