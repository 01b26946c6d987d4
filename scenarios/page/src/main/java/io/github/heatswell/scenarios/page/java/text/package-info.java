/** What the compiler to script lacks of {@code java.text}, under names it knows how to find. */
package io.github.heatswell.scenarios.page.java.text;
