package io.github.heatswell.sizing;

import static io.github.heatswell.units.PressureUnit.BAR;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.Balances;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Leak;
import io.github.heatswell.system.MainsPressure;
import io.github.heatswell.system.Material;
import io.github.heatswell.system.Parts;
import io.github.heatswell.system.ReliefFault;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.Start;
import io.github.heatswell.system.Supply;
import io.github.heatswell.system.SupplyTemperature;
import io.github.heatswell.units.DurationUnit;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.TemperatureDifferenceUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.VolumeUnit;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The parts of sizing and survey by themselves. */
class SizingPartsTest {

    private static final double EXACT = 1e-12;

    private static void evenRatios(double from, double to, double[] volumes) {
        assertEquals(MapAxes.VOLUMES, volumes.length);
        assertEquals(from, volumes[0], EXACT);
        assertEquals(to, volumes[39], 0, "a round number");
        for (int i = 1; i < 40; i++) {
            assertEquals(Math.pow(to / from, 1.0 / 39), volumes[i] / volumes[i - 1], 1e-9);
        }
    }

    /** From one litre to three times the vessel, on a round number. */
    @ParameterizedTest
    @CsvSource({
        "0.012, 0.001, 0.04",
        "0.001, 0.001, 0.005",
        "0.0004, 0.0004, 0.005",
        "0.004, 0.001, 0.012",
        "0.00401, 0.001, 0.015",
        "0.02, 0.001, 0.06",
        "0.03, 0.001, 0.1",
        "3, 0.001, 5"
    })
    void volumesOfAMap(double vessel, double from, double to) {
        evenRatios(from, to, MapAxes.chosenVolumes(vessel));
    }

    /** Static, working and present pressure in bar; first and last precharge, and the one the static pressure takes. */
    @ParameterizedTest
    @CsvSource({
        "4, 10, NaN, 1.2, 6.4, 16",
        "4, 6, NaN, 1.1, 6, 17",
        "4, 10, 0.5, 0.4, 6.4, 17",
        "4, 10, 7.9, 1.2, 8.7, 11",
        "0.2, 10, NaN, 0.15, 0.8, 2",
        "12, 14, NaN, 2.6, 14, 24",
        "9, 20, 15, 2.7, 16, 14",
        "7.2, 8.47, 5.1, 1.55, 8.47, 24",
        "4, 6.02, 6.02, 1.1, 6.02, 17",
        "0.02, 0.04, NaN, 0.02, 0.04, 0"
    })
    void prechargesOfAMap(double statically, double working, double present, double from, double to, int at) {
        double[] precharges = MapAxes.chosenPrecharges(1e5 * statically, 1e5 * working, 1e5 * present);
        assertEquals(MapAxes.PRECHARGES, precharges.length);
        assertEquals(from, precharges[0] / 1e5, 1e-9);
        assertEquals(to, precharges[29] / 1e5, 1e-9);
        assertEquals(1e5 * statically, precharges[at], 0, "the static pressure is one of them");
        for (int i = 1; i < 30; i++) {
            assertTrue(precharges[i] > precharges[i - 1]);
            if (i != at) {
                assertEquals(from + (to - from) * i / 29, precharges[i] / 1e5, 1e-9);
            }
        }
    }

    @Test
    void aStaticPressureOutsideTheMapDisplacesNothing() {
        double[] precharges = MapAxes.chosenPrecharges(9e5, 5e5, Double.NaN);
        assertEquals(5, precharges[29] / 1e5, 1e-9);
        double[] low = MapAxes.chosenPrecharges(0.01e5, 10e5, Double.NaN);
        assertEquals(0.15, low[0] / 1e5, 1e-9);
    }

    private static ExpansionVessel pattern() {
        return Houses.vesselBuilder(60)
                .height(2, LengthUnit.METRE)
                .chargedAt(5, TemperatureUnit.CELSIUS)
                .temperature(30, TemperatureUnit.CELSIUS)
                .gasTimeConstant(300, DurationUnit.SECOND)
                .condition(ExpansionVessel.Condition.ISOLATED)
                .build();
    }

    private static void is(
            ExpansionVessel vessel, double acceptance, double height, boolean charged, boolean warm, boolean slow) {
        assertEquals(acceptance, vessel.acceptance(), EXACT);
        assertEquals(height, vessel.height(), EXACT);
        assertEquals(charged, vessel.chargedAt().isPresent());
        assertEquals(warm, vessel.temperature().isPresent());
        assertEquals(slow, vessel.gasTimeConstant().isPresent());
        assertEquals(ExpansionVessel.Condition.SOUND, vessel.condition());
        assertEquals(12e-3, vessel.volume(), EXACT);
        assertEquals(Pressure.gauge(2, BAR), vessel.precharge());
    }

    @Test
    void vesselsOfOneMake() {
        VesselType type = new VesselType(pattern());
        ExpansionVessel other = type.with(0.03, Pressure.gauge(4, BAR));
        assertEquals(0.03, other.volume(), EXACT);
        assertEquals(Pressure.gauge(4, BAR), other.precharge());
        is(type.with(12e-3, Pressure.gauge(2, BAR)), 0.6, 2, true, true, true);
        is(type.chargedInTheRoom().pattern(), 0.6, 2, false, true, true);
        is(type.level().pattern(), 0.6, 0, true, true, true);
        is(type.unlimited().pattern(), 1, 2, true, true, true);
        is(type.isothermal().pattern(), 0.6, 2, false, false, false);
    }

    private static HotWaterSystem.Builder full() {
        return Houses.cottage(3.5)
                .supply(Supply.builder()
                        .arrangement(Supply.Arrangement.CHECK_VALVE)
                        .mains(MainsPressure.daily(
                                Map.of(0.0, Pressure.gauge(5, BAR), 43_200.0, Pressure.gauge(3, BAR))))
                        .water(9, TemperatureUnit.CELSIUS)
                        .seatLeakage(1, FlowUnit.MILLILITRE_PER_MINUTE)
                        .addOutage(new Supply.Outage(100, 200))
                        .build())
                .trappedAir(0.1, VolumeUnit.LITRE)
                .changeTank(tank -> tank.toBuilder().air(0.4, VolumeUnit.LITRE).build())
                .addLeak(Leak.of(1, FlowUnit.MILLILITRE_PER_MINUTE, Pressure.gauge(3, BAR)))
                .start(Start.builder().water(20, TemperatureUnit.CELSIUS).build());
    }

    @Test
    void aColdFillHasTheWorstMainsAndNothingElse() {
        HotWaterSystem house = HeatUpCase.coldFill(full().build()).house();
        assertTrue(house.supply().mains().isConstant());
        assertEquals(Pressure.gauge(5, BAR), house.supply().mains().entries().get(0.0));
        assertEquals(0, house.supply().seatLeakage());
        assertTrue(house.supply().outages().isEmpty());
        assertTrue(house.leaks().isEmpty());
        assertTrue(house.trappedAir().isEmpty());
        assertTrue(house.tank().air().isEmpty());
        assertTrue(house.reliefValves().isEmpty());
        assertTrue(house.vessel().isEmpty());
        assertTrue(house.start().waterTemperature().isEmpty());
        assertEquals(1, house.piping().size());
        assertTrue(HeatUpCase.coldFill(full().build())
                .withoutPiping()
                .house()
                .piping()
                .isEmpty());
    }

    @Test
    void aRunAsGivenKeepsAllButVesselValvesAndAir() {
        HotWaterSystem given = full().build();
        HeatUpCase trial = HeatUpCase.asGiven(given, Duration.ofHours(3));
        HotWaterSystem house = trial.house();
        assertEquals(Duration.ofHours(3), trial.duration());
        assertSame(given.supply(), house.supply());
        assertSame(given.start(), house.start());
        assertSame(given.draws(), house.draws());
        assertEquals(given.leaks(), house.leaks());
        assertTrue(house.trappedAir().isEmpty());
        assertTrue(house.tank().air().isEmpty());
        assertEquals(given.piping(), house.piping());
        assertTrue(house.reliefValves().isEmpty());
        assertTrue(house.vessel().isEmpty());
    }

    /** Air cushions until it is dissolved: a house with it needs the vessel it needs without. */
    @Test
    void airIsNotCountedOn() {
        HotWaterSystem.Builder house = Houses.cottage(3.5);
        HotWaterSystem airless = house.build();
        HotWaterSystem airy = house.trappedAir(0.4, VolumeUnit.LITRE)
                .changeTank(tank -> tank.toBuilder().air(0.4, VolumeUnit.LITRE).build())
                .build();
        assertEquals(smallest(airless), smallest(airy));
        Balances.Count count = new Balances.Count();
        assertEquals(VesselSizing.worstPeak(airless, count), VesselSizing.worstPeak(airy, count));
    }

    private static double smallest(HotWaterSystem house) {
        return VesselSizing.builder(
                        house,
                        SizingTarget.builder(house)
                                .vesselRating(Pressure.gauge(10, BAR))
                                .build())
                .precharge(VesselSizing.Precharge.STATIC)
                .vesselLike(PeakSurveyTest.vessel(18e-3, 3.5e5))
                .alsoRun(Duration.ofHours(6))
                .build()
                .size()
                .smallest()
                .orElseThrow()
                .volume();
    }

    @Test
    void behindACheckValveTheSupplyStandsWhereItIsPut() {
        HeatUpCase trial = HeatUpCase.coldFill(full().build()).behindCheckValve(4.4e5);
        Supply supply = trial.house().supply();
        assertEquals(Supply.Arrangement.CHECK_VALVE, supply.arrangement());
        assertEquals(4.4e5, supply.staticAbsolute(0, trial.house().site().atmosphere()), 1e-6);
        assertEquals(TemperatureUnit.CELSIUS.toSi(9), trial.house().coldAtStart(), 1e-9);
    }

    /** Water is densest at 4 degC: the day on which a supply that swings about it passes it has most to grow. */
    @Test
    void aColdFillIsOnTheDayOfTheDensestWater() {
        Supply seasonal = Supply.builder()
                .arrangement(Supply.Arrangement.CHECK_VALVE)
                .pressure(Pressure.gauge(3.5, BAR))
                .water(SupplyTemperature.seasonal(5, TemperatureUnit.CELSIUS, 30, TemperatureDifferenceUnit.KELVIN))
                .build();
        double cold = HeatUpCase.coldFill(Houses.cottage(3.5).supply(seasonal).build())
                .house()
                .coldAtStart();
        assertEquals(4, TemperatureUnit.CELSIUS.fromSi(cold), 0.1);
        SupplyTemperature mild =
                SupplyTemperature.seasonal(14, TemperatureUnit.CELSIUS, 16, TemperatureDifferenceUnit.KELVIN);
        double coldest = HeatUpCase.coldFill(Houses.cottage(3.5)
                        .supply(Supply.builder()
                                .arrangement(Supply.Arrangement.CHECK_VALVE)
                                .pressure(Pressure.gauge(3.5, BAR))
                                .water(mild)
                                .build())
                        .build())
                .house()
                .coldAtStart();
        assertEquals(IntStream.rangeClosed(1, 366).mapToDouble(mild::on).min().orElseThrow(), coldest, 0);
    }

    /** Long enough for the thermostat, by the heat of the tank over what the element has left beside the loss. */
    @Test
    void aHeatUpIsRunUntilItsEnd() {
        double straight = 200e-3 * 1_000 * 4_190 * 53 / (3_000 - 2.1 * 45);
        double seconds =
                HeatUpCase.coldFill(Houses.cottage(3.5).build()).duration().toSeconds() - 600.0;
        assertEquals(1.2 * straight, seconds, 0.01 * seconds);
        HotWaterSystem burner = Houses.cottage(3.5)
                .heater(Houses.heaterBuilder(3, 62)
                        .recoveryEfficiency(78, RatioUnit.PERCENT)
                        .build())
                .build();
        double slower = 200e-3 * 1_000 * 4_190 * 53 / (0.78 * 3_000 - 2.1 * 45);
        assertEquals(1.2 * slower, HeatUpCase.coldFill(burner).duration().toSeconds() - 600.0, 0.012 * slower);
        HotWaterSystem weak =
                Houses.cottage(3.5).heater(Houses.heater(0.05, 62)).build();
        double rest = 8 * 200e-3 * 1_000 * 4_196 / 2.1;
        assertEquals(rest, HeatUpCase.coldFill(weak).duration().toSeconds() - 600.0, 0.01 * rest);
        HotWaterSystem warm = Houses.cottage(3.5)
                .supply(Parts.supply(Supply.Arrangement.CHECK_VALVE, Pressure.gauge(3, BAR), 30))
                .heater(Houses.heater(3, 25))
                .build();
        assertEquals(600, HeatUpCase.coldFill(warm).duration().toSeconds());
        assertEquals(TemperatureUnit.CELSIUS.toSi(25), HeatUpCase.coldFill(warm).hotTemperature(), 1e-9);
    }

    private static SizingProblem setup(double limitBar) {
        HotWaterSystem house = Houses.cottage(3.5).build();
        VesselType type = new VesselType(house.vessel().orElseThrow()).chargedInTheRoom();
        return new SizingProblem(
                List.of(HeatUpCase.coldFill(house)),
                type,
                VesselSizing.Precharge.STATIC,
                house.site().atmosphere() + 1e5 * limitBar);
    }

    @Test
    void theSmallestVesselKeepsTheLimitAndALittleLessDoesNot() {
        SizingProblem setup = setup(5.5);
        VesselSearch search = new VesselSearch();
        double smallest = search.smallest(setup).orElseThrow();
        long runs = search.balances().runs();
        assertTrue(runs > 5 && runs < 40, "runs: " + runs);
        assertTrue(search.peak(setup, smallest) <= setup.limit());
        assertTrue(search.peak(setup, smallest * (1 - 1e-5)) > setup.limit());
        assertEquals(runs + 2, search.balances().runs());
        assertEquals(0, search.smallest(setup(600)).orElseThrow(), "none needed");
        assertTrue(search.smallest(setup(3.5)).isEmpty(), "no room above the supply");
        assertTrue(search.smallest(setup(3.4)).isEmpty(), "the supply itself is too high");
        assertTrue(search.smallest(setup(3.5 + 1e-6)).isEmpty(), "more than five cubic metres");
    }

    /** A house that a decilitre is enough for gets no smaller one. */
    @Test
    void nothingSmallerThanADecilitre() {
        HotWaterSystem house = Houses.textbook(10, 14);
        SizingProblem setup = new SizingProblem(
                List.of(HeatUpCase.coldFill(house)),
                new VesselType(house.vessel().orElseThrow()),
                VesselSizing.Precharge.STATIC,
                6e5);
        assertEquals(VesselType.MIN_VOLUME, new VesselSearch().smallest(setup).orElseThrow(), 0);
    }

    @Test
    void aTriedVesselKnowsItsPeakAndWhatIsLeft() {
        SizingProblem setup = setup(5.5);
        SizingResult.Vessel tried = new VesselSearch().tried(setup, NominalSize.of(30, VolumeUnit.LITRE));
        double peak = new VesselSearch().peak(setup, 0.03);
        assertEquals(peak, tried.peakAbsolute(), 0);
        assertEquals(setup.limit() - peak, tried.margin(), 1e-9);
        assertFalse(tried.higher());
        assertTrue(
                new VesselSearch()
                        .tried(setup, NominalSize.of(1, VolumeUnit.LITRE))
                        .higher(),
                "beyond the tank");
    }

    @Test
    void theHighestSupplyAVesselIsEnoughFor() {
        SizingProblem setup = setup(5.5);
        double air = setup.atmosphere();
        double highest = new VesselSearch().highestSupply(setup, 0.03).orElseThrow();
        SizingProblem there = setup.withColdFill(trial -> trial.behindCheckValve(highest + air));
        assertEquals(setup.limit(), new VesselSearch().peak(there, 0.03), 5);
        assertTrue(new VesselSearch().highestSupply(setup(0.9), 0.03).isEmpty(), "below what a service may have");
        assertTrue(new VesselSearch().highestSupply(setup, 0.001).isEmpty());
        HotWaterSystem upstairs = Houses.cottage(3.5)
                .vessel(Houses.vesselBuilder(60).height(5, LengthUnit.METRE).build())
                .build();
        SizingProblem low = new SizingProblem(
                List.of(HeatUpCase.coldFill(upstairs)),
                lab(upstairs).type(),
                VesselSizing.Precharge.STATIC,
                air + 1.5e5);
        assertTrue(
                new VesselSearch().highestSupply(low, 5).isEmpty(),
                "five metres up there would be less than a service has");
    }

    private static PeakEvaluator lab(HotWaterSystem house) {
        return new PeakEvaluator(
                HeatUpCase.coldFill(house),
                new VesselType(house.vessel().orElseThrow()).chargedInTheRoom(),
                new Balances.Count());
    }

    @Test
    void aMapShowsTheVesselThereIsOrTheOneThatIsNeeded() {
        HotWaterSystem house = Houses.cottage(3.5).build();
        PeakEvaluator lab = lab(house);
        PeakMap.Setting setting = lab.setting(house, null);
        assertEquals(3.5e5, setting.staticGauge(), 1e-6);
        assertEquals(3.5e5, setting.staticAtVesselGauge(), 1e-6);
        assertEquals(7e5, setting.reliefSetGauge().orElseThrow(), 1e-6);
        assertTrue(setting.targetGauge().isEmpty());
        double needed = new VesselSearch().smallest(setup(7)).orElseThrow();
        assertTrue(needed < 12e-3);
        assertEquals(12e-3, lab.vesselToShow(setting), EXACT);
        HotWaterSystem small = Houses.cottage(3.5)
                .vessel(Houses.vesselBuilder(60).volume(2, VolumeUnit.LITRE).build())
                .build();
        assertEquals(needed, lab.vesselToShow(lab.setting(small, null)), 1e-9);
        HotWaterSystem without =
                Houses.cottage(3.5).withoutVessel().withoutReliefValves().build();
        assertEquals(8e-3, lab.vesselToShow(lab.setting(without, null)), EXACT, "nothing to go by");
        assertTrue(lab.present(without).isEmpty());
        assertTrue(lab.presentPrecharge(without).isEmpty());
        SizingTarget target = Houses.target(house, 5);
        assertEquals(target.gauge(), lab.setting(house, target).targetGauge().orElseThrow(), 1e-9);
    }

    /** Regression: a valve that never opens is not what a map is read against, also where it is set lowest. */
    @Test
    void aBlockedValveIsNotTheFirstToOpen() {
        HotWaterSystem house = Houses.cottage(3.5).build();
        ReliefValve sound = house.reliefValves().get(0);
        ReliefValve blocked = sound.toBuilder()
                .name("blocked")
                .setPressure(Pressure.gauge(6, PressureUnit.BAR))
                .fullLiftPressure(Pressure.gauge(6.6, PressureUnit.BAR))
                .reseatPressure(Pressure.gauge(5, PressureUnit.BAR))
                .fault(ReliefFault.blocked())
                .build();
        HotWaterSystem both = house.toBuilder().addReliefValve(blocked).build();
        assertEquals(7e5, lab(both).setting(both, null).reliefSetGauge().orElseThrow(), 1e-6);
        HotWaterSystem alone =
                house.toBuilder().withoutReliefValves().addReliefValve(blocked).build();
        assertTrue(lab(alone).setting(alone, null).reliefSetGauge().isEmpty());
    }

    @Test
    void aVesselUpstairsIsChargedLess() {
        HotWaterSystem house = Houses.cottage(3.5)
                .vessel(Houses.vesselBuilder(60).height(2, LengthUnit.METRE).build())
                .build();
        PeakMap.Setting setting = lab(house).setting(house, null);
        double column = 999.8 * 9.80665 * 2; // density at 9 degC: handbook, 999.8
        assertEquals(3.5e5 - column, setting.staticAtVesselGauge(), 2);
        SizingProblem setup = new SizingProblem(
                List.of(HeatUpCase.coldFill(house)),
                lab(house).type(),
                VesselSizing.Precharge.STATIC_LESS_FIFTH_BAR,
                8e5);
        assertEquals(3.3e5 - column, setup.precharge().gauge(setup.atmosphere()), 2);
        assertEquals(
                3.5e5 - column,
                setup.withRule(VesselSizing.Precharge.STATIC).precharge().gauge(setup.atmosphere()),
                2);
        assertEquals(3.3e5, setup.withType(setup.type().level()).precharge().gauge(setup.atmosphere()), 1e-6);
    }

    @Test
    void pipesOfAnotherMaterialAreNotForgotten() {
        HotWaterSystem house =
                Houses.cottage(3.5).addPipe(Parts.pipe(Material.PEX, 20, 2, 30)).build();
        assertEquals(2, HeatUpCase.coldFill(house).house().piping().size());
    }
}
