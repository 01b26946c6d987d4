package io.github.heatswell.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.Trace;
import io.github.heatswell.system.DrawProfile;
import io.github.heatswell.system.Element;
import io.github.heatswell.system.Heater;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Parts;
import io.github.heatswell.system.PowerCurve;
import io.github.heatswell.system.ReliefValve.LiftCharacteristic;
import io.github.heatswell.system.Start;
import io.github.heatswell.units.DurationUnit;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.PowerUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.TemperatureDifferenceUnit;
import io.github.heatswell.units.TemperatureUnit;
import java.time.Duration;
import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A power curve from outside: the examples of {@link PowerCurve}, run. */
class OwnPowerCurveTest {

    private static final double DAY = 86_400;

    /** As in the documentation. */
    private static final class HeatPump implements PowerCurve {
        @Override
        public double share(double clock, double temperature) {
            return Math.max(0.4, Math.min(1, 1 - 0.012 * (temperature - 288.15)));
        }
    }

    /** As in the documentation. */
    private static final class SolarCoil implements PowerCurve {
        private static final double QUARTER = 21_600;

        @Override
        public double share(double clock, double temperature) {
            double sun = Math.sin(Math.PI * (clock / QUARTER - 1) / 2);
            return sun <= 0 ? 0 : Math.max(0, Math.min(1, sun - (temperature - 293.15) / 70));
        }

        @Override
        public double nextChange(double clock) {
            return QUARTER * (Math.floor(clock / QUARTER) + 1);
        }
    }

    private static PowerCurve curve(DoubleBinaryOperator share, DoubleUnaryOperator next) {
        return new PowerCurve() {
            @Override
            public double share(double clock, double temperature) {
                return share.applyAsDouble(clock, temperature);
            }

            @Override
            public double nextChange(double clock) {
                return next.applyAsDouble(clock);
            }
        };
    }

    private static PowerCurve curve(DoubleBinaryOperator share) {
        return curve(share, clock -> Double.POSITIVE_INFINITY);
    }

    /** Full from ten to two, nothing otherwise: a jump at both. */
    private static PowerCurve fromTenToTwo() {
        double begins = 10 * 3_600;
        double ends = 14 * 3_600;
        return curve((clock, temperature) -> clock % DAY >= begins && clock % DAY < ends ? 1 : 0, clock -> {
            double midnight = clock - clock % DAY;
            double now = clock % DAY;
            return midnight + (now < begins ? begins : now < ends ? ends : DAY + begins);
        });
    }

    private static HotWaterSystem.Builder lodge(Heater heater) {
        return Parts.lodge(4.2, 58).heater(heater).addReliefValve(Systems.valve(LiftCharacteristic.MODULATING));
    }

    private static RunResult run(HotWaterSystem.Builder house, int hours) {
        return Simulation.of(house.build(), Duration.ofHours(hours)).run();
    }

    private static Heater with(PowerCurve curve) {
        return Parts.heater(11.2, 78, 58, 6).toBuilder().powerCurve(curve).build();
    }

    /** Contract: a source that gives everything all the time is an ordinary one, which the reference model checks. */
    @ParameterizedTest
    @CsvSource({"1", "6"})
    void aCurveThatIsAlwaysOneIsNoCurve(int layers) {
        HotWaterSystem plain = lodge(Parts.heater(11.2, 78, 58, 6))
                .draws(DrawProfile.published().get("eu-m"))
                .changeTank(tank -> tank.toBuilder()
                        .layers(layers)
                        .height(1.2, LengthUnit.METRE)
                        .build())
                .build();
        HotWaterSystem.Builder own = plain.toBuilder().heater(with(curve((clock, temperature) -> 1)));
        RunResult given = run(plain.toBuilder(), 30);
        RunResult found = run(own, 30);
        assertEquals(
                given.events().stream().map(Event::kind).toList(),
                found.events().stream().map(Event::kind).toList());
        int last = given.trace().count() - 1;
        for (int i = 0; i <= last; i++) {
            double p = given.trace().value(Channel.PRESSURE_ABSOLUTE, i);
            double before = given.trace().value(Channel.PRESSURE_ABSOLUTE, Math.max(0, i - 1));
            double after = given.trace().value(Channel.PRESSURE_ABSOLUTE, Math.min(last, i + 1));
            // The solver's error: of the pressure, and 5 ms in the time at which the heater comes on after a night of
            // cooling.
            double error = 2e-6 * p + 5e-3 / 60 * Math.max(Math.abs(p - before), Math.abs(after - p));
            assertEquals(p, found.trace().value(Channel.PRESSURE_ABSOLUTE, i), error);
        }
        double input = given.totals().heaterInput();
        assertEquals(input, found.totals().heaterInput(), 1e-6 * input);
        assertEquals(given.totals().heatToWater(), found.totals().heatToWater(), 1e-6 * input);
        assertTrue(found.audit().closes(), found.audit().toString());
    }

    /** Closed form: at every sample a heat pump takes what its curve says for the water, and the totals are the sum of that. */
    @Test
    void aHeatPumpFollowsItsCurve() {
        HeatPump pump = new HeatPump();
        RunResult run = Simulation.of(lodge(with(pump)).build(), Duration.ofHours(6))
                .sampledEvery(Duration.ofSeconds(10))
                .run();
        Trace trace = run.trace();
        double taken = 0;
        boolean weaker = false;
        for (int i = 1; i < trace.count() - 1; i++) {
            double power = trace.value(Channel.HEATER_POWER, i);
            double share = pump.share(0, trace.value(Channel.WATER_MEAN, i));
            assertTrue(power == 0 || Math.abs(power - 11_200 * share) < 1e-6, "at " + i + ": " + power);
            weaker |= power > 0 && power < 0.6 * 11_200;
            taken += 10 * power;
        }
        assertTrue(weaker);
        assertEquals(taken, run.totals().heaterInput(), 5 * 2 * 11_200); // the half samples at a switching
        assertEquals(0.78, run.totals().heatToWater() / run.totals().heaterInput(), 1e-9); // the efficiency
        assertTrue(run.audit().closes(), run.audit().toString());
        double slower = run.first(Event.Kind.HEATER_OFF).orElseThrow().time();
        double steady = run(lodge(Parts.heater(11.2, 78, 58, 6)), 6)
                .first(Event.Kind.HEATER_OFF)
                .orElseThrow()
                .time();
        assertTrue(slower > 1.2 * steady, slower + " s against " + steady + " s");
    }

    /** Closed form: a source from ten to two takes its input for just so long, day after day, whenever the run begins. */
    @ParameterizedTest
    @CsvSource({"0, 72, 12", "10, 24, 4", "11.5, 24, 4", "14, 20, 0", "13.999, 1, 0.001", "23, 36, 5"})
    void aTimetableIsKeptToTheSecond(double startHour, int hours, double expected) {
        RunResult run = run(
                lodge(Parts.heater(11.2, 78, 80, 6).toBuilder()
                                .powerCurve(fromTenToTwo())
                                .build())
                        .tank(Parts.tank(2_000, Parts.steel(1_000, 4), 2.4, 10))
                        .vessel(Systems.vessel(400, Pressure.gauge(4.2, PressureUnit.BAR), 90))
                        .start(Start.builder()
                                .timeOfDay(startHour, DurationUnit.HOUR)
                                .build()),
                hours);
        assertEquals(expected * 3_600 * 11_200, run.totals().heaterInput(), 2e-5 * 11_200); // the edges of the clock
        // a step of half an hour at most while the thermostat calls, and few at the jumps
        assertTrue(
                run.summary().numerics().steps() < 2 * hours + 25,
                run.summary().numerics().toString());
        assertTrue(run.audit().closes(), run.audit().toString());
    }

    /** A solar coil gives nothing in the dark, most around noon, and a second element heats beside it. */
    @Test
    void aSolarCoilWorksBesideAnElement() {
        Element upper = Element.builder()
                .input(2, PowerUnit.KILOWATT)
                .height(70, RatioUnit.PERCENT)
                .setPoint(45, TemperatureUnit.CELSIUS)
                .differential(5, TemperatureDifferenceUnit.KELVIN)
                .build();
        Heater heater = Parts.heater(3, 90, 75, 6).toBuilder()
                .energy(Heater.Energy.ELECTRIC)
                .powerCurve(new SolarCoil())
                .upper(upper)
                .simultaneous(true)
                .build();
        RunResult run = run(
                lodge(heater)
                        .draws(DrawProfile.published().get("eu-m"))
                        .changeTank(tank -> tank.toBuilder()
                                .layers(5)
                                .height(1.2, LengthUnit.METRE)
                                .build()),
                48);
        Trace trace = run.trace();
        for (int i = 0; i < trace.count(); i++) {
            double hour = trace.grid().time(i) / 3_600 % 24;
            double power = trace.value(Channel.HEATER_POWER, i);
            double coil = power >= 2_000 ? power - 2_000 : power;
            assertTrue(hour >= 6 && hour <= 18 || coil < 1e-9, "at " + hour + " h: " + power);
        }
        assertTrue(trace.value(Channel.HEATER_POWER, 11 * 60) % 2_000 > 500);
        assertTrue(run.audit().closes(), run.audit().toString());
        assertTrue(run.first(Event.Kind.HEATER_ON).isPresent());
    }

    /** Contract: a curve that breaks its contract is refused, with its key and where it does. */
    @Test
    void aCurveThatBreaksItsContractIsRefused() {
        assertRefused(curve((clock, temperature) -> 1.01), "it gives 1.01, where 0 to 1 is needed");
        assertRefused(curve((clock, temperature) -> temperature > 350 ? -0.1 : 1), "85 degC it gives -0.1");
        assertRefused(curve((clock, temperature) -> clock > DAY ? Double.NaN : 1), "it gives NaN");
        assertRefused(
                curve((clock, temperature) -> 1, clock -> clock),
                "at 0.0 s it names 0.0 s as its next change, where a later");
        assertRefused(
                curve((clock, temperature) -> {
                    throw new IllegalArgumentException("no weather");
                }),
                "fails at 0.0 s and 5 degC: java.lang.IllegalArgumentException: no weather");
        assertThrows(NullPointerException.class, () -> with(null));
    }

    private static void assertRefused(PowerCurve curve, String message) {
        String found =
                assertThrows(IllegalArgumentException.class, () -> with(curve)).getMessage();
        assertTrue(found.startsWith("powerCurve: ") && found.contains(message), found);
    }

    /** Contract: where a curve fails between the points at which it was checked, the run ends with its name and the place. */
    @Test
    void aCurveThatFailsLaterEndsTheRun() {
        PowerCurve holed = curve((clock, temperature) -> temperature > 300.2 && temperature < 302 ? 2 : 1);
        String message = assertThrows(SimulationException.class, () -> run(lodge(with(holed)), 6))
                .getMessage();
        assertTrue(message.startsWith("the power curve of the heater at "), message);
        assertTrue(message.contains("gives 2.0, where 0 to 1 is needed"), message);
        PowerCurve stuck = curve((clock, temperature) -> 1, clock -> clock > 3 * DAY ? 3 * DAY : clock + 7_000);
        String later = assertThrows(SimulationException.class, () -> run(lodge(with(stuck)), 90))
                .getMessage();
        assertTrue(later.contains("the power curve of the heater gives 259200.0, where a later time is needed"), later);
    }

    /** Contract: what is made of a heater keeps its curve. */
    @Test
    void aHeaterKeepsItsCurve() {
        HeatPump pump = new HeatPump();
        Heater hotter =
                with(pump).toBuilder().setPoint(60, TemperatureUnit.CELSIUS).build();
        assertSame(pump, hotter.elements().get(0).powerCurve().orElseThrow());
        Heater changed = hotter.withElements(
                element -> element.toBuilder().input(3, PowerUnit.KILOWATT).build());
        assertSame(pump, changed.elements().get(0).powerCurve().orElseThrow());
    }
}
