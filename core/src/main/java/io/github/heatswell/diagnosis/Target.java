package io.github.heatswell.diagnosis;

import io.github.heatswell.result.Balances;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * The readings a forecast is compared with: every reading with its uncertainty. Residuals are in standard
 * uncertainties; beyond {@link #ROBUST} they count by their amount instead of their square (Huber, "Robust estimation
 * of a location parameter", Annals of Mathematical Statistics 35, 1964; from memory), so that an outlier pulls no
 * harder than a poor reading.
 *
 * <p>Neighbouring readings of a log are taken together in blocks. Where the pressure changes evenly that loses nothing;
 * where a valve opens between two readings it makes the residual depend smoothly on when, without which no search finds
 * its way.
 *
 * <p>No description is right to the last hundredth of a bar, and what it misses it misses for a while: hundreds of readings that are
 * all off by a little say little more than one. So the error of the model is a process of its own beside the scatter, stationary, of
 * Markov, with {@link #MODEL_ERROR} as standard deviation and {@link #REMEMBERED} as time constant (Uhlenbeck and Ornstein, Physical
 * Review 36, 1930; from memory). Its filter (Kalman, 1960; from memory) turns the differences into independent residuals.
 */
final class Target {

    /** Where a residual begins to be an outlier (standard uncertainties). */
    static final double ROBUST = 2.5;

    /** A difference of two readings (standard uncertainties) that scatter does not make. */
    private static final double JUMP = 8;

    /** How far (Pa, difference, one standard deviation) a right description may be off for a while; our own judgement. */
    private static final double MODEL_ERROR = 3_000;
    /** After so long (s) an error of the model is forgotten but for 1/e; our own judgement. */
    private static final double REMEMBERED = 1_800;

    /** How far (Pa, one standard deviation) a gauge falls below the pressure at rest while a tap runs; common practice, no source. */
    static final double DROOP = 0.3e5;

    /** No reading at all. */
    private static final int NONE = -1;
    /** The variance, in that of a reading, of one that counts for nothing. */
    private static final double WORTHLESS = 1e10;

    private static final int FINE = 10;
    private static final int FINE_BLOCKS = 140;
    private static final int COARSE_BLOCKS = 40;
    private static final double TEMPERATURE_UNCERTAINTY = 1.5;
    private static final double BURN_UNCERTAINTY = 0.02;

    private final PressureLog log;
    private final SpotReadings spots;
    private final int block;
    private final Balances.Count count;
    private final Set<Parameter> assumed;
    private final DrawMarks draws;
    private final int doubted;
    private final Whitening whitening;
    private final List<Integer> withTemperature = new ArrayList<>();
    private final double firstBurn;

    /**
     * Readings to meet.
     *
     * @param log the log, or null
     * @param spots the readings on site
     * @param block how many readings of the log are taken together
     * @param assumed what the description only assumes
     * @param draws the draws of the log
     * @param doubted the reading of the log that counts for nothing, or {@link #NONE}
     */
    private Target(
            PressureLog log,
            SpotReadings spots,
            int block,
            Balances.Count count,
            Set<Parameter> assumed,
            DrawMarks draws,
            int doubted) {
        this.log = log;
        this.doubted = doubted;
        this.spots = spots;
        this.block = block;
        this.count = count;
        this.assumed = assumed;
        this.draws = draws;
        whitening = log == null ? new Whitening(new double[0], new double[0], 0) : whitening();
        firstBurn = log == null ? Double.NaN : new BurnerColumn(log).firstBurn();
        for (int i = 0; log != null && i < log.count(); i++) {
            if (log.temperature(i).isPresent()) {
                withTemperature.add(i);
            }
        }
    }

    /** The readings as finely as their number suggests; the log may be null. */
    static Target fine(PressureLog log, SpotReadings spots) {
        return fine(log, spots, Set.of(), DrawMarks.none());
    }

    /** The same, with draws, of a house whose description only assumes some numbers. */
    static Target fine(PressureLog log, SpotReadings spots, Set<Parameter> assumed, DrawMarks draws) {
        return new Target(
                log,
                spots,
                log == null ? 1 : Math.max(1, Math.min(FINE, log.count() / FINE_BLOCKS)),
                new Balances.Count(),
                assumed,
                draws,
                NONE);
    }

    /** The same readings, with only those draws that somebody noted. */
    Target asNoted() {
        return new Target(log, spots, block, count, assumed, draws.noted(), doubted);
    }

    /** The same readings, of which one counts for nothing. */
    Target without(int reading) {
        return new Target(log, spots, block, count, assumed, draws, reading);
    }

    /**
     * The same readings, with every draw that may have left a mark, of a house of which the owner knows less than is usual: how much the
     * tank holds, how fast it heats and how much of its vessels water can fill.
     */
    Target withDoubts() {
        Set<Parameter> less = EnumSet.of(Parameter.TANK_VOLUME, Parameter.HEATING_RATE, Parameter.ACCEPTANCE);
        less.addAll(assumed);
        return new Target(log, spots, block, count, less, log == null ? draws : draws.withFaint(log), doubted);
    }

    /** The readings of the log before the first draw. */
    Target beforeDraws() {
        return fine(log.first(draws.before()), SpotReadings.none(), assumed, DrawMarks.none());
    }

    DrawMarks draws() {
        return draws;
    }

    Set<Parameter> assumed() {
        return assumed;
    }

    /** The same readings taken together in long blocks, which leads a search past what is small. */
    Target coarse() {
        return new Target(
                log,
                spots,
                log == null ? 1 : Math.max(block, log.count() / COARSE_BLOCKS),
                count,
                assumed,
                draws,
                doubted);
    }

    /**
     * Of each block the variance of its mean and when it is, in standard uncertainties of a reading. Where the log jumps, the jump may
     * have been at any time between two readings. An uncertainty that was given is taken for all there is.
     */
    private Whitening whitening() {
        double[] variance = new double[(log.count() + block - 1) / block];
        double[] times = new double[variance.length];
        double droop = Math.pow(DROOP / log.weights().averaging(), 2);
        for (int i = 0; i < log.count(); i++) {
            double jump = i == 0 ? 0 : Math.abs(log.gauge(i) - log.gauge(i - 1)) / log.uncertainty();
            variance[i / block] +=
                    Math.max(Math.pow(log.weights().looseness(i), 2), 1 + (jump > JUMP ? jump * jump / 12 : 0));
            variance[i / block] += i == doubted ? WORTHLESS : isDrooping(i) ? droop : 0;
            times[i / block] += log.time(i);
        }
        for (int i = 0; i < variance.length; i++) {
            variance[i] /= Math.pow(inBlock(i), 2);
            times[i] /= inBlock(i);
        }
        return new Whitening(
                variance,
                times,
                log.weights().isGivenItsUncertainty()
                        ? 0
                        : MODEL_ERROR / log.weights().averaging());
    }

    /** Whether water was drawn at a reading, so that the gauge may show less than a model without losses in pipes. */
    boolean isDrooping(int reading) {
        return draws.isRunning(log.time(reading));
    }

    /** How many readings of the log a block holds. */
    private int inBlock(int index) {
        return Math.min(block, log.count() - index * block);
    }

    /** The gains of a filter, which depend on when readings are, and not on what they say. */
    private static final class Whitening {
        private final double[] kept;
        private final double[] gain;
        private final double[] root;

        /** For means of such variances at such times (s), and such a standard deviation of the model's own error. */
        Whitening(double[] variance, double[] times, double error) {
            kept = new double[variance.length];
            gain = new double[variance.length];
            root = new double[variance.length];
            double unknown = error * error;
            for (int i = 0; i < variance.length; i++) {
                kept[i] = i == 0 ? 0 : Math.exp((times[i - 1] - times[i]) / REMEMBERED);
                double before = kept[i] * kept[i] * unknown + (1 - kept[i] * kept[i]) * error * error;
                root[i] = Math.sqrt(before + variance[i]);
                gain[i] = before / (before + variance[i]);
                unknown = (1 - gain[i]) * before;
            }
        }

        int count() {
            return root.length;
        }

        /** Residuals of means, one by one against what those before let expect; an outlier moves that no further than it counts. */
        double[] of(double[] means) {
            double[] residuals = new double[means.length];
            double expected = 0;
            for (int i = 0; i < means.length; i++) {
                expected *= kept[i];
                double apart = (means[i] - expected) / root[i];
                expected += gain[i] * root[i] * Math.max(-ROBUST, Math.min(ROBUST, apart));
                residuals[i] = robust(apart);
            }
            return residuals;
        }
    }

    PressureLog log() {
        return log;
    }

    SpotReadings spots() {
        return spots;
    }

    /** Counts the runs that are compared with the readings. */
    Balances.Count balances() {
        return count;
    }

    /** How many readings there are. */
    int readings() {
        return count() - whitening.count() + (log == null ? 0 : log.count());
    }

    /** How many residuals there are. */
    int count() {
        return whitening.count()
                + withTemperature.size()
                + (Double.isNaN(firstBurn) ? 0 : 1)
                + (log == null ? 0 : log.sightings().size())
                + spots.all().size();
    }

    /** Forecaster.Forecast less reading, in standard uncertainties, outliers held back. */
    double[] residuals(Forecaster.Forecast forecast) {
        double[] residuals = Arrays.copyOf(ofLog(forecast), count());
        int next = whitening.count();
        for (int i : withTemperature) {
            double difference = forecast.warmer(i, log.temperature(i).orElseThrow());
            residuals[next++] = robust(difference / TEMPERATURE_UNCERTAINTY);
        }
        if (!Double.isNaN(firstBurn)) {
            double allowed = Math.hypot(BURN_UNCERTAINTY * firstBurn, log.interval());
            double burnt = Double.isNaN(forecast.firstBurn()) ? log.end() : forecast.firstBurn();
            residuals[next++] = robust((burnt - firstBurn) / allowed);
        }
        for (double apart : forecast.seen()) {
            residuals[next++] = apart;
        }
        for (Map.Entry<SiteCheck, SpotReading> spot : spots.all().entrySet()) {
            double difference =
                    forecast.spots().get(spot.getKey()) - spot.getValue().value();
            residuals[next++] = robust(difference / spot.getValue().uncertainty());
        }
        return residuals;
    }

    /** The residuals of all that is no pressure of the log. */
    double[] ofOthers(Forecaster.Forecast forecast) {
        return Arrays.copyOfRange(residuals(forecast), whitening.count(), count());
    }

    /** What each residual behind those of the pressures is about, in their order. */
    List<Evidence.About> others() {
        List<Evidence.About> others = new ArrayList<>();
        withTemperature.forEach(i -> others.add(Evidence.About.of(Evidence.Part.TEMPERATURES, log.time(i))));
        if (!Double.isNaN(firstBurn)) {
            others.add(Evidence.About.of(Evidence.Part.FIRST_BURN, new BurnerColumn(log).firstSeenOn()));
        }
        if (log != null) {
            log.sightings()
                    .forEach(one -> others.add(Evidence.About.of(one.kind().part(), one.from())));
        }
        spots.all()
                .keySet()
                .forEach(check -> others.add(new Evidence.About(Evidence.Part.ON_SITE, Optional.of(check), 0)));
        return others;
    }

    /** The residuals of the pressures of the log, one for each block. */
    double[] ofLog(Forecaster.Forecast forecast) {
        double[] means = new double[whitening.count()];
        double[] gauge = forecast.gauge();
        int next = 0;
        for (int i = 0; i < means.length; i++) {
            int readings = inBlock(i);
            for (int end = next + readings; next < end; next++) {
                means[i] += log.weights().beyond(next, gauge[next]);
            }
            means[i] /= readings;
        }
        return whitening.of(means);
    }

    /** Which part of a residual a reading of the log makes (-). */
    double share(int index) {
        return 1.0 / inBlock(index / block);
    }

    /** The squares of these residuals, shared out among the readings of the log. */
    double[] squares(Forecaster.Forecast forecast) {
        double[] residuals = ofLog(forecast);
        return IntStream.range(0, log.count())
                .mapToDouble(i -> residuals[i / block] * residuals[i / block] * share(i))
                .toArray();
    }

    /** The number whose square is twice Huber's loss. */
    static double robust(double residual) {
        double size = Math.abs(residual);
        return size <= ROBUST ? residual : Math.copySign(Math.sqrt(ROBUST * (2 * size - ROBUST)), residual);
    }
}
