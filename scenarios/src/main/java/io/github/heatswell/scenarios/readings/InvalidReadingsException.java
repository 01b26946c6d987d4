package io.github.heatswell.scenarios.readings;

import io.github.heatswell.scenarios.fault.Fault;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Thrown when a file of readings cannot be understood.
 */
public final class InvalidReadingsException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    /** An array, since a list need not be serialisable. */
    private final Fault[] faults;

    InvalidReadingsException(List<Fault> faults) {
        super(faults.stream().map(Fault::toString).collect(Collectors.joining("\n")));
        this.faults = faults.toArray(new Fault[0]);
    }

    /**
     * What is wrong.
     *
     * @return at least one fault, in the order of the file
     */
    public List<Fault> faults() {
        return List.of(faults);
    }
}
