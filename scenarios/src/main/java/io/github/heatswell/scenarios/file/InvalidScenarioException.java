package io.github.heatswell.scenarios.file;

import io.github.heatswell.scenarios.fault.Fault;
import io.github.heatswell.scenarios.wording.Printable;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A text that is not a scenario. Everything wrong is listed, not just the first fault.
 */
public final class InvalidScenarioException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    /** An array, since a list need not be serialisable. */
    private final Fault[] faults;

    /**
     * Creates the exception.
     *
     * @param source the file or name the text came from, put in front of every line of the message
     * @param faults what is wrong, at least one, in the order of the text
     */
    InvalidScenarioException(String source, List<Fault> faults) {
        this(source, faults, List.of());
    }

    /**
     * Creates the exception.
     *
     * @param source the file or name the text came from, put in front of every line of the message
     * @param faults what is wrong, at least one, in the order of the text
     * @param changes what was put in from outside, in the order of the places outside the text
     */
    InvalidScenarioException(String source, List<Fault> faults, List<Change> changes) {
        super(faults.stream().map(fault -> line(source, fault, changes)).collect(Collectors.joining("\n")));
        this.faults = faults.toArray(new Fault[0]);
    }

    private static String line(String source, Fault fault, List<Change> changes) {
        if (fault.at().inText()) {
            return source + ":" + fault;
        }
        int number = fault.at().column();
        String change = number > changes.size()
                ? ""
                : " with " + Printable.shortened(changes.get(number - 1).toString());
        return source + change + ": " + fault.message();
    }

    /**
     * What is wrong.
     *
     * @return every fault found, at least one, in the order of the text
     */
    public List<Fault> faults() {
        return List.of(faults);
    }
}
