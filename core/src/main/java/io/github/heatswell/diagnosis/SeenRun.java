package io.github.heatswell.diagnosis;

import java.util.List;
import java.util.function.IntPredicate;

/**
 * What somebody who stands by sees of a run besides the gauge, sample by sample.
 *
 * @param step how far samples lie apart (s)
 * @param discharged the water that has left the relief valves since the run began (m3)
 * @param heating whether burner or element are on
 */
record SeenRun(double step, double[] discharged, boolean[] heating) {

    /** How well it is known when something was seen, besides the times given (s, one standard deviation); our own judgement. */
    private static final double WHEN = 300;
    /** Nobody sees less than this drip (m3/s): a drop in ten seconds. */
    private static final double VISIBLE = 0.3e-6 / 60;
    /** A jug is read no better than this (m3), or than this share of what is in it; common practice, no source. */
    private static final double JUG = 0.1e-3;

    private static final double JUG_SHARE = 0.1;
    /** How often (-) what was seen is something else; our own judgement. */
    private static final double MISTAKEN = 0.01;

    /** What is asked of no sighting. */
    static final SeenRun NONE = new SeenRun(1, new double[0], new boolean[0]);

    /** Residuals of sightings, in standard uncertainties, in a run that starts at a time of the log (s). */
    double[] residuals(List<Sighting> sightings, double start) {
        return sightings.stream().mapToDouble(one -> residual(one, start)).toArray();
    }

    private double residual(Sighting one, double start) {
        if (one.kind() == Sighting.Kind.CAUGHT) {
            double came = until(one.until() - start) - until(one.from() - start);
            return Target.robust((came - one.volume()) / Math.max(JUG, JUG_SHARE * one.volume()));
        }
        return trusted(missed(one, start) / WHEN);
    }

    /** By how much time (s) a run misses what was seen. */
    private double missed(Sighting one, double start) {
        return switch (one.kind()) {
            case DRIPS -> away(one, start, this::drips);
            case HEATER_ON -> away(one, start, i -> heating[i]);
            case HEATER_OFF -> beforeOr(one, start, i -> !heating[i]);
            case DRY -> one.until() > one.from() ? wet(one, start) : beforeOr(one, start, i -> !drips(i));
            case CAUGHT, TAPS_SHUT -> 0;
        };
    }

    private boolean drips(int i) {
        return i > 0 && discharged[i] - discharged[i - 1] > VISIBLE * step;
    }

    /** How far (s) the nearest sample of a kind lies outside the time of a sighting; infinite if there is none. */
    private double away(Sighting one, double start, IntPredicate wanted) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < heating.length; i++) {
            if (wanted.test(i)) {
                double time = start + i * step;
                double outside = Math.max(one.from() - time, time - one.until());
                least = Math.min(least, Math.max(0, outside - step / 2));
            }
        }
        return least;
    }

    /** The same where nothing goes on before a run begins either. */
    private double beforeOr(Sighting one, double start, IntPredicate wanted) {
        return Math.min(Math.max(0, one.from() - start), away(one, start, wanted));
    }

    /** How long (s) water comes during a sighting. */
    private double wet(Sighting one, double start) {
        double wet = 0;
        for (int i = 1; i < heating.length; i++) {
            double time = start + i * step;
            wet += drips(i) && time > one.from() && time <= one.until() ? step : 0;
        }
        return wet;
    }

    /** What has left the relief valves by a time of the run (s). */
    private double until(double time) {
        double place = Math.max(0, Math.min(time / step, discharged.length - 1.0));
        int before = (int) place;
        int after = Math.min(before + 1, discharged.length - 1);
        return discharged[before] + (place - before) * (discharged[after] - discharged[before]);
    }

    /** The number whose square is minus twice the logarithm of how likely it is to see that, where one of so many is mistaken. */
    private static double trusted(double residual) {
        return Math.sqrt(-2 * Math.log(MISTAKEN + (1 - MISTAKEN) * Math.exp(-residual * residual / 2)));
    }
}
