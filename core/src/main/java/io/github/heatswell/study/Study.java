package io.github.heatswell.study;

import io.github.heatswell.simulation.Workers;
import io.github.heatswell.units.Limits;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

/**
 * A study ready to start: the uncertain inputs, the model that turns them into outputs, and the number of samples.
 * Immutable.
 *
 * <p>The samples are points of the sequence of Sobol', scrambled as the seed says, and turned into values by
 * the quantiles of the inputs. They fill the space more evenly than random numbers, and most answers settle with fewer
 * runs. The same seed gives the same answers, bit for bit, with any number of threads.
 */
public final class Study {

    /** The largest number of inputs. */
    public static final int MAX_INPUTS = 20;

    private static final int MIN_SAMPLES = 16;
    private static final int MAX_SAMPLES = 1_000_000;
    private static final int MAX_THREADS = 1024;

    private final List<Input> inputs;
    private final List<String> outputs;
    private final Model model;
    private final int samples;
    private final long seed;
    private final int threads;
    private final Workers.Progress progress;
    private final BooleanSupplier stopSignal;

    private Study(Builder from) {
        inputs = List.copyOf(from.inputs);
        outputs = List.copyOf(from.outputs);
        model = from.model;
        samples = from.samples;
        seed = from.seed;
        threads = from.threads;
        progress = from.progress;
        stopSignal = from.stopSignal;
    }

    /**
     * Starts a description; inputs, outputs and the model must be set.
     *
     * @return a builder of 1024 samples with seed 1, on as many threads as there are processors
     */
    public static Builder builder() {
        return new Builder();
    }

    /**
     * Runs the model once for each sample.
     *
     * @return what was found; if the study was stopped, or the calling thread interrupted, the first samples without a
     *     gap
     * @throws RuntimeException what the model, the listener or the stop signal threw, other than a
     *     {@link SampleFailedException} or a {@link io.github.heatswell.simulation.SimulationException}
     */
    public StudyResult run() {
        SampleRunner.Runs runs = new SampleRunner(this, samples, () -> PointSource.plain(inputs, seed)).run();
        return new StudyResult(this, runs);
    }

    /**
     * Finds which share of the variance of each output comes from each input. For every sample the model is run once for
     * each input and twice more.
     *
     * @return the shares; if the study was stopped, those of the first samples without a gap
     * @throws RuntimeException as for {@link #run()}
     */
    public VarianceShares varianceShares() {
        int total = Math.multiplyExact(samples, inputs.size() + 2);
        SampleRunner.Runs runs = new SampleRunner(this, total, () -> PointSource.crossed(inputs, seed)).run();
        return new VarianceShares(this, runs);
    }

    /**
     * The uncertain inputs.
     *
     * @return the inputs, at least one, in the order the model takes them
     */
    public List<Input> inputs() {
        return inputs;
    }

    /**
     * The names of the outputs.
     *
     * @return the names, at least one, in the order the model gives them
     */
    public List<String> outputs() {
        return outputs;
    }

    /**
     * How many samples are taken.
     *
     * @return the number
     */
    public int samples() {
        return samples;
    }

    /**
     * The seed for scrambling the samples.
     *
     * @return the seed
     */
    public long seed() {
        return seed;
    }

    /**
     * How many threads run the model.
     *
     * @return the number, 1 or more
     */
    public int threads() {
        return threads;
    }

    Model model() {
        return model;
    }

    Workers.Progress progress() {
        return progress;
    }

    BooleanSupplier stopSignal() {
        return stopSignal;
    }

    /** Builds a {@link Study}. */
    public static final class Builder {
        private final List<Input> inputs = new ArrayList<>();
        private final List<String> outputs = new ArrayList<>();
        private Model model;
        private int samples = 1024;
        private long seed = 1;
        private int threads = Runtime.getRuntime().availableProcessors();
        private Workers.Progress progress = (done, total) -> {};
        private BooleanSupplier stopSignal = () -> false;

        private Builder() {}

        /**
         * Adds an input.
         *
         * @param name what it is called
         * @param distribution how it is spread
         * @return this builder
         * @throws IllegalArgumentException if the name is blank
         */
        public Builder input(String name, Distribution distribution) {
            inputs.add(new Input(name, distribution));
            return this;
        }

        /**
         * Adds inputs.
         *
         * @param values the inputs, in the order the model takes them
         * @return this builder
         */
        public Builder inputs(List<Input> values) {
            inputs.addAll(Objects.requireNonNull(values, "inputs"));
            return this;
        }

        /**
         * Adds outputs.
         *
         * @param names what they are called, in the order the model gives them
         * @return this builder
         */
        public Builder outputs(List<String> names) {
            outputs.addAll(Objects.requireNonNull(names, "outputs"));
            return this;
        }

        /**
         * Sets what is studied.
         *
         * @param value the model
         * @return this builder
         */
        public Builder model(Model value) {
            model = Objects.requireNonNull(value, "model");
            return this;
        }

        /**
         * Sets how many samples are taken. Powers of two fill the space most evenly.
         *
         * @param number the number, 16 to 1 000 000
         * @return this builder
         * @throws IllegalArgumentException if the number is outside its range
         */
        public Builder samples(int number) {
            samples = Limits.whole("samples", number, MIN_SAMPLES, MAX_SAMPLES);
            return this;
        }

        /**
         * Sets the seed for scrambling the samples.
         *
         * @param value any number
         * @return this builder
         */
        public Builder seed(long value) {
            seed = value;
            return this;
        }

        /**
         * Sets how many threads run the model. The answers do not depend on it.
         *
         * @param number the number, 1 to 1024
         * @return this builder
         * @throws IllegalArgumentException if the number is outside its range
         */
        public Builder threads(int number) {
            threads = Limits.whole("threads", number, 1, MAX_THREADS);
            return this;
        }

        /**
         * Sets the progress listener.
         *
         * @param listener the listener
         * @return this builder
         */
        public Builder progress(Workers.Progress listener) {
            progress = Objects.requireNonNull(listener, "progress");
            return this;
        }

        /**
         * Sets what stops the study early. It is asked before every run of the model, from several threads at once.
         *
         * @param signal true once the study should stop
         * @return this builder
         */
        public Builder stopWhen(BooleanSupplier signal) {
            stopSignal = Objects.requireNonNull(signal, "signal");
            return this;
        }

        /**
         * Completes the description.
         *
         * @return the study
         * @throws IllegalArgumentException if there are not 1 to 20 inputs, no output, two of the same name, or no
         *     model
         */
        public Study build() {
            Limits.whole("inputs", inputs.size(), 1, MAX_INPUTS);
            if (outputs.isEmpty()) {
                throw new IllegalArgumentException("outputs: there must be at least one");
            }
            if (model == null) {
                throw new IllegalArgumentException(
                        "model: is missing; say what turns a value of each input into an answer for each output");
            }
            unique("inputs", inputs.stream().map(Input::name).toList());
            unique("outputs", outputs);
            return new Study(this);
        }

        private static void unique(String field, List<String> names) {
            if (new HashSet<>(names).size() < names.size()) {
                throw new IllegalArgumentException(field + ": two have the same name: " + String.join(", ", names));
            }
        }
    }

    /**
     * A number that is not known exactly.
     *
     * @param name what it is called, in tables and messages; not blank
     * @param distribution how it is spread, in the unit the model expects
     */
    public record Input(String name, Distribution distribution) {

        /**
         * Checks that it has a name and a spread.
         *
         * @param name what it is called, in tables and messages; not blank
         * @param distribution how it is spread, in the unit the model expects
         * @throws IllegalArgumentException if the name is blank
         */
        public Input {
            Objects.requireNonNull(distribution, "distribution");
            if (Objects.requireNonNull(name, "name").isBlank()) {
                throw new IllegalArgumentException("name: an uncertain input needs a name");
            }
        }
    }

    /** What is studied: a calculation that turns numbers into answers. It is called from several threads at once. */
    @FunctionalInterface
    public interface Model {

        /**
         * Calculates the answers to one set of numbers. The same numbers must give the same answers.
         *
         * @param values one value for each uncertain input, in the unit and the order of the inputs; the array is the model's
         *     own
         * @return one answer for each named output, in the unit its name says and in their order; NaN where this sample has
         *     no such answer
         * @throws SampleFailedException if these numbers have no answer at all; the study counts it and goes on
         */
        double[] answers(double[] values);
    }

    /**
     * What a calculation gives for a sample. If it refuses with an {@link IllegalArgumentException}, as for a house that cannot
     * exist, only this sample fails.
     *
     * @param calculation the calculation
     * @param <T> what it gives
     * @return the same
     * @throws SampleFailedException if it refuses, with its message
     */
    public static <T> T orFailed(Supplier<T> calculation) {
        try {
            return calculation.get();
        } catch (IllegalArgumentException refused) {
            throw new SampleFailedException(refused.getMessage(), refused);
        }
    }

    /**
     * A sample of a study failed: its values describe no valid system. The study continues, counts the sample and reports
     * the first such message.
     */
    public static final class SampleFailedException extends RuntimeException {

        private static final long serialVersionUID = 1L;

        /**
         * Creates the exception.
         *
         * @param message why this sample has no answer, for the reader of the result
         */
        public SampleFailedException(String message) {
            super(message);
        }

        /**
         * Creates the exception for what something else found.
         *
         * @param message why this sample has no answer, for the reader of the result
         * @param cause what was found
         */
        public SampleFailedException(String message, Throwable cause) {
            super(message, cause);
        }
    }
}
