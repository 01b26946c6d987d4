package io.github.heatswell.diagnosis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How well each parameter of a finished search is known. First the covariance, from differences as long as the uncertainty itself,
 * so that an event between two samples does not pass for a slope. For the numbers of a cause that is not far behind, the interval
 * reaches as far as the {@link Profile} too, where the sum of squares has grown by 3.84, the 95 % point of chi-square with one
 * degree of freedom.
 */
final class Intervals {

    private static final double NORMAL_95 = 1.96;
    private static final double CHI_SQUARE_95 = 3.84;
    /** An interval that covers more than this of the range carries nothing. */
    private static final double ALMOST_ALL = 0.6;

    private static final double HARDLY_BETTER = 0.75;
    /** A number that may be so many times another (-) is not told; our own judgement. */
    private static final double VAGUE = 8;

    private static final double MIN_STEP = 0.002;
    private static final double MAX_STEP = 0.7;

    private final Trial trial;
    private final Search.End end;
    private final double inflation;

    /**
     * Intervals about the end of a search.
     *
     * @param trial what was searched
     * @param end where it ended
     * @param inflation how much larger the variance is than the uncertainty of the readings says, at least 1
     */
    Intervals(Trial trial, Search.End end, double inflation) {
        this.trial = trial;
        this.end = end;
        this.inflation = inflation;
    }

    List<Estimate> estimates(List<Profile> profiles) {
        double[] deviations = slopes().deviations();
        List<Estimate> estimates = new ArrayList<>();
        for (int i = 0; i < deviations.length; i++) {
            double reach = NORMAL_95 * deviations[i] * Math.sqrt(inflation);
            double[] interval = {end.position()[i] - reach, end.position()[i] + reach};
            FreeParameter parameter = trial.parameters().get(i);
            for (Profile profile : profiles) {
                if (profile.index() == i) {
                    double[] within = profile.within(CHI_SQUARE_95 * inflation);
                    interval[0] = Math.min(interval[0], within[0]);
                    interval[1] = Math.max(interval[1], within[1]);
                }
            }
            int number = i;
            boolean profiled = profiles.stream().anyMatch(profile -> profile.index() == number);
            estimates.add(estimate(parameter, end.position()[i], interval, profiled));
        }
        return List.copyOf(estimates);
    }

    /** Slopes from differences as long as the uncertainty itself. */
    Slopes slopes() {
        double[] first = new Slopes(trial, end.position(), lengths(null)).deviations();
        return new Slopes(trial, end.position(), lengths(first));
    }

    /** No gauge says how hot water is that nobody measured, after draws that nobody told. */
    private Estimate estimate(FreeParameter free, double position, double[] interval, boolean profiled) {
        double low = free.clamp(interval[0]);
        double high = free.clamp(interval[1]);
        double range = free.position(free.high()) - free.position(free.low());
        Estimate.Standing standing = Estimate.Standing.CARRIED;
        boolean hidden = free.parameter() == Parameter.SET_POINT && trial.heatHidden(end.position());
        if (hidden || isVague(free, low, high) || (free.isOpen() || profiled) && high - low > ALMOST_ALL * range) {
            standing = Estimate.Standing.NOT_CARRIED;
        } else if (!free.isOpen() && low <= 0 && high >= 0 && high - low > 2 * NORMAL_95 * HARDLY_BETTER) {
            standing = Estimate.Standing.AS_DESCRIBED;
        }
        return new Estimate(
                free.parameter(),
                free.value(position),
                free.value(low),
                free.value(high),
                standing,
                settledBy(free.parameter()));
    }

    /** Whether all that is known of how the house compares with its description spans an order of magnitude. */
    static boolean isVague(FreeParameter free, double low, double high) {
        return free.parameter() == Parameter.COMPLIANCE && free.value(high) > VAGUE * free.value(low);
    }

    /** Behind a mixing valve a tap says nothing about how hot the tank is. */
    private Optional<SiteCheck> settledBy(Parameter parameter) {
        boolean mixed = trial.house(end.position()).heater().mixedTo().isPresent();
        return Optional.ofNullable(parameter.settledBy()).filter(check -> check != SiteCheck.HOT_TAP || !mixed);
    }

    private double[] lengths(double[] deviations) {
        double[] lengths = new double[end.position().length];
        for (int i = 0; i < lengths.length; i++) {
            lengths[i] = deviations == null
                    ? Search.DIFFERENCE
                    : Math.min(MAX_STEP, Math.max(MIN_STEP, deviations[i] * Math.sqrt(inflation)));
        }
        return lengths;
    }
}
