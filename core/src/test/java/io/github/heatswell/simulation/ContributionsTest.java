package io.github.heatswell.simulation;

import static io.github.heatswell.units.PressureUnit.BAR;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.simulation.Contributions.Outlet;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Parts;
import io.github.heatswell.system.ReliefFault;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.water.GibbsPolynomialWater;
import io.github.heatswell.water.LiquidWater;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Six valves at once: two open on the branch, two open on the tank, and a leaking seat on each place. */
class ContributionsTest {

    private static final double PRESSURE = 7.5e5;

    private Moment now;
    private Contributions flows;

    @BeforeEach
    void prepare() {
        HotWaterSystem.Builder house = Parts.lodge(4.2, 58);
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
        now = new Moment(house, 7.5, 55);
        now.y[StateVector.PRESSURE] = PRESSURE;
        for (int open : List.of(0, 1, 3, 4)) {
            now.open(open);
        }
        now.modes = seeping(now.modes);
        flows = at(PRESSURE, now.modes);
    }

    private Modes seeping(Modes modes) {
        Valve[] valves = now.plant.valves;
        return modes.with(valves[2], Valve.Lift.SEEPING).with(valves[5], Valve.Lift.SEEPING);
    }

    private Contributions at(double pressure, Modes modes) {
        double[] y = now.at(pressure);
        LiquidWater water = GibbsPolynomialWater.instance();
        LiquidWater.State cold = new LiquidWater.State();
        water.evaluate(now.plant.coldTemperature, pressure, cold);
        TankColumn column = new TankColumn(now.plant, water);
        column.prepare(y, now.vector, modes);
        Contributions found = new Contributions(now.plant);
        found.under(now.conditions);
        found.prepare(y, modes, cold, column);
        return found;
    }

    private double byCurve(int valve) {
        Valve one = now.plant.valves[valve];
        return flows.density(valve >= 3) * one.flow(PRESSURE, now.modes.of(one));
    }

    private double[] filled(Contributions from, double beyond) {
        double[] rates = new double[now.vector.length];
        from.fill(beyond, rates);
        return rates;
    }

    private int slot(int valve) {
        return now.plant.valves[valve].relieved;
    }

    @Test
    void eachPlaceHasItsSum() {
        double rounding = 1e-12;
        assertEquals(byCurve(0) + byCurve(1) + byCurve(2), flows.branchFlow(), rounding);
        assertEquals(byCurve(3) + byCurve(4) + byCurve(5), flows.topFlow(), rounding);
        assertEquals(byCurve(2) + byCurve(5), flows.flow(Outlet.SEAT), rounding);
        assertEquals(
                flows.branchFlow() + flows.topFlow() - flows.flow(Outlet.SEAT), flows.flow(Outlet.VALVE), rounding);
        assertTrue(byCurve(2) > 0 && byCurve(5) > 0);
        assertTrue(flows.density(false) > flows.density(true));
    }

    @Test
    void slopeIsThatOfTheSum() {
        double step = 10;
        Contributions more = at(PRESSURE + step, now.modes);
        Contributions less = at(PRESSURE - step, now.modes);
        double all = (more.branchFlow() + more.topFlow() - less.branchFlow() - less.topFlow()) / (2 * step);
        assertEquals(all, flows.slope(), 1e-4 * all); // the curves leave out that pressure makes water denser
        double top = (more.topFlow() - less.topFlow()) / (2 * step);
        assertEquals(top, flows.topSlope(), 1e-4 * top); // likewise
        double open = (more.flow(Outlet.VALVE) - less.flow(Outlet.VALVE)) / (2 * step);
        assertEquals(open, flows.slope(Outlet.VALVE), 1e-4 * open); // likewise
    }

    /** What the balance has valves and seats pass beyond their curves is shared by the slopes of these. */
    @Test
    void whatTheBalanceGivesIsSharedBySlopes() {
        double ahead = 3;
        double[] rates = filled(flows, ahead);
        double sum = 0;
        for (int i = 0; i < 6; i++) {
            sum += rates[slot(i)] - byCurve(i);
        }
        assertEquals(ahead * flows.slope(), sum, 1e-12); // rounding
        double[] there = filled(at(PRESSURE + ahead, now.modes), 0);
        for (int i = 0; i < 6; i++) {
            assertEquals(there[slot(i)], rates[slot(i)], 1e-6 * there[slot(i)]); // the curves bend
        }
    }

    @Test
    void closedValvesGiveOffTheirSeatLeakageAlone() {
        Contributions closed = at(PRESSURE, seeping(Modes.resting(now.plant)));
        double[] rates = filled(closed, 0);
        assertEquals(0, closed.flow(Outlet.VALVE));
        assertEquals(0, rates[slot(0)]);
        assertEquals(byCurve(2), rates[slot(2)], 1e-12); // rounding
    }
}
