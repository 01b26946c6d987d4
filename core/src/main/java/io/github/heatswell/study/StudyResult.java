package io.github.heatswell.study;

import io.github.heatswell.units.RatioUnit;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.hipparchus.special.Beta;

/** What a study found: the answers of every sample, and what they say together. Immutable. */
public final class StudyResult {

    private final Study study;
    private final SampleRunner.Runs runs;

    StudyResult(Study study, SampleRunner.Runs runs) {
        this.study = study;
        this.runs = runs;
    }

    /** {@return how many samples it has, of what: {@code 64 of 64 samples of 3 inputs}} */
    @Override
    public String toString() {
        return completed() + " of " + planned() + " samples of " + inputs().size()
                + (inputs().size() == 1 ? " input" : " inputs");
    }

    /**
     * The uncertain inputs.
     *
     * @return the inputs, in their order
     */
    public List<Study.Input> inputs() {
        return study.inputs();
    }

    /**
     * The names of the outputs.
     *
     * @return the names, in their order
     */
    public List<String> outputs() {
        return study.outputs();
    }

    /**
     * How many samples were asked for.
     *
     * @return the number
     */
    public int planned() {
        return runs.planned();
    }

    /**
     * How many samples are there, failed ones included.
     *
     * @return the number; less than planned if the study was stopped
     */
    public int completed() {
        return runs.completed();
    }

    /**
     * How many of them have no answers.
     *
     * @return the number
     */
    public int failed() {
        return runs.failed();
    }

    /**
     * Why the first failed sample has no answers.
     *
     * @return the message, or empty if none failed
     */
    public Optional<String> firstFailure() {
        return Optional.ofNullable(runs.firstFailure());
    }

    /**
     * The input values of a sample.
     *
     * @param sample its number, from 0
     * @return the values in the order of the inputs, each in the unit of its input; a new array
     * @throws IndexOutOfBoundsException if there is no such sample
     */
    public double[] input(int sample) {
        checkSample(sample);
        return PointSource.plain(inputs(), study.seed()).values(sample);
    }

    /**
     * All values of an input.
     *
     * @param input its number, from 0
     * @return one value for each completed sample, in the unit of the input; a new array
     * @throws IndexOutOfBoundsException if there is no such input
     */
    public double[] inputValues(int input) {
        Study.Input wanted = inputs().get(input);
        PointSource.ScrambledSobol points = new PointSource.ScrambledSobol(inputs().size(), study.seed());
        double[] values = new double[completed()];
        for (int i = 0; i < values.length; i++) {
            values[i] = wanted.distribution().quantile(points.at(i)[input]);
        }
        return values;
    }

    /**
     * One answer.
     *
     * @param sample the number of the sample, from 0
     * @param output the number of the output, from 0
     * @return the answer, in the unit of the output; NaN if the sample has none
     * @throws IndexOutOfBoundsException if there is no such sample or output
     */
    public double output(int sample, int output) {
        checkSample(sample);
        return runs.answers()[output][sample];
    }

    /**
     * What the samples say about an output.
     *
     * @param output its number, from 0
     * @return its quantiles and shares
     * @throws IndexOutOfBoundsException if there is no such output
     */
    public Spread spread(int output) {
        return Spread.of(runs.answers()[output], completed());
    }

    /**
     * How strongly an output rises or falls with an input, wherever the others stand: the rank correlation of Spearman
     * over the samples that have an answer.
     *
     * @param input the number of the input, from 0
     * @param output the number of the output, from 0
     * @return the correlation (-), from -1 (falls always) to 1 (rises always); 0 for an output that is always the same,
     *     or with fewer than two answers
     * @throws IndexOutOfBoundsException if there is no such input or output
     */
    public double importance(int input, int output) {
        double[] all = runs.answers()[output];
        double[] values = inputValues(input);
        double[] answers = new double[values.length];
        int answered = 0;
        for (int i = 0; i < values.length; i++) {
            if (!Double.isNaN(all[i])) {
                values[answered] = values[i];
                answers[answered++] = all[i];
            }
        }
        return Ranks.of(values, answered).correlation(Ranks.of(answers, answered));
    }

    /**
     * How far two inputs go together in these samples, though nothing connects them: few points of a sequence that fills space evenly
     * may lie along a diagonal of two inputs. {@link #importance} then credits the effect of one to the other as well.
     *
     * @return the strongest rank correlation of two inputs (-), 0 to 1; 0 for a single input
     */
    public double strayCorrelation() {
        int count = completed();
        List<Ranks> ranks = IntStream.range(0, inputs().size())
                .mapToObj(input -> Ranks.of(inputValues(input), count))
                .toList();
        double most = 0;
        for (int i = 0; i < ranks.size(); i++) {
            for (int j = 0; j < i; j++) {
                most = Math.max(most, Math.abs(ranks.get(i).correlation(ranks.get(j))));
            }
        }
        return most;
    }

    private void checkSample(int sample) {
        if (sample < 0 || sample >= completed()) {
            throw new IndexOutOfBoundsException("sample " + sample + " of " + completed());
        }
    }

    /** Distribution of one output over the samples that have an answer. Immutable. */
    public static final class Spread {

        private final double[] sorted;

        private Spread(double[] sorted) {
            this.sorted = sorted;
        }

        /** The spread of the first {@code count} values, without those that are NaN. */
        static Spread of(double[] values, int count) {
            double[] answers = new double[count];
            int answered = 0;
            for (int i = 0; i < count; i++) {
                if (!Double.isNaN(values[i])) {
                    answers[answered++] = values[i] + 0.0; // makes -0.0 and 0.0 the same
                }
            }
            double[] sorted = Arrays.copyOf(answers, answered);
            Arrays.sort(sorted);
            return new Spread(sorted);
        }

        /**
         * How many samples have an answer.
         *
         * @return the number
         */
        public int answered() {
            return sorted.length;
        }

        /**
         * The mean.
         *
         * @return the mean, in the unit of the output; NaN without answers
         */
        public double mean() {
            double sum = 0;
            for (double value : sorted) {
                sum += value;
            }
            return sum / sorted.length;
        }

        /**
         * The value that a share of the answers does not exceed: the lowest of the answers of which that holds (definition 1 of
         * Hyndman and Fan, The American Statistician 50 (1996) 361; from memory). It is always one of the answers, so that no
         * value is named that no sample found.
         *
         * @param share the share (-), 0 to 1, such as 0.05 or 0.95
         * @return the value, in the unit of the output; NaN without answers
         * @throws IllegalArgumentException if the share is outside its range
         */
        public double quantile(double share) {
            double place = Distribution.SHARE.checkSi(share, RatioUnit.ONE) * sorted.length;
            // a share such as 0.07 of 100 answers must not become 8 of them by rounding
            int rank = (int) Math.ceil(place - 1e-9);
            return sorted.length == 0 ? Double.NaN : sorted[Math.max(0, rank - 1)];
        }

        /**
         * The share of the answers that are larger than a threshold, as an estimate of the probability.
         *
         * @param threshold the threshold, in the unit of the output
         * @return the share with its standard error
         */
        public Share above(double threshold) {
            int count = 0;
            for (double value : sorted) {
                count += value > threshold ? 1 : 0;
            }
            return new Share(count, sorted.length);
        }
    }

    /**
     * How many of a number of samples have some property.
     *
     * @param count those that have it
     * @param of all that were looked at
     */
    public record Share(int count, int of) {

        private static final double ONCE_IN_TWENTY = 0.05;
        private static final double RESOLVED = 1e-13;

        /**
         * The share, as an estimate of the probability.
         *
         * @return the share (-), 0 to 1; NaN of no samples
         */
        public double value() {
            return (double) count / of;
        }

        /**
         * The standard error of the share, {@code sqrt(p (1 - p) / n)} as for independent samples. The low-discrepancy
         * samples of a study do better, so this is conservative; but it is 0 where no sample, or every one, has the
         * property: there {@link #atMost} and {@link #atLeast} say more.
         *
         * @return the standard error (-); NaN of no samples
         */
        public double standardError() {
            return Math.sqrt(value() * (1 - value()) / of);
        }

        /**
         * The highest probability that goes with the count: the exact one-sided limit of 95 % by Clopper and Pearson (Biometrika 26,
         * 1934; from memory), at which so few samples or fewer have the property once in twenty times.
         *
         * @return the probability (-), 0 to 1; 1 if all samples have the property, NaN of no samples
         */
        public double atMost() {
            if (count == of) {
                return of == 0 ? Double.NaN : 1;
            }
            double low = 0;
            double high = 1;
            while (high - low > RESOLVED) {
                double middle = (low + high) / 2;
                // the binomial law: so many of the samples or fewer
                boolean likely = Beta.regularizedBeta(1 - middle, of - count, count + 1.0) > ONCE_IN_TWENTY;
                low = likely ? middle : low;
                high = likely ? high : middle;
            }
            return high;
        }

        /**
         * The lowest probability that goes with the count, by the same law.
         *
         * @return the probability (-), 0 to 1; 0 if no sample has the property, NaN of no samples
         */
        public double atLeast() {
            return 1 - new Share(of - count, of).atMost();
        }
    }

    /** Numbers by their ranks, from 1 for the lowest; equal numbers share the mean of their ranks. Immutable. */
    static final class Ranks {

        private final double[] ranks;

        private Ranks(double[] ranks) {
            this.ranks = ranks;
        }

        /** The ranks of the first {@code count} values. */
        static Ranks of(double[] values, int count) {
            return new Ranks(ranks(values, count));
        }

        /**
         * Spearman's rank correlation with as many other numbers.
         *
         * @return -1 to 1; 0 if either side is constant
         */
        double correlation(Ranks other) {
            double mean = (ranks.length + 1) / 2.0;
            double both = 0;
            double square = 0;
            double otherSquare = 0;
            for (int i = 0; i < ranks.length; i++) {
                both += (ranks[i] - mean) * other.ranks[i];
                square += (ranks[i] - mean) * ranks[i];
                otherSquare += (other.ranks[i] - mean) * other.ranks[i];
            }
            if (square == 0 || otherSquare == 0) {
                return 0;
            }
            return Math.max(-1, Math.min(1, both / Math.sqrt(square * otherSquare)));
        }

        private static double[] ranks(double[] values, int count) {
            double[] sorted = Arrays.copyOf(values, count);
            Arrays.sort(sorted);
            double[] ranks = new double[count];
            for (int i = 0; i < count; i++) {
                int first = first(sorted, values[i], false);
                int beyond = first(sorted, values[i], true);
                ranks[i] = (first + 1 + beyond) / 2.0;
            }
            return ranks;
        }

        /** The index of the first value that is not below (or, beyond, that is above) the given one. */
        private static int first(double[] sorted, double value, boolean beyond) {
            int low = 0;
            int high = sorted.length;
            while (low < high) {
                int middle = (low + high) >>> 1;
                if (sorted[middle] < value || beyond && sorted[middle] == value) {
                    low = middle + 1;
                } else {
                    high = middle;
                }
            }
            return low;
        }
    }
}
