package io.github.heatswell.reference;

import static io.github.heatswell.units.PressureUnit.BAR;
import static io.github.heatswell.units.TemperatureUnit.CELSIUS;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.Event;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.Heater;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Material;
import io.github.heatswell.system.Parts;
import io.github.heatswell.system.Shell;
import io.github.heatswell.system.Start;
import io.github.heatswell.system.Supply;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.VolumeUnit;
import io.github.heatswell.water.GibbsPolynomialWater;
import io.github.heatswell.water.LiquidWater;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Validation of the unreduced equations where something closed can be said about them. */
@Tag("validation")
class UnreducedSystemTest {

    private static final LiquidWater WATER = GibbsPolynomialWater.instance();
    private static final double MINUTE = 60;

    private static HotWaterSystem.Builder plain(Shell shell, double litres, double bar, double setCelsius) {
        return HotWaterSystem.builder()
                .site(Parts.site(0, 20))
                .supply(Parts.supply(Supply.Arrangement.CHECK_VALVE, Pressure.absolute(bar, BAR), 10))
                .tank(Parts.tank(litres, shell, 0, 12.5))
                .heater(heater(setCelsius));
    }

    private static Heater heater(double setCelsius) {
        return Parts.heaterBuilder(3, 100, setCelsius, 0.5)
                .energy(Heater.Energy.ELECTRIC)
                .build();
    }

    private static ReferenceRun run(HotWaterSystem system, double hours) {
        return run(system, hours, Conductances.ample(), 1e-9);
    }

    private static ReferenceRun run(HotWaterSystem system, double hours, Conductances conductances, double tolerance) {
        return ReferenceRun.of(new UnreducedSystem(system, WATER, conductances), hours * 3600, MINUTE, tolerance);
    }

    private static Event first(ReferenceRun run, Event.Kind kind) {
        return run.events().stream().filter(e -> e.kind() == kind).findFirst().orElseThrow();
    }

    /**
     * Shut in from 10 degC and 4.5 bar. Pressures computed with IAPWS-95 from equal density (rigid), and from mass
     * and volume of a steel cylinder of 450 x 2.2 mm, 200 GPa, nu 0.30, 12e-6 1/K, with and without its elasticity.
     */
    @ParameterizedTest
    @CsvSource({"rigid, 11, 6.5077", "rigid, 15, 17.457", "growing, 15, 13.591", "steel, 15, 7.448", "steel, 20, 12.502"
    })
    void shutInWaterFollowsTheIsochore(String wall, double celsius, double bar) {
        Material stiff = new Material("growing", 2e15, 0.30, 12e-6);
        Shell shell = switch (wall) {
            case "rigid" -> Shell.rigid();
            case "growing" -> Shell.cylinder(stiff, 450, 2.2, LengthUnit.MILLIMETRE);
            default -> Shell.cylinder(Material.STEEL, 450, 2.2, LengthUnit.MILLIMETRE);
        };
        ReferenceRun run = run(plain(shell, 150, 4.5, celsius).build(), 1);
        Event off = first(run, Event.Kind.HEATER_OFF);
        assertEquals(bar * 1e5, off.pressureAbsolute(), 4e-4 * bar * 1e5, "3e-4 of the source, and of the water used");
    }

    /**
     * Vessels that float: precharge 3.8 bar, supply 4.0 bar, 12 L at 150 L heated to 60 degC, and 4.0, 4.0, 8 L to 65.
     * Pressures computed with IAPWS-95 from mass balance and isothermal gas.
     */
    @ParameterizedTest
    @CsvSource({"3.8, 12, 60, 5.1068", "4.0, 8, 65, 6.2256"})
    void floatingVesselTakesTheExpansion(double precharge, double litres, double celsius, double bar) {
        HotWaterSystem system = plain(Shell.rigid(), 150, 4.0, celsius)
                .vessel(vessel(precharge, litres, 100))
                .build();
        Event off = first(run(system, 6), Event.Kind.HEATER_OFF);
        assertEquals(bar * 1e5, off.pressureAbsolute(), 2e-4 * bar * 1e5, "printed digits");
    }

    private static ExpansionVessel vessel(double prechargeBar, double litres, double acceptancePercent) {
        return ExpansionVessel.builder()
                .volume(litres, VolumeUnit.LITRE)
                .precharge(Pressure.absolute(prechargeBar, BAR))
                .acceptance(acceptancePercent, RatioUnit.PERCENT)
                .build();
    }

    /** Sealed and without loss, all heat stays in the water: P t = m (u2 - u1). */
    @Test
    void sealedTankTakesUpAllHeat() {
        ReferenceRun run = run(plain(Shell.rigid(), 150, 4.5, 15).build(), 1);
        Event off = first(run, Event.Kind.HEATER_OFF);
        double mass = run.state()[UnreducedSystem.TANK_MASS];
        double rise = WATER.internalEnergy(off.waterTemperature(), off.pressureAbsolute())
                - WATER.internalEnergy(283.15, 4.5e5);
        assertEquals(
                mass * rise / 3e3, off.time(), 1e-4 * off.time() * 0.01, "a fitting takes a millionth of the water");
    }

    /** At constant pressure, hot water leaving: {@code m c_p dT = (P - UA (T - T_room)) dt} with m = rho V. */
    @Test
    void openTankHeatsUpInTheTimeOfAQuadrature() {
        HotWaterSystem system = plain(Shell.rigid(), 150, 4.0, 60)
                .supply(Parts.supply(Supply.Arrangement.DIRECT, Pressure.absolute(4.0, BAR), 10))
                .tank(Parts.tank(150, Shell.rigid(), 10, 12.5))
                .build();
        double seconds = integral(
                283.15,
                333.15,
                t -> 0.15 * WATER.density(t, 4e5) * WATER.heatCapacity(t, 4e5) / (3e3 - 10 * (t - 293.15)));
        assertEquals(
                seconds, first(run(system, 6), Event.Kind.HEATER_OFF).time(), 1e-5 * seconds, "1 Pa above the mains");
    }

    /**
     * At constant pressure, cold water following: {@code rho V (c_p - beta (h - h_cold)) dT = -UA (T - T_room) dt}.
     */
    @Test
    void fedTankCoolsDownInTheTimeOfAQuadrature() {
        HotWaterSystem system = plain(Shell.rigid(), 150, 4.0, 60)
                .tank(Parts.tank(150, Shell.rigid(), 10, 12.5))
                .start(Start.builder().water(65, CELSIUS).build())
                .build();
        double cold = WATER.enthalpy(283.15, 4e5);
        double seconds = integral(
                332.65,
                338.15,
                t -> 0.15
                        * WATER.density(t, 4e5)
                        * (WATER.heatCapacity(t, 4e5) - WATER.expansivity(t, 4e5) * (WATER.enthalpy(t, 4e5) - cold))
                        / (10 * (t - 293.15)));
        assertEquals(
                seconds, first(run(system, 8), Event.Kind.HEATER_ON).time(), 1e-5 * seconds, "1 Pa below the mains");
    }

    private static double integral(double from, double to, DoubleUnaryOperator f) {
        int pieces = 200;
        double h = (to - from) / pieces;
        double sum = f.applyAsDouble(from) + f.applyAsDouble(to);
        for (int i = 1; i < pieces; i++) {
            sum += (i % 2 == 1 ? 4 : 2) * f.applyAsDouble(from + i * h);
        }
        return sum * h / 3;
    }

    static List<ComparisonCase> cases() {
        return ComparisonCase.all();
    }

    /** Mass from the inventory at both ends, computed afresh from T and p, against what crossed the boundary. */
    @ParameterizedTest
    @MethodSource("cases")
    void massAndEnergyAreConserved(ComparisonCase chosen) {
        UnreducedSystem system = new UnreducedSystem(chosen.system(), WATER, Conductances.ample());
        double[] before = system.start();
        ReferenceRun run = ReferenceRun.of(system, 6 * 3600, MINUTE, 1e-9);
        double[] after = run.state();
        double relieved = 0;
        for (int i = 0; i < system.reliefs().size(); i++) {
            relieved += run.relieved(i);
        }
        double stored = after[UnreducedSystem.TANK_MASS]
                + after[UnreducedSystem.BRANCH_MASS]
                - before[UnreducedSystem.TANK_MASS]
                - before[UnreducedSystem.BRANCH_MASS];
        double mass = before[UnreducedSystem.TANK_MASS];
        assertEquals(run.letIn() - run.returned() - relieved, stored, 1e-8 * mass * 1e-2, "1e-8 of what expands, 1 %");
        double gained = after[UnreducedSystem.TANK_ENERGY] - before[UnreducedSystem.TANK_ENERGY];
        double given = run.total(UnreducedSystem.Integral.HEAT)
                - run.total(UnreducedSystem.Integral.LOSS)
                - run.total(UnreducedSystem.Integral.CARRIED)
                - run.total(UnreducedSystem.Integral.WORK);
        assertEquals(given, gained, 1e-8 * Math.max(run.total(UnreducedSystem.Integral.HEAT), mass * 4.2e3));
        double p = system.pressure(after, run.mode());
        double t = system.temperature(after);
        double held = system.branch()
                .massAt(p, after[UnreducedSystem.ADIABAT], run.mode().diaphragms());
        assertEquals(after[UnreducedSystem.BRANCH_MASS], held, 1e-12 * mass);
        assertEquals(after[UnreducedSystem.TANK_ENERGY], after[0] * WATER.internalEnergy(t, p), 1e-8 * mass * 4.2e3);
    }

    /** Tighter tolerances move the instants less and less. */
    @Test
    void tolerancesConverge() {
        HotWaterSystem lodge = ComparisonCase.all().get(2).system();
        double best = instants(run(lodge, 6, Conductances.ample(), 1e-11));
        double coarse = Math.abs(instants(run(lodge, 6, Conductances.ample(), 1e-6)) - best);
        double fine = Math.abs(instants(run(lodge, 6, Conductances.ample(), 5e-10)) - best);
        assertTrue(fine < 0.1 * coarse + 1e-3, "coarse " + coarse + " s, fine " + fine + " s");
        assertTrue(fine < 5e-3, "fine " + fine + " s: a two-hundredth of what is compared");
    }

    /** Ten times easier flow everywhere, or a real house: the results hang on the conductances no more than stated. */
    @Test
    void conductancesDoNotMatter() {
        HotWaterSystem lodge = ComparisonCase.all().get(2).system();
        double chosen = instants(run(lodge, 6));
        assertEquals(chosen, instants(run(lodge, 6, new Conductances(1e-2, 1e-1), 1e-9)), 0.05);
        assertEquals(chosen, instants(run(lodge, 6, Conductances.household(), 1e-9)), 0.5);
    }

    private static double instants(ReferenceRun run) {
        return run.events().stream().mapToDouble(Event::time).sum();
    }

    /** A vessel that never lifts must not be felt: seat and stop give way by less than 1e-5 of the pressure. */
    @Test
    void seatAndStopAreAsGoodAsRigid() {
        Shell steel = Shell.cylinder(Material.STEEL, 450, 2.2, LengthUnit.MILLIMETRE);
        HotWaterSystem without = plain(steel, 150, 4.5, 18).build();
        HotWaterSystem seated = without.toBuilder().vessel(vessel(12, 100, 90)).build();
        double p = first(run(without, 2), Event.Kind.HEATER_OFF).pressureAbsolute();
        double q = first(run(seated, 2), Event.Kind.HEATER_OFF).pressureAbsolute();
        assertEquals(p, q, 1e-6 * p, "a tenth of what is promised, even for a vessel of two thirds of the tank");
    }
}
