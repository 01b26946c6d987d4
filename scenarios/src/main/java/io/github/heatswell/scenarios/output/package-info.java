/**
 * What becomes of a run: a short report for the terminal and files for everything else.
 *
 * <p>A hazard always comes first, in the report as in the files. Files appear complete or not at all: they are written
 * under temporary names in the folder they belong to and renamed when all of them are there.
 */
package io.github.heatswell.scenarios.output;
