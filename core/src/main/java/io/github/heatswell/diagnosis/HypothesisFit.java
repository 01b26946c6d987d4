package io.github.heatswell.diagnosis;

import io.github.heatswell.system.HotWaterSystem;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Fit of one cause to the readings, or of two at once where no single one explains them.
 *
 * @param cause the cause; of two the one that comes closer alone
 * @param device the name of the valve it is about, empty if there is no choice
 * @param also the second cause, if there is one
 * @param sumOfSquares the sum of squared residuals in standard uncertainties, outliers held back, with what was known
 *     beforehand (-)
 * @param criterion the Bayesian information criterion less that of the best hypothesis (-); 0 for the best
 * @param weight the share of this hypothesis among all, by the criterion (-)
 * @param estimates the numbers of the house: those of the cause first, then the circumstances every hypothesis leaves
 *     open
 * @param ownNumbers how many of the estimates belong to the cause
 * @param misfit what is left unexplained of the log, or empty without a log
 * @param evidence what each part of the log says; empty without a log
 * @param house the best-fitting house
 * @param gauge what the gauge shows in that house at the times of the log (Pa, gauge)
 * @param course what it shows there throughout; nothing without a log
 */
public record HypothesisFit(
        Cause cause,
        String device,
        Optional<Also> also,
        double sumOfSquares,
        double criterion,
        double weight,
        List<Estimate> estimates,
        int ownNumbers,
        Optional<Misfit> misfit,
        List<Evidence> evidence,
        HotWaterSystem house,
        List<Double> gauge,
        Course course)
        implements Hazard {

    /**
     * A second cause beside the first.
     *
     * @param cause the cause
     * @param device the name of the valve or vessel it is about, empty if there is no choice
     */
    public record Also(Cause cause, String device) {

        /**
         * Checks that both are there.
         *
         * @param cause the cause
         * @param device the name of the valve or vessel it is about, empty if there is no choice
         */
        public Also {
            Objects.requireNonNull(cause, "cause");
            Objects.requireNonNull(device, "device");
        }
    }

    /**
     * What the gauge shows throughout a run, between the readings of a log too.
     *
     * @param times when (s, in the time of the log), rising
     * @param gauge the pressure at these times (Pa, gauge)
     */
    public record Course(List<Double> times, List<Double> gauge) {

        /** No run at all. */
        public static final Course NONE = new Course(List.of(), List.of());

        /**
         * Copies the lists.
         *
         * @param times when (s, in the time of the log), rising
         * @param gauge the pressure at these times (Pa, gauge)
         * @throws IllegalArgumentException if their numbers differ
         */
        public Course {
            times = List.copyOf(Objects.requireNonNull(times, "times"));
            gauge = List.copyOf(Objects.requireNonNull(gauge, "gauge"));
            if (times.size() != gauge.size()) {
                throw new IllegalArgumentException("gauge: there must be one for every time");
            }
        }
    }

    /**
     * Checks and copies.
     *
     * @param cause the cause
     * @param device the name of the valve it is about, empty if there is no choice
     * @param also the second cause, if there is one
     * @param sumOfSquares the sum of squared residuals in standard uncertainties (-)
     * @param criterion the Bayesian information criterion less that of the best hypothesis (-)
     * @param weight the share of this hypothesis among all, by the criterion (-)
     * @param estimates the numbers of the house
     * @param ownNumbers how many of the estimates belong to the cause
     * @param misfit what is left unexplained of the log, or empty without a log
     * @param evidence what each part of the log says; empty without a log
     * @param house the best-fitting house
     * @param gauge what the gauge shows in that house at the times of the log (Pa, gauge)
     * @param course what it shows there throughout; nothing without a log
     */
    public HypothesisFit {
        Objects.requireNonNull(cause, "cause");
        Objects.requireNonNull(device, "device");
        Objects.requireNonNull(also, "also");
        Objects.requireNonNull(misfit, "misfit");
        Objects.requireNonNull(house, "house");
        estimates = List.copyOf(Objects.requireNonNull(estimates, "estimates"));
        evidence = List.copyOf(Objects.requireNonNull(evidence, "evidence"));
        gauge = List.copyOf(Objects.requireNonNull(gauge, "gauge"));
        Objects.requireNonNull(course, "course");
    }

    /**
     * Whether people may be hurt while this lasts. An expansion valve that opens late hurts nobody where a relief valve guards the tank.
     *
     * @return true if it is a hazard that comes before everything else
     */
    public boolean isHazard() {
        return isHazard(cause, device)
                || also.filter(second -> isHazard(second.cause(), second.device()))
                        .isPresent();
    }

    /** The same so far behind the best (-), with that share of all. */
    HypothesisFit at(double behind, double share) {
        return new HypothesisFit(
                cause,
                device,
                also,
                sumOfSquares,
                behind,
                share,
                estimates,
                ownNumbers,
                misfit,
                evidence,
                house,
                gauge,
                course);
    }

    /** Whether another explanation blames the same. */
    boolean isSame(HypothesisFit other) {
        return cause == other.cause && device.equals(other.device) && also.equals(other.also);
    }

    private boolean isHazard(Cause fault, String valveOf) {
        boolean guarded = fault == Cause.RELIEF_OPENS_HIGH
                && house.reliefValves().stream()
                        .filter(valve -> valve.name().equals(valveOf))
                        .anyMatch(valve -> Overpressure.isGuardedWithout(house, valve));
        return fault.isHazard() && !guarded;
    }

    /**
     * Whether this explanation blames a cause, alone or beside another.
     *
     * @param fault the cause
     * @return true if it is among what is wrong in this explanation
     */
    public boolean blames(Cause fault) {
        return cause == fault || also.filter(second -> second.cause() == fault).isPresent();
    }

    /**
     * Whether a thermometer was read, in the log or at a hot tap.
     *
     * @return true if the readings are not of pressure alone
     */
    public boolean isHeldAgainstTemperatures() {
        return evidence.stream()
                .anyMatch(part -> part.part() == Evidence.Part.TEMPERATURES
                        || part.check().filter(SiteCheck.HOT_TAP::equals).isPresent());
    }

    /**
     * Whether heated water has nowhere to go in this explanation.
     *
     * @param shut whether it has nowhere to go in the house as described
     * @return true if it has nowhere to go
     */
    public boolean shutsIn(boolean shut) {
        boolean first = cause.shutsIn(shut);
        return also.map(second -> second.cause().shutsIn(first)).orElse(first);
    }

    /**
     * How high the gauge goes in its run where that is beyond what relief valve and tank allow, as no sound valve lets it, though the
     * cause says nothing about a valve that opens late.
     *
     * @return the highest pressure (Pa, gauge), which may stand between two readings; empty if all is within what the plates allow
     */
    public OptionalDouble beyondPlates() {
        double limit = Overpressure.hazardFrom(house).orElse(Double.POSITIVE_INFINITY);
        return course.gauge().stream()
                .mapToDouble(gauge -> gauge)
                .filter(gauge -> gauge > limit && !blames(Cause.RELIEF_OPENS_HIGH))
                .max();
    }

    /**
     * The estimate of one number.
     *
     * @param parameter the number
     * @return the estimate, or empty if this hypothesis does not leave it open
     */
    public Optional<Estimate> estimate(Parameter parameter) {
        Objects.requireNonNull(parameter, "parameter");
        return estimates.stream().filter(e -> e.parameter() == parameter).findFirst();
    }

    /**
     * The numbers that say how much is wrong.
     *
     * @return the estimates that belong to the cause, possibly none
     */
    public List<Estimate> own() {
        return estimates.subList(0, ownNumbers);
    }

    /**
     * The cause, with the device it is about where there are several; of two causes both.
     *
     * @return such as {@code the relief valve opens at a lower pressure ('T&P valve')}
     */
    @Override
    public String inWords() {
        return inWords(cause, device)
                + also.map(second -> ", and " + inWords(second.cause(), second.device()))
                        .orElse("");
    }

    private String inWords(Cause fault, String named) {
        boolean only = house.reliefValves().size() == 1
                && house.reliefValves().get(0).name().equals(named);
        return fault.words() + (only || named.isEmpty() ? "" : " ('" + named + "')");
    }
}
