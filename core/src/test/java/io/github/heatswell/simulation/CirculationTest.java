package io.github.heatswell.simulation;

import static io.github.heatswell.simulation.Systems.celsius;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.Trace;
import io.github.heatswell.system.Circulation;
import io.github.heatswell.system.Draw;
import io.github.heatswell.system.DrawProfile;
import io.github.heatswell.system.Heater;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.InvalidDescriptionException;
import io.github.heatswell.system.Leak;
import io.github.heatswell.system.Material;
import io.github.heatswell.system.Parts;
import io.github.heatswell.system.PipeRun;
import io.github.heatswell.system.Start;
import io.github.heatswell.system.Supply;
import io.github.heatswell.system.Tank;
import io.github.heatswell.units.DurationUnit;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.VolumeUnit;
import io.github.heatswell.water.GibbsPolynomialWater;
import io.github.heatswell.water.LiquidWater;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A circulation loop, against closed forms. */
class CirculationTest {

    private static final double ROOM = 17;
    private static final double STORED = 58;
    private static final LiquidWater WATER = GibbsPolynomialWater.instance();

    private static PipeRun loop(double insulationMillimetre) {
        return PipeRun.builder()
                .carries(PipeRun.Carries.LOOP)
                .material(Material.COPPER)
                .outsideDiameter(22, LengthUnit.MILLIMETRE)
                .wall(0.9, LengthUnit.MILLIMETRE)
                .length(30, LengthUnit.METRE)
                .insulation(insulationMillimetre, LengthUnit.MILLIMETRE)
                .build();
    }

    private static Circulation.Builder pump(double litresPerMinute) {
        return Circulation.builder().flow(litresPerMinute, FlowUnit.LITRE_PER_MINUTE);
    }

    /** The lodge at 58 degC, whose heater stays off; its tank loses no heat itself. */
    private static HotWaterSystem.Builder lodge(PipeRun loop, Circulation pump) {
        return Parts.lodge(4.2, 58)
                .tank(Parts.tank(230, Parts.steel(480, 2.2), 0, 10))
                .heater(Parts.heater(11.2, 78, STORED, 39))
                .start(Start.builder()
                        .water(STORED, TemperatureUnit.CELSIUS)
                        .timeOfDay(5, DurationUnit.HOUR)
                        .build())
                .addPipe(loop)
                .circulation(pump);
    }

    private static RunResult run(HotWaterSystem house, double hours) {
        RunResult run =
                Simulation.of(house, Duration.ofMinutes((long) (60 * hours))).run();
        assertTrue(run.audit().closes());
        return run;
    }

    private static double read(RunResult run, Channel channel, int minute) {
        return run.trace().value(channel, minute) - 273.15;
    }

    /**
     * Validation: in slow change the loop is below the tank by {@code [L (T - T_room) + M cp dT/dt]/(m cp)}, M being its mass, and
     * both cool by {@code L (T - T_room)} over all their heat.
     */
    @Test
    void theReturnIsCoolerByWhatTheLoopLoses() {
        PipeRun pipe = loop(9);
        RunResult run = run(lodge(pipe, pump(2).build()).build(), 8);
        LiquidWater.State water = WATER.stateAt(celsius(55), 5e5);
        for (int minute = 60; minute <= 480; minute += 60) {
            double tank = read(run, Channel.WATER_MEAN, minute);
            double back = read(run, Channel.WATER_IN_LOOP, minute);
            double carried = 2 / 60e3 * water.density() * water.heatCapacity();
            double rate = (back - read(run, Channel.WATER_IN_LOOP, minute - 10)) / 600;
            double stored = pipe.volume() * water.density() * water.heatCapacity() * rate;
            double drop = (pipe.heatLoss() * (back - ROOM) + stored) / carried;
            assertEquals(drop, tank - back, 0.01 * drop, minute + " min"); // properties of water
        }
        double heat = water.density() * water.heatCapacity() * (run.system().hotVolume());
        double tau = heat / pipe.heatLoss();
        double first = read(run, Channel.WATER_MEAN, 60) - ROOM;
        double last = read(run, Channel.WATER_MEAN, 480) - ROOM;
        // the loop, which loses the heat, is below the mean by its drop: a few per cent
        assertEquals(Math.exp(-7 * 3600 / tau), last / first, 0.01);
        assertEquals(celsius(STORED), run.trace().value(Channel.WATER_IN_LOOP, 0), 1e-9); // the pump runs at the start
    }

    /** Validation: with the pump at rest the loop cools alone, {@code exp(-t L/(rho V cp))}; then it is flushed within minutes. */
    @Test
    void theTimetableStartsAndStopsThePump() {
        PipeRun pipe = loop(9);
        Circulation hours =
                pump(3).pump(List.of(new Circulation.Hours(6 * 3600, 8 * 3600))).build();
        RunResult run = run(lodge(pipe, hours).build(), 8);
        assertEquals(ROOM, read(run, Channel.WATER_IN_LOOP, 60), 1e-6); // five to six
        assertEquals(STORED, read(run, Channel.WATER_MEAN, 60), 1e-3);
        double mixed = read(run, Channel.WATER_MEAN, 90);
        double full = 9.6 / 230 * (STORED - ROOM); // what 9.6 L of loop take from 230 L
        assertEquals(STORED - full, mixed, 0.9); // and lose meanwhile
        LiquidWater.State water = WATER.stateAt(celsius(40), 5e5);
        double tau = water.density() * pipe.volume() * water.heatCapacity() / pipe.heatLoss();
        double first = read(run, Channel.WATER_IN_LOOP, 181) - ROOM;
        double later = read(run, Channel.WATER_IN_LOOP, 241) - ROOM;
        assertEquals(Math.exp(-3600 / tau), later / first, 0.01); // properties of water
    }

    /** Validation: shut in and heated, tank and loop swell together: a vessel takes up the growth of both volumes. */
    @Test
    void itsWaterSwellsWithTheTanks() {
        PipeRun pipe = loop(30);
        HotWaterSystem house = lodge(pipe, pump(6).build())
                .heater(Parts.heater(11.2, 78, STORED, 6))
                .start(Start.coldFill())
                .vessel(Systems.vessel(200, Pressure.gauge(4.2, PressureUnit.BAR), 100))
                .build();
        RunResult run = run(house, 3);
        int off = (int) Math.ceil(run.first(Event.Kind.HEATER_OFF).orElseThrow().time() / 60);
        Trace trace = run.trace();
        double p = trace.value(Channel.PRESSURE_ABSOLUTE, off);
        double tank = trace.value(Channel.WATER_MEAN, off);
        double back = trace.value(Channel.WATER_IN_LOOP, off);
        double start = trace.value(Channel.PRESSURE_ABSOLUTE, 0);
        double cold = WATER.density(celsius(9), start);
        double rise = p - start;
        double shell = 230e-3
                * (1 + 3 * 12e-6 * (tank - celsius(9)) + house.tank().shell().compliance() * rise);
        double pipes = pipe.volume() * (1 + 3 * 17e-6 * (back - celsius(9)) + pipe.compliance() * rise);
        double left = shell * WATER.density(tank, p) + pipes * WATER.density(back, p);
        double first = 230e-3 * cold + pipe.volume() * (1 + 3 * 17e-6 * 0) * cold;
        double displaced = (first - left) / WATER.density(celsius(9), p);
        double yields = house.piping().get(0).volume() * (house.piping().get(0).compliance() + 4.8e-10) * rise;
        double taken = trace.value(Channel.VESSEL_WATER, off) - trace.value(Channel.VESSEL_WATER, 0);
        assertEquals(
                displaced, taken + yields, 2e-3 * displaced); // let in while still fed, and compressibility by hand
        double alone = 230e-3 * cold / WATER.density(celsius(9), p)
                - shell * WATER.density(tank, p) / WATER.density(celsius(9), p);
        assertTrue(taken > 1.03 * alone, "the loop's share");
    }

    /** A return high up leaves the water below it cold; one at the bottom mixes the tank. */
    @Test
    void theReturnMixesWhatIsAboveIt() {
        double[] bottom = new double[2];
        for (int i = 0; i < 2; i++) {
            Tank layered = Parts.tank(230, Parts.steel(480, 2.2), 2.4, 10).toBuilder()
                    .layers(10)
                    .height(1.3, LengthUnit.METRE)
                    .build();
            HotWaterSystem house = lodge(
                            loop(9),
                            pump(3).returnHeight(i == 0 ? 0 : 0.6, RatioUnit.ONE)
                                    .build())
                    .tank(layered)
                    .heater(Parts.heater(11.2, 78, STORED, 39).toBuilder()
                            .energy(Heater.Energy.ELECTRIC)
                            .height(0.9, RatioUnit.ONE)
                            .build())
                    .draws(DrawProfile.of(
                            "one",
                            List.of(Draw.ofVolume(5.1 * 3600, 60, VolumeUnit.LITRE, 6, FlowUnit.LITRE_PER_MINUTE))))
                    .build();
            bottom[i] = read(run(house, 3), Channel.WATER_BOTTOM, 150);
        }
        assertTrue(bottom[0] > 40, "mixed: " + bottom[0]);
        assertTrue(bottom[1] < 25, "still cold: " + bottom[1]);
    }

    /**
     * A soft branch that gives back more than the pump moves fills the loop with its own cold water. The pump was held to bring in hot
     * water at the same time; at the turn from one to the other no direction of flow agreed with itself.
     */
    @Test
    void whatABranchGivesBackFillsTheLoop() {
        PipeRun branch = PipeRun.builder()
                .carries(PipeRun.Carries.HOT)
                .material(Material.PB)
                .outsideDiameter(63, LengthUnit.MILLIMETRE)
                .wall(2, LengthUnit.MILLIMETRE)
                .length(50, LengthUnit.METRE)
                .build();
        PipeRun loop = PipeRun.builder()
                .carries(PipeRun.Carries.LOOP)
                .material(Material.COPPER)
                .outsideDiameter(22, LengthUnit.MILLIMETRE)
                .wall(0.9, LengthUnit.MILLIMETRE)
                .length(2, LengthUnit.METRE)
                .build();
        HotWaterSystem house = lodge(loop, pump(3).build())
                .supply(Parts.supply(Supply.Arrangement.CHECK_VALVE, Pressure.gauge(1, PressureUnit.BAR), 9))
                .start(Start.builder()
                        .water(STORED, TemperatureUnit.CELSIUS)
                        .pressure(Pressure.gauge(9, PressureUnit.BAR))
                        .build())
                .addPipe(branch)
                .addLeak(Leak.of(12, FlowUnit.LITRE_PER_MINUTE, Pressure.gauge(5, PressureUnit.BAR)))
                .build();
        RunResult run = Simulation.of(house, Duration.ofSeconds(60))
                .sampledEvery(Duration.ofSeconds(1))
                .run();
        assertTrue(run.audit().closes(), run.audit()::toString);
        assertEquals(STORED, read(run, Channel.WATER_IN_LOOP, 0), 1e-6);
        // some seven litres through half a litre; half of them hot would leave it at 36 degC
        assertEquals(ROOM, read(run, Channel.WATER_IN_LOOP, 20), 3);
    }

    @Test
    void hoursMayPassMidnight() {
        Circulation night = pump(3).pump(List.of(new Circulation.Hours(22 * 3600, 6 * 3600)))
                .build();
        assertTrue(night.runs(23 * 3600));
        assertTrue(night.runs(0));
        assertFalse(night.runs(6 * 3600));
        assertEquals(16 * 3600, night.rests(), 60); // counted by the minute
        assertEquals(0, night.always().rests());
    }

    @Test
    void aLoopNeedsPipesAndAPump() {
        String pump = assertThrows(
                        InvalidDescriptionException.class,
                        () -> Parts.lodge(4.2, 58).addPipe(loop(9)).build())
                .getMessage();
        assertTrue(pump.startsWith("circulation: is missing"), pump);
        HotWaterSystem.Builder house = Parts.lodge(4.2, 58).circulation(pump(3).build());
        String pipes =
                assertThrows(InvalidDescriptionException.class, house::build).getMessage();
        assertTrue(pipes.startsWith("circulation: needs pipes"), pipes);
    }
}
