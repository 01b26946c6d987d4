package io.github.heatswell.diagnosis;

import io.github.heatswell.plant.HotWaterSystem;
import io.github.heatswell.simulation.SimulationException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * One hypothesis held against the readings. A position names a value for each of its parameters; what is known beforehand about a
 * parameter counts as one more reading of it.
 */
final class Trial {

    /** A residual (standard uncertainties) for what cannot be simulated: worse than anything that can. */
    private static final double HOPELESS = 1e3;

    private final HotWaterSystem described;
    private final Hypothesis hypothesis;
    private final Target target;
    private final List<FreeParameter> parameters;
    private final double knownStart;
    private final Forecaster forecaster;
    private int simulations;

    Trial(HotWaterSystem described, Hypothesis hypothesis, Target target) {
        this.described = described;
        this.hypothesis = hypothesis;
        this.target = target;
        Circumstances circumstances = new Circumstances(described, target.log());
        parameters = circumstances.with(hypothesis.open());
        knownStart = circumstances.knownStart();
        forecaster = new Forecaster(target.log(), target.spots().all().keySet());
    }

    /** The same hypothesis held against the readings in long blocks. */
    Trial coarse() {
        return new Trial(described, hypothesis, target.coarse());
    }

    Hypothesis hypothesis() {
        return hypothesis;
    }

    Target target() {
        return target;
    }

    List<FreeParameter> parameters() {
        return parameters;
    }

    /** How often a house was simulated. */
    int simulations() {
        return simulations;
    }

    /** Positions to begin a search from: every combination of the starts of the cause's own parameters. */
    List<double[]> starts() {
        List<double[]> starts = List.of(new double[parameters.size()]);
        for (int i = 0; i < hypothesis.open().size(); i++) {
            FreeParameter parameter = parameters.get(i);
            List<double[]> more = new ArrayList<>();
            for (double[] start : starts) {
                for (double value : parameter.starts()) {
                    double[] other = start.clone();
                    other[i] = parameter.position(value);
                    more.add(other);
                }
            }
            starts = more;
        }
        return starts;
    }

    /** Counts simulations that were made elsewhere. */
    void count(int more) {
        simulations += more;
    }

    double[] clamp(double[] position) {
        double[] allowed = new double[position.length];
        for (int i = 0; i < allowed.length; i++) {
            allowed[i] = parameters.get(i).clamp(position[i]);
        }
        return allowed;
    }

    /** The house at a position. */
    HotWaterSystem house(double[] position) {
        return hypothesis.house(
                described,
                houseParameters(),
                Arrays.copyOf(values(position), houseParameters().size()));
    }

    double[] values(double[] position) {
        double[] values = new double[position.length];
        for (int i = 0; i < values.length; i++) {
            values[i] = parameters.get(i).value(position[i]);
        }
        return values;
    }

    /** Parameters of the house; the start of the heat-up, always the last, is none. */
    private List<FreeParameter> houseParameters() {
        int last = parameters.size() - 1;
        boolean open = parameters.get(last).parameter() == Parameter.START_OF_HEATING;
        return open ? parameters.subList(0, last) : parameters;
    }

    private double start(double[] position) {
        int last = parameters.size() - 1;
        boolean open = parameters.get(last).parameter() == Parameter.START_OF_HEATING;
        return open ? parameters.get(last).value(position[last]) : knownStart;
    }

    /** What could be read at a position. */
    Forecast forecast(double[] position) {
        simulations++;
        return forecaster.of(house(position), start(position));
    }

    /** Residuals of the readings and then of what is known beforehand. */
    double[] residuals(double[] position) {
        int readings = target.count();
        double[] all = Arrays.copyOf(readingResiduals(position), readings + parameters.size());
        for (int i = 0; i < parameters.size(); i++) {
            all[readings + i] = parameters.get(i).isOpen() ? 0 : position[i];
        }
        return all;
    }

    private double[] readingResiduals(double[] position) {
        try {
            return target.residuals(forecast(position));
        } catch (IllegalArgumentException | SimulationException impossible) {
            double[] hopeless = new double[target.count()];
            Arrays.fill(hopeless, Target.robust(HOPELESS));
            return hopeless;
        }
    }

    static double sumOfSquares(double[] residuals) {
        double sum = 0;
        for (double residual : residuals) {
            sum += residual * residual;
        }
        return sum;
    }
}
