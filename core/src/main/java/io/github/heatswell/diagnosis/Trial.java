package io.github.heatswell.diagnosis;

import io.github.heatswell.simulation.SimulationException;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Tank;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * One hypothesis compared with the readings. A position names a value for each of its parameters; what is known beforehand about a
 * parameter counts as one more reading of it.
 */
final class Trial {

    /** A residual (standard uncertainties) for what cannot be simulated: worse than anything that can. */
    private static final double HOPELESS = 1e3;
    /** What a gauge that is stuck still shows of a pressure (-): not nothing, which no reading could be traced back to. */
    private static final double UNMOVED = 1e-6;
    /** Further from the described value (standard deviations) no search begins. */
    private static final double MAX_POSITION = 3;
    /** So many layers show when a tank calls for heat, in a tenth of the time that a dozen take. */
    private static final int FEW_LAYERS = 4;

    /** Where a search of readings by hand begins (standard deviations from what is assumed); our own judgement. */
    private static final Map<Parameter, List<Double>> UNREAD = Map.of(
            Parameter.RESEAT_SHARE, List.of(-0.5, 0.0, 0.5),
            Parameter.COMPLIANCE, List.of(-1.0, 0.0, 1.0, 2.0),
            Parameter.HEATING_RATE, List.of(-1.0, 0.0, 1.0));

    private final HotWaterSystem described;
    private final Hypothesis hypothesis;
    private final Target target;
    private final Circumstances circumstances;
    private final List<FreeParameter> parameters;
    private final Forecaster forecaster;
    private final Recent<List<Double>, HotWaterSystem> houses;
    private double[] lastValues;
    private HotWaterSystem lastHouse;

    Trial(HotWaterSystem described, Hypothesis hypothesis, Target target) {
        this(
                described,
                hypothesis,
                target,
                new Forecaster(target.log(), target.spots().all().keySet(), target.balances()),
                new Recent<>());
    }

    private Trial(
            HotWaterSystem described,
            Hypothesis hypothesis,
            Target target,
            Forecaster forecaster,
            Recent<List<Double>, HotWaterSystem> houses) {
        this.described = described;
        this.hypothesis = hypothesis;
        this.target = target;
        circumstances = new Circumstances(described, target.log(), target.assumed(), target.draws());
        parameters = circumstances.with(hypothesis.open());
        this.forecaster = forecaster;
        this.houses = houses;
    }

    /** The same hypothesis compared with the readings in long blocks, in a simpler house. */
    Trial coarse() {
        Trial simpler = simpler();
        return new Trial(simpler.described, hypothesis, target.coarse(), simpler.forecaster.another(), simpler.houses);
    }

    /** The same hypothesis in a house whose tank has few layers, for a run of many takes long; this one if it has few. */
    Trial simpler() {
        Tank tank = described.tank();
        if (tank.layers() <= FEW_LAYERS || tank.inletMixing() > 0) {
            return this;
        }
        HotWaterSystem simpler = described.toBuilder()
                .tank(tank.toBuilder().layers(FEW_LAYERS).build())
                .build();
        return new Trial(simpler, hypothesis, target, forecaster.another(), new Recent<>());
    }

    /** Another hypothesis in the same house, held against the same readings. */
    Trial of(Hypothesis other) {
        return new Trial(described, other, target);
    }

    /** The same hypothesis in the same house, held against other readings. */
    Trial against(Target other) {
        return new Trial(described, hypothesis, other);
    }

    /** The same hypothesis where one reading of the log counts for nothing; it remembers for itself, for several are searched at a time. */
    Trial without(int reading) {
        return new Trial(described, hypothesis, target.without(reading));
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

    /**
     * Positions to begin a search from: every combination of the starts of the cause's own parameters, with the supply as the log
     * begins, and with the supply and what water can fill of the vessel as described, and a tank that is half warm where nobody said that
     * it was cold.
     */
    List<double[]> starts() {
        double[] described = new double[parameters.size()];
        double[] begun = described.clone();
        for (int i = 0; target.log() != null && i < begun.length; i++) {
            if (parameters.get(i).parameter() == Parameter.SUPPLY_PRESSURE) {
                begun[i] = begun(i);
            }
        }
        List<double[]> starts = new ArrayList<>(starts(begun));
        starts.add(begun);
        int warmth = index(Parameter.START_TEMPERATURE);
        if (warmth >= 0 && !parameters.get(warmth).isOpen()) {
            FreeParameter water = parameters.get(warmth);
            described[warmth] = water.position((water.starts().get(0) + water.high()) / 2);
        }
        int acceptance = index(Parameter.ACCEPTANCE);
        if (acceptance >= 0) {
            FreeParameter share = parameters.get(acceptance);
            described[acceptance] = share.position(share.starts().get(1));
        }
        starts.addAll(starts(described));
        starts.addAll(byHand(begun));
        return starts;
    }

    /**
     * A cause without a number of its own, with other values of what nobody read: where a valve closes, how far pipes give and how fast the
     * tank heats. Few readings by hand jump as a valve opens between two of them, and no search gets across that by small steps.
     */
    private List<double[]> byHand(double[] from) {
        boolean fixed = hypothesis.open().isEmpty()
                && target.log() != null
                && !target.log().tellsItsScatter()
                && index(Parameter.RESEAT_SHARE) >= 0;
        List<double[]> starts = fixed ? List.of(from) : List.of();
        for (Map.Entry<Parameter, List<Double>> unread : UNREAD.entrySet()) {
            int index = index(unread.getKey());
            starts = index < 0
                    ? starts
                    : starts.stream()
                            .flatMap(start -> unread.getValue().stream().map(at -> moved(start, index, at)))
                            .toList();
        }
        return starts;
    }

    private double[] moved(double[] start, int index, double position) {
        double[] other = start.clone();
        other[index] = position;
        return clamp(other);
    }

    /** The position of the supply with which the gauge begins as the log does, within what is likely. */
    private double begun(int index) {
        FreeParameter supply = parameters.get(index);
        double shown = circumstances.beginning();
        double above = described.head(described.gaugeHeight());
        double position = supply.position(Math.max(supply.low(), shown + above));
        return supply.isOpen() ? position : Math.max(-MAX_POSITION, Math.min(MAX_POSITION, position));
    }

    /**
     * Every combination of the starts of the cause's own parameters, with all others where they are; of two causes those of either, with
     * the other where it is.
     */
    List<double[]> starts(double[] from) {
        int own = hypothesis.open().size();
        int second = hypothesis.also().map(other -> other.open().size()).orElse(0);
        List<double[]> starts = new ArrayList<>(starts(from, 0, own - second));
        if (hypothesis.also().isPresent()) {
            starts.addAll(starts(from, own - second, own));
        }
        return starts;
    }

    private List<double[]> starts(double[] from, int first, int end) {
        List<double[]> starts = List.of(from);
        for (int i = first; i < end; i++) {
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

    /** How many draws that nobody noted are taken to explain the readings at a position. */
    int guessedDraws(double[] position) {
        return (int) guessed().filter(i -> !isDry(i, position)).count();
    }

    /** Whether no thermometer saw heated water, so that the set point, if it is roughly known, rests on what the dial says. */
    boolean heatUnread() {
        return target.log() != null
                && !target.log().showsHeatedTo(described.heater().setPoint())
                && !target.spots().all().containsKey(SiteCheck.HOT_TAP)
                && !parameters.get(index(Parameter.SET_POINT)).isOpen();
    }

    /** Whether the gauge cannot tell either: after draws that nobody told, or where the temperatures of the log are of water yet to be heated. */
    boolean heatHidden(double[] position) {
        return heatUnread() && (target.log().hasTemperature() || guessedDraws(position) > 0);
    }

    /** Where the draws stand. */
    IntStream drawn() {
        return IntStream.range(0, parameters.size()).filter(this::isVolume);
    }

    /** Where those stand that the log shows and nobody noted. */
    IntStream guessed() {
        return drawn().filter(i -> !target.draws().isNoted(parameters.get(i).parameter()));
    }

    private boolean isVolume(int index) {
        return parameters.get(index).parameter().isDrawn();
    }

    /** Whether a number is the volume of a draw that was none. */
    private boolean isDry(int index, double[] position) {
        return isVolume(index) && parameters.get(index).value(position[index]) < DrawMarks.MIN_VOLUME;
    }

    /** A position without one of the draws that nobody noted. */
    double[] without(int draw, double[] position) {
        double[] dry = position.clone();
        dry[draw] = parameters.get(draw).position(0);
        return dry;
    }

    double[] clamp(double[] position) {
        double[] allowed = new double[position.length];
        for (int i = 0; i < allowed.length; i++) {
            allowed[i] = parameters.get(i).clamp(position[i]);
        }
        return allowed;
    }

    /** The house at a position; the same as before if nothing of the house differs. */
    HotWaterSystem house(double[] position) {
        int count = houseParameters().size();
        double[] values = Arrays.copyOf(values(position), count + 1);
        values[count] = startCostsNothing(position) ? 0 : start(position);
        if (!Arrays.equals(values, lastValues)) {
            lastHouse = houses.get(Arrays.stream(values).boxed().toList(), numbers -> houseWith(values));
            lastValues = values;
        }
        return lastHouse;
    }

    /** The house with values of its parameters, drawn from after a start (s). */
    private HotWaterSystem houseWith(double[] valuesAndStart) {
        int count = valuesAndStart.length - 1;
        double[] volumes = IntStream.range(0, count)
                .filter(this::isVolume)
                .mapToDouble(i -> valuesAndStart[i])
                .toArray();
        HotWaterSystem house = hypothesis.house(described, houseParameters(), Arrays.copyOf(valuesAndStart, count));
        return target.draws().in(house, volumes, valuesAndStart[count]);
    }

    double[] values(double[] position) {
        double[] values = new double[position.length];
        for (int i = 0; i < values.length; i++) {
            values[i] = parameters.get(i).value(position[i]);
        }
        return values;
    }

    /** Where a parameter stands among all, or -1 if it is not left open. */
    int index(Parameter parameter) {
        return IntStream.range(0, parameters.size())
                .filter(i -> parameters.get(i).parameter() == parameter)
                .findFirst()
                .orElse(-1);
    }

    /** Parameters of the house, which come before the others. */
    private List<FreeParameter> houseParameters() {
        int count = (int)
                parameters.stream().filter(free -> free.parameter().isOfHouse()).count();
        return parameters.subList(0, count);
    }

    /** Gauge and thermometer at a position. */
    private Forecaster.Instruments instruments(double[] position) {
        if (hypothesis.cause() == Cause.GAUGE_STUCK) {
            return new Forecaster.Instruments(circumstances.beginning(), UNMOVED, 0);
        }
        double zero = 0;
        double scale = 1;
        double warmer = 0;
        for (int i = 0; i < position.length; i++) {
            FreeParameter free = parameters.get(i);
            switch (free.parameter()) {
                case GAUGE_ZERO -> zero = free.value(position[i]);
                case GAUGE_SCALE -> scale = free.value(position[i]);
                case THERMOMETER_ERROR -> warmer = free.value(position[i]);
                default -> {
                    // none of the instruments
                }
            }
        }
        return new Forecaster.Instruments(zero, scale, warmer);
    }

    /** The time of the log (s) at which the run starts. */
    private double start(double[] position) {
        int last = parameters.size() - 1;
        return startIsOpen() ? parameters.get(last).value(position[last]) : 0;
    }

    /** What could be read at a position. */
    Forecaster.Forecast forecast(double[] position) {
        return forecaster.of(house(position), start(position), instruments(position));
    }

    /** What the gauge shows at a position all along the log. */
    HypothesisFit.Course course(double[] position) {
        return forecaster.course(house(position), start(position), instruments(position));
    }

    /** The readings of the log that the house at a position does not show; none that is low while a tap runs. */
    List<Misfit.Stray> strays(double[] position) {
        return forecaster.strays(house(position), start(position), instruments(position)).stream()
                .filter(stray -> stray.above() > 0 || !target.draws().isRunning(stray.time()))
                .toList();
    }

    /**
     * Whether other values of the start of the heat-up need no other run at a position: it is another house that is drawn from earlier.
     */
    boolean startCostsNothing(double[] position) {
        return startIsOpen()
                && IntStream.range(0, parameters.size()).noneMatch(i -> isVolume(i) && !isDry(i, position));
    }

    /** Whether the last parameter is the start of the heat-up. */
    boolean startIsOpen() {
        return parameters.get(parameters.size() - 1).parameter() == Parameter.START_OF_HEATING;
    }

    /**
     * Residuals of the readings, then of what is known beforehand, and where a person read the gauge that of a pressure nobody saw:
     * see {@link Forecaster#unseen}.
     */
    double[] residuals(double[] position) {
        int readings = target.count();
        double[] all = Arrays.copyOf(readingResiduals(position), residuals());
        for (int i = 0; i < parameters.size(); i++) {
            all[readings + i] = parameters.get(i).isOpen() || isDry(i, position) ? 0 : position[i];
        }
        if (isBoundBetween()) {
            all[all.length - 1] = Target.robust(unseen(position) / target.log().uncertainty());
        }
        return all;
    }

    /** How many residuals there are. */
    int residuals() {
        return target.count() + parameters.size() + (isBoundBetween() ? 1 : 0);
    }

    /** Whether what happens between two readings counts: those of a person, by a cause that leaves the relief valve able to open. */
    private boolean isBoundBetween() {
        return target.log() != null && !target.log().tellsItsScatter() && hypothesis.cause() != Cause.RELIEF_OPENS_HIGH;
    }

    /** How far (Pa) the run at a position goes, unseen by one who reads the gauge, beyond what the plates allow. */
    private double unseen(double[] position) {
        try {
            return forecaster.unseen(house(position), start(position), instruments(position));
        } catch (IllegalArgumentException | SimulationException impossible) {
            return 0; // its readings say enough
        }
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
