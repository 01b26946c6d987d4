package io.github.heatswell.sizing;

import static io.github.heatswell.units.PressureUnit.BAR;
import static io.github.heatswell.units.VolumeUnit.LITRE;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.sizing.SizingReconciliation.Effect;
import io.github.heatswell.system.GasLaw;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Material;
import io.github.heatswell.system.Parts;
import io.github.heatswell.system.Shell;
import io.github.heatswell.system.Start;
import io.github.heatswell.system.Supply;
import io.github.heatswell.units.DurationUnit;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.water.GibbsPolynomialWater;
import io.github.heatswell.water.LiquidWater;
import java.time.Duration;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Why formula and simulation differ. */
class SizingReconciliationTest {

    private static VesselSizing.Builder sizing(HotWaterSystem house, VesselSizing.Precharge rule) {
        SizingTarget target = SizingTarget.builder(house)
                .vesselRating(Pressure.gauge(10, BAR))
                .build();
        return VesselSizing.builder(house, target).precharge(rule);
    }

    private static HotWaterSystem everything() {
        Shell steel = Shell.cylinder(Material.STEEL, 470, 2.3, LengthUnit.MILLIMETRE);
        return Houses.cottage(3.5)
                .tank(Parts.tankBuilder(200, steel, 2.1, 10)
                        .layers(5)
                        .height(1.2, LengthUnit.METRE)
                        .build())
                .addPipe(Parts.pipe(Material.PEX, 20, 2, 30))
                .vessel(Houses.vesselBuilder(30)
                        .height(2, LengthUnit.METRE)
                        .chargedAt(5, TemperatureUnit.CELSIUS)
                        .gasTimeConstant(300, DurationUnit.SECOND)
                        .build())
                .build();
    }

    private static void assertAddsUp(SizingReconciliation differences) {
        double sum = differences.terms().stream()
                .mapToDouble(SizingReconciliation.Term::volume)
                .sum();
        double expected = differences.simulated() - differences.formula().volume();
        assertEquals(expected, sum, 1e-14); // m3; rounding of a sum of some litres
        List<Effect> order = differences.terms().stream()
                .map(SizingReconciliation.Term::effect)
                .toList();
        assertEquals(order.stream().sorted().toList(), order, "in the order of the effects");
    }

    @Test
    void termsAddUpAndPointTheRightWay() {
        VesselSizing sizing = sizing(everything(), VesselSizing.Precharge.STATIC_LESS_FIFTH_BAR)
                .alsoRun(Duration.ofHours(12))
                .build();
        SizingReconciliation differences =
                SizingReconciliation.fromHandbook(sizing, VesselFormula.NetExpansion.HANDBOOK_STEEL);
        assertAddsUp(differences);
        assertTrue(differences.of(Effect.ACCEPTANCE_LIMIT) > 0, "a diaphragm that ends costs volume");
        assertTrue(differences.of(Effect.PIPING) < 0, "plastic pipe saves volume");
        assertTrue(differences.of(Effect.TANK_COMPLIANCE) < 0, "a tank that gives way saves volume");
        assertTrue(differences.of(Effect.WATER_COMPRESSIBILITY) < 0, "water that gives way saves volume");
        assertTrue(differences.of(Effect.COLD_VOLUME) < 0, "cold water is less than hot");
        assertTrue(differences.of(Effect.PRECHARGE) > 0, "a lower precharge costs volume");
        assertEquals(0, differences.of(Effect.TABLED_EXPANSION));
        assertEquals(0, differences.of(Effect.TEMPERATURE_REACHED), 1e-4 * differences.simulated());
        assertEquals(
                differences.simulated(), sizing.size().smallest().orElseThrow().volume(), 0); // the same search
    }

    /** Gas that was charged in the cold has more pressure in the room, and leaves the water less of the vessel. */
    @Test
    void gasChargedColdCostsVolume() {
        HotWaterSystem house = Houses.cottage(3.5)
                .vessel(Houses.vesselBuilder(100)
                        .chargedAt(5, TemperatureUnit.CELSIUS)
                        .build())
                .build();
        SizingReconciliation differences = SizingReconciliation.fromHandbook(
                sizing(house, VesselSizing.Precharge.STATIC).build(), 0);
        assertAddsUp(differences);
        assertTrue(differences.of(Effect.GAS_TEMPERATURE) > 0);
    }

    /** Gas that stiffens as it is pressed together leaves the water less of the vessel; the sizes looked at keep its law. */
    @Test
    void aStiffLawCostsVolume() {
        GasLaw stiff = new GasLaw() {
            @Override
            public double pressure(double charge, double share, double warmth) {
                return charge * warmth / share + 2e5 * (1 - share);
            }

            @Override
            public double byShare(double charge, double share, double warmth) {
                return -charge * warmth / (share * share) - 2e5;
            }

            @Override
            public double byWarmth(double charge, double share, double warmth) {
                return charge / share;
            }
        };
        HotWaterSystem house = Houses.cottage(3.5)
                .vessel(Houses.vesselBuilder(100).gasLaw(stiff).build())
                .build();
        VesselSizing sizing = sizing(house, VesselSizing.Precharge.STATIC).build();
        assertSame(stiff, sizing.vessel(12e-3).gasLaw().orElseThrow());
        SizingReconciliation differences = SizingReconciliation.fromHandbook(sizing, 0);
        assertAddsUp(differences);
        assertTrue(differences.of(Effect.GAS_LAW) > 0.05 * differences.simulated());
    }

    /** A full cold start is the same with and without layers. */
    @Test
    void layersDoNotMatterForAColdStart() {
        SizingReconciliation differences = SizingReconciliation.fromHandbook(
                sizing(everything(), VesselSizing.Precharge.STATIC).build(), 0);
        assertEquals(0, differences.of(Effect.LAYERS), 1e-4 * differences.simulated()); // switch-off within a layer
    }

    /**
     * Validation: where nothing gives way but water and gas, the balance of mass and the simulation agree, and the peaks
     * are those constructed with IAPWS-95; in the first case the precharge is the only other term.
     */
    @ParameterizedTest
    @CsvSource({"60, STATIC_LESS_FIFTH_BAR, 5.1068, 12, 1.1e-3", "65, STATIC, 6.2256, 8, 5.6e-4"})
    void balanceOfMassAndSimulationAgreeInTheLimit(
            double celsius, VesselSizing.Precharge rule, double peakBar, double litres, double tolerance) {
        HotWaterSystem house = Houses.textbook(150, celsius);
        SizingReconciliation differences = SizingReconciliation.fromHandbook(
                VesselSizing.builder(house, Houses.target(house, peakBar))
                        .precharge(rule)
                        .build(),
                0);
        assertAddsUp(differences);
        assertEquals(0, differences.of(Effect.TEMPERATURE_REACHED), 2e-4 * differences.simulated());
        assertEquals(0, differences.of(Effect.TANK_COMPLIANCE), 2e-4 * differences.simulated());
        assertEquals(0, differences.of(Effect.PIPING));
        double byMass = differences.formula().volume()
                + differences.of(Effect.COLD_VOLUME)
                + differences.of(Effect.WATER_COMPRESSIBILITY)
                + differences.of(Effect.PRECHARGE);
        assertEquals(litres, LITRE.fromSi(byMass), litres * tolerance); // what 2e-4 of the peak moves the vessel by
    }

    /**
     * Validation: by the handbook's hot volume the vessels of the constructed cases would peak at 5.1350 and 6.3130 bar;
     * with that as target the formula gives the vessel back (for the first in the form with a precharge below the fill).
     */
    @Test
    void formulaGivesTheTextbookPeakBack() {
        HotWaterSystem house = Houses.textbook(150, 65);
        HandCalculation book = HandCalculation.of(VesselSizing.builder(house, Houses.target(house, 6.3130))
                .precharge(VesselSizing.Precharge.STATIC)
                .build()
                .setup());
        assertEquals(8, LITRE.fromSi(book.byHotVolume()), 8 * 2e-4); // the printed peak to 5e-5 bar and 1e-4
        HotWaterSystem other = Houses.textbook(150, 60);
        HandCalculation hot = HandCalculation.of(VesselSizing.builder(other, Houses.target(other, 5.1350))
                .precharge(VesselSizing.Precharge.STATIC)
                .build()
                .setup());
        double withPrecharge = hot.hotVolume(0) / (3.8 / 4.0 - 3.8 / 5.1350);
        assertEquals(12, LITRE.fromSi(withPrecharge), 12 * 3e-4); // the printed peak to 5e-5 bar and 1e-4
    }

    @Test
    void differencesFromDinAddUp() {
        VesselSizing sizing = sizing(Houses.cottage(3.5).build(), VesselSizing.Precharge.STATIC_LESS_FIFTH_BAR)
                .build();
        SizingReconciliation differences = SizingReconciliation.fromDin(sizing, Houses.valve(7, 5.9));
        assertAddsUp(differences);
        assertTrue(differences.of(Effect.TANK_GROWTH) < 0, "a tank that grows saves volume");
        assertTrue(differences.of(Effect.FORM) < 0, "the formula's precharge is lower than the supply");
        assertEquals(200e-3, differences.formula().inputs().get(0).value(), 1e-12); // rounding
    }

    /** Validation: the last steps are the formula's own, each worked out here by hand. */
    @Test
    void theStepsBetweenTrueWaterAndTheStandard() {
        VesselSizing sizing = sizing(Houses.cottage(3.5).build(), VesselSizing.Precharge.STATIC)
                .build();
        SizingReconciliation differences = SizingReconciliation.fromDin(sizing, Houses.valve(7, 5.9));
        assertEquals(
                List.copyOf(EnumSet.complementOf(EnumSet.of(Effect.GAS_LAW))),
                differences.terms().stream()
                        .map(SizingReconciliation.Term::effect)
                        .toList(),
                "no step is left out, and ideal gas has no law of its own");
        HotWaterSystem house = Houses.cottage(3.5).build();
        double air = house.site().atmosphere();
        LiquidWater water = GibbsPolynomialWater.instance();
        double fill = air + 3.5e5;
        double cold = water.density(TemperatureUnit.CELSIUS.toSi(9), fill);
        double hot = water.density(TemperatureUnit.CELSIUS.toSi(62), fill);
        double hotVolume = 0.2 * (cold / hot - 1);
        double limit = sizing.size().target().absolute();
        double byTarget = hotVolume / (1 - fill / limit);
        double byFormula = hotVolume / (1 - fill / (air + 0.8 * 7e5)); // DIN 4807-5: pe = 0.8 psv
        assertEquals(byTarget - byFormula, differences.of(Effect.MAX_PRESSURE), 1e-9);
        double growth = house.tank().shell().thermalGrowth() * 53 * 0.2 / (1 - fill / limit);
        assertEquals(-growth, differences.of(Effect.TANK_GROWTH), 1e-9);
        double pa = 3.5;
        double pe = 0.8 * 7;
        double standard = 0.023 * 0.2 * (pa + 1) * (pe + 1) / ((pa + 0.8) * (pe - pa)); // n for 70 degC, by hand
        assertEquals(standard, differences.formula().volume(), 1e-9);
        double tabled = 0.023 * 0.2 / (1 - fill / (air + 1e5 * pe));
        assertEquals(byFormula - tabled, differences.of(Effect.TABLED_EXPANSION), 1e-9);
        assertEquals(tabled - standard, differences.of(Effect.FORM), 1e-9);
        double last = byFormula - differences.of(Effect.TABLED_EXPANSION);
        assertEquals(last - differences.formula().volume(), differences.of(Effect.FORM), 1e-12);

        SizingReconciliation handbook = SizingReconciliation.fromHandbook(sizing, 0);
        assertEquals(Effect.TANK_GROWTH, handbook.terms().get(12).effect());
        assertEquals(13, handbook.terms().size());
        assertEquals(-growth, handbook.of(Effect.TANK_GROWTH), 1e-9);
    }

    @Test
    void everyEffectHasItsWords() {
        List<String> words =
                Arrays.stream(Effect.values()).map(Effect::description).toList();
        assertEquals(Effect.values().length, words.stream().distinct().count());
        assertTrue(words.stream().noneMatch(String::isBlank));
    }

    /** Higher up there is less pressure, of which the water needs the same difference: a larger part of the vessel. */
    @Test
    void aVesselUpstairsMayBeSmaller() {
        VesselSizing sizing =
                sizing(everything(), VesselSizing.Precharge.STATIC).build();
        assertTrue(SizingReconciliation.fromHandbook(sizing, 0).of(Effect.VESSEL_HEIGHT) < 0);
    }

    /** A run that begins above the supply ends higher than one from a cold fill. */
    @Test
    void aRunAsGivenMayCostVolume() {
        HotWaterSystem above = Houses.cottage(3.5)
                .start(Start.builder().pressure(Pressure.gauge(4.5, BAR)).build())
                .build();
        VesselSizing sizing = sizing(above, VesselSizing.Precharge.STATIC)
                .alsoRun(Duration.ofHours(12))
                .build();
        SizingReconciliation differences = SizingReconciliation.fromHandbook(sizing, 0);
        assertAddsUp(differences);
        assertTrue(differences.of(Effect.COURSE_OF_THE_RUN) > 0);
        VesselSizing plain = sizing(above, VesselSizing.Precharge.STATIC).build();
        assertEquals(0, SizingReconciliation.fromHandbook(plain, 0).of(Effect.COURSE_OF_THE_RUN));
    }

    /** A bypass saves the whole vessel as long as the mains stays below the target. */
    @Test
    void wayBackToTheMainsSavesTheVessel() {
        Supply bypassed = Parts.reduced(4, Parts.reducingValve(3, 0, 0.5, 20).bypassOpens(0.2, BAR));
        VesselSizing sizing = sizing(Houses.cottage(3).supply(bypassed).build(), VesselSizing.Precharge.STATIC)
                .build();
        SizingReconciliation differences = SizingReconciliation.fromHandbook(sizing, 0);
        assertAddsUp(differences);
        assertEquals(0, differences.simulated());
        assertTrue(differences.of(Effect.WAY_BACK) < 0);
    }

    @Test
    void comparisonsWithoutMeaningAreRefused() {
        VesselSizing high =
                sizing(Houses.cottage(6).build(), VesselSizing.Precharge.STATIC).build();
        assertRefused("supply (absolute): ", () -> SizingReconciliation.fromHandbook(high, 0));
        VesselSizing cold = sizing(
                        Houses.cottage(3)
                                .supply(Parts.supply(Supply.Arrangement.CHECK_VALVE, Pressure.gauge(3, BAR), 20))
                                .heater(Houses.heater(3, 15))
                                .build(),
                        VesselSizing.Precharge.STATIC)
                .build();
        assertRefused("set-point: ", () -> SizingReconciliation.fromHandbook(cold, 0));
        HotWaterSystem house = Houses.cottage(3.5).build();
        VesselSizing tight = VesselSizing.builder(house, Houses.target(house, 3.5 + 0.9766 + 1e-4))
                .precharge(VesselSizing.Precharge.STATIC)
                .build();
        assertRefused("target: ", () -> SizingReconciliation.fromHandbook(tight, 0));
    }

    private static void assertRefused(String beginning, Executable call) {
        String message = assertThrows(IllegalArgumentException.class, call).getMessage();
        assertTrue(message.startsWith(beginning), message);
    }
}
