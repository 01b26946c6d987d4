package io.github.heatswell.simulation;

import static io.github.heatswell.units.PressureUnit.BAR;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.Trace;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.GasLaw;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.InvalidDescriptionException;
import io.github.heatswell.system.Parts;
import io.github.heatswell.system.ReliefValve.LiftCharacteristic;
import io.github.heatswell.units.DurationUnit;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.VolumeUnit;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A law of a vessel's gas from outside: the example of {@link GasLaw}, run. */
class OwnGasLawTest {

    /** As in the documentation. */
    private static final class StretchingDiaphragm implements GasLaw {
        private static final double STIFFNESS = 60_000;

        @Override
        public double pressure(double charge, double share, double warmth) {
            return charge * warmth / share + STIFFNESS * (1 - share);
        }

        @Override
        public double byShare(double charge, double share, double warmth) {
            return -charge * warmth / (share * share) - STIFFNESS;
        }

        @Override
        public double byWarmth(double charge, double share, double warmth) {
            return charge / share;
        }
    }

    private interface Part {
        double at(double charge, double share, double warmth);
    }

    private static GasLaw law(Part pressure, Part byShare, Part byWarmth) {
        return new GasLaw() {
            @Override
            public double pressure(double charge, double share, double warmth) {
                return pressure.at(charge, share, warmth);
            }

            @Override
            public double byShare(double charge, double share, double warmth) {
                return byShare.at(charge, share, warmth);
            }

            @Override
            public double byWarmth(double charge, double share, double warmth) {
                return byWarmth.at(charge, share, warmth);
            }
        };
    }

    private static final Part BOYLE = (charge, share, warmth) -> charge * warmth / share;
    private static final Part BOYLE_SLOPE = (charge, share, warmth) -> -charge * warmth / (share * share);
    private static final Part BOYLE_WARMTH = (charge, share, warmth) -> charge / share;

    /** The law of an ideal gas, written from outside. */
    private static GasLaw boyle() {
        return law(BOYLE, BOYLE_SLOPE, BOYLE_WARMTH);
    }

    private static HotWaterSystem.Builder lodge() {
        return Parts.lodge(4.2, 58).addReliefValve(Systems.valve(LiftCharacteristic.MODULATING));
    }

    private static RunResult run(ExpansionVessel vessel) {
        return Simulation.of(lodge().vessel(vessel).build(), Duration.ofHours(10))
                .run();
    }

    private static ExpansionVessel vessel(double bar, double acceptance) {
        return Systems.vessel(12, Pressure.gauge(bar, BAR), acceptance);
    }

    /**
     * Contract: an ideal gas of one's own is the ideal gas of the kernel, which the reference model checks: isothermal or not,
     * below the tank or above, free or at its limit, charged low or high, cold or warm.
     */
    @ParameterizedTest
    @CsvSource({"4.2, 60, 0, 0, 17", "3, 100, 0, 2, 17", "5, 20, 90, 0, 40", "2, 80, 30, -2, 5", "4.2, 35, 600, 0, 17"})
    void anIdealGasOfOnesOwnIsIdeal(
            double bar, double acceptance, double timeConstant, double height, double chargedAt) {
        ExpansionVessel.Builder builder = vessel(bar, acceptance).toBuilder()
                .height(height, LengthUnit.METRE)
                .chargedAt(chargedAt, TemperatureUnit.CELSIUS);
        if (timeConstant > 0) {
            builder.gasTimeConstant(timeConstant, DurationUnit.SECOND);
        }
        RunResult given = run(builder.build());
        RunResult own = run(builder.gasLaw(boyle()).build());
        assertEquals(
                given.events().stream().map(Event::kind).toList(),
                own.events().stream().map(Event::kind).toList());
        for (int i = 0; i < given.trace().count(); i++) {
            double p = given.trace().value(Channel.PRESSURE_ABSOLUTE, i);
            assertEquals(p, own.trace().value(Channel.PRESSURE_ABSOLUTE, i), p * 1e-6); // the solver's error
            assertEquals(
                    given.trace().value(Channel.VESSEL_WATER, i), own.trace().value(Channel.VESSEL_WATER, i), 1e-9);
        }
        assertTrue(own.audit().closes(), own.audit().toString());
    }

    /** Closed form: at every sample the pressure is that of the law at the volume left to the gas; it rises higher. */
    @Test
    void aStretchingDiaphragmFollowsItsLaw() {
        StretchingDiaphragm law = new StretchingDiaphragm();
        ExpansionVessel vessel = Systems.vessel(35, Pressure.gauge(3.5, BAR), 70).toBuilder()
                .gasLaw(law)
                .build();
        RunResult own = run(vessel);
        double charge = vessel.precharge().absolute(own.system().site().atmosphere());
        Trace trace = own.trace();
        for (int i = 0; i < trace.count(); i++) {
            double share = 1 - trace.value(Channel.VESSEL_WATER, i) / vessel.volume();
            double p = trace.value(Channel.PRESSURE_ABSOLUTE, i);
            assertEquals(law.pressure(charge, share, 1), p, p * 1e-12); // rounding
        }
        assertTrue(own.audit().closes(), own.audit().toString());
        RunResult ideal = run(Systems.vessel(35, Pressure.gauge(3.5, BAR), 70));
        double higher = own.summary().peak().gauge(0) - ideal.summary().peak().gauge(0);
        assertTrue(higher > 2e3, "higher by " + higher + " Pa");
    }

    /** Closed form: on an adiabat, {@code C dT = -T p_T dV}; the rest follows from {@code dp = p_V dV + p_T dT}. */
    @Test
    void compressionHeatFollowsTheLaw() {
        StretchingDiaphragm law = new StretchingDiaphragm();
        ExpansionVessel vessel = vessel(3, 70).toBuilder()
                .gasLaw(law)
                .gasTimeConstant(60, DurationUnit.SECOND)
                .build();
        CushionGas gas = CushionGas.of(vessel, "", 4e5, 290);
        double v = 0.7 * 12e-3;
        double t = 310;
        double p = gas.pressure(v, t);
        double less = -1e-9;
        double capacity = 2.5 * 4e5 * 12e-3 / 290;
        double warmer = -t * law.byWarmth(4e5, 0.7, 1) / 290 * less / capacity;
        double rise = gas.pressure(v + less, t + warmer) - p;
        assertEquals(-less / rise, gas.give(p, v, t), 1e-5 * -less / rise); // the step
        assertEquals(warmer / rise, gas.warming(p, v, t), 1e-5 * warmer / rise);
        // warmed by the surroundings at constant pressure: what they would warm it by, less the cooling by expansion
        double share = gas.share(v, t);
        double grows = gas.growth(p, v, t);
        assertEquals(1 - t * law.byWarmth(4e5, 0.7, 1) / 290 * grows / capacity, share, 1e-12); // rounding
        double kelvin = 1e-4;
        assertEquals(p, gas.pressure(v + grows * kelvin, t + share * kelvin), 1e-4); // the step
        assertEquals(v, gas.volume(p, t), 1e-12 * v);
    }

    /** Contract: beyond seat and limit a law is not asked; a straight line goes on there. */
    @Test
    void aLawIsAskedFromTheEmptyVesselToItsLimitOnly() {
        GasLaw within = law(
                (charge, share, warmth) -> {
                    assertTrue(share <= 1 && share >= 0.8, "asked at " + share);
                    return charge * warmth / share;
                },
                (charge, share, warmth) -> {
                    assertTrue(share <= 1 && share >= 0.8, "asked at " + share);
                    return -charge * warmth / (share * share);
                },
                BOYLE_WARMTH);
        RunResult run = run(vessel(4.2, 20).toBuilder()
                .gasTimeConstant(90, DurationUnit.SECOND)
                .gasLaw(within)
                .build());
        assertTrue(run.first(Event.Kind.VESSEL_BOTTOMED_OUT).isPresent());
        assertTrue(run.first(Event.Kind.VESSEL_FREED).isPresent());
    }

    private static String refused(GasLaw law) {
        ExpansionVessel vessel = vessel(3, 60).toBuilder()
                .gasLaw(law)
                .gasTimeConstant(90, DurationUnit.SECOND)
                .build();
        return assertThrows(
                        InvalidDescriptionException.class,
                        () -> lodge().vessel(vessel).build())
                .getMessage();
    }

    /** Contract: a law that breaks its contract is refused with its key and what is wrong. */
    @Test
    void aLawThatBreaksItsContractIsRefused() {
        String rising =
                refused(law((c, share, w) -> c * w * share, (c, share, w) -> c * w, (c, share, w) -> c * share));
        assertTrue(rising.contains("vessel.gasLaw: must give a finite pressure that falls as the gas expands"), rising);
        String nothing =
                refused(law((c, share, w) -> share < 0.7 ? Double.NaN : c * w / share, BOYLE_SLOPE, BOYLE_WARMTH));
        assertTrue(nothing.contains("vessel.gasLaw: must give a finite pressure"), nothing);
        String throwing = refused(law(
                (c, share, w) -> {
                    throw new IllegalStateException("no table");
                },
                BOYLE_SLOPE,
                BOYLE_WARMTH));
        assertTrue(throwing.contains("vessel.gasLaw: fails: java.lang.IllegalStateException: no table"), throwing);
        String other = refused(law((c, share, w) -> 1.1 * c * w / share, BOYLE_SLOPE, BOYLE_WARMTH));
        assertTrue(other.contains("where the precharge is"), other);
        String wrong = refused(law(BOYLE, (c, share, w) -> -1.01 * c * w / (share * share), BOYLE_WARMTH));
        assertTrue(wrong.contains("its slope is not its derivative"), wrong);
        String jumping =
                refused(law((c, share, w) -> c * w / share + (share < 0.77777 ? 1e3 : 0), BOYLE_SLOPE, BOYLE_WARMTH));
        assertTrue(jumping.contains("so it jumps"), jumping);
        String cooling = refused(law(
                (c, share, w) -> c / w / share,
                (c, share, w) -> -c / w / share / share,
                (c, share, w) -> -c / w / w / share));
        assertTrue(cooling.contains("must not fall as the gas warms"), cooling);
        String lukewarm = refused(law(BOYLE, BOYLE_SLOPE, (c, share, w) -> 1.02 * c / share));
        assertTrue(lukewarm.contains("of the temperature at charging"), lukewarm);
        assertThrows(NullPointerException.class, () -> vessel(3, 60).toBuilder().gasLaw(null));
    }

    /** Contract: a hole between the points at which a law was checked, and an exception there, end the run with its name. */
    @Test
    void aHoleInALawEndsTheRun() {
        double least = 0.4;
        for (boolean throwing : new boolean[] {false, true}) {
            GasLaw holed = law(
                    (charge, share, warmth) -> {
                        double point = (share - least) / (1 - least) * 2000;
                        boolean checked = Math.abs(point - Math.rint(point)) < 1e-6;
                        if (share < 0.95 && share > 0.5 && !checked) {
                            if (throwing) {
                                throw new ArithmeticException("nothing here");
                            }
                            return Double.NaN;
                        }
                        return charge * warmth / share;
                    },
                    BOYLE_SLOPE,
                    BOYLE_WARMTH);
            String message = assertThrows(
                            SimulationException.class,
                            () -> run(vessel(4.2, 60).toBuilder().gasLaw(holed).build()))
                    .getMessage();
            assertTrue(message.startsWith("the gas law of the vessel at the absolute pressure of (Pa) "), message);
            assertTrue(message.contains(throwing ? "nothing here" : "gives NaN"), message);
        }
    }

    /** Contract: what is made of a vessel keeps its law. */
    @Test
    void aVesselKeepsItsLaw() {
        StretchingDiaphragm law = new StretchingDiaphragm();
        ExpansionVessel vessel = vessel(4.2, 90).toBuilder().gasLaw(law).build();
        assertSame(
                law,
                vessel.toBuilder().volume(8, VolumeUnit.LITRE).build().gasLaw().orElseThrow());
        HotWaterSystem house = lodge().vessel(vessel).build();
        assertSame(
                law, house.toBuilder().build().vessel().orElseThrow().gasLaw().orElseThrow());
    }
}
