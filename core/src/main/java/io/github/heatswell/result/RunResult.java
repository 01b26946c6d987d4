package io.github.heatswell.result;

import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Everything a run found, including its course sample by sample. Immutable.
 *
 * <p>Two results are equal only if they share the system and the trace, as objects; two runs of one description are not, though
 * their events, totals and extremes are equal.
 *
 * @param summary what was found, without the course
 * @param trace the course of the run on a grid of instants
 */
public record RunResult(RunSummary summary, Trace trace) {

    /**
     * Checks that both parts are there.
     *
     * @param summary what was found, without the course
     * @param trace the course of the run on a grid of instants
     */
    public RunResult {
        Objects.requireNonNull(summary, "summary");
        Objects.requireNonNull(trace, "trace");
    }

    /** {@return how long it is, how much happened, and the peak, in SI units: {@code run of 4 h, 9 events, peak 7.98 bar abs}} */
    @Override
    public String toString() {
        double peak = extremes().highestPressure().value();
        return "run of " + QuantityFormat.ascii(UnitSystem.SI).time(end()) + ", " + events().size() + " events, peak "
                + Pressure.absolute(peak, PressureUnit.PASCAL).text(Event.PRESSURE_DIGITS);
    }

    /**
     * What was simulated.
     *
     * @return the system
     */
    public HotWaterSystem system() {
        return summary.system();
    }

    /**
     * What happened.
     *
     * @return the events, in the order of time
     */
    public List<Event> events() {
        return summary.events();
    }

    /**
     * The largest and smallest values, from the continuous solution.
     *
     * @return the extremes
     */
    public RunSummary.Extremes extremes() {
        return summary.extremes();
    }

    /**
     * What crossed the boundary.
     *
     * @return the totals
     */
    public Totals totals() {
        return summary.totals();
    }

    /**
     * The check of mass and energy.
     *
     * @return the audit
     */
    public RunSummary.Audit audit() {
        return summary.audit();
    }

    /**
     * How the run was integrated.
     *
     * @return the numerics
     */
    public RunSummary.Numerics numerics() {
        return summary.numerics();
    }

    /**
     * The time the run covers, shorter than requested if a hazard ended it.
     *
     * @return the end of the run (s)
     */
    public double end() {
        return summary.end();
    }

    /**
     * The hazard at which the run ended before its time.
     *
     * @return the last event if the model ended there, else empty
     */
    public Optional<Event> hazard() {
        return summary.hazard();
    }

    /**
     * The first event of a kind.
     *
     * @param kind what to look for
     * @return the event, or empty if it never happened
     */
    public Optional<Event> first(Event.Kind kind) {
        return summary.first(kind);
    }

    /**
     * The highest pressure of the run at the tank's drain cock, from between the samples too.
     *
     * @return the pressure, against the air at the site
     */
    public Pressure peak() {
        return summary.peak();
    }

    /**
     * Converts an absolute pressure of this run to gauge pressure at the same height: a pressure at the tank's drain
     * cock becomes the reading of a gauge there. The owner's gauge, at {@link HotWaterSystem#gaugeHeight() its height},
     * is the channel {@link Channel#GAUGE_READING}.
     *
     * @param absolute the pressure (Pa, absolute)
     * @return the pressure (Pa, gauge)
     */
    public double gauge(double absolute) {
        return summary.gauge(absolute);
    }
}
