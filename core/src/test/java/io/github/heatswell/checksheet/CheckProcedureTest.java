package io.github.heatswell.checksheet;

import static io.github.heatswell.units.PressureUnit.BAR;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.simulation.Simulation;
import io.github.heatswell.study.Houses;
import io.github.heatswell.system.Draw;
import io.github.heatswell.system.DrawProfile;
import io.github.heatswell.system.Element;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.Heater;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.MainsPressure;
import io.github.heatswell.system.Parts;
import io.github.heatswell.system.Start;
import io.github.heatswell.system.Supply;
import io.github.heatswell.system.Tank;
import io.github.heatswell.units.ConductanceUnit;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.PowerUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.TemperatureDifferenceUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.UnitSystem;
import io.github.heatswell.units.VolumeUnit;
import io.github.heatswell.water.GibbsPolynomialWater;
import io.github.heatswell.water.LiquidWater;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The readings of a check sheet against closed forms and against runs made by hand. */
class CheckProcedureTest {

    private static final double PASCAL = 1; // the last step of a run and the solver's tolerance

    private static double gauge(CheckSheet sheet, CheckSheet.Reading.Kind kind) {
        return sheet.reading(kind).orElseThrow().expectedGauge();
    }

    private static CheckSheet sheet(HotWaterSystem house) {
        return CheckProcedure.of(house).simulate(house);
    }

    /** The house at 58 degC, from which 77 L are drawn in 8 min, described by hand. */
    private static RunResult byHand(HotWaterSystem.Builder house, Duration duration) {
        Draw draw = Draw.ofVolume(0, 77, VolumeUnit.LITRE, 77 / 8.0, FlowUnit.LITRE_PER_MINUTE);
        return Simulation.of(
                        house.draws(DrawProfile.of("by hand", List.of(draw)))
                                .start(Start.builder()
                                        .water(58, TemperatureUnit.CELSIUS)
                                        .build())
                                .build(),
                        duration)
                .sampledEvery(Duration.ofSeconds(10))
                .run();
    }

    @Test
    void readingsAreThoseOfARunByHand() {
        HotWaterSystem.Builder house =
                Parts.lodge(4.2, 58).addReliefValve(Houses.valve(7)).vessel(Houses.vessel(8, 4));
        CheckSheet sheet = sheet(house.build());
        RunResult run = byHand(house, Duration.ofMinutes(608));
        RunResult heatUp = byHand(house, Duration.ofMillis((long)
                (1000 * run.first(Event.Kind.HEATER_OFF).orElseThrow().time())));

        assertEquals(4.2e5, gauge(sheet, CheckSheet.Reading.Kind.COLD_STATIC), PASCAL);
        assertEquals(4.2e5, gauge(sheet, CheckSheet.Reading.Kind.AFTER_DRAW), PASCAL);
        assertEquals(at(run, 480 + 900), gauge(sheet, CheckSheet.Reading.Kind.QUARTER_HOUR), PASCAL);
        assertEquals(at(run, 480 + 1800), gauge(sheet, CheckSheet.Reading.Kind.HALF_HOUR), PASCAL);
        assertEquals(at(run, 480 + 36_000), gauge(sheet, CheckSheet.Reading.Kind.NEXT_MORNING), PASCAL);
        assertEquals(
                run.gauge(heatUp.extremes().highestPressure().value()),
                gauge(sheet, CheckSheet.Reading.Kind.PEAK),
                20); // Pa, a millisecond of heating
        assertTrue(sheet.heatUp().finished());
        assertEquals(run.totals().relieved(), sheet.drips().volume(), 1e-12);
        assertEquals(run.extremes().highestTemperature().value(), sheet.heatUp().hottest(), 1e-9);
        assertEquals(6, sheet.readings().size());
        assertTrue(
                gauge(sheet, CheckSheet.Reading.Kind.QUARTER_HOUR) < gauge(sheet, CheckSheet.Reading.Kind.HALF_HOUR));
    }

    private static double at(RunResult run, int seconds) {
        return run.gauge(run.trace().value(Channel.PRESSURE_ABSOLUTE, seconds / 10));
    }

    @Test
    void aStiffHouseDripsAtItsReliefValve() {
        HotWaterSystem.Builder house = Parts.lodge(4.2, 58).addReliefValve(Houses.valve(7));
        CheckSheet sheet = sheet(house.build());
        RunResult run = byHand(house, Duration.ofMinutes(608));

        assertTrue(sheet.drips().expected());
        assertEquals(run.totals().relieved(), sheet.drips().volume(), 1e-9);
        assertEquals(
                run.first(Event.Kind.RELIEF_OPENED).orElseThrow().time() - 480,
                sheet.drips().firstAfter().orElseThrow(),
                1e-3);
        assertEquals(
                7e5,
                gauge(sheet, CheckSheet.Reading.Kind.PEAK),
                0.05e5); // where the valve opens, and it opens at 7 bar
        assertEquals(0, sheet.drips().whenCold());
    }

    /**
     * Validation: with a rigid tank and no loss the pressure follows from the temperature alone, by Boyle's law for a
     * vessel precharged to the supply's pressure and the densities of water; the temperature a quarter of an hour on
     * follows from the heat put in.
     */
    @Test
    void aVesselHouseFollowsBoyle() {
        double cold = 4e5;
        double volume = 0.15;
        double vessel = 0.012;
        HotWaterSystem.Builder builder = Parts.textbook(150, 10, 4, 60)
                .vessel(ExpansionVessel.builder()
                        .volume(12, VolumeUnit.LITRE)
                        .precharge(Pressure.absolute(4, BAR))
                        .acceptance(100, RatioUnit.PERCENT)
                        .build());
        CheckSheet sheet = new CheckProcedure(0.05).simulate(builder.build());
        Draw draw = Draw.ofVolume(0, 50, VolumeUnit.LITRE, 10, FlowUnit.LITRE_PER_MINUTE);
        RunResult run = Simulation.of(
                        builder.draws(DrawProfile.of("bath", List.of(draw)))
                                .start(Start.builder()
                                        .water(60, TemperatureUnit.CELSIUS)
                                        .build())
                                .build(),
                        Duration.ofMinutes(5))
                .run();
        double closing = run.trace().value(Channel.WATER_MEAN, 5);

        LiquidWater water = GibbsPolynomialWater.instance();
        double mass = volume * water.density(closing, cold);
        double later =
                closing + 4500 * 900 / (mass * water.stateAt(closing, cold).heatCapacity());
        double[] temperatures = {later, 333.15};
        CheckSheet.Reading.Kind[] kinds = {CheckSheet.Reading.Kind.QUARTER_HOUR, CheckSheet.Reading.Kind.PEAK};
        for (int i = 0; i < 2; i++) {
            double low = cold;
            double high = 15e5;
            while (high - low > 1e-3) {
                double middle = 0.5 * (low + high);
                double inVessel = vessel * (1 - cold / middle) * water.density(283.15, middle);
                if (volume * water.density(temperatures[i], middle) + inVessel < mass) {
                    low = middle;
                } else {
                    high = middle;
                }
            }
            double expected = low - 101_325;
            double tolerance = i == 0 ? 0.003 * (low - cold) : 10; // heat capacity changes by 0.2 %; 10 Pa: last step
            assertEquals(expected, gauge(sheet, kinds[i]), tolerance);
        }
        assertEquals(cold - 101_325, gauge(sheet, CheckSheet.Reading.Kind.COLD_STATIC), PASCAL);
        assertEquals(cold - 101_325, gauge(sheet, CheckSheet.Reading.Kind.AFTER_DRAW), PASCAL);
        // no loss: the pressure of the peak stays
        assertEquals(
                gauge(sheet, CheckSheet.Reading.Kind.PEAK), gauge(sheet, CheckSheet.Reading.Kind.NEXT_MORNING), 10);
    }

    /** Validation: behind an open connection every reading is that of the mains at that moment. */
    @Test
    void anOpenConnectionReadsTheMains() {
        MainsPressure mains = MainsPressure.daily(Map.of(
                0.0, Pressure.gauge(4, BAR), 6 * 3600.0, Pressure.gauge(2, BAR), 18 * 3600.0, Pressure.gauge(4, BAR)));
        HotWaterSystem house = Parts.lodge(4, 58)
                .supply(Supply.builder()
                        .arrangement(Supply.Arrangement.DIRECT)
                        .mains(mains)
                        .water(9, TemperatureUnit.CELSIUS)
                        .build())
                .build();
        CheckSheet sheet = sheet(house);

        double perSecond = 2e5 / (6 * 3600);
        assertEquals(4e5 - 600 * perSecond, gauge(sheet, CheckSheet.Reading.Kind.COLD_STATIC), PASCAL);
        assertEquals(4e5 - 480 * perSecond, gauge(sheet, CheckSheet.Reading.Kind.AFTER_DRAW), PASCAL);
        assertEquals(4e5 - (480 + 900) * perSecond, gauge(sheet, CheckSheet.Reading.Kind.QUARTER_HOUR), PASCAL);
        assertEquals(4e5 - 480 * perSecond, gauge(sheet, CheckSheet.Reading.Kind.PEAK), PASCAL);
        assertEquals(
                0, sheet.reading(CheckSheet.Reading.Kind.PEAK).orElseThrow().time(), 1e-9);
        assertEquals(
                2e5 + (480 + 36_000 - 21_600) * perSecond / 2,
                gauge(sheet, CheckSheet.Reading.Kind.NEXT_MORNING),
                PASCAL);
        assertFalse(sheet.drips().expected());
    }

    /** Validation: a reducing valve comes to rest at its set pressure and its lock-up rise. */
    @Test
    void aReducingValveLocksUp() {
        HotWaterSystem house = Houses.reduced();
        CheckSheet sheet = sheet(house);

        assertEquals(3.4e5, gauge(sheet, CheckSheet.Reading.Kind.COLD_STATIC), PASCAL);
        assertEquals(3.4e5, gauge(sheet, CheckSheet.Reading.Kind.AFTER_DRAW), PASCAL);
        assertTrue(gauge(sheet, CheckSheet.Reading.Kind.PEAK) > 3.5e5);
    }

    @Test
    void aHazardEndsTheProcedureAndIsReported() {
        CheckSheet sheet = sheet(Parts.lodge(4.2, 58).build());

        assertEquals(
                Event.Kind.TEST_PRESSURE_REACHED, sheet.hazard().orElseThrow().kind());
        assertTrue(sheet.reading(CheckSheet.Reading.Kind.AFTER_DRAW).isPresent());
        assertTrue(sheet.reading(CheckSheet.Reading.Kind.PEAK).isEmpty());
        assertTrue(sheet.reading(CheckSheet.Reading.Kind.NEXT_MORNING).isEmpty());
        assertFalse(sheet.heatUp().finished());
    }

    /** A thermostat that never switches off is seen by the temperature, where an open connection hides the pressure. */
    @Test
    void aRunawayIsSeenByItsTemperature() {
        HotWaterSystem.Builder house = Parts.lodge(4, 58);
        HotWaterSystem described = house.build();
        HotWaterSystem runaway = house.supply(described.supply().toBuilder()
                        .arrangement(Supply.Arrangement.DIRECT)
                        .build())
                .heater(described.heater().toBuilder().thermostatStuck(true).build())
                .build();
        CheckSheet sheet = sheet(runaway);

        assertFalse(sheet.heatUp().finished());
        assertTrue(sheet.heatUp().hottest() > 373);
        // at 5 bar absolute water boils at 152 degC; its properties are known to 150 degC
        assertEquals(Event.Kind.WATER_OUT_OF_RANGE, sheet.hazard().orElseThrow().kind());
    }

    @Test
    void aSupplyAboveTheReliefValveRunsWhenCold() {
        CheckSheet sheet =
                sheet(Parts.lodge(7.5, 58).addReliefValve(Houses.valve(7)).build());

        // lift (7.5 - 5.6) / (7.7 - 5.6), and the root of the pressures
        assertEquals(
                20e-3 / 60 * 1.9 / 2.1 * Math.sqrt(7.5 / 7.7), sheet.drips().whenCold(), 2e-7); // 0.05 %: compressed
        assertTrue(sheet.drips().expected());
    }

    @Test
    void oneElementHandsOverToTheOther() {
        Element upper = Element.builder()
                .input(3, PowerUnit.KILOWATT)
                .setPoint(60, TemperatureUnit.CELSIUS)
                .differential(4, TemperatureDifferenceUnit.KELVIN)
                .height(60, RatioUnit.PERCENT)
                .build();
        HotWaterSystem house = Parts.lodge(4.2, 58)
                .tank(Tank.builder()
                        .volume(230, VolumeUnit.LITRE)
                        .shell(Parts.steel(480, 2.2))
                        .standingLoss(2.4, ConductanceUnit.WATT_PER_KELVIN)
                        .workingPressure(Pressure.gauge(10, BAR))
                        .layers(10)
                        .height(1.3, LengthUnit.METRE)
                        .build())
                .heater(Heater.builder()
                        .energy(Heater.Energy.ELECTRIC)
                        .input(3, PowerUnit.KILOWATT)
                        .recoveryEfficiency(100, RatioUnit.PERCENT)
                        .setPoint(60, TemperatureUnit.CELSIUS)
                        .differential(4, TemperatureDifferenceUnit.KELVIN)
                        .upper(upper)
                        .build())
                .addReliefValve(Houses.valve(9))
                .vessel(Houses.vessel(24, 4.2))
                .build();
        CheckSheet sheet = new CheckProcedure(0.18).simulate(house);

        assertTrue(sheet.heatUp().finished());
        // the upper element heats its two fifths in under two hours; the whole takes 180 L from 9 to 60 degC, less what
        // 3 kW gave in the 18 min of the draw; 5 %: layers mix while the water is drawn
        double expected = 180 * 4186 * 51 / 3000.0 - 1080;
        assertEquals(
                expected,
                sheet.reading(CheckSheet.Reading.Kind.PEAK).orElseThrow().time(),
                0.05 * expected);
    }

    @Test
    void drawsAndShutOffsOfTheDescriptionAreLeftOut() {
        Draw draw = Draw.ofVolume(1200, 60, VolumeUnit.LITRE, 12, FlowUnit.LITRE_PER_MINUTE);
        HotWaterSystem plain = Parts.lodge(4.2, 58).vessel(Houses.vessel(18, 4)).build();
        HotWaterSystem busy = plain.toBuilder()
                .draws(DrawProfile.of("busy", List.of(draw)))
                .supply(plain.supply().toBuilder()
                        .addOutage(new Supply.Outage(60, 7200))
                        .build())
                .start(Start.builder()
                        .water(20, TemperatureUnit.CELSIUS)
                        .pressure(Pressure.gauge(5, BAR))
                        .build())
                .build();

        assertEquals(sheet(plain).readings(), sheet(busy).readings());
    }

    @Test
    void theAmountIsAThirdInWholeLitres() {
        HotWaterSystem house = Parts.lodge(4.2, 58).build();

        assertEquals(0.077, CheckProcedure.of(house).amount(), 1e-15);
        assertEquals(480, CheckProcedure.of(house).drawTime());
        assertEquals(60, new CheckProcedure(0.001).drawTime());
        assertEquals(1800, new CheckProcedure(2).drawTime());
        assertEquals(3000, new CheckProcedure(10).drawTime());
        assertEquals(
                0.05, CheckProcedure.of(house).drawing(50, VolumeUnit.LITRE).amount(), 1e-15);
        assertEquals(
                "amount: 231 L is more than the tank holds, 230 L",
                assertThrows(IllegalArgumentException.class, () -> new CheckProcedure(0.231).simulate(house))
                        .getMessage());
        assertThrows(IllegalArgumentException.class, () -> new CheckProcedure(0));
        assertThrows(IllegalArgumentException.class, () -> new CheckProcedure(Double.NaN));
    }

    @Test
    void theProcedureBeginsWithSafetyAndNamesTheAmount() {
        List<String> steps = CheckProcedure.of(Parts.lodge(4.2, 58).build()).steps(QuantityFormat.ascii(UnitSystem.SI));

        assertTrue(steps.get(0).contains("stay away from it. If you can do it safely from elsewhere, trip"));
        assertTrue(steps.get(0).contains("Never plug, cap or downsize a relief valve"));
        assertTrue(steps.stream()
                .anyMatch(step -> step.contains("run 77 L of hot water through a hose to a drain in about 8 min")));
        // 20.3 gal
        assertTrue(CheckProcedure.of(Parts.lodge(4.2, 58).build()).steps(QuantityFormat.ascii(UnitSystem.US)).stream()
                .anyMatch(step -> step.contains("run about 20 gal of hot water through a hose to a drain")));
        assertFalse(steps.toString().contains("bucket"), "a third of a tank at 60 degC scalds");
        assertTrue(
                steps.get(1).contains("onto the cold pipe downstream of every reducing valve and check valve"),
                "upstream of a reducing valve a gauge reads another pressure");
        assertTrue(new CheckProcedure(0.0035)
                .steps(QuantityFormat.ascii(UnitSystem.SI))
                .toString()
                .contains("3.5 L"));
    }
}
