package io.github.heatswell.diagnosis;

import static io.github.heatswell.units.PressureUnit.PASCAL;

import io.github.heatswell.plant.Element;
import io.github.heatswell.plant.ExpansionVessel;
import io.github.heatswell.plant.Heater;
import io.github.heatswell.plant.ReducingValve;
import io.github.heatswell.plant.ReliefValve;
import io.github.heatswell.plant.Start;
import io.github.heatswell.plant.StreetPressure;
import io.github.heatswell.plant.Supply;
import io.github.heatswell.units.DurationUnit;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.PowerUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.TemperatureDifferenceUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.VolumeUnit;
import java.util.Map;
import java.util.TreeMap;

/** Builders that begin with everything a part already is. */
final class Rebuild {

    private Rebuild() {}

    static ExpansionVessel.Builder vessel(ExpansionVessel from) {
        ExpansionVessel.Builder builder = ExpansionVessel.builder()
                .volume(from.volume(), VolumeUnit.CUBIC_METRE)
                .precharge(from.precharge())
                .acceptance(from.acceptance(), RatioUnit.ONE)
                .height(from.height(), LengthUnit.METRE)
                .condition(from.condition());
        from.gasTimeConstant().ifPresent(value -> builder.gasTimeConstant(value, DurationUnit.SECOND));
        from.chargedAt().ifPresent(value -> builder.chargedAt(value, TemperatureUnit.KELVIN));
        from.temperature().ifPresent(value -> builder.temperature(value, TemperatureUnit.KELVIN));
        return builder;
    }

    /** Without its condition: a sound valve. */
    static ReliefValve.Builder valve(ReliefValve from) {
        ReliefValve.Builder builder = ReliefValve.builder()
                .name(from.name())
                .opens(from.opens())
                .fullLift(from.fullLift())
                .reseats(from.reseats())
                .fullFlow(from.fullFlow(), FlowUnit.CUBIC_METRE_PER_SECOND)
                .character(from.character())
                .location(from.location())
                .height(from.height(), LengthUnit.METRE);
        from.opensAtTemperature().ifPresent(value -> builder.opensAt(value, TemperatureUnit.KELVIN));
        from.reseatsAtTemperature().ifPresent(value -> builder.reseatsAt(value, TemperatureUnit.KELVIN));
        return builder;
    }

    /** Opening at another pressure; full lift and reseating keep their proportion to it, and what is wrong stays wrong. */
    static ReliefValve opening(ReliefValve from, double opensGauge, double reseatShare, double atmosphere) {
        double factor = opensGauge / from.opens().gauge(atmosphere);
        ReliefValve.Builder builder = valve(from)
                .opens(Pressure.gauge(opensGauge, PASCAL))
                .fullLift(Pressure.gauge(factor * from.fullLift().gauge(atmosphere), PASCAL))
                .reseats(Pressure.gauge(reseatShare * opensGauge, PASCAL));
        from.leaksFrom()
                .ifPresent(leaksFrom -> builder.leakingSeat(
                        Pressure.gauge(factor * leaksFrom.gauge(atmosphere), PASCAL),
                        from.leakage(),
                        FlowUnit.CUBIC_METRE_PER_SECOND));
        return builder.build();
    }

    /** The supply with its static pressure shifted: a reducing valve is set differently, else the street stands elsewhere. */
    static Supply.Builder supply(Supply from, double shift, double atmosphere) {
        Supply.Builder builder = Supply.builder()
                .arrangement(from.arrangement())
                .water(from.water())
                .seatLeakage(from.seatLeakage(), FlowUnit.CUBIC_METRE_PER_SECOND);
        from.outages().forEach(builder::addOutage);
        if (from.reducingValve().isPresent()) {
            builder.reducingValve(reducing(from.reducingValve().get(), shift, atmosphere));
        }
        return builder.street(
                street(from.street(), shift, atmosphere, from.reducingValve().isEmpty()));
    }

    /** A street behind a reducing valve only follows upwards, so that it can feed what the valve is set to. */
    private static StreetPressure street(StreetPressure from, double shift, double atmosphere, boolean whole) {
        double moved = whole ? shift : Math.max(0, shift);
        Map<Double, Pressure> entries = new TreeMap<>();
        from.entries()
                .forEach((time, value) -> entries.put(time, Pressure.gauge(value.gauge(atmosphere) + moved, PASCAL)));
        return from.isConstant()
                ? StreetPressure.constant(entries.values().iterator().next())
                : StreetPressure.daily(entries);
    }

    private static ReducingValve reducing(ReducingValve from, double shift, double atmosphere) {
        ReducingValve.Builder builder = ReducingValve.builder()
                .set(Pressure.gauge(from.set().gauge(atmosphere) + shift, PASCAL))
                .lockUpRise(from.lockUpRise(), PASCAL)
                .droop(from.droop(), PASCAL)
                .ratedFlow(from.ratedFlow(), FlowUnit.CUBIC_METRE_PER_SECOND);
        from.bypassOpens().ifPresent(value -> builder.bypassOpens(value, PASCAL));
        return builder.build();
    }

    /** The heater with its input multiplied and all its set points shifted. */
    static Heater heater(Heater from, double factor, double shift) {
        Element first = from.elements().get(0);
        Heater.Builder builder = Heater.builder()
                .energy(from.energy())
                .recoveryEfficiency(from.recoveryEfficiency(), RatioUnit.ONE)
                .input(factor * first.input(), PowerUnit.WATT)
                .height(first.height(), RatioUnit.ONE)
                .setPoint(first.setPoint() + shift, TemperatureUnit.KELVIN)
                .differential(first.differential(), TemperatureDifferenceUnit.KELVIN)
                .simultaneous(from.simultaneous())
                .thermostatStuck(from.thermostatStuck());
        if (from.elements().size() > 1) {
            Element upper = from.elements().get(1);
            builder.upper(Element.builder()
                    .input(factor * upper.input(), PowerUnit.WATT)
                    .height(upper.height(), RatioUnit.ONE)
                    .setPoint(upper.setPoint() + shift, TemperatureUnit.KELVIN)
                    .differential(upper.differential(), TemperatureDifferenceUnit.KELVIN)
                    .build());
        }
        from.cutOut().ifPresent(value -> builder.cutOut(value, TemperatureUnit.KELVIN));
        return builder.build();
    }

    static Start.Builder start(Start from) {
        Start.Builder builder =
                Start.builder().timeOfDay(from.timeOfDay(), DurationUnit.SECOND).dayOfYear(from.dayOfYear());
        from.waterTemperature().ifPresent(value -> builder.water(value, TemperatureUnit.KELVIN));
        from.pressure().ifPresent(builder::pressure);
        return builder;
    }
}
