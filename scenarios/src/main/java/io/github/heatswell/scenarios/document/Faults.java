package io.github.heatswell.scenarios.document;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Collects what is wrong with one text while it is being read.
 */
public final class Faults {

    private final List<Fault> found = new ArrayList<>();

    /** Starts with nothing found. */
    public Faults() {}

    /**
     * Notes a fault.
     *
     * @param at where
     * @param message what, in one line
     */
    public void add(Location at, String message) {
        found.add(new Fault(at, message));
    }

    /**
     * Whether nothing was found so far.
     *
     * @return true if there is no fault
     */
    public boolean none() {
        return found.isEmpty();
    }

    /**
     * Everything found so far.
     *
     * @return the faults in the order of the text
     */
    public List<Fault> inOrder() {
        return found.stream().sorted(Comparator.comparing(Fault::at)).toList();
    }
}
