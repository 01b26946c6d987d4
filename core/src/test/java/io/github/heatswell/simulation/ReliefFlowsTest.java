package io.github.heatswell.simulation;

import static io.github.heatswell.units.PressureUnit.BAR;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.ReliefFault;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.Pressure;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Six valves at once: two open on the branch, two open on the tank, and a leaking seat on each place. */
class ReliefFlowsTest {

    private static final double COLD = 1000;
    private static final double HOT = 960;
    private static final double PRESSURE = 7.5e5;

    private CompiledSystem plant;
    private Modes modes;
    private ReliefFlows flows;

    @BeforeEach
    void prepare() {
        HotWaterSystem.Builder house = Systems.lodge();
        for (int i = 0; i < 6; i++) {
            ReliefValve.Builder valve = Systems.valve(
                            "valve " + i, ReliefValve.LiftCharacteristic.MODULATING, 7 + 0.1 * i, 8 + 0.1 * i, 5)
                    .toBuilder()
                    .location(i < 3 ? ReliefValve.Location.BRANCH : ReliefValve.Location.TANK_TOP);
            if (i == 2 || i == 5) {
                valve.fault(ReliefFault.leakingSeat(Pressure.gauge(3, BAR), 0.1 * i, FlowUnit.LITRE_PER_MINUTE));
            }
            house.addReliefValve(valve.build());
        }
        plant = new CompiledSystem(house.build());
        modes = Modes.resting(plant);
        for (int open : List.of(0, 1, 3, 4)) {
            modes = modes.withLift(open, Valve.Lift.PRESSURE);
        }
        modes = seeping(modes);
        flows = new ReliefFlows(plant);
        flows.prepare(PRESSURE, modes, COLD, HOT);
    }

    private static Modes seeping(Modes modes) {
        return modes.withLift(2, Valve.Lift.SEEPING).withLift(5, Valve.Lift.SEEPING);
    }

    private double byCurve(int valve) {
        return (valve < 3 ? COLD : HOT) * plant.valves[valve].flow(PRESSURE, modes.lift(valve));
    }

    @Test
    void eachPlaceHasItsSum() {
        double rounding = 1e-12;
        assertEquals(byCurve(0) + byCurve(1), flows.onBranch(), rounding);
        assertEquals(byCurve(3) + byCurve(4), flows.onTop(), rounding);
        assertEquals(flows.onBranch() + flows.onTop(), flows.open(), rounding);
        assertEquals(byCurve(2), flows.branchSeatLeakage(), rounding);
        assertEquals(byCurve(5), flows.topSeatLeakage(), rounding);
        assertEquals(true, flows.branchSeatLeakage() > 0 && flows.topSeatLeakage() > 0);
    }

    @Test
    void slopeIsThatOfTheSum() {
        double step = 10;
        ReliefFlows more = new ReliefFlows(plant);
        more.prepare(PRESSURE + step, modes, COLD, HOT);
        ReliefFlows less = new ReliefFlows(plant);
        less.prepare(PRESSURE - step, modes, COLD, HOT);
        double quotient = (more.open() - less.open()) / (2 * step);
        assertEquals(quotient, flows.slope(), 1e-6 * quotient); // difference quotient
    }

    /** What the balance has valves and seats pass beyond their curves is shared by the slopes of these. */
    @Test
    void whatTheBalanceGivesIsSharedBySlopes() {
        double[] rates = new double[StateVector.RELIEVED + 6];
        double ahead = 3;
        flows.fill(PRESSURE, modes, ahead, rates);
        double sum = 0;
        for (int i = 0; i < 6; i++) {
            sum += rates[StateVector.RELIEVED + i] - byCurve(i);
        }
        assertEquals(ahead * (flows.slope() + flows.seatLeakageSlope()), sum, 1e-12); // rounding
        double[] there = new double[StateVector.RELIEVED + 6];
        flows.prepare(PRESSURE + ahead, modes, COLD, HOT);
        flows.fill(PRESSURE + ahead, modes, 0, there);
        for (int i = StateVector.RELIEVED; i < there.length; i++) {
            assertEquals(there[i], rates[i], 1e-6 * there[i]); // the curves bend
        }
    }

    @Test
    void closedValvesGiveOffTheirSeepAlone() {
        Modes closed = seeping(Modes.resting(plant));
        flows.prepare(PRESSURE, closed, COLD, HOT);
        double[] rates = new double[StateVector.RELIEVED + 6];
        flows.fill(PRESSURE, closed, 0, rates);
        assertEquals(0, flows.open());
        assertEquals(0, rates[StateVector.RELIEVED]);
        assertEquals(byCurve(2), rates[StateVector.RELIEVED + 2], 1e-12); // rounding
    }
}
