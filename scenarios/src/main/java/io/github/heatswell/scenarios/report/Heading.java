package io.github.heatswell.scenarios.report;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;

/**
 * What stands above a report.
 *
 * <p>The texts may hold anything; they are shown as they are.
 *
 * @param title the title, not blank
 * @param question what was asked, possibly nothing
 * @param expectation what was expected to come out, possibly nothing
 * @param scenario the short name of the scenario or scenarios, possibly nothing
 * @param date the day the report is made, if the caller gives it; a report without gives the same bytes every day
 */
public record Heading(String title, String question, String expectation, String scenario, Optional<LocalDate> date) {

    /**
     * Checks that everything is there.
     *
     * @param title the title, not blank
     * @param question what was asked, possibly nothing
     * @param expectation what was expected to come out, possibly nothing
     * @param scenario the short name of the scenario or scenarios, possibly nothing
     * @param date the day the report is made, if the caller gives it; a report without gives the same bytes every day
     * @throws IllegalArgumentException if the title is blank
     */
    public Heading {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(question, "question");
        Objects.requireNonNull(expectation, "expectation");
        Objects.requireNonNull(scenario, "scenario");
        Objects.requireNonNull(date, "date");
        if (title.isBlank()) {
            throw new IllegalArgumentException("title: a report needs one, not \"" + title + "\"");
        }
    }
}
