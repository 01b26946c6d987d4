package io.github.heatswell.scenarios.document;

import io.github.heatswell.scenarios.fault.Fault;
import io.github.heatswell.scenarios.fault.Location;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Collects what is wrong with one text while it is being read.
 */
public final class Faults {

    /** More faults than anyone corrects at a time; a file of another kind has thousands. */
    private static final int MAX = 50;

    private final List<Fault> found = new ArrayList<>();
    private int more;

    /** Starts with nothing found. */
    public Faults() {}

    /**
     * Adds a fault, or only counts it if there are already many.
     *
     * @param at where
     * @param message what, in one line
     */
    public void add(Location at, String message) {
        if (found.size() < MAX) {
            found.add(new Fault(at, message));
        } else {
            more++;
        }
    }

    /**
     * Whether further faults are only counted, because there are already many.
     *
     * @return true if there are many already
     */
    public boolean full() {
        return found.size() >= MAX;
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
     * What was found so far: everything, or the first fifty, and then how many more there were.
     *
     * @return the faults in the order of the text
     */
    public List<Fault> inOrder() {
        List<Fault> ordered = new ArrayList<>(found);
        ordered.sort(Comparator.comparing(Fault::at));
        if (more > 0) {
            ordered.add(new Fault(
                    ordered.get(MAX - 1).at(), "and " + more + " more faults like these; correct these" + " first"));
        }
        return List.copyOf(ordered);
    }
}
