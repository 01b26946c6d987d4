/**
 * What becomes of an answer: a text for the terminal and files for everything else.
 *
 * <p>A hazard always comes first, in the text as in the files. Files appear complete or not at all: they are written under
 * temporary names in the folder they belong to and renamed when all of them are there. Pages are HTML that is also
 * well-formed XML. Text enters them only through methods that escape it.
 */
package io.github.heatswell.scenarios.report;
