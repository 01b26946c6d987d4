package io.github.heatswell.simulation;

import static io.github.heatswell.simulation.Systems.celsius;
import static io.github.heatswell.units.PressureUnit.BAR;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.Totals;
import io.github.heatswell.result.Trace;
import io.github.heatswell.system.Draw;
import io.github.heatswell.system.DrawProfile;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Material;
import io.github.heatswell.system.Parts;
import io.github.heatswell.system.PipeRun;
import io.github.heatswell.system.Start;
import io.github.heatswell.system.Supply;
import io.github.heatswell.units.DurationUnit;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.VolumeUnit;
import io.github.heatswell.water.GibbsPolynomialWater;
import io.github.heatswell.water.LiquidWater;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Pipes that carry hot water, against closed forms. */
class HotBranchTest {

    private static final double ROOM = 17;
    private static final double STORED = 58;
    private static final LiquidWater WATER = GibbsPolynomialWater.instance();

    private static PipeRun branch(double metres, double insulationMillimetre) {
        return PipeRun.builder()
                .carries(PipeRun.Carries.HOT)
                .material(Material.COPPER)
                .outsideDiameter(22, LengthUnit.MILLIMETRE)
                .wall(0.9, LengthUnit.MILLIMETRE)
                .length(metres, LengthUnit.METRE)
                .insulation(insulationMillimetre, LengthUnit.MILLIMETRE)
                .build();
    }

    private static Draw draw(double minutes, double litres) {
        return Draw.ofVolume(60 * minutes, litres, VolumeUnit.LITRE, 6, FlowUnit.LITRE_PER_MINUTE);
    }

    /** The lodge, hot from the start, whose heater stays off. */
    private static HotWaterSystem.Builder hotLodge(Draw... draws) {
        return Parts.lodge(4.2, 58)
                .tank(Parts.tank(230, Parts.steel(480, 2.2), 0, 10))
                .heater(Parts.heater(11.2, 78, STORED, 30))
                .start(Start.builder().water(STORED, TemperatureUnit.CELSIUS).build())
                .draws(DrawProfile.of("own", List.of(draws)));
    }

    private static RunResult run(HotWaterSystem.Builder house, double hours) {
        RunResult run = Simulation.of(house.build(), Duration.ofMinutes((long) (60 * hours)))
                .sampledEvery(Duration.ofSeconds(10))
                .run();
        assertTrue(run.audit().closes());
        return run;
    }

    private static double atTap(RunResult run, double seconds) {
        return run.trace().value(Channel.WATER_AT_TAP, (int) (seconds / 10));
    }

    /**
     * Validation: a mixed pipe of V litres keeps {@code exp(-drawn/V)} of its distance to what flows in. That of the density between
     * 17 and 58 degC adds at most 1.5 %.
     */
    @Test
    void aDrawFillsTheBranch() {
        PipeRun pipe = branch(16, 9);
        RunResult run = run(hotLodge(draw(1, 10)).addPipe(pipe), 1);
        assertEquals(celsius(ROOM), atTap(run, 60), 1e-9); // at rest with the room
        for (double litres = 1; litres < 9.5; litres++) {
            double into = run.trace().value(Channel.WATER_TOP, (int) (6 + litres));
            double left = (into - atTap(run, 60 + 10 * litres)) / (into - celsius(ROOM));
            assertEquals(
                    Math.exp(-litres * 1e-3 / pipe.volume()),
                    left,
                    0.02,
                    litres + " L"); // of the density, and of the tank
        }
    }

    /** Validation: then it cools along an exponential, {@code tau = rho V cp / L}; the properties of water change it by 1 %. */
    @Test
    void itCoolsToTheRoom() {
        for (double insulation : new double[] {0, 9, 20}) {
            PipeRun pipe = branch(16, insulation);
            RunResult run = run(hotLodge(draw(1, 40)).addPipe(pipe), 8);
            double first = atTap(run, 600) - celsius(ROOM);
            LiquidWater.State water = WATER.stateAt(celsius(40), 5e5);
            double tau = water.density() * pipe.volume() * water.heatCapacity() / pipe.heatLoss();
            for (double part : new double[] {0.5, 1, 2}) {
                double left = (atTap(run, 600 + part * tau) - celsius(ROOM)) / first;
                assertEquals(
                        Math.exp(-part),
                        left,
                        0.01 * Math.exp(-part) + 10 / tau,
                        insulation + " mm"); // as stated; a sample
            }
        }
    }

    /**
     * Validation: shut in after a draw, the pressure falls as the branch cools. What its water loses is what the house gives way by:
     * {@code V_b (1 - rho_58/rho_17) - growth of the wall = C_tank dp + kappa V dp + ...}, all small. Heat and standing loss of the
     * tank are left out of the house.
     */
    @Test
    void thePressureFallsAsItCools() {
        PipeRun pipe = branch(16, 0);
        HotWaterSystem.Builder house = hotLodge(draw(1, 40)).addPipe(pipe);
        house.supply(Parts.supply(Supply.Arrangement.CHECK_VALVE, Pressure.gauge(4.2, BAR), 9).toBuilder()
                .addOutage(Supply.Outage.builder()
                        .from(9, DurationUnit.MINUTE)
                        .to(100, DurationUnit.DAY)
                        .build())
                .build());
        RunResult run = run(house, 12);
        HotWaterSystem lodge = run.system();
        Trace trace = run.trace();
        int from = 60;
        int to = trace.count() - 1;
        double before = trace.value(Channel.PRESSURE_ABSOLUTE, from);
        double after = trace.value(Channel.PRESSURE_ABSOLUTE, to);
        double hot = trace.value(Channel.WATER_AT_TAP, from);
        double tank = trace.value(Channel.WATER_TOP, from);
        // mass that the branch takes up as it cools comes from tank and cold branch, which follow the pressure
        double middle = (before + after) / 2;
        LiquidWater.State stored = WATER.stateAt(tank, middle);
        LiquidWater.State cold = WATER.stateAt(celsius(9), middle);
        LiquidWater.State cooled = WATER.stateAt(celsius(ROOM), middle);
        double wall = 3 * Material.COPPER.linearExpansion() * pipe.volume();
        double taken = WATER.density(celsius(ROOM), middle) * (pipe.volume() + wall * (ROOM - 9))
                - WATER.density(hot, middle) * (pipe.volume() + wall * (hot - celsius(9)));
        double adiabatic = stored.compressibility()
                - stored.expansivity() * stored.expansivity() * tank / (stored.density() * stored.heatCapacity());
        double shell = lodge.tank().volume() * (1 + 3 * 12e-6 * (tank - celsius(9)));
        PipeRun copper = lodge.piping().get(0);
        double gives =
                stored.density() * (lodge.tank().volume() * lodge.tank().shell().compliance() + adiabatic * shell)
                        + cold.density() * copper.volume() * (copper.compliance() + cold.compressibility())
                        + cooled.density() * pipe.volume() * (pipe.compliance() + cooled.compressibility());
        assertEquals(
                taken / gives,
                before - after,
                0.01 * taken / gives); // cooled water of the branch never returns; as small
        assertTrue(before - after > 0.5e5, "half a bar and more");
    }

    /** Validation: the branch keeps the heat that warmed its water or loses it, and the taps get so much less. */
    @Test
    void aColdBranchDeliversLess() {
        PipeRun pipe = branch(16, 9);
        RunResult run = run(hotLodge(draw(1, 40)).addPipe(pipe), 8 / 60.0);
        Totals with = run.totals();
        Totals without = run(hotLodge(draw(1, 40)), 8 / 60.0).totals();
        double kept = 990 * pipe.volume() * 4180 * (atTap(run, 470) - celsius(ROOM)) + with.heatLost();
        assertEquals(
                kept, without.heatDelivered() - with.heatDelivered(), 0.02 * kept); // density and heat capacity by hand
    }

    /** A house whose hot branch freezes stops there, whatever the tank. */
    @Test
    void aFrozenBranchEndsTheRun() {
        HotWaterSystem cold = hotLodge(draw(1, 20))
                .site(Parts.site(310, -12))
                .addPipe(branch(16, 9))
                .build();
        RunResult run = Simulation.of(cold, Duration.ofHours(12)).run();
        assertEquals(Event.Kind.WATER_FREEZES, run.hazard().orElseThrow().kind());
        assertEquals("hot branch", run.hazard().orElseThrow().device());
    }

    /** Validation: ISO 12241's formula by hand, ln(40/22)/(2 pi 0.04) + 1/(pi 0.04 10) = 2.379 + 0.796 K m/W; bare 1/(pi 0.022 10). */
    @Test
    void insulationKeepsTheHeat() {
        assertEquals(1 / (2.379 + 0.796), branch(1, 9).heatLoss(), 1e-4); // digits given
        assertEquals(Math.PI * 0.022 * 10, branch(1, 0).heatLoss(), 1e-12);
    }

    /** A pipe of a glass of water does not slow a run down, nor does one that a draw flushes many times a second. */
    @Test
    void aTinyBranchIsNoBurden() {
        PipeRun tiny = PipeRun.builder()
                .carries(PipeRun.Carries.HOT)
                .material(Material.COPPER)
                .outsideDiameter(6, LengthUnit.MILLIMETRE)
                .wall(1, LengthUnit.MILLIMETRE)
                .length(0.1, LengthUnit.METRE)
                .build();
        RunResult run = run(hotLodge(draw(1, 40)).addPipe(tiny), 1);
        RunResult without = run(hotLodge(draw(1, 40)), 1);
        double delivered = without.totals().heatDelivered();
        assertEquals(delivered, run.totals().heatDelivered(), 1e-4 * delivered); // a gram of water
        assertTrue(run.numerics().evaluations() < 100_000, () -> run.numerics().toString());
    }
}
