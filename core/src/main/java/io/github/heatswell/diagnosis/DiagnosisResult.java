package io.github.heatswell.diagnosis;

import io.github.heatswell.result.Balances;
import io.github.heatswell.units.Decimals;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Result of a diagnosis. Immutable.
 *
 * @param fits every cause looked at, the best explanation first
 * @param readings how many readings were used
 * @param uncertainty the standard uncertainty taken for a reading of the log (Pa, difference), NaN without a log
 * @param balances those of all runs behind it
 * @param check the check on site that tells the best explanation from the next, or empty if none of the simple ones
 *     does
 * @param beyond the readings beyond what plates and settings allow, of the whole log
 */
public record DiagnosisResult(
        List<HypothesisFit> fits,
        int readings,
        double uncertainty,
        Balances balances,
        Optional<SeparatingCheck> check,
        List<BeyondLimit> beyond) {

    /**
     * Causes within this criterion difference (-) of the best explain the readings about as well; it corresponds to
     * odds of twenty to one.
     */
    public static final double ALIKE = 6;

    /** A cause that lowers the sum of squares by less than this (-) is no better than the description. */
    private static final double NO_BETTER = 1;

    /** Fewer readings of a gauge alone single out no cause, however well one fits; our own judgement. */
    private static final int FEW = 12;

    /**
     * Copies the lists.
     *
     * @param fits every cause looked at, the best explanation first
     * @param readings how many readings were used
     * @param uncertainty the standard uncertainty taken for a reading of the log (Pa, difference), NaN without a log
     * @param balances those of all runs behind it
     * @param check the check on site that tells the best explanation from the next, or empty
     * @param beyond the readings beyond what plates and settings allow, of the whole log
     * @throws IllegalArgumentException if there is no fit
     */
    public DiagnosisResult {
        Objects.requireNonNull(balances, "balances");
        Objects.requireNonNull(check, "check");
        beyond = List.copyOf(Objects.requireNonNull(beyond, "beyond"));
        fits = List.copyOf(Objects.requireNonNull(fits, "fits"));
        if (fits.isEmpty()) {
            throw new IllegalArgumentException("a diagnosis needs at least one cause");
        }
    }

    /** {@return the best explanation with its share, in one line} */
    @Override
    public String toString() {
        return best().inWords() + ", weight " + Decimals.significant(best().weight(), 2) + " among " + fits.size()
                + (isUnexplained() ? ", unexplained" : "");
    }

    /**
     * The cause that explains the readings best.
     *
     * @return the first of all fits
     */
    public HypothesisFit best() {
        return fits.get(0);
    }

    /**
     * The best explanation and all that these readings cannot distinguish from it.
     *
     * @return at least one fit
     */
    public List<HypothesisFit> alike() {
        return fits.stream().filter(fit -> fit.criterion() < ALIKE).toList();
    }

    /**
     * Whether the gauge itself may be at fault: then none of its readings means anything.
     *
     * @return true if a gauge that does not move is among the {@link #alike() alike}
     */
    public boolean mayBeDeadGauge() {
        return alike().stream().anyMatch(fit -> fit.blames(Cause.GAUGE_STUCK));
    }

    /**
     * A number of the {@link #alike() causes alike} that the readings leave open and a check on site would settle.
     *
     * @param done the checks already taken
     * @return that of the check with the least effort, the likeliest cause first; where the water may be too hot no check that
     *     catches it; empty if there is none
     */
    public Optional<Estimate> unsettled(Set<SiteCheck> done) {
        boolean scalds = alike().stream().anyMatch(fit -> fit.blames(Cause.WATER_TOO_HOT));
        return alike().stream()
                .flatMap(fit -> fit.estimates().stream())
                .filter(one -> one.standing() == Estimate.Standing.NOT_CARRIED)
                .filter(one -> one.settledBy()
                        .filter(check -> !done.contains(check) && !(scalds && check == SiteCheck.CAUGHT_VOLUME))
                        .isPresent())
                .min(Comparator.comparing(one -> one.settledBy().orElseThrow().effort()));
    }

    /**
     * Causes that these readings do not test: almost any parameter values would give the same readings, for example if
     * a log never comes near a relief valve's set pressure. Nothing is known about them.
     *
     * @return some of those that are {@link #alike()}, never the best
     */
    public List<HypothesisFit> untested() {
        return alike().stream().skip(1).filter(this::isUntested).toList();
    }

    /**
     * The likeliest, and those of the {@link #alike() causes alike} that the readings test but cannot tell from it.
     *
     * @return at least one, the likeliest first
     */
    public List<HypothesisFit> tested() {
        List<HypothesisFit> untested = untested();
        return alike().stream().filter(fit -> !untested.contains(fit)).toList();
    }

    private boolean isUntested(HypothesisFit fit) {
        double described =
                of(Cause.AS_DESCRIBED).map(HypothesisFit::sumOfSquares).orElse(Double.POSITIVE_INFINITY);
        return !fit.own().isEmpty()
                && fit.own().stream().allMatch(own -> own.standing() == Estimate.Standing.NOT_CARRIED)
                && fit.sumOfSquares() > described - NO_BETTER
                && !isShown(fit.cause());
    }

    /** Whether a reading shows by itself what a cause says, whatever the rest of the readings make of it. */
    private boolean isShown(Cause cause) {
        Optional<Overheat.Device> passed = overheat().map(Overheat::exceeded);
        return cause == Cause.WATER_TOO_HOT && passed.equals(Optional.of(Overheat.Device.THERMOSTAT))
                || cause == Cause.MIXING_VALVE_PASSES && passed.equals(Optional.of(Overheat.Device.MIXING_VALVE));
    }

    /**
     * The reading above what the plates of relief valve and tank allow.
     *
     * @return the reading, or empty if none is above a plate
     */
    public Optional<Overpressure> overpressure() {
        return beyond(Overpressure.class);
    }

    /**
     * Water hotter than the thermostat or the mixing valve should allow.
     *
     * @return the reading, or empty if none is so hot
     */
    public Optional<Overheat> overheat() {
        return beyond(Overheat.class);
    }

    private <T extends BeyondLimit> Optional<T> beyond(Class<T> kind) {
        return beyond.stream().filter(kind::isInstance).map(kind::cast).findFirst();
    }

    /**
     * The readings that are a hazard whatever the cause: nobody may be told to heat the tank.
     *
     * @return the readings, possibly none
     */
    public List<BeyondLimit> hazardousReadings() {
        return beyond.stream().filter(BeyondLimit::isHazard).toList();
    }

    /**
     * Hazards that the readings show: first the readings that are one whatever the cause, then the hazardous causes that they support.
     *
     * @return the hazards, the readings first; empty if there is no evidence of one, which does not rule one out
     */
    public List<Hazard> hazards() {
        return Stream.<Hazard>concat(hazardousReadings().stream(), hazardousCauses().stream())
                .toList();
    }

    /**
     * Hazardous causes that the readings support: the best explains the readings, and so does no harmless cause that
     * they test.
     *
     * @return the causes, most likely first; empty if there is none
     */
    public List<HypothesisFit> hazardousCauses() {
        List<HypothesisFit> tested = tested();
        boolean all = tested.stream().allMatch(HypothesisFit::isHazard);
        return all && !isUnexplained() ? tested : List.of();
    }

    /**
     * Hazardous causes that the readings neither support nor rule out. If nothing explains the readings, these are the hazardous causes
     * about as close as the best. Water that is too hot is among them unless a thermometer was read in water that the heater had heated:
     * it harms people, a thermometer under a tap costs a minute, and on a gauge a tank, draws or a heater's input taken wrong make up for
     * much of it.
     *
     * @return the causes, the likeliest first
     */
    public List<HypothesisFit> notRuledOut() {
        List<HypothesisFit> hazards = hazardousCauses();
        return fits.stream()
                .filter(fit -> fit.isHazard() && !hazards.contains(fit))
                .filter(fit -> fit.criterion() < ALIKE || mayScald(fit))
                .toList();
    }

    private boolean mayScald(HypothesisFit fit) {
        return fit.blames(Cause.WATER_TOO_HOT) && (!fit.isHeldAgainstTemperatures() || heatIsHidden());
    }

    /**
     * How hot the water gets at least, whichever of the {@link #alike() causes alike} it is, where that is hotter than a thermostat is off.
     *
     * @param set what the thermostat is described to be set to (K)
     * @return the lowest of their temperatures (K); empty where one of them has the water about as described or leaves it open, or
     *     where none explains the readings
     */
    public OptionalDouble heatedBeyond(double set) {
        List<Estimate> heated = alike().stream()
                .flatMap(fit -> fit.estimate(Parameter.SET_POINT).stream())
                .filter(one -> one.standing() == Estimate.Standing.CARRIED
                        && one.value() > set + Circumstances.MORE_THAN_A_DIAL)
                .toList();
        return misfit() || heated.size() < alike().size()
                ? OptionalDouble.empty()
                : heated.stream().mapToDouble(Estimate::value).min();
    }

    /** Whether the readings say nothing of how hot the water gets, as if a thermometer saw only cold water. */
    private boolean heatIsHidden() {
        return best().estimate(Parameter.SET_POINT)
                .filter(set -> set.standing() == Estimate.Standing.NOT_CARRIED)
                .isPresent();
    }

    /**
     * Causes in whose run the gauge goes beyond what the plates allow between readings that do not show it.
     *
     * @return some of those that are {@link #alike()}, the likeliest first; empty where a reading is a hazard already
     */
    public List<HypothesisFit> beyondPlates() {
        boolean read = overpressure().filter(Overpressure::isHazard).isPresent();
        return alike().stream()
                .filter(fit -> !read && fit.beyondPlates().isPresent())
                .toList();
    }

    /**
     * Whether the readings single out one cause. A fault too small to show is neither singled out nor ruled out: the description then
     * explains the readings just as well with fewer parameters. No cause is singled out if even the best does not explain the readings, if
     * the only thermometer was read in unheated water, which leaves open whether it scalds, or by a few readings of a gauge and nothing else.
     *
     * @return true if one cause explains them and no other about as well
     */
    public boolean isDecided() {
        boolean seenCold = best().isHeldAgainstTemperatures()
                && notRuledOut().stream().anyMatch(fit -> fit.blames(Cause.WATER_TOO_HOT));
        boolean hardlyRead = readings < FEW
                && !best().evidence().isEmpty()
                && best().evidence().stream().allMatch(Evidence::isOfGauge);
        return alike().size() == 1 && !misfit() && !seenCold && !hardlyRead;
    }

    /**
     * Whether even the best explanation misses a reading on which the answer depends, or several, by more than their uncertainty.
     *
     * @return true if not all readings are explained
     */
    public boolean misfit() {
        return best().misfit().map(Misfit::isSerious).orElseGet(this::exceedsScatter);
    }

    /**
     * Whether even the best explanation misses more than a single reading. Then none of the causes examined is the full explanation.
     *
     * @return true if the readings are not explained; false if all but one are
     */
    public boolean isUnexplained() {
        return best().misfit().map(Misfit::isLarge).orElseGet(this::exceedsScatter);
    }

    private boolean exceedsScatter() {
        return best().sumOfSquares() > readings + Misfit.MORE_THAN_SCATTER * Math.sqrt(2.0 * readings);
    }

    /**
     * What was found about one cause alone.
     *
     * @param cause the cause
     * @return the best fit with that cause, or empty if it was not looked at
     */
    public Optional<HypothesisFit> of(Cause cause) {
        Objects.requireNonNull(cause, "cause");
        return fits.stream()
                .filter(fit -> fit.cause() == cause && fit.also().isEmpty())
                .findFirst();
    }

    /** The same with the readings beyond what plates and settings allow. */
    DiagnosisResult with(List<BeyondLimit> readingsBeyond) {
        return new DiagnosisResult(fits, readings, uncertainty, balances, check, readingsBeyond);
    }
}
