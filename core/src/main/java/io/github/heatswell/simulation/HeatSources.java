package io.github.heatswell.simulation;

import io.github.heatswell.result.Event;
import io.github.heatswell.system.Heater;
import java.util.List;

/** The burners or elements of a heater, from the lowest up, and its cut-out: which are on, and what they give. */
final class HeatSources {

    private final HeatSource[] sources;
    private final boolean simultaneous;
    private final CutOut cutOut;

    HeatSources(StateVector.Slots slots, Heater heater, int layers) {
        sources = heater.elements().stream()
                .map(element -> new HeatSource(slots, heater, element, layers))
                .toArray(HeatSource[]::new);
        simultaneous = heater.simultaneous();
        cutOut = new CutOut(slots, heater.cutOut().orElse(Double.POSITIVE_INFINITY));
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

    /** Electrical or fuel power (W). */
    double input(Modes modes) {
        double sum = 0;
        for (int i = 0; i < sources.length; i++) {
            sum += isOn(i, modes) ? sources[i].input : 0;
        }
        return sum;
    }

    /** Heat (W) into all layers. */
    double output(Modes modes) {
        return output(modes, 0, Integer.MAX_VALUE);
    }

    /** Heat (W) into a range of layers, end exclusive. */
    double output(Modes modes, int first, int end) {
        double sum = 0;
        for (int i = 0; i < sources.length; i++) {
            int layer = sources[i].layer;
            sum += layer >= first && layer < end && isOn(i, modes) ? sources[i].output : 0;
        }
        return sum;
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
