package io.github.heatswell.diagnosis;

import io.github.heatswell.result.Balances;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.ReliefValve;
import java.util.EnumSet;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * A site check that separates two causes.
 *
 * @param check what to read
 * @param first the cause that explains the readings best
 * @param expectedFirst what the check shows if that is the cause (in the SI unit of the check, pressures gauge)
 * @param second the other cause
 * @param expectedSecond what it shows if it is the other (in the SI unit of the check, pressures gauge)
 * @param separation difference of both, in units of the check's usual uncertainty (-)
 */
public record SeparatingCheck(
        SiteCheck check, Cause first, double expectedFirst, Cause second, double expectedSecond, double separation) {

    /** Separation, in uncertainties, at which a reading is decisive. */
    private static final double CLEAR = 4;

    /** Water hotter than this (K), 60 degC plus rounding, burns within seconds and must not be caught. */
    private static final double TOO_HOT = 333.151;

    /**
     * Checks that everything is there.
     *
     * @param check what to read
     * @param first the cause that explains the readings best
     * @param expectedFirst what the check shows if that is the cause (in the SI unit of the check, pressures gauge)
     * @param second the other cause
     * @param expectedSecond what it shows if it is the other (in the SI unit of the check, pressures gauge)
     * @param separation difference of both, in units of the check's usual uncertainty (-)
     */
    public SeparatingCheck {
        Objects.requireNonNull(check, "check");
        Objects.requireNonNull(first, "first");
        Objects.requireNonNull(second, "second");
    }

    /** The check with the least effort that two houses would clearly answer differently; if none is clear, none. */
    static Optional<SeparatingCheck> between(
            HypothesisFit first, HypothesisFit second, Set<SiteCheck> done, Balances.Count count) {
        Set<SiteCheck> left = EnumSet.allOf(SiteCheck.class);
        left.removeAll(done);
        // a heat-up from cold shows more, and takes no draw
        left.removeIf(SiteCheck::afterDraw);
        if (first.house().vessels().size() != 1) {
            left.remove(SiteCheck.TYRE_GAUGE);
        }
        if (scalds(first.house()) || scalds(second.house())) {
            left.remove(SiteCheck.CAUGHT_VOLUME);
        }
        Forecaster forecaster = new Forecaster(null, left, count);
        Map<SiteCheck, Double> one =
                forecaster.of(first.house(), 0, gauge(first)).spots();
        Map<SiteCheck, Double> other =
                forecaster.of(second.house(), 0, gauge(second)).spots();
        SeparatingCheck found = null;
        for (SiteCheck check : left) {
            double separation = Math.abs(one.get(check) - other.get(check)) / check.usualUncertainty();
            if (separation > CLEAR
                    && (found == null || check.effort() < found.check().effort())) {
                found = new SeparatingCheck(
                        check, first.cause(), one.get(check), second.cause(), other.get(check), separation);
            }
        }
        return Optional.ofNullable(found);
    }

    /** How the gauge of the log errs in an explanation: one that does not move shows what it showed, whatever the pressure. */
    private static Forecaster.Instruments gauge(HypothesisFit fit) {
        return fit.blames(Cause.GAUGE_STUCK)
                ? new Forecaster.Instruments(fit.gauge().get(0), 0, 0)
                : new Forecaster.Instruments(
                        fit.estimate(Parameter.GAUGE_ZERO).map(Estimate::value).orElse(0.0),
                        fit.estimate(Parameter.GAUGE_SCALE).map(Estimate::value).orElse(1.0),
                        0);
    }

    /** Whether a relief valve may discharge water that is too hot to be caught. */
    private static boolean scalds(HotWaterSystem house) {
        boolean hot = house.heater().thermostatStuck()
                || house.heater().elements().stream().anyMatch(element -> element.setPoint() > TOO_HOT);
        return hot
                && house.reliefValves().stream().anyMatch(valve -> valve.location() == ReliefValve.Location.TANK_TOP);
    }
}
