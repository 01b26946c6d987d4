package io.github.heatswell.sizing;

import io.github.heatswell.units.Limits;
import io.github.heatswell.units.Unit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.Objects;

/**
 * The axes of a map, as the caller sets them or as chosen for a house.
 *
 * @param volumes the volumes (m3), rising
 * @param precharges the precharges (Pa, gauge), rising
 */
record MapAxes(double[] volumes, double[] precharges) {

    static final int VOLUMES = 40;
    static final int PRECHARGES = 30;

    private static final double MIN_VOLUME = 1e-3;
    private static final double TIMES_THE_VESSEL = 3;
    private static final double[] ROUND = {1, 1.2, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10};
    private static final double MIN_SHARE = 0.3;
    private static final double MAX_SHARE = 1.6;
    /** Least static pressure (Pa, gauge) the shares are taken of. */
    private static final double MIN_STATIC = 0.5e5;
    /** Precharges begin and end at multiples of this (Pa). */
    private static final double STEP = 0.05e5;

    static final double MAX_PRECHARGE = 16e5;

    private static final int MIN_COUNT = 2;
    private static final int MAX_COUNT = 60;

    /** Volumes (m3) in equal ratios, from 1 L to about three times a vessel (m3). */
    static double[] chosenVolumes(double vessel) {
        double from = Math.min(MIN_VOLUME, vessel);
        double most = Math.max(5 * MIN_VOLUME, TIMES_THE_VESSEL * vessel);
        double to = Math.min(VesselType.MAX_VOLUME, roundUp(most));
        double[] volumes = new double[VOLUMES];
        for (int i = 0; i < VOLUMES; i++) {
            volumes[i] = from * Math.pow(to / from, i / (VOLUMES - 1.0));
        }
        volumes[VOLUMES - 1] = to;
        return volumes;
    }

    /**
     * Precharges (Pa, gauge) in equal steps, from 0.3 to 1.6 times the static pressure at the vessel but not above the
     * working pressure, wider if the present precharge lies outside. The one nearest to the static pressure gives way to
     * it, since the smallest vessel lies there.
     *
     * @param present the present precharge (Pa, gauge), or NaN
     */
    static double[] chosenPrecharges(double staticGauge, double workingGauge, double present) {
        double usual = Math.max(MIN_STATIC, staticGauge);
        double to = Math.min(MAX_SHARE * usual, workingGauge);
        double from = MIN_SHARE * Math.min(usual, to / MAX_SHARE);
        if (present > 0) {
            from = Math.min(from, 0.8 * present);
            to = Math.max(to, 1.1 * present);
        }
        from = Math.max(STEP, Math.floor(from / STEP) * STEP);
        to = Math.min(Math.min(MAX_PRECHARGE, workingGauge), Math.ceil(to / STEP) * STEP);
        from = Math.min(from, to / 2);
        double[] precharges = new double[PRECHARGES];
        for (int i = 0; i < PRECHARGES; i++) {
            precharges[i] = from + (to - from) * i / (PRECHARGES - 1);
        }
        double step = (to - from) / (PRECHARGES - 1);
        int nearest = (int) Math.round((staticGauge - from) / step);
        if (nearest > 0 && nearest < PRECHARGES - 1) {
            precharges[nearest] = staticGauge;
        }
        return precharges;
    }

    /**
     * The values (SI) of an axis that the caller sets in a unit.
     *
     * @throws IllegalArgumentException if there are too few or too many, if one is outside the limits or does not rise
     */
    static double[] checked(Limits limits, Unit unit, double... values) {
        Objects.requireNonNull(values, limits.field());
        Limits.whole(limits.field() + ": the number of them", values.length, MIN_COUNT, MAX_COUNT);
        double[] si = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            si[i] = limits.check(values[i], unit);
            if (i > 0 && si[i] <= si[i - 1]) {
                throw new IllegalArgumentException(limits.field() + ": " + Limits.quantity(values[i], unit)
                        + " is not above " + Limits.quantity(values[i - 1], unit)
                        + " before it; write them in rising order");
            }
        }
        return si;
    }

    private static double roundUp(double volume) {
        double power = Math.pow(10, Math.floor(Math.log10(volume)));
        double share = Arrays.stream(ROUND)
                .filter(round -> round * power >= volume * (1 - 1e-9))
                .findFirst()
                .orElse(10);
        return new BigDecimal(share * power)
                .round(new MathContext(2, RoundingMode.HALF_UP))
                .doubleValue();
    }
}
