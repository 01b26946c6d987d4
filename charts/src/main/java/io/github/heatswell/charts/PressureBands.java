package io.github.heatswell.charts;

import io.github.heatswell.units.Decimals;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/** Round pressures that part a map into bands: finer up to a little above the relief valve, coarser beyond. */
final class PressureBands {

    private static final double FINE = 7;
    private static final double COARSE = 3;
    private static final double BEYOND_RELIEF = 1.2;

    private static final double WITHOUT_RELIEF = 1.7;

    /** Peaks this near (in the unit shown) are one. */
    private static final double FLAT = 0.02;

    private final List<Double> levels = new ArrayList<>();
    private final String unit;

    /**
     * Bands for a map.
     *
     * @param peaks the peaks, in the unit shown
     * @param relief the set pressure of the relief valve, in the unit shown, or empty
     * @param unit the unit shown
     */
    PressureBands(double[][] peaks, OptionalDouble relief, String unit) {
        this.unit = unit;
        double low = Arrays.stream(peaks).flatMapToDouble(Arrays::stream).min().orElseThrow();
        double high = Arrays.stream(peaks).flatMapToDouble(Arrays::stream).max().orElseThrow();
        if (high - low < FLAT) {
            return;
        }
        double middle = relief.orElse(WITHOUT_RELIEF * low) * BEYOND_RELIEF;
        double knee = middle > low && middle < high ? middle : high;
        double last = add(low, knee, ValueScale.roundStep((knee - low) / FINE));
        if (knee < high) {
            add(Math.max(last, knee), high, ValueScale.roundStep((high - knee) / COARSE));
        }
    }

    /** Adds the multiples of a step within a range, and returns the last. */
    private double add(double above, double below, double step) {
        double last = above;
        for (long i = (long) Math.floor(above / step + 1e-9) + 1; i * step < below * (1 - 1e-9); i++) {
            last = i * step;
            levels.add(last);
        }
        return last;
    }

    List<Double> levels() {
        return levels;
    }

    /** What a band is called that lies below the level of that number; the last lies above all. */
    String name(int band) {
        if (band == 0) {
            return "below " + label(0);
        }
        return band == levels.size()
                ? label(band - 1) + " and more"
                : number(levels.get(band - 1)) + " to " + label(band);
    }

    String label(int level) {
        return number(levels.get(level)) + " " + unit;
    }

    private static String number(double value) {
        return Decimals.atMost(value, 3);
    }
}
