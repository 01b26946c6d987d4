package io.github.heatswell.simulation;

import io.github.heatswell.system.Draw;
import io.github.heatswell.system.DrawProfile;
import io.github.heatswell.system.Element;
import io.github.heatswell.system.Heater;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Leak;
import io.github.heatswell.system.ReliefFault;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.Supply;
import io.github.heatswell.system.Tank;
import io.github.heatswell.units.ConductanceUnit;
import io.github.heatswell.units.EnergyUnit;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.PowerUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.VolumeUnit;
import java.util.List;

/** The same house twice over: every volume, power, flow and conductance twice as large, every pressure and temperature the same. */
final class Doubled {

    private static final double FACTOR = 2;

    private Doubled() {}

    static HotWaterSystem of(HotWaterSystem house) {
        HotWaterSystem.Builder doubled = HotWaterSystem.builder()
                .site(house.site())
                .supply(supply(house.supply()))
                .tank(tank(house.tank()))
                .heater(heater(house.heater()))
                .start(house.start())
                .draws(draws(house.draws()));
        house.piping().forEach(pipe -> doubled.addPipe(pipe).addPipe(pipe));
        house.reliefValves().forEach(valve -> doubled.addReliefValve(valve(valve)));
        house.leaks()
                .forEach(leak ->
                        doubled.addLeak(Leak.of(FACTOR * leak.flow(), FlowUnit.CUBIC_METRE_PER_SECOND, leak.at())));
        house.vessels()
                .forEach(vessel -> doubled.addVessel(vessel.toBuilder()
                        .volume(FACTOR * vessel.volume(), VolumeUnit.CUBIC_METRE)
                        .build()));
        house.trappedAir().ifPresent(air -> doubled.trappedAir(FACTOR * air, VolumeUnit.CUBIC_METRE));
        return doubled.build();
    }

    private static Tank tank(Tank tank) {
        Tank.Builder doubled = tank.toBuilder()
                .volume(FACTOR * tank.volume(), VolumeUnit.CUBIC_METRE)
                .standingLoss(FACTOR * tank.standingLoss(), ConductanceUnit.WATT_PER_KELVIN);
        tank.air().ifPresent(air -> doubled.air(FACTOR * air, VolumeUnit.CUBIC_METRE));
        return doubled.build();
    }

    private static Supply supply(Supply supply) {
        Supply.Builder doubled = supply.toBuilder();
        supply.reducingValve()
                .ifPresent(valve -> doubled.reducingValve(valve.toBuilder()
                        .ratedFlow(FACTOR * valve.ratedFlow(), FlowUnit.CUBIC_METRE_PER_SECOND)
                        .build()));
        if (supply.seatLeakage() > 0) {
            doubled.seatLeakage(FACTOR * supply.seatLeakage(), FlowUnit.CUBIC_METRE_PER_SECOND);
        }
        return doubled.build();
    }

    private static Heater heater(Heater heater) {
        Heater.Builder doubled =
                heater.toBuilder().input(FACTOR * heater.elements().get(0).input(), PowerUnit.WATT);
        if (heater.elements().size() > 1) {
            Element upper = heater.elements().get(1);
            doubled.upper(upper.toBuilder()
                    .input(FACTOR * upper.input(), PowerUnit.WATT)
                    .build());
        }
        return doubled.build();
    }

    private static ReliefValve valve(ReliefValve valve) {
        ReliefValve.Builder doubled =
                valve.toBuilder().fullFlow(FACTOR * valve.fullFlow(), FlowUnit.CUBIC_METRE_PER_SECOND);
        if (valve.fault().leakage() > 0) {
            doubled.fault(ReliefFault.leakingSeat(
                    valve.fault().leaksFrom().orElseThrow(),
                    FACTOR * valve.fault().leakage(),
                    FlowUnit.CUBIC_METRE_PER_SECOND));
        }
        return doubled.build();
    }

    private static DrawProfile draws(DrawProfile profile) {
        List<Draw> doubled = profile.draws().stream().map(Doubled::draw).toList();
        return doubled.isEmpty() ? profile : DrawProfile.of(profile.name(), doubled);
    }

    private static Draw draw(Draw draw) {
        double flow = FACTOR * draw.flow();
        Draw doubled = draw.volume().isPresent()
                ? Draw.ofVolume(
                        draw.timeOfDay(),
                        FACTOR * draw.volume().getAsDouble(),
                        VolumeUnit.CUBIC_METRE,
                        flow,
                        FlowUnit.CUBIC_METRE_PER_SECOND)
                : Draw.ofHeat(
                        draw.timeOfDay(),
                        FACTOR * draw.heat().getAsDouble(),
                        EnergyUnit.JOULE,
                        flow,
                        FlowUnit.CUBIC_METRE_PER_SECOND);
        return draw.mixedTemperature().isPresent()
                ? doubled.mixedTo(draw.mixedTemperature().getAsDouble(), TemperatureUnit.KELVIN)
                : doubled;
    }
}
