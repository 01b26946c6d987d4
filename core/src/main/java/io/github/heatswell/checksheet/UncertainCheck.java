package io.github.heatswell.checksheet;

import io.github.heatswell.result.Balances;
import io.github.heatswell.study.OutputSpread;
import io.github.heatswell.study.SampleFailedException;
import io.github.heatswell.study.Share;
import io.github.heatswell.study.Study;
import io.github.heatswell.study.StudyResult;
import io.github.heatswell.study.UncertainHouse;
import io.github.heatswell.study.UncertainInput;
import io.github.heatswell.system.HotWaterSystem;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;

/**
 * A check sheet whose readings carry their tolerance: the procedure is simulated for the house as described, and again
 * for many houses that deviate from it as its numbers are uncertain. Immutable.
 *
 * @param sheet the readings of the house as described
 * @param gauge the gauge used
 * @param result the samples: the readings in the order of {@link ReadingKind} (Pa, gauge; NaN where a hazard prevented
 *     one), then the relieved volume (m3) and whether a hazard ended the procedure (1 or 0)
 */
public record UncertainCheck(CheckSheet sheet, PressureGauge gauge, StudyResult result) {

    private static final int RELIEVED = ReadingKind.values().length;
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
     * @param result the samples: the readings in the order of {@link ReadingKind} (Pa, gauge; NaN where a hazard
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
            CheckProcedure procedure, List<UncertainInput> inputs, Function<double[], HotWaterSystem> house) {
        Objects.requireNonNull(procedure, "procedure");
        Objects.requireNonNull(house, "house");
        List<String> outputs = new ArrayList<>(Arrays.stream(ReadingKind.values())
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
    public static UncertainCheck of(
            CheckProcedure procedure, UncertainHouse house, PressureGauge gauge, StudyResult result) {
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
            CheckProcedure procedure, HotWaterSystem described, PressureGauge gauge, StudyResult result) {
        Objects.requireNonNull(procedure, "procedure");
        return new UncertainCheck(procedure.simulate(described), gauge, result);
    }

    private static double[] answers(
            CheckProcedure procedure, Function<double[], HotWaterSystem> house, double[] values) {
        try {
            CheckSheet sheet = procedure.simulate(house.apply(values));
            double[] answers = new double[ANSWERS];
            Arrays.fill(answers, 0, RELIEVED, Double.NaN);
            sheet.readings().forEach(reading -> answers[reading.kind().ordinal()] = reading.expectedGauge());
            answers[RELIEVED] = sheet.drips().volume();
            answers[HAZARD] = sheet.hazard().isPresent() ? 1 : 0;
            answers[RUNS] = sheet.balances().runs();
            answers[OPEN] = sheet.balances().open();
            return answers;
        } catch (IllegalArgumentException refused) {
            throw new SampleFailedException(refused.getMessage(), refused);
        }
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

    private ToleratedReading tolerated(Reading reading, OutputSpread spread) {
        return new ToleratedReading(
                reading, spread.quantile(LOW), spread.quantile(HIGH), gauge.error(), spread.answered());
    }

    /**
     * Samples in which a relief valve discharges between the closing of the taps and the next morning.
     *
     * @return the share, an estimate of the probability
     */
    public Share dripping() {
        return result.spread(RELIEVED).above(0);
    }

    /**
     * How many of the samples end in a hazard.
     *
     * @return the share, an estimate of the probability
     */
    public Share hazardous() {
        return result.spread(HAZARD).above(0.5);
    }
}
