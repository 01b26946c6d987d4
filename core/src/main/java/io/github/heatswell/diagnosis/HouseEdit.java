package io.github.heatswell.diagnosis;

import static io.github.heatswell.units.PressureUnit.PASCAL;

import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.Heater;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Leak;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.Start;
import io.github.heatswell.system.Supply;
import io.github.heatswell.system.TrappedAir;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.VolumeUnit;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Changes of one house, collected and then carried out together, since some numbers depend on each other. */
final class HouseEdit {

    private static final double MIN_LEAK_PRESSURE = 0.2e5;

    private final HotWaterSystem house;
    private final double atmosphere;
    private final String device;
    private final Map<Parameter, Double> values = new EnumMap<>(Parameter.class);
    private ExpansionVessel.Condition condition;
    private boolean unmixed;

    HouseEdit(HotWaterSystem house, String device) {
        this.house = house;
        this.device = device;
        atmosphere = house.site().atmosphere();
    }

    void set(Parameter parameter, double value) {
        values.put(parameter, value);
    }

    void condition(ExpansionVessel.Condition value) {
        condition = value;
    }

    void unmixed() {
        unmixed = true;
    }

    private boolean has(Parameter parameter) {
        return values.containsKey(parameter);
    }

    private double get(Parameter parameter, double otherwise) {
        return values.getOrDefault(parameter, otherwise);
    }

    HotWaterSystem build() {
        double described = house.supplyAtStart().gauge(atmosphere);
        double statically = get(Parameter.SUPPLY_PRESSURE, described);
        HotWaterSystem.Builder builder = house.toBuilder()
                .supply(supply(statically - described))
                .heater(heater())
                .start(start(statically - described))
                .withoutReliefValves();
        valves().forEach(builder::addReliefValve);
        house.vessel().ifPresent(vessel -> builder.vessel(vessel(vessel)));
        if (has(Parameter.TRAPPED_AIR)) {
            builder.trappedAir(TrappedAir.of(get(Parameter.TRAPPED_AIR, 0), VolumeUnit.CUBIC_METRE));
        }
        if (has(Parameter.LEAK)) {
            builder.addLeak(Leak.of(
                    get(Parameter.LEAK, 0),
                    FlowUnit.CUBIC_METRE_PER_SECOND,
                    Pressure.gauge(Math.max(MIN_LEAK_PRESSURE, described), PASCAL)));
        }
        return builder.build();
    }

    private Supply supply(double shift) {
        Supply supply = Shifted.supply(house.supply(), shift, atmosphere);
        if (!has(Parameter.SEAT_LEAKAGE)) {
            return supply;
        }
        return supply.toBuilder()
                .seatLeakage(get(Parameter.SEAT_LEAKAGE, 0), FlowUnit.CUBIC_METRE_PER_SECOND)
                .build();
    }

    /** A start above the supply keeps its distance. */
    private Start start(double shift) {
        Start start = house.start();
        if (start.pressure().isEmpty() || shift == 0) {
            return start;
        }
        double moved = start.pressure().get().gauge(atmosphere) + shift;
        return start.toBuilder().pressure(Pressure.gauge(moved, PASCAL)).build();
    }

    private Heater heater() {
        Heater heater = house.heater();
        double shift = get(Parameter.SET_POINT, heater.setPoint()) - heater.setPoint();
        Heater shifted = Shifted.heater(heater, get(Parameter.HEATING_RATE, 1), shift);
        return unmixed ? shifted.toBuilder().withoutMixing().build() : shifted;
    }

    private ExpansionVessel vessel(ExpansionVessel vessel) {
        ExpansionVessel.Builder builder = vessel.toBuilder();
        if (condition != null) {
            builder.condition(condition);
        }
        if (has(Parameter.PRECHARGE)) {
            builder.precharge(Pressure.gauge(get(Parameter.PRECHARGE, 0), PASCAL));
        }
        if (has(Parameter.VESSEL_VOLUME)) {
            builder.volume(get(Parameter.VESSEL_VOLUME, 0), VolumeUnit.CUBIC_METRE);
        }
        return builder.build();
    }

    private List<ReliefValve> valves() {
        List<ReliefValve> valves = new ArrayList<>();
        for (ReliefValve valve : house.reliefValves()) {
            valves.add(valve.name().equals(device) ? changed(valve) : valve);
        }
        return valves;
    }

    private ReliefValve changed(ReliefValve valve) {
        double setPressure = valve.setPressure().gauge(atmosphere);
        double share = valve.reseatPressure().gauge(atmosphere) / setPressure;
        if (has(Parameter.STUCK_LIFT)) {
            return valve.toBuilder()
                    .stuckOpen(get(Parameter.STUCK_LIFT, 0), RatioUnit.ONE)
                    .build();
        }
        if (has(Parameter.SEAT_WEEP)) {
            double from = get(Parameter.WEEPS_FROM, 0);
            return valve.toBuilder()
                    .leakingSeat(
                            Pressure.gauge(from, PASCAL), get(Parameter.SEAT_WEEP, 0), FlowUnit.CUBIC_METRE_PER_SECOND)
                    .build();
        }
        if (has(Parameter.OPENING_PRESSURE)) {
            return Shifted.valve(
                    valve,
                    get(Parameter.OPENING_PRESSURE, setPressure),
                    get(Parameter.RESEAT_SHARE, share),
                    atmosphere);
        }
        return valve;
    }
}
