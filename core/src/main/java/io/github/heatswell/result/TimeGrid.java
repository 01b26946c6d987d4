package io.github.heatswell.result;

/**
 * The instants at which a run is sampled: 0, one step, two steps, and so on; the end of the run is always the last one,
 * also when it is not a whole number of steps away.
 *
 * @param step the distance of the samples (s), above 0
 * @param end the end of the run (s), 0 or more
 */
public record TimeGrid(double step, double end) {

    /** Two instants this close (fraction of the step) count as one. */
    public static final double SAME_INSTANT = 1e-9;

    /** The largest number of samples a grid may have. */
    private static final double MAX_SAMPLES = 1e9;

    /**
     * Checks that the grid is finite and runs forward.
     *
     * @param step the distance of the samples (s), above 0
     * @param end the end of the run (s), 0 or more
     * @throws IllegalArgumentException if the step is not above 0, the end is below 0, or the grid has more than a
     *     billion samples
     */
    public TimeGrid {
        if (!(step > 0 && end >= 0 && end / step < MAX_SAMPLES)) {
            throw new IllegalArgumentException(
                    "a grid of " + step + " s steps up to " + end + " s is not a finite forward grid");
        }
    }

    /**
     * The number of samples.
     *
     * @return the number, at least 1
     */
    public int count() {
        return (int) Math.ceil(end / step - SAME_INSTANT) + 1;
    }

    /**
     * The instant of a sample.
     *
     * @param index the number of the sample, 0 to {@code count() - 1}
     * @return the time since the start of the run (s)
     * @throws IndexOutOfBoundsException if there is no such sample
     */
    public double time(int index) {
        int count = count();
        if (index < 0 || index >= count) {
            throw new IndexOutOfBoundsException("sample " + index + " of " + count);
        }
        return index == count - 1 ? end : index * step;
    }
}
