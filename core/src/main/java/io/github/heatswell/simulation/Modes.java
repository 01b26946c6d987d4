package io.github.heatswell.simulation;

import java.util.function.UnaryOperator;

/**
 * Discrete state during the integration: the pressure regime, the layers that are mixed, and the mode of each
 * {@link Device}. It changes only between segments, never inside one. Immutable.
 */
final class Modes {

    final PressureRegime rule;

    private final Object[] devices;
    private final int releasing;
    private final boolean[] joined;
    /** Whether the boundaries between the layers move with the water that a tap takes. */
    final boolean moving;
    /** Whether the middle of an even part of the tank stands in the layer above that of its number. */
    final boolean raised;

    private Modes(
            PressureRegime rule, Object[] devices, int releasing, boolean[] joined, boolean moving, boolean raised) {
        this.rule = rule;
        this.devices = devices;
        this.releasing = releasing;
        this.joined = joined;
        this.moving = moving;
        this.raised = raised;
    }

    /** All devices at rest, layers unmixed, pressure free. */
    static Modes resting(CompiledSystem plant) {
        Object[] devices = new Object[plant.devices.length];
        for (Device<?> device : plant.devices) {
            devices[device.place] = device.resting();
        }
        return new Modes(PressureRegime.FREE, devices, 0, new boolean[plant.layers - 1], false, false);
    }

    /** The mode of a device. */
    @SuppressWarnings("unchecked") // only a device's own modes ever stand in its place
    <M> M of(Device<M> device) {
        return (M) devices[device.place];
    }

    /** The modes with another one of a device. */
    <M> Modes with(Device<M> device, M mode) {
        M before = of(device);
        if (before == mode) {
            return this;
        }
        Object[] changed = devices.clone();
        changed[device.place] = mode;
        int more = (device.releases(mode) ? 1 : 0) - (device.releases(before) ? 1 : 0);
        return new Modes(rule, changed, releasing + more, joined, moving, raised);
    }

    /** The modes with that of a device changed. */
    <M> Modes changed(Device<M> device, UnaryOperator<M> change) {
        return with(device, change.apply(of(device)));
    }

    /** Whether all devices are in the same modes, of which both were derived. */
    boolean sameDevices(Modes other) {
        return devices == other.devices;
    }

    /** Whether they also mix the layers alike and move them alike. */
    boolean sameTank(Modes other) {
        return sameDevices(other) && joined == other.joined && moving == other.moving && raised == other.raised;
    }

    /** Whether any device releases water because of pressure or temperature. */
    boolean anyValveOpen() {
        return releasing > 0;
    }

    /** Whether a layer and the one above it are mixed into one zone. */
    boolean joined(int layer) {
        return joined[layer];
    }

    Modes withRule(PressureRegime value) {
        return value == rule ? this : new Modes(value, devices, releasing, joined, moving, raised);
    }

    Modes withJoined(boolean[] value) {
        return new Modes(rule, devices, releasing, value.clone(), moving, raised);
    }

    /** The modes with boundaries that move or not, and the even parts of the tank raised or not. */
    Modes withLayering(boolean moves, boolean raises) {
        return moves == moving && raises == raised ? this : new Modes(rule, devices, releasing, joined, moves, raises);
    }

    Modes withJoined(int layer) {
        boolean[] changed = joined.clone();
        changed[layer] = true;
        return new Modes(rule, devices, releasing, changed, moving, raised);
    }
}
