package io.github.heatswell.diagnosis;

import io.github.heatswell.result.Balances;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The readings a forecast is compared with: every reading with its uncertainty. Residuals are in standard
 * uncertainties; beyond {@link #ROBUST} they count by their amount instead of their square (Huber, "Robust estimation
 * of a location parameter", Annals of Mathematical Statistics 35, 1964; from memory), so that an outlier pulls no
 * harder than a poor reading.
 *
 * <p>Neighbouring readings of a log are taken together in blocks. Where the pressure changes evenly that loses nothing;
 * where a valve opens between two readings it makes the residual depend smoothly on when, without which no search finds
 * its way.
 */
final class Target {

    /** Where a residual begins to be an outlier (standard uncertainties). */
    static final double ROBUST = 2.5;

    /** A difference of two readings (standard uncertainties) that scatter does not make. */
    private static final double JUMP = 8;

    private static final int FINE = 10;
    private static final int FINE_BLOCKS = 140;
    private static final int COARSE_BLOCKS = 40;
    private static final double TEMPERATURE_UNCERTAINTY = 1.5;
    private static final double BURN_UNCERTAINTY = 0.02;

    private final PressureLog log;
    private final SpotReadings spots;
    private final int block;
    private final Balances.Count count;
    private final boolean reseatAssumed;
    private final double[] blockUncertainty;
    private final List<Integer> withTemperature = new ArrayList<>();
    private final double firstBurn;

    /**
     * Readings to meet.
     *
     * @param log the log, or null
     * @param spots the readings on site
     * @param block how many readings of the log are taken together
     * @param reseatAssumed whether the description only assumes the reseat pressure of the relief valves
     */
    private Target(PressureLog log, SpotReadings spots, int block, Balances.Count count, boolean reseatAssumed) {
        this.log = log;
        this.spots = spots;
        this.block = block;
        this.count = count;
        this.reseatAssumed = reseatAssumed;
        blockUncertainty = log == null ? new double[0] : blockUncertainties();
        firstBurn = log == null ? Double.NaN : new BurnerColumn(log).firstBurn();
        for (int i = 0; log != null && i < log.count(); i++) {
            if (log.temperature(i).isPresent()) {
                withTemperature.add(i);
            }
        }
    }

    /** The readings as finely as their number suggests; the log may be null. */
    static Target fine(PressureLog log, SpotReadings spots) {
        return fine(log, spots, false);
    }

    /** The same, of a house whose description may only assume the reseat pressure of its relief valves. */
    static Target fine(PressureLog log, SpotReadings spots, boolean reseatAssumed) {
        return new Target(
                log,
                spots,
                log == null ? 1 : Math.max(1, Math.min(FINE, log.count() / FINE_BLOCKS)),
                new Balances.Count(),
                reseatAssumed);
    }

    boolean reseatAssumed() {
        return reseatAssumed;
    }

    /** The same readings taken together in long blocks, which leads a search past what is small. */
    Target coarse() {
        return new Target(
                log, spots, log == null ? 1 : Math.max(block, log.count() / COARSE_BLOCKS), count, reseatAssumed);
    }

    /**
     * The standard uncertainty of the sum of each block, in that of a reading. Where the log jumps, the jump may have been at any
     * time between two readings.
     */
    private double[] blockUncertainties() {
        double[] all = new double[(log.count() + block - 1) / block];
        for (int i = 0; i < log.count(); i++) {
            double jump = i == 0 ? 0 : Math.abs(log.gauge(i) - log.gauge(i - 1)) / log.uncertainty();
            all[i / block] += Math.max(Math.pow(log.looseness(i), 2), 1 + (jump > JUMP ? jump * jump / 12 : 0));
        }
        for (int i = 0; i < all.length; i++) {
            all[i] = Math.sqrt(all[i]);
        }
        return all;
    }

    PressureLog log() {
        return log;
    }

    SpotReadings spots() {
        return spots;
    }

    /** Counts the runs that are held against the readings. */
    Balances.Count balances() {
        return count;
    }

    /** How many readings there are. */
    int readings() {
        return count() - blockUncertainty.length + (log == null ? 0 : log.count());
    }

    /** How many residuals there are. */
    int count() {
        return blockUncertainty.length
                + withTemperature.size()
                + (Double.isNaN(firstBurn) ? 0 : 1)
                + spots.all().size();
    }

    /** Forecaster.Forecast less reading, in standard uncertainties, outliers held back. */
    double[] residuals(Forecaster.Forecast forecast) {
        double[] residuals = new double[count()];
        int next = 0;
        for (int i = 0; log != null && i < log.count(); i++) {
            residuals[i / block] += log.beyond(i, forecast.gauge()[i]);
        }
        for (; next < blockUncertainty.length; next++) {
            residuals[next] = robust(residuals[next] / blockUncertainty[next]);
        }
        for (int i : withTemperature) {
            double difference = forecast.warmer(i, log.temperature(i).orElseThrow());
            residuals[next++] = robust(difference / TEMPERATURE_UNCERTAINTY);
        }
        if (!Double.isNaN(firstBurn)) {
            double allowed = Math.hypot(BURN_UNCERTAINTY * firstBurn, log.interval());
            double burnt = Double.isNaN(forecast.firstBurn()) ? log.end() : forecast.firstBurn();
            residuals[next++] = robust((burnt - firstBurn) / allowed);
        }
        for (Map.Entry<SiteCheck, SpotReading> spot : spots.all().entrySet()) {
            double difference =
                    forecast.spots().get(spot.getKey()) - spot.getValue().value();
            residuals[next++] = robust(difference / spot.getValue().uncertainty());
        }
        return residuals;
    }

    /** The number whose square is twice Huber's loss. */
    static double robust(double residual) {
        double size = Math.abs(residual);
        return size <= ROBUST ? residual : Math.copySign(Math.sqrt(ROBUST * (2 * size - ROBUST)), residual);
    }
}
