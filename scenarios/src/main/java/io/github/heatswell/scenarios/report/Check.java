package io.github.heatswell.scenarios.report;

import java.util.List;

/**
 * How the owner checks the house with a gauge, and what it should read.
 *
 * @param steps the procedure in plain words, in its order
 * @param readings the lines of the check sheet, in the order of time; none if there is nothing to read
 * @param remarks what to bear in mind, or why there is nothing to read
 */
public record Check(List<String> steps, List<Reading> readings, List<String> remarks) {

    /**
     * Copies the lists.
     *
     * @param steps the procedure in plain words, in its order
     * @param readings the lines of the check sheet, in the order of time; none if there is nothing to read
     * @param remarks what to bear in mind, or why there is nothing to read
     */
    public Check {
        steps = List.copyOf(steps);
        readings = List.copyOf(readings);
        remarks = List.copyOf(remarks);
    }
}
