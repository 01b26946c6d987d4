package io.github.heatswell.diagnosis;

import static io.github.heatswell.units.PressureUnit.PASCAL;

import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Leak;
import io.github.heatswell.system.ReducingValve;
import io.github.heatswell.system.ReliefFault;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.Start;
import io.github.heatswell.system.Supply;
import io.github.heatswell.units.ComplianceUnit;
import io.github.heatswell.units.ConductanceUnit;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.PowerUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.VolumeUnit;
import java.util.function.UnaryOperator;

/** A house that is not quite as described: what the numbers of a diagnosis change of it, all in SI units. */
final class SuspectHouse {

    private static final double MIN_LEAK_PRESSURE = 0.2e5;
    /** A seat leaks from below so much of the set pressure (-), or the valve opens before. */
    private static final double MAX_LEAKS_FROM = 0.98;

    /** The largest standing loss (W/K) that a tank may have. */
    private static final double MAX_LOSS = 100;
    /** A shell gives way at least by this share of what is described (-). */
    private static final double LEAST_GIVE = 0.05;

    private final HotWaterSystem described;
    private final String valve;
    private final int vessel;
    private final double atmosphere;
    private final HotWaterSystem.Builder house;

    /**
     * Starts with the house as described.
     *
     * @param described the house
     * @param valve the name of the relief valve that is meant, possibly none
     * @param vessel the number of the vessel that is meant, from 0
     */
    SuspectHouse(HotWaterSystem described, String valve, int vessel) {
        this.described = described;
        this.valve = valve;
        this.vessel = vessel;
        atmosphere = described.site().atmosphere();
        house = described.toBuilder();
    }

    HotWaterSystem build() {
        return house.build();
    }

    void condition(ExpansionVessel.Condition value) {
        vessel(one -> one.toBuilder().condition(value).build());
    }

    void unmixed() {
        house.changeHeater(heater -> heater.toBuilder().withoutMixing().build());
    }

    /**
     * Another static pressure: a reducing valve is set differently, else the mains stands elsewhere. A mains behind a reducing valve
     * only follows upwards, so that it can feed what the valve is set to. A start above the supply keeps its distance.
     */
    void supplyPressure(double gauge) {
        double shift = gauge - described.supplyAtStart().gauge(atmosphere);
        house.changeSupply(supply -> shifted(supply, shift));
        house.changeStart(start -> shifted(start, shift));
    }

    private Supply shifted(Supply supply, double shift) {
        if (supply.reducingValve().isEmpty()) {
            return supply.toBuilder()
                    .mains(supply.mains().raisedBy(shift, PASCAL))
                    .build();
        }
        ReducingValve valve = supply.reducingValve().get();
        Pressure set = Pressure.gauge(valve.set().gauge(atmosphere) + shift, PASCAL);
        return supply.toBuilder()
                .mains(supply.mains().raisedBy(Math.max(0, shift), PASCAL))
                .reducingValve(valve.toBuilder().set(set).build())
                .build();
    }

    private Start shifted(Start start, double shift) {
        if (start.pressure().isEmpty() || shift == 0) {
            return start;
        }
        double moved = start.pressure().get().gauge(atmosphere) + shift;
        return start.toBuilder().pressure(Pressure.gauge(moved, PASCAL)).build();
    }

    void startTemperature(double kelvin) {
        house.changeStart(
                start -> start.toBuilder().water(kelvin, TemperatureUnit.KELVIN).build());
    }

    void seatLeakage(double flow) {
        house.changeSupply(supply -> supply.toBuilder()
                .seatLeakage(flow, FlowUnit.CUBIC_METRE_PER_SECOND)
                .build());
    }

    void heatingRate(double factor) {
        house.changeHeater(heater -> heater.withElements(element -> element.toBuilder()
                .input(factor * element.input(), PowerUnit.WATT)
                .build()));
    }

    /** All set points are higher by as much as the lower one. */
    void setPoint(double kelvin) {
        double shift = kelvin - described.heater().setPoint();
        house.changeHeater(heater -> heater.withElements(element -> element.toBuilder()
                .setPoint(element.setPoint() + shift, TemperatureUnit.KELVIN)
                .build()));
    }

    void tankVolume(double share) {
        house.changeTank(tank -> tank.toBuilder()
                .volume(share * tank.volume(), VolumeUnit.CUBIC_METRE)
                .build());
    }

    /** Tank and pipes give way so many times as far as described; the tank's shell takes the difference, for it matters not which does. */
    void compliance(double share) {
        double pipes = described.piping().stream()
                .mapToDouble(pipe -> pipe.volume() * pipe.compliance())
                .sum();
        double shell = described.tank().compliance();
        double give = Math.max(LEAST_GIVE * shell, share * (shell + pipes) - pipes);
        house.changeTank(tank -> tank.toBuilder()
                .compliance(give, ComplianceUnit.CUBIC_METRE_PER_PASCAL)
                .build());
    }

    void standingLoss(double share) {
        house.changeTank(tank -> tank.toBuilder()
                .standingLoss(Math.min(MAX_LOSS, share * tank.standingLoss()), ConductanceUnit.WATT_PER_KELVIN)
                .build());
    }

    void precharge(double gauge) {
        vessel(one -> one.toBuilder().precharge(Pressure.gauge(gauge, PASCAL)).build());
    }

    void vesselVolume(double volume) {
        vessel(one -> one.toBuilder().volume(volume, VolumeUnit.CUBIC_METRE).build());
    }

    void acceptance(double share) {
        vessel(one -> one.toBuilder().acceptance(share, RatioUnit.ONE).build());
    }

    void trappedAir(double volume) {
        house.trappedAir(volume, VolumeUnit.CUBIC_METRE);
    }

    /** A leak on top of those there are. */
    void leak(double flow) {
        double at = Math.max(MIN_LEAK_PRESSURE, described.supplyAtStart().gauge(atmosphere));
        house.addLeak(Leak.of(flow, FlowUnit.CUBIC_METRE_PER_SECOND, Pressure.gauge(at, PASCAL)));
    }

    /** Full lift and reseating keep their proportions. */
    void openingPressure(double gauge) {
        valve(valve -> valve.scaled(gauge / valve.setPressure().gauge(atmosphere), atmosphere));
    }

    /** All valves as they are set in the factory: full lift and reseating keep their proportions. */
    void setPressureShare(double share) {
        house.changeReliefValves(valve -> valve.scaled(share, atmosphere));
    }

    /** Of the valve that is meant, or if none is, of all. */
    void reseatShare(double share) {
        valve(valve -> valve.toBuilder()
                .reseatPressure(Pressure.gauge(share * valve.setPressure().gauge(atmosphere), PASCAL))
                .build());
    }

    void seatWeep(double flow) {
        valve(valve -> leaking(valve, valve.fault().leaksFrom().orElse(Pressure.gauge(0, PASCAL)), flow));
    }

    /** Where a seat that leaks already begins to. */
    void weepsFrom(double gauge) {
        valve(valve -> {
            double most = MAX_LEAKS_FROM * valve.setPressure().gauge(atmosphere);
            return leaking(
                    valve,
                    Pressure.gauge(Math.min(gauge, most), PASCAL),
                    valve.fault().leakage());
        });
    }

    private static ReliefValve leaking(ReliefValve valve, Pressure from, double flow) {
        return valve.toBuilder()
                .fault(ReliefFault.leakingSeat(from, flow, FlowUnit.CUBIC_METRE_PER_SECOND))
                .build();
    }

    void stuckLift(double lift) {
        valve(valve -> valve.toBuilder()
                .fault(ReliefFault.stuckOpen(lift, RatioUnit.ONE))
                .build());
    }

    private void vessel(UnaryOperator<ExpansionVessel> change) {
        if (vessel < described.vessels().size()) {
            house.changeVessel(vessel, change);
        }
    }

    private void valve(UnaryOperator<ReliefValve> change) {
        house.changeReliefValves(one -> valve.isEmpty() || one.name().equals(valve) ? change.apply(one) : one);
    }
}
