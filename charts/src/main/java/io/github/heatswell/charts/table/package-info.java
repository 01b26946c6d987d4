/**
 * Tables of what a run found, for spreadsheets and scripts. The only place that knows how CSV is written.
 *
 * <p>All tables have one form: RFC 4180 with LF, a header with units in the names, numbers with fixed decimals that do not
 * depend on the language of the machine. They are written to any {@link java.lang.Appendable}, which stays open; the
 * caller chooses the file and the charset, which should be UTF-8.
 */
package io.github.heatswell.charts.table;
