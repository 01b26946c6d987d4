package io.github.heatswell.simulation;

import io.github.heatswell.result.Event;
import io.github.heatswell.system.Heater;
import java.util.Arrays;
import java.util.List;

/** The burners or elements of a heater, from the lowest up, and its cut-out: which are on, and what they give. */
final class HeatSources {

    private final HeatSource[] sources;
    private final boolean simultaneous;
    private final CutOut cutOut;
    /** For sources with a curve of their own, else null. */
    private final Meter meter;

    HeatSources(StateVector.Slots slots, Heater heater, int layers, double clockStart) {
        sources = heater.elements().stream()
                .map(element -> new HeatSource(slots, heater, element, layers))
                .toArray(HeatSource[]::new);
        simultaneous = heater.simultaneous();
        cutOut = new CutOut(slots, heater.cutOut().orElse(Double.POSITIVE_INFINITY));
        meter = Arrays.stream(sources).anyMatch(HeatSource::varies) ? new Meter(slots, clockStart) : null;
    }

    /**
     * The clock of sources with a curve of their own, and a meter of what they take and give. Its mode is the span between two
     * changes of their curves: within it the clock never quite reaches either, so that a curve may jump there.
     */
    private final class Meter extends Device<Meter.Span> {

        /** So far (s) the clock keeps from the ends of a span: more than rounding in a run of a century. */
        private static final double EDGE = 1e-5;

        private final double clockStart;
        private final int clock;
        final int taken;
        final int given;

        Meter(StateVector.Slots slots, double clockStart) {
            super(slots);
            this.clockStart = clockStart;
            clock = slots.temperature();
            taken = slots.energy();
            given = slots.energy();
        }

        /**
         * A time without a change.
         *
         * @param from its start (s since the midnight before the run)
         * @param to its end (s)
         */
        record Span(double from, double to) {}

        @Override
        Span resting() {
            return new Span(clockStart, clockStart);
        }

        @Override
        void start(double[] y) {
            y[clock] = clockStart;
        }

        @Override
        Modes adapted(Modes modes, double[] y) {
            return y[clock] < modes.of(this).to() - EDGE ? modes : modes.with(this, spanFrom(y[clock]));
        }

        private Span spanFrom(double now) {
            double next = Double.POSITIVE_INFINITY;
            for (HeatSource source : sources) {
                next = Math.min(next, source.nextChange(now + EDGE));
            }
            return new Span(now, next);
        }

        @Override
        double nextChange(Modes modes, double time) {
            return modes.of(this).to() - clockStart;
        }

        double clock(Modes modes, double[] y) {
            Span span = modes.of(this);
            return Math.max(span.from() + EDGE, Math.min(span.to() - EDGE, y[clock]));
        }

        @Override
        boolean hasTemperature() {
            return true;
        }

        /** The clock stands where a device usually has a temperature. */
        @Override
        void fillRates(double[] y, Modes modes, double pressureRate, double[] rates) {
            rates[clock] = 1;
            for (int i = 0; i < sources.length; i++) {
                if (sources[i].varies() && isOn(i, modes)) {
                    double part = sources[i].part(clock(modes, y), modes, y);
                    rates[taken] += part * sources[i].input;
                    rates[given] += part * sources[i].output;
                }
            }
        }
    }

    /** The high-limit cut-out; its mode says whether it has tripped, which somebody has to reset by hand. */
    private static final class CutOut extends Device<Boolean> {

        private final double trips;

        CutOut(StateVector.Slots slots, double trips) {
            super(slots);
            this.trips = trips;
        }

        @Override
        Boolean resting() {
            return false;
        }

        @Override
        void addDetectors(List<EventDetector> to, Segment now) {
            if (!now.modes().of(this) && trips < Double.POSITIVE_INFINITY) {
                to.add(EventDetector.of(
                        Event.Kind.CUT_OUT_TRIPPED, modes -> modes.with(this, true), y -> trips - StateVector.top(y)));
            }
        }
    }

    /** Everything here that is a device of its own. */
    void addTo(List<Device<?>> devices) {
        devices.addAll(List.of(sources));
        devices.add(cutOut);
        if (meter != null) {
            devices.add(meter);
        }
    }

    int count() {
        return sources.length;
    }

    HeatSource get(int source) {
        return sources[source];
    }

    /** Whether a burner or element is on: its thermostat calls, and no cut-out or upper element blocks it. */
    boolean isOn(int source, Modes modes) {
        if (modes.of(cutOut) || !modes.of(sources[source]).calls()) {
            return false;
        }
        for (int above = source + 1; above < sources.length; above++) {
            if (modes.of(sources[above]).calls() && !simultaneous) {
                return false;
            }
        }
        return true;
    }

    /** Whether any burner or element is on. */
    boolean anyOn(Modes modes) {
        for (int i = 0; i < sources.length; i++) {
            if (isOn(i, modes)) {
                return true;
            }
        }
        return false;
    }

    /** Whether any source takes another part of its input at another time or temperature. */
    boolean varies() {
        return meter != null;
    }

    private double part(HeatSource source, Modes modes, double[] y) {
        return source.varies() ? source.part(meter.clock(modes, y), modes, y) : 1;
    }

    /** Electrical or fuel power (W) in a state. */
    double input(Modes modes, double[] y) {
        double sum = 0;
        for (int i = 0; i < sources.length; i++) {
            sum += isOn(i, modes) ? sources[i].input * part(sources[i], modes, y) : 0;
        }
        return sum;
    }

    /** Heat (W) into a range of layers, end exclusive, in a state. */
    double output(Modes modes, double[] y, int first, int end, Layering layering) {
        double sum = 0;
        for (int i = 0; i < sources.length; i++) {
            sum += layering.holds(sources[i].layer, first, end) && isOn(i, modes)
                    ? sources[i].output * part(sources[i], modes, y)
                    : 0;
        }
        return sum;
    }

    /** Power (W) of the sources that take the same while on. */
    double steadyInput(Modes modes) {
        double sum = 0;
        for (int i = 0; i < sources.length; i++) {
            sum += !sources[i].varies() && isOn(i, modes) ? sources[i].input : 0;
        }
        return sum;
    }

    /** What they give (W). */
    double steadyOutput(Modes modes) {
        double sum = 0;
        for (int i = 0; i < sources.length; i++) {
            sum += !sources[i].varies() && isOn(i, modes) ? sources[i].output : 0;
        }
        return sum;
    }

    /** Energy (J) that the other sources have taken since the start. */
    double meteredInput(double[] y) {
        return meter == null ? 0 : y[meter.taken];
    }

    /** Heat (J) that they have given. */
    double meteredOutput(double[] y) {
        return meter == null ? 0 : y[meter.given];
    }

    /** The least that a cycle of a thermostat warms the tank (K, mean of its water). */
    double smallestWarming() {
        double smallest = Double.POSITIVE_INFINITY;
        for (HeatSource source : sources) {
            smallest = Math.min(smallest, source.warmingOfTank());
        }
        return smallest;
    }
}
