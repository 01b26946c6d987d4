package io.github.heatswell.simulation;

import io.github.heatswell.system.Element;
import io.github.heatswell.system.Heater;
import io.github.heatswell.system.PowerCurve;
import java.util.List;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;

/** A burner or element with its thermostat. */
final class HeatSource extends Device<HeatSource.Call> {

    /**
     * The shortest time (s) between off and on again. A thermostat takes some tens of seconds to sense cooling water,
     * and a burner control as long to relight. It matters only when a draw cools a very small tank through the
     * thermostat's differential within that time. Own choice; common practice, no source.
     */
    static final double MIN_PAUSE = 30;

    /** Electrical or fuel power (W). */
    final double input;
    /** The part of it (W) that reaches the water. */
    final double output;
    /** The layer it heats and senses. */
    final int layer;
    /** Temperatures (K) at which its thermostat switches off and on. */
    final double setPoint;

    final double switchOn;
    final boolean stuck;
    final String name;
    private final int belowTop;
    private final PowerCurve curve;

    HeatSource(StateVector.Slots slots, Heater heater, Element element, int layers) {
        super(slots);
        boolean lower = element == heater.elements().get(0);
        input = element.input();
        output = input * heater.recoveryEfficiency();
        layer = Math.min(layers - 1, (int) (element.height() * layers));
        belowTop = layers - layer;
        setPoint = element.setPoint();
        switchOn = element.switchesOn();
        stuck = lower && heater.thermostatStuck();
        curve = element.powerCurve().orElse(null);
        name = heater.elements().size() == 1 ? "" : lower ? "lower element" : "upper element";
    }

    /**
     * Whether the thermostat calls for heat.
     *
     * @param calls whether it does
     * @param offSince when (s since the start of the run) it last stopped calling, minus infinity if it never did
     * @param pausedUntil when (s) the last pause ends that held it off
     */
    record Call(boolean calls, double offSince, double pausedUntil) {

        static final Call NONE = new Call(false, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY);

        Call switched(boolean on) {
            return on == calls ? this : new Call(on, offSince, pausedUntil);
        }
    }

    @Override
    Call resting() {
        return Call.NONE;
    }

    @Override
    Modes atStart(Modes modes, double[] y) {
        return modes.with(this, Call.NONE.switched(stuck || sensed(modes, y) <= switchOn));
    }

    /** How much a cycle of its thermostat warms the tank (K, mean of its water): only what stands from its layer upwards warms. */
    double warmingOfTank() {
        return (setPoint - switchOn) * belowTop / (layer + belowTop);
    }

    /**
     * Temperature (K) at the thermostat; the layers are the last of the state. At the bottom it is the mean of the lowest even part: a
     * thermostat does not feel a film of cold water. Elsewhere it stands in one layer until the modes tell of another.
     */
    private double sensed(Modes modes, double[] y) {
        int at = y.length - belowTop;
        if (belowTop == 1) {
            return y[at];
        }
        if (layer == 0) {
            double phase = y[at - 1];
            return y[at] + (1 - Math.min(1, phase)) * (y[at + 1] - y[at]);
        }
        return modes.raised ? y[at + 1] : y[at];
    }

    /** Whether it takes another part of its input at another time or temperature. */
    boolean varies() {
        return curve != null;
    }

    /**
     * The part of its input (-) that it takes and gives while on.
     *
     * @param clock the time (s) since the midnight before the run
     * @param modes the modes
     * @param y the state; no number in a trial state of the solver gives no number
     */
    double part(double clock, Modes modes, double[] y) {
        double around = sensed(modes, y);
        if (curve == null || Double.isNaN(around) || Double.isNaN(clock)) {
            return curve == null ? 1 : Double.NaN;
        }
        Supplier<String> asked = () -> curve() + " at " + clock + " s and " + around + " K";
        double share = UndefinedCurveException.defined(() -> curve.share(clock, around), asked);
        return UndefinedCurveException.check(share, share >= 0 && share <= 1, asked, "0 to 1");
    }

    /** When its curve next changes (s since the midnight before the run), after a time; infinite without one. */
    double nextChange(double clock) {
        if (curve == null) {
            return Double.POSITIVE_INFINITY;
        }
        double next = curve.nextChange(clock);
        return UndefinedCurveException.check(
                next, next > clock, () -> "for its next change after " + clock + " s, " + curve(), "a later time");
    }

    private String curve() {
        return "the power curve of the " + (name.isEmpty() ? "heater" : name);
    }

    /** Records when it goes off, and holds it off if it would switch on again too soon. */
    @Override
    Modes permitted(Modes before, Modes wanted, double time) {
        Call now = before.of(this);
        Call next = wanted.of(this);
        if (now.calls() == next.calls()) {
            return wanted;
        }
        double earliest = now.offSince() + MIN_PAUSE;
        if (now.calls()) {
            return wanted.with(this, new Call(false, time, now.pausedUntil()));
        }
        return time < earliest ? wanted.with(this, new Call(false, now.offSince(), earliest)) : wanted;
    }

    @Override
    double nextChange(Modes modes, double time) {
        double until = modes.of(this).pausedUntil();
        return until > time ? until : Double.POSITIVE_INFINITY;
    }

    @Override
    void addDetectors(List<EventDetector> to, Segment now) {
        Call call = now.modes().of(this);
        if (!call.calls()) {
            if (now.time() >= call.pausedUntil()) {
                to.add(EventDetector.silent(switching(true), y -> sensed(now.modes(), y) - switchOn));
            }
        } else if (!stuck) {
            to.add(EventDetector.silent(switching(false), y -> setPoint - sensed(now.modes(), y)));
        }
    }

    private UnaryOperator<Modes> switching(boolean on) {
        return modes -> modes.changed(this, call -> call.switched(on));
    }
}
