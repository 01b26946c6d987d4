/**
 * The report for the owner: one HTML file that needs nothing but itself, for paper and for a phone. What it says comes in as
 * {@link io.github.heatswell.scenarios.report.ReportContent}, plain values; {@link
 * io.github.heatswell.scenarios.report.ReportPage} puts them in their order and in writing. All markup passes {@link
 * io.github.heatswell.scenarios.markup.Html}, which escapes whatever it is given.
 */
package io.github.heatswell.scenarios.report;
