/**
 * The bundled scenarios. Each is an ordinary scenario file with its question and expected outcome; houses and places
 * are invented.
 */
package io.github.heatswell.scenarios.catalogue;
