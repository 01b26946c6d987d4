/**
 * Pages as HTML that is also well-formed XML, and pictures that may stand inside them. Texts come in only through methods
 * that escape them.
 */
package io.github.heatswell.scenarios.markup;
