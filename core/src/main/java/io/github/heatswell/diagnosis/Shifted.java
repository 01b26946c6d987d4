package io.github.heatswell.diagnosis;

import static io.github.heatswell.units.PressureUnit.PASCAL;

import io.github.heatswell.system.Element;
import io.github.heatswell.system.Heater;
import io.github.heatswell.system.ReducingValve;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.Supply;
import io.github.heatswell.units.PowerUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.TemperatureUnit;

/** Parts of a house that work at other pressures or temperatures than described, and in all else are the same. */
final class Shifted {

    private Shifted() {}

    /** A valve that opens at another pressure (Pa, gauge); full lift keeps its proportion to it. */
    static ReliefValve valve(ReliefValve from, double opensGauge, double reseatShare, double atmosphere) {
        double factor = opensGauge / from.setPressure().gauge(atmosphere);
        return from.toBuilder()
                .setPressure(Pressure.gauge(opensGauge, PASCAL))
                .fullLiftPressure(
                        Pressure.gauge(factor * from.fullLiftPressure().gauge(atmosphere), PASCAL))
                .reseatPressure(Pressure.gauge(reseatShare * opensGauge, PASCAL))
                .build();
    }

    /**
     * A supply at another static pressure (Pa, difference): a reducing valve is set differently, else the mains stands elsewhere.
     * A mains behind a reducing valve only follows upwards, so that it can feed what the valve is set to.
     */
    static Supply supply(Supply from, double shift, double atmosphere) {
        Supply.Builder builder = from.toBuilder();
        if (from.reducingValve().isEmpty()) {
            return builder.mains(from.mains().raisedBy(shift, PASCAL)).build();
        }
        ReducingValve valve = from.reducingValve().get();
        double set = valve.set().gauge(atmosphere) + shift;
        return builder.mains(from.mains().raisedBy(Math.max(0, shift), PASCAL))
                .reducingValve(
                        valve.toBuilder().set(Pressure.gauge(set, PASCAL)).build())
                .build();
    }

    /** A heater with its input multiplied and all its set points higher by as much (K). */
    static Heater heater(Heater from, double factor, double shift) {
        Element lower = element(from.elements().get(0), factor, shift);
        Heater.Builder builder = from.toBuilder()
                .input(lower.input(), PowerUnit.WATT)
                .setPoint(lower.setPoint(), TemperatureUnit.KELVIN);
        from.elements().stream()
                .skip(1)
                .map(upper -> element(upper, factor, shift))
                .forEach(builder::upper);
        return builder.build();
    }

    private static Element element(Element from, double factor, double shift) {
        return from.toBuilder()
                .input(factor * from.input(), PowerUnit.WATT)
                .setPoint(from.setPoint() + shift, TemperatureUnit.KELVIN)
                .build();
    }
}
