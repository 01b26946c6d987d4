package io.github.heatswell.checksheet;

import io.github.heatswell.result.Balances;
import io.github.heatswell.study.Study;
import io.github.heatswell.study.StudyResult;
import io.github.heatswell.study.UncertainHouse;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.units.Limits;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.UnitSystem;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;

/**
 * A check sheet whose readings carry their tolerance: the procedure is simulated for the house as described, and again for
 * many houses that differ from it within the uncertainty of its numbers. Immutable.
 *
 * @param sheet the readings of the house as described
 * @param gauge the gauge used
 * @param result the samples: the readings in the order of {@link CheckSheet.Reading.Kind} (Pa, gauge; NaN where a hazard prevented
 *     one), then the relieved volume (m3) and whether a hazard ended the procedure (1 or 0)
 */
public record UncertainCheck(CheckSheet sheet, Gauge gauge, StudyResult result) {

    private static final int RELIEVED = CheckSheet.Reading.Kind.values().length;
    private static final int HAZARD = RELIEVED + 1;
    private static final int RUNS = HAZARD + 1;
    private static final int OPEN = RUNS + 1;
    private static final int ANSWERS = OPEN + 1;
    private static final double LOW = 0.05;
    private static final double HIGH = 0.95;

    /**
     * Checks that everything is there.
     *
     * @param sheet the readings of the house as described
     * @param gauge the gauge used
     * @param result the samples: the readings in the order of {@link CheckSheet.Reading.Kind} (Pa, gauge; NaN where a hazard
     *     prevented one), then the relieved volume (m3) and whether a hazard ended the procedure (1 or 0)
     * @throws IllegalArgumentException if the samples are not those of a study prepared by {@link #study}
     */
    public UncertainCheck {
        Objects.requireNonNull(sheet, "sheet");
        Objects.requireNonNull(gauge, "gauge");
        if (Objects.requireNonNull(result, "result").outputs().size() != ANSWERS) {
            throw new IllegalArgumentException(
                    "result: these are not the samples of a check; use the study from UncertainCheck.study(...)");
        }
    }

    /**
     * Prepares the study of a house; {@link Study.Builder#samples}, seed, threads, progress and stop signal may still be
     * set. What it finds goes into {@link #of}.
     *
     * @param procedure how the house is checked
     * @param house the house
     * @return a builder with inputs, outputs and model
     */
    public static Study.Builder study(CheckProcedure procedure, UncertainHouse house) {
        Objects.requireNonNull(house, "house");
        return study(procedure, house.inputs(), house::moved);
    }

    /**
     * Prepares the study of a house that the caller makes from uncertain numbers of his own.
     *
     * @param procedure how the house is checked
     * @param inputs the uncertain numbers
     * @param house makes a house from a value of every input, each in the unit of its input; for any number of threads;
     *     refuses values that do not go together by an {@link IllegalArgumentException}
     * @return a builder with inputs, outputs and model
     */
    public static Study.Builder study(
            CheckProcedure procedure, List<Study.Input> inputs, Function<double[], HotWaterSystem> house) {
        Objects.requireNonNull(procedure, "procedure");
        Objects.requireNonNull(house, "house");
        List<String> outputs = new ArrayList<>(Arrays.stream(CheckSheet.Reading.Kind.values())
                .map(kind -> kind.id() + " (Pa gauge)")
                .toList());
        outputs.add("relieved volume (m3)");
        outputs.add("ended by a hazard");
        outputs.add("runs");
        outputs.add("runs whose balance does not close");
        return Study.builder().inputs(inputs).outputs(outputs).model(values -> answers(procedure, house, values));
    }

    /**
     * Combines the readings of the house as described with their tolerances.
     *
     * @param procedure how the house is checked
     * @param house the house
     * @param gauge the gauge used
     * @param result what the study of {@link #study} found
     * @return the sheet with tolerances
     */
    public static UncertainCheck of(CheckProcedure procedure, UncertainHouse house, Gauge gauge, StudyResult result) {
        Objects.requireNonNull(house, "house");
        return of(procedure, house.described(), gauge, result);
    }

    /**
     * Combines the readings of the house as described with their tolerances.
     *
     * @param procedure how the house is checked
     * @param described the house with the best estimates
     * @param gauge the gauge used
     * @param result what the study of {@link #study} found
     * @return the sheet with tolerances
     */
    public static UncertainCheck of(
            CheckProcedure procedure, HotWaterSystem described, Gauge gauge, StudyResult result) {
        Objects.requireNonNull(procedure, "procedure");
        return new UncertainCheck(procedure.simulate(described), gauge, result);
    }

    /**
     * The gauge for a check: every reading that is likely lies on its dial, and so does the opening of the first relief valve.
     *
     * @param sheet the readings of the house as described
     * @param house the house
     * @param result what the study of {@link #study} found
     * @param units in which the dial is divided
     * @return the usual dial gauge for them
     */
    public static Gauge gaugeFor(CheckSheet sheet, HotWaterSystem house, StudyResult result, UnitSystem units) {
        double air = house.site().atmosphere();
        double highest = house.reliefValves().stream()
                .filter(ReliefValve::relieves)
                .mapToDouble(valve ->
                        house.atDrainCock(valve.setPressure(), valve.height()).gauge(air))
                .min()
                .orElse(0);
        for (CheckSheet.Reading reading : sheet.readings()) {
            double likely = result.spread(reading.kind().ordinal()).quantile(HIGH);
            highest = Math.max(highest, Math.max(reading.expectedGauge(), Double.isNaN(likely) ? 0 : likely));
        }
        return Gauge.dialFor(highest, units);
    }

    private static double[] answers(
            CheckProcedure procedure, Function<double[], HotWaterSystem> house, double[] values) {
        CheckSheet sheet = Study.orFailed(() -> procedure.simulate(house.apply(values)));
        double[] answers = new double[ANSWERS];
        Arrays.fill(answers, 0, RELIEVED, Double.NaN);
        sheet.readings().forEach(reading -> answers[reading.kind().ordinal()] = reading.expectedGauge());
        answers[RELIEVED] = sheet.drips().volume();
        answers[HAZARD] = sheet.hazard().isPresent() ? 1 : 0;
        answers[RUNS] = sheet.balances().runs();
        answers[OPEN] = sheet.balances().open();
        return answers;
    }

    /**
     * The readings with their tolerances.
     *
     * @return those of the sheet, in their order
     */
    public List<ToleratedReading> readings() {
        return sheet.readings().stream()
                .map(reading -> tolerated(reading, result.spread(reading.kind().ordinal())))
                .toList();
    }

    /**
     * The balances of the runs of the samples, to which those of the sheet come.
     *
     * @return how many there are, and how many do not close
     */
    public Balances sampled() {
        Balances all = Balances.NONE;
        for (int i = 0; i < result.completed(); i++) {
            double runs = result.output(i, RUNS);
            all = Double.isNaN(runs) ? all : all.and(new Balances((long) result.output(i, OPEN), (long) runs));
        }
        return all;
    }

    private ToleratedReading tolerated(CheckSheet.Reading reading, StudyResult.Spread spread) {
        return new ToleratedReading(
                reading, spread.quantile(LOW), spread.quantile(HIGH), gauge.error(), spread.answered());
    }

    /**
     * Samples in which a relief valve discharges between the closing of the taps and the next morning.
     *
     * @return the share, an estimate of the probability
     */
    public StudyResult.Share dripping() {
        return result.spread(RELIEVED).above(0);
    }

    /**
     * How many of the samples end in a hazard.
     *
     * @return the share, an estimate of the probability
     */
    public StudyResult.Share hazardous() {
        return result.spread(HAZARD).above(0.5);
    }

    /**
     * A reading with the range in which nine of ten such houses, read with such a gauge, lie.
     *
     * <p>The house alone spreads from {@code low} to {@code high} (5 % and 95 % of all samples). The gauge adds its own
     * error. Both are combined as the root of the sum of their squares, on each side of the expected reading:
     * {@link #lowest()} and {@link #highest()}.
     *
     * @param reading what the house as described should show
     * @param low what 5 % of the samples do not exceed (Pa, gauge)
     * @param high what 95 % of the samples do not exceed (Pa, gauge)
     * @param gaugeError the largest error of the gauge (Pa)
     * @param samples number of samples with this reading
     */
    public record ToleratedReading(
            CheckSheet.Reading reading, double low, double high, double gaugeError, int samples) {

        /**
         * Checks that the reading is there.
         *
         * @param reading what the house as described should show
         * @param low what 5 % of the samples do not exceed (Pa, gauge)
         * @param high what 95 % of the samples do not exceed (Pa, gauge)
         * @param gaugeError the largest error of the gauge (Pa)
         * @param samples number of samples with this reading
         */
        public ToleratedReading {
            Objects.requireNonNull(reading, "reading");
        }

        /**
         * The lowest reading that agrees with the description.
         *
         * @return the reading (Pa, gauge)
         */
        public double lowest() {
            return reading.expectedGauge() - Math.hypot(Math.max(0, reading.expectedGauge() - low), gaugeError);
        }

        /**
         * The highest reading that agrees with the description.
         *
         * @return the reading (Pa, gauge)
         */
        public double highest() {
            return reading.expectedGauge() + Math.hypot(Math.max(0, high - reading.expectedGauge()), gaugeError);
        }

        /**
         * Whether what an owner read agrees with the description.
         *
         * @param gauge what the gauge showed (Pa, gauge)
         * @return true if it lies between the lowest and the highest that agree
         */
        public boolean agrees(double gauge) {
            return gauge >= lowest() && gauge <= highest();
        }
    }

    /**
     * Accuracy of a pressure gauge.
     *
     * @param span the largest reading of its dial (Pa, gauge), 0.1 bar to 100 bar
     * @param accuracyClass the class of EN 837-1: the largest error (% of the span), above 0 to 10
     */
    public record Gauge(double span, double accuracyClass) {

        private static final List<Double> BAR_DIALS = List.of(10.0, 16.0, 25.0, 40.0);
        private static final List<Double> PSI_DIALS = List.of(100.0, 160.0, 200.0, 300.0, 400.0, 600.0);
        private static final Limits SPAN = Limits.between("span", 0.1e5, 100e5);
        private static final Limits CLASS = Limits.above("class", 0, 10);

        /**
         * Checks the numbers.
         *
         * @param span the largest reading of its dial (Pa, gauge), 0.1 bar to 100 bar
         * @param accuracyClass the class of EN 837-1: the largest error (% of the span), above 0 to 10
         * @throws IllegalArgumentException if a number is outside its range
         */
        public Gauge {
            span = SPAN.checkSi(span, PressureUnit.BAR);
            accuracyClass = CLASS.checkSi(accuracyClass, RatioUnit.ONE);
        }

        /**
         * The usual dial gauge for a pressure: 0 to 10, 16, 25 or 40 bar, or 0 to 100, 160, 200, 300, 400 or 600 psi, class 1.6
         * of EN 837-1 (from memory).
         *
         * @param highest the highest pressure to be read (Pa, gauge)
         * @param units in which the dial is divided
         * @return the gauge with the smallest dial on which a reading 10 % above that can be read; accurate within 0.16 bar
         *     for a dial to 10 bar
         */
        public static Gauge dialFor(double highest, UnitSystem units) {
            List<Double> dials = units.isMetric() ? BAR_DIALS : PSI_DIALS;
            PressureUnit unit = units.isMetric() ? PressureUnit.BAR : PressureUnit.PSI;
            double span = dials.stream()
                    .map(unit::toSi)
                    .filter(dial -> dial >= 1.1 * highest)
                    .findFirst()
                    .orElse(unit.toSi(dials.get(dials.size() - 1)));
            return new Gauge(span, 1.6);
        }

        /**
         * The largest error of an undamaged gauge at room temperature.
         *
         * @return the error (Pa, difference)
         */
        public double error() {
            return span * accuracyClass / 100;
        }
    }
}
