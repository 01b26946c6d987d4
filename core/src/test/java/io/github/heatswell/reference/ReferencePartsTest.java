package io.github.heatswell.reference;

import static io.github.heatswell.units.PressureUnit.BAR;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.Material;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.Shell;
import io.github.heatswell.system.Tank;
import io.github.heatswell.units.ConductanceUnit;
import io.github.heatswell.units.DurationUnit;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.VolumeUnit;
import io.github.heatswell.water.GibbsPolynomialWater;
import io.github.heatswell.water.If97Region1;
import io.github.heatswell.water.LiquidWater;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Validation of the parts of the unreduced equations, each against its own law. */
@Tag("validation")
class ReferencePartsTest {

    private static final double AIR = 101_325;
    private static final double ROOM = 293.15;

    private static Tank tank(Shell shell) {
        return Tank.builder()
                .volume(150, VolumeUnit.LITRE)
                .shell(shell)
                .standingLoss(0, ConductanceUnit.WATT_PER_KELVIN)
                .workingPressure(Pressure.gauge(10, BAR))
                .build();
    }

    private static ExpansionVessel.Builder vessel() {
        return ExpansionVessel.builder()
                .volume(12, VolumeUnit.LITRE)
                .precharge(Pressure.absolute(4, BAR))
                .acceptance(50, RatioUnit.PERCENT);
    }

    private static VesselGas slowGas() {
        return new VesselGas(vessel().gasTimeConstant(30, DurationUnit.SECOND).build(), AIR, ROOM, ROOM);
    }

    /**
     * Far beyond the pressures of a house: shut in rigidly from 10 degC and 4.5 bar, pressures of the isochore by
     * IAPWS-95. The industrial formulation is up to 0.4 % off in compressibility.
     */
    @ParameterizedTest
    @CsvSource({"20, 37.432", "30, 96.638", "40, 178.70"})
    void stateFollowsFromMassAndEnergy(double celsius, double bar) {
        LiquidWater water = If97Region1.instance();
        TankWater tank = new TankWater(tank(Shell.rigid()), water, 283.15, 4.5e5);
        double mass = tank.massAt(283.15, 4.5e5);
        double t = celsius + 273.15;
        tank.settle(mass, mass * water.internalEnergy(t, bar * 1e5));
        assertEquals(t, tank.temperature(), 0.01);
        assertEquals(bar * 1e5, tank.pressure(), 5e-3 * bar * 1e5);
    }

    /** There and back again: what is left is rounding, 1e-16 of the density being 1e-7 Pa of the pressure. */
    @ParameterizedTest
    @CsvSource({"0.5, 3", "4, 5", "35, 8", "60, 10", "90, 15"})
    void settlingInvertsMassAndEnergy(double celsius, double bar) {
        LiquidWater water = GibbsPolynomialWater.instance();
        Shell steel = Shell.cylinder(Material.STEEL, 450, 2.2, LengthUnit.MILLIMETRE);
        TankWater tank = new TankWater(tank(steel), water, 283.15, 4.5e5);
        double mass = tank.massAt(celsius + 273.15, bar * 1e5);
        tank.settle(mass, mass * water.internalEnergy(celsius + 273.15, bar * 1e5));
        assertEquals(celsius + 273.15, tank.temperature(), 1e-10);
        assertEquals(bar * 1e5, tank.pressure(), 1e-5);
    }

    /** p dV/dt against the volumes before and after a short time in which just that work left the energy. */
    @ParameterizedTest
    @CsvSource({"3000, 0", "0, -1e-3", "-200, 2e-3"})
    void workIsPressureTimesGrowth(double power, double massRate) {
        Shell steel = Shell.cylinder(Material.STEEL, 450, 2.2, LengthUnit.MILLIMETRE);
        LiquidWater water = GibbsPolynomialWater.instance();
        TankWater tank = new TankWater(tank(steel), water, 283.15, 4.5e5);
        double mass = tank.massAt(313.15, 6e5);
        double energy = mass * water.internalEnergy(313.15, 6e5);
        tank.settle(mass, energy);
        double energyRate = power + massRate * tank.enthalpy();
        double work = tank.work(mass, massRate, energyRate, 0);
        double shortly = 0.01;
        tank.settle(mass + shortly * massRate, energy + shortly * (energyRate - work));
        double after = tank.volumeAt(tank.temperature(), tank.pressure());
        tank.settle(mass - shortly * massRate, energy - shortly * (energyRate - work));
        double before = tank.volumeAt(tank.temperature(), tank.pressure());
        assertEquals(6e5 * (after - before) / (2 * shortly), work, 1e-5 * Math.abs(work), "difference quotient");
    }

    /** 12 L of gas at 4 bar pressed to 9.5 L: 5.0526 bar if it stays at room temperature, 5.5475 bar if it keeps its heat. */
    @Test
    void gasIsIsothermalOrAdiabatic() {
        VesselGas quick = new VesselGas(vessel().build(), AIR, ROOM, ROOM);
        assertEquals(2.5e-3, quick.waterVolume(5.0526316e5, 0, Mode.Diaphragm.FLOATING), 1e-9, "printed digits");
        VesselGas slow = slowGas();
        double s = slow.adiabatAtRest(4e5);
        assertEquals(2.5e-3, slow.waterVolume(4e5 * Math.pow(12 / 9.5, 1.4), s, Mode.Diaphragm.FLOATING), 1e-15);
        assertEquals(5.5475, 4 * Math.pow(12 / 9.5, 1.4), 1e-4, "printed digits");
    }

    /** Kept at one volume, the excess of the gas temperature over the room decays exponentially. */
    @Test
    void gasReturnsToRoomTemperature() {
        VesselGas gas = slowGas();
        StiffProblem relaxation = new StiffProblem() {
            @Override
            public int dimension() {
                return 1;
            }

            @Override
            public double magnitude(int component) {
                return 1;
            }

            @Override
            public void rates(double t, double[] y, double[] rates) {
                rates[0] = gas.adiabatRate(20e5, y[0], Mode.Diaphragm.STOPPED, ROOM);
            }
        };
        double rest = gas.stopPressure(gas.adiabatAtRest(8e5));
        double[] hot = {gas.adiabatAtRest(8e5) + Math.log(1.1)};
        double[] later = new StiffIntegrator(relaxation, 1e-10)
                .advance(0, hot, 45, List.of())
                .y();
        double excess = gas.stopPressure(later[0]) / rest - 1;
        assertEquals(0.1 * Math.exp(-45 / 30.0), excess, 1e-9, "pressure goes with temperature at one volume");
    }

    /** Seat, free travel and stop join without a gap. */
    @Test
    void vesselLawsJoin() {
        VesselGas gas = slowGas();
        double s = gas.adiabatAtRest(4e5) + 0.01;
        double seat = gas.seatPressure(s);
        double stop = gas.stopPressure(s);
        assertEquals(0, gas.waterVolume(seat, s, Mode.Diaphragm.SEATED), 1e-16);
        assertEquals(0, gas.waterVolume(seat, s, Mode.Diaphragm.FLOATING), 1e-16);
        assertEquals(6e-3, gas.waterVolume(stop, s, Mode.Diaphragm.FLOATING), 1e-16);
        assertEquals(6e-3, gas.waterVolume(stop, s, Mode.Diaphragm.STOPPED), 1e-16);
        double d = 10;
        double slope = (gas.waterVolume(6e5 + d, s, Mode.Diaphragm.FLOATING)
                        - gas.waterVolume(6e5 - d, s, Mode.Diaphragm.FLOATING))
                / (2 * d);
        assertEquals(slope, gas.waterVolumeByPressure(6e5, s, Mode.Diaphragm.FLOATING), 1e-6 * slope);
    }

    /** Opens at 7, full lift at 7.7, reseats at 5.6 bar above the air, 20 L/min. */
    @ParameterizedTest
    @CsvSource({
        "MODULATING, PARTIAL, 7.7, 20",
        "MODULATING, PARTIAL, 5.6, 0",
        // Lift 1.05/2.1, and the root of 6.65/7.7.
        "MODULATING, PARTIAL, 6.65, 9.293204",
        "MODULATING, FULL, 8.47, 20.976177",
        "SNAP, FULL, 5.6, 17.056057",
        "SNAP, CLOSED, 6.9, 0"
    })
    void reliefFlowFollowsLiftAndOrifice(
            ReliefValve.LiftCharacteristic character, Mode.Lift lift, double bar, double expected) {
        ReliefPort port = new ReliefPort(
                ReliefValve.builder()
                        .name("relief")
                        .setPressure(Pressure.gauge(7, BAR))
                        .fullLiftPressure(Pressure.gauge(7.7, BAR))
                        .reseatPressure(Pressure.gauge(5.6, BAR))
                        .fullFlow(20, FlowUnit.LITRE_PER_MINUTE)
                        .liftCharacteristic(character)
                        .build(),
                AIR,
                0);
        assertEquals(expected, FlowUnit.LITRE_PER_MINUTE.fromSi(port.flow(bar * 1e5 + AIR, lift)), 1e-6);
    }
}
