package io.github.heatswell.study;

import java.util.List;

/** Gives the input values of every run of the model, from the number of the run alone. Not for several threads. */
interface PointSource {

    /**
     * The values of a run.
     *
     * @param run its number, from 0
     * @return a new array, one value for each input
     */
    double[] values(int run);

    /** One point for each run. */
    static PointSource plain(List<UncertainInput> inputs, long seed) {
        ShiftedSobol points = new ShiftedSobol(inputs.size(), seed);
        return run -> {
            double[] point = points.at(run);
            double[] values = new double[point.length];
            for (int i = 0; i < values.length; i++) {
                values[i] = inputs.get(i).distribution().quantile(point[i]);
            }
            return values;
        };
    }

    /**
     * The runs that variance shares need: of every two independent points A and B come A, B, and A with one number after
     * the other taken from B, so many in sequence as there are inputs and two more.
     */
    static PointSource crossed(List<UncertainInput> inputs, long seed) {
        int count = inputs.size();
        ShiftedSobol points = new ShiftedSobol(2 * count, seed);
        return run -> {
            double[] point = points.at(run / (count + 2));
            int kind = run % (count + 2);
            double[] values = new double[count];
            for (int i = 0; i < count; i++) {
                boolean other = kind == 1 || kind == i + 2;
                values[i] = inputs.get(i).distribution().quantile(point[other ? count + i : i]);
            }
            return values;
        };
    }
}
