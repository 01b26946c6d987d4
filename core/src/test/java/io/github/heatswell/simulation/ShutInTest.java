package io.github.heatswell.simulation;

import static io.github.heatswell.simulation.Systems.celsius;
import static io.github.heatswell.units.PressureUnit.BAR;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Material;
import io.github.heatswell.system.Parts;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.Shell;
import io.github.heatswell.system.Start;
import io.github.heatswell.system.Supply;
import io.github.heatswell.system.Tank;
import io.github.heatswell.units.ComplianceUnit;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.VolumeUnit;
import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Validation: a full tank, shut in and heated, against isochores computed with IAPWS-95 (constructed integration checks;
 * 10 degC, 4.5 bar absolute, steel of 450 mm x 2.2 mm with E = 200 GPa, nu = 0.30, alpha = 12e-6 1/K).
 */
class ShutInTest {

    /**
     * Validation: water shut into a rigid vessel at air pressure and warmed. Rises by IAPWS-95, recomputed for two exercises of
     * textbooks: 40 to 100 degF 2324 psi, 10.9 to 40.0 degC 169.6 atm. A run of a tank that never fails goes that far; that of any other
     * ends at 25 bar.
     */
    @ParameterizedTest
    @CsvSource({"4.4444, 37.7778, 160.23e5", "10.9, 40.0, 171.85e5"})
    void aTextbookTankGoesOnBeyondItsTestPressure(double from, double to, double rise) {
        HotWaterSystem rigid = Parts.textbook(190, from, 1.1, to)
                .tank(Parts.tank(190, Shell.rigid(), 0, 12.5).toBuilder()
                        .neverFails(true)
                        .build())
                .build();
        RunResult result = Simulation.of(rigid, Duration.ofHours(3)).run();
        Event off = result.first(Event.Kind.HEATER_OFF).orElseThrow();
        assertEquals(rise, off.pressureAbsolute() - 1.1e5, 5e-4 * rise); // four digits
        assertEquals(Optional.empty(), result.hazard());
        assertTrue(Math.abs(result.summary().audit().massFraction()) < 1e-9);
        HotWaterSystem real = rigid.toBuilder()
                .tank(rigid.tank().toBuilder().neverFails(false).build())
                .build();
        assertEquals(
                Event.Kind.TEST_PRESSURE_REACHED,
                Simulation.of(real, Duration.ofHours(3))
                        .run()
                        .hazard()
                        .orElseThrow()
                        .kind());
    }

    /** Even the water of a textbook is known no further than to 1000 bar. */
    @Test
    void aTextbookRunEndsWhereTheWaterIsNotKnown() {
        HotWaterSystem rigid = Parts.textbook(190, 20, 4.5, 80)
                .heater(Parts.heater(4.5, 100, 80, 0.5).toBuilder()
                        .thermostatStuck(true)
                        .build())
                .tank(Parts.tank(190, Shell.rigid(), 0, 12.5).toBuilder()
                        .neverFails(true)
                        .build())
                .build();
        Event end = Simulation.of(rigid, Duration.ofHours(9)).run().hazard().orElseThrow();
        assertEquals(Event.Kind.WATER_OUT_OF_RANGE, end.kind());
        assertEquals(1e8, end.pressureAbsolute(), 1e-3); // located by root finding
    }

    /** Without elasticity only: a steel so stiff that it does not stretch, but grows with heat. */
    private static final Material UNYIELDING = new Material("unyielding", 1e20, 0.30, 12e-6);

    @ParameterizedTest
    @CsvSource({"11, 6.5077", "15, 17.457"})
    void rigidTankFollowsTheIsochore(double toCelsius, double expectedBar) {
        assertRise(Shell.rigid(), toCelsius, expectedBar, 2e-4); // model accuracy stated beside the values
    }

    @Test
    void tankThatOnlyGrowsWithHeatRisesLess() {
        assertRise(Shell.cylinder(UNYIELDING, 450, 2.2, LengthUnit.MILLIMETRE), 15, 13.591, 3e-4); // as stated
    }

    @ParameterizedTest
    @CsvSource({"15, 7.448", "20, 12.502"})
    void elasticTankRisesAThird(double toCelsius, double expectedBar) {
        assertRise(Parts.steel(450, 2.2), toCelsius, expectedBar, 3e-4); // as stated beside the values
    }

    /**
     * Validation: a tank of given compliance, closed at 10 degC and 4.5 bar absolute and heated to 20 degC, rises by the growth
     * that has no room over what gives way: {@code (V (rho_10/rho_20 - 1) - V 3 alpha 10 K) / (C + kappa_20 V)}. Densities at one
     * atmosphere 999.7026 and 998.2071 kg/m3 (Tanaka et al., Metrologia 38, 2001), compressibilities 0.4781 and 0.4589 1/GPa
     * (Kell, J. Chem. Eng. Data 20, 1975), both from memory.
     */
    @ParameterizedTest
    @ValueSource(doubles = {20, 28, 60, 300})
    void aGivenComplianceSetsTheRise(double millilitrePerBar) {
        double litres = 190;
        double toCold = 1 + (0.4781e-4 - 0.4589e-4) * 3.49; // densities at 4.5 bar instead of one atmosphere
        double growth = litres * (999.7026 / 998.2071 * toCold - 1 - 3 * 12e-6 * 10);
        double rise = growth / (millilitrePerBar * 1e-3 + 0.4589e-4 * litres);
        Tank tank = Parts.tank(190, Parts.steel(450, 2.2), 0, 12.5).toBuilder()
                .compliance(millilitrePerBar, ComplianceUnit.MILLILITRE_PER_BAR)
                .build();
        Event off = heatedTo(20, tank).first(Event.Kind.HEATER_OFF).orElseThrow();
        assertEquals(
                rise,
                BAR.fromSi(off.pressureAbsolute()) - 4.5,
                3e-3 * rise); // second order: growth times rise, kappa of p
    }

    /**
     * Validation: a shut-in tank with air under its top, heated from 10 to 60 degC. What the water gains is what shell and
     * compression give and the air yields, {@code V_a = n R T/(p - p_s)}. Densities at one atmosphere 999.70 and 983.20 kg/m3, mean
     * compressibility 0.445 1/GPa at 60 degC (Kell, J. Chem. Eng. Data 20, 1975), vapour pressures 1.23 and 19.95 kPa (steam tables); all
     * from memory.
     */
    @ParameterizedTest
    @ValueSource(doubles = {3, 5, 8})
    void airUnderTheTopTakesUpTheGrowth(double litres) {
        double volume = 190e-3;
        double air = litres * 1e-3;
        Tank tank = Parts.tank(190, Parts.steel(450, 2.2), 0, 12.5).toBuilder()
                .air(litres, VolumeUnit.LITRE)
                .build();
        double low = 4.5e5;
        double high = 25e5;
        for (int i = 0; i < 60; i++) {
            double p = (low + high) / 2;
            double pocket = air * (4.5e5 - 1.23e3) / 283.15 * 333.15 / (p - 19.95e3);
            double shell = volume * (1 + 36e-6 * 50) + tank.compliance() * (p - 4.5e5);
            double water = (volume - air) * 999.70 * (1 + 0.478e-9 * 3.49e5) / 983.20 / (1 + 0.445e-9 * (p - 1.01e5));
            if (water + pocket > shell) {
                low = p;
            } else {
                high = p;
            }
        }
        Event off = heatedTo(60, tank).first(Event.Kind.HEATER_OFF).orElseThrow();
        assertEquals(low, off.pressureAbsolute(), 2e-3 * low); // digits of densities and vapour pressure
    }

    /** Water that nears its boiling point fills the top of the tank with vapour before it boils as a whole. */
    @Test
    void vapourFormsFirstWhereThereIsAir() {
        HotWaterSystem plain = Parts.textbook(190, 10, 1.3, 99)
                .heater(Parts.heater(4.5, 100, 60, 0.5).toBuilder()
                        .thermostatStuck(true)
                        .build())
                .supply(Parts.supply(Supply.Arrangement.DIRECT, Pressure.absolute(1.3, BAR), 10))
                .build();
        HotWaterSystem air = plain.toBuilder()
                .tank(plain.tank().toBuilder().air(40, VolumeUnit.LITRE).build())
                .build();
        Event boils = Simulation.of(plain, Duration.ofHours(9)).run().hazard().orElseThrow();
        RunResult run = Simulation.of(air, Duration.ofHours(9)).run();
        Event vapour = run.hazard().orElseThrow();
        assertEquals(Event.Kind.VAPOUR_FORMS, boils.kind());
        assertEquals(Event.Kind.VAPOUR_FORMS, vapour.kind());
        assertTrue(vapour.waterTemperature() < boils.waterTemperature(), vapour::toString);
        assertTrue(run.audit().closes(), run.audit()::toString);
    }

    /** Contract: a compliance as large as the dimensions give is the same house, to the last digit. */
    @Test
    void aComplianceEqualToTheCalculatedOneIsTheSameRun() {
        Tank calculated = Parts.tank(190, Parts.steel(450, 2.2), 0, 12.5);
        Tank given = calculated.toBuilder()
                .compliance(calculated.compliance(), ComplianceUnit.CUBIC_METRE_PER_PASCAL)
                .build();
        assertEquals(calculated.shell().compliance(), given.shell().compliance());
        assertEquals(heatedTo(20, calculated).events(), heatedTo(20, given).events());
    }

    private static RunResult heatedTo(double celsius, Tank tank) {
        return Simulation.of(Parts.textbook(190, 10, 4.5, celsius).tank(tank).build(), Duration.ofHours(4))
                .run();
    }

    private static void assertRise(Shell shell, double toCelsius, double expectedBar, double tolerance) {
        HotWaterSystem system = Parts.textbook(190, 10, 4.5, toCelsius)
                .tank(Parts.tank(190, shell, 0, 12.5))
                .build();
        RunResult result = Simulation.of(system, Duration.ofHours(1)).run();
        Event off = result.first(Event.Kind.HEATER_OFF).orElseThrow();
        assertEquals(celsius(toCelsius), off.waterTemperature(), 1e-6); // solver tolerance
        assertEquals(expectedBar, BAR.fromSi(off.pressureAbsolute()), expectedBar * tolerance);
    }

    /** The rise for each kelvin grows with temperature: there is no single "pressure per degree". */
    @ParameterizedTest
    @CsvSource({"10, 0.365009", "20, 1.199", "30, 1.887", "40, 2.473", "60, 3.439"})
    void slopeMatchesTheTable(double fromCelsius, double barPerKelvin) {
        HotWaterSystem system = Parts.textbook(190, Math.min(fromCelsius, 40), 5, fromCelsius + 1)
                .tank(Parts.tank(190, Parts.steel(450, 2.2), 0, 12.5))
                .start(Start.builder()
                        .water(fromCelsius, TemperatureUnit.CELSIUS)
                        .build())
                .build();
        RunResult result = Simulation.of(system, Duration.ofMinutes(10))
                .sampledEvery(Duration.ofSeconds(1))
                .run();
        double rise = result.trace().value(Channel.PRESSURE_ABSOLUTE, 1)
                - result.trace().value(Channel.PRESSURE_ABSOLUTE, 0);
        double warming =
                result.trace().value(Channel.WATER_MEAN, 1) - result.trace().value(Channel.WATER_MEAN, 0);
        // the first second of heating is 6 mK; the slope changes by less than 1e-3 over it
        assertEquals(barPerKelvin, BAR.fromSi(rise) / warming, barPerKelvin * 2e-3);
    }

    /**
     * Below the temperature at which beta = 3 alpha a full tank loses pressure as it warms, so the supply feeds it and the
     * check valve closes only there. Temperatures at 5 bar absolute for three linear expansions, by IAPWS-95.
     */
    @ParameterizedTest
    @CsvSource({"11.7e-6, 6.18", "12e-6, 6.24", "17e-6, 7.27"})
    void coldTankLosesPressureAsItWarms(double linearExpansion, double celsius) {
        Material metal = new Material("metal", 200e9, 0.30, linearExpansion);
        HotWaterSystem system = Parts.textbook(190, 2, 5, 20)
                .tank(Parts.tank(190, Shell.cylinder(metal, 450, 2.2, LengthUnit.MILLIMETRE), 0, 12.5))
                .build();
        RunResult result = Simulation.of(system, Duration.ofHours(1)).run();
        Event closed = result.first(Event.Kind.SUPPLY_CLOSED).orElseThrow();
        assertEquals(celsius, closed.waterTemperature() - 273.15, 0.02); // as stated beside the values
        assertTrue(result.totals().letIn() > 0);
    }

    /** Nothing gives way: the run ends at the test pressure, located, and keeps what it has. */
    @Test
    void shutInTankReachesItsTestPressure() {
        RunResult result =
                Simulation.of(Parts.lodge(4.2, 58).build(), Duration.ofHours(4)).run();
        Event hazard = result.hazard().orElseThrow();
        assertEquals(Event.Kind.TEST_PRESSURE_REACHED, hazard.kind());
        assertEquals(20.0, BAR.fromSi(result.gauge(hazard.pressureAbsolute())), 1e-6); // located by root finding
        assertEquals(hazard.time(), result.end());
        int last = result.trace().count() - 1;
        assertEquals(hazard.pressureAbsolute(), result.trace().value(Channel.PRESSURE_ABSOLUTE, last));
        assertTrue(result.end() < 3600, "a cold fill gets there during its first heat-up");
    }

    /** On the way the working pressure is passed, which is reported and does not end the run. */
    @Test
    void theWorkingPressureIsPassedOnTheWay() {
        RunResult result =
                Simulation.of(Parts.lodge(4.2, 58).build(), Duration.ofHours(4)).run();
        Event passed = result.first(Event.Kind.WORKING_PRESSURE_EXCEEDED).orElseThrow();
        assertEquals(10.0, BAR.fromSi(result.gauge(passed.pressureAbsolute())), 1e-6); // located by root finding
        assertTrue(passed.time() < result.end());
    }

    /** Mains water may come in as cold as ice, which is the least that may be described, and is heated like any other. */
    @Test
    void waterOfZeroDegreesIsHeated() {
        HotWaterSystem cold = Parts.lodge(4.2, 58)
                .supply(Parts.supply(Supply.Arrangement.CHECK_VALVE, Pressure.gauge(4.2, BAR), 0))
                .addReliefValve(Systems.valve(ReliefValve.LiftCharacteristic.MODULATING))
                .build();
        RunResult result = Simulation.of(cold, Duration.ofHours(4)).run();
        assertEquals(Optional.empty(), result.hazard());
        assertTrue(
                result.first(Event.Kind.RELIEF_OPENED).isPresent(), "it swells, though it first shrinks up to 4 degC");
    }

    /** A tank that freezes is none for which liquid water says anything. */
    @Test
    void aTankThatFreezesEndsTheRun() {
        HotWaterSystem cold = Parts.lodge(4.2, 58)
                .site(Parts.site(310, -25))
                .supply(Parts.supply(Supply.Arrangement.CHECK_VALVE, Pressure.gauge(4.2, BAR), 1))
                .heater(Parts.heater(0.02, 50, 58, 6))
                .build();
        RunResult result = Simulation.of(cold, Duration.ofDays(3)).run();
        Event frozen = result.hazard().orElseThrow();
        assertEquals(Event.Kind.WATER_FREEZES, frozen.kind());
        assertEquals(273.149, frozen.waterTemperature(), 1e-5);
        double hours = 230e-3 * 1_000 * 4_215 * 1 / (2.4 * 25.5 - 10) / 3_600;
        assertEquals(hours, result.end() / 3_600, 0.02 * hours);
    }
}
