/** The parts of {@code java.text} that the compiler to script lacks, under the names it looks for. */
package io.github.heatswell.scenarios.page.java.text;
