/**
 * The program inside the live page, compiled to script: it reads a house from the text of a scenario file, runs it, and hands the
 * run and what the narrative says of it to the page as plain script values. Everything is in SI; pressures are gauge pressures.
 */
package io.github.heatswell.scenarios.page;
