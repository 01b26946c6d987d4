package io.github.heatswell.simulation;

/**
 * The continuous solution over one step, for reading many samples off it. The solver's own interpolant is a polynomial of
 * degree four in time, so five of its states determine it, and every further one costs a few multiplications.
 */
final class StepCurve {

    private static final int DEGREE = 4;

    private final double from;
    private final double spacing;
    /** Newton's forward differences: the state, and its first to fourth differences. */
    private final double[][] differences = new double[DEGREE + 1][];

    StepCurve(SegmentSolver.Step step) {
        from = step.from();
        spacing = (step.to() - from) / DEGREE;
        for (int i = 0; i <= DEGREE; i++) {
            differences[i] = step.state(i == DEGREE ? step.to() : from + i * spacing);
        }
        for (int order = 1; order <= DEGREE; order++) {
            for (int i = DEGREE; i >= order; i--) {
                for (int k = 0; k < differences[i].length; k++) {
                    differences[i][k] -= differences[i - 1][k];
                }
            }
        }
    }

    /**
     * The state at a time.
     *
     * @param time a time (s) within the step, since the start of the segment
     * @param into the state, overwritten
     */
    void at(double time, double[] into) {
        double s = (time - from) / spacing;
        double first = s;
        double second = first * (s - 1) / 2;
        double third = second * (s - 2) / 3;
        double fourth = third * (s - 3) / 4;
        for (int k = 0; k < into.length; k++) {
            into[k] = differences[0][k]
                    + first * differences[1][k]
                    + second * differences[2][k]
                    + third * differences[3][k]
                    + fourth * differences[4][k];
        }
    }
}
