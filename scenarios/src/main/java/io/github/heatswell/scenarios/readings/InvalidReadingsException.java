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

    /** Whether only a unit is missing. */
    private final boolean unitMissing;

    InvalidReadingsException(List<Fault> faults) {
        this(faults, false);
    }

    /** A fault, where what is wrong was found while reading on. */
    InvalidReadingsException(Fault fault, RuntimeException wrong) {
        this(List.of(fault), wrong instanceof UnitMissing || wrong.getCause() instanceof UnitMissing);
    }

    private InvalidReadingsException(List<Fault> faults, boolean unitMissing) {
        super(faults.stream().map(Fault::toString).collect(Collectors.joining("\n")));
        this.faults = faults.toArray(new Fault[0]);
        this.unitMissing = unitMissing;
    }

    /** What is wrong with pressures that stand without a unit where none was said either. */
    static final class UnitMissing extends IllegalArgumentException {

        private static final long serialVersionUID = 1L;

        UnitMissing(String message) {
            super(message);
        }
    }

    /**
     * Whether the pressures lack a unit, which the readers also take beside the file.
     *
     * @return whether the file would be read on with one
     */
    public boolean isUnitMissing() {
        return unitMissing;
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
