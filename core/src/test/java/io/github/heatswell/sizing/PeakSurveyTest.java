package io.github.heatswell.sizing;

import static io.github.heatswell.units.PressureUnit.BAR;
import static io.github.heatswell.units.PressureUnit.PASCAL;
import static io.github.heatswell.units.VolumeUnit.CUBIC_METRE;
import static io.github.heatswell.units.VolumeUnit.LITRE;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.RunResult;
import io.github.heatswell.simulation.Simulation;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Parts;
import io.github.heatswell.system.Shell;
import io.github.heatswell.system.Supply;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.TemperatureUnit;
import java.time.Duration;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Peaks over volume and precharge, and where the relief valve begins to drip. */
class PeakSurveyTest {

    static final HotWaterSystem COTTAGE = Houses.cottage(3.5).build();

    private static double[] bar(double... values) {
        return Arrays.stream(values).map(BAR::toSi).toArray();
    }

    static PeakSurvey.Builder small(HotWaterSystem house) {
        return PeakSurvey.builder(house).volumes(LITRE, 4, 8, 16, 32).precharges(BAR, 1.5, 2.5, 3.5, 4.5);
    }

    static ExpansionVessel vessel(double cubicMetres, double prechargeGauge) {
        return Houses.vesselBuilder(60)
                .volume(cubicMetres, CUBIC_METRE)
                .precharge(Pressure.gauge(BAR.fromSi(prechargeGauge), BAR))
                .build();
    }

    /** Validation: cases constructed with IAPWS-95 (isothermal gas, rigid tank, vessel water cold), by gas law and mass. */
    @ParameterizedTest
    @CsvSource({"60, 12, 3.8, 5.1068", "65, 8, 4.0, 6.2256"})
    void givesThePeaksOfTheConstructedCases(
            double celsius, double volume, double prechargeAbsolute, double peakAbsolute) {
        HotWaterSystem house = Houses.textbook(150, celsius);
        double atmosphere = house.site().atmosphere();
        double precharge = BAR.toSi(prechargeAbsolute) - atmosphere;
        PeakMap map = PeakSurvey.builder(house)
                .volumes(LITRE, volume, 2 * volume)
                .precharges(PASCAL, precharge, precharge + 1e4)
                .build()
                .map();
        assertEquals(
                peakAbsolute,
                BAR.fromSi(map.peakGauge(0, 0) + atmosphere),
                peakAbsolute * 2e-4); // as stated beside the values
    }

    /**
     * Closed form: in a rigid house without piping the vessel takes up the same water at every precharge but for its
     * compression, so p1 V1 = p2 V2 gives that water from one cell and the peaks of all others.
     */
    @Test
    void rigidHouseFollowsBoyle() {
        HotWaterSystem house = Houses.textbook(150, 60);
        double atmosphere = house.site().atmosphere();
        double fill = 4e5;
        PeakMap map = PeakSurvey.builder(house)
                .volumes(LITRE, 12, 18, 30)
                .precharges(PASCAL, 2e5 - atmosphere, 3e5 - atmosphere, 4e5 - atmosphere, 4.4e5 - atmosphere)
                .build()
                .map();
        double water = taken(map, 2, 2, fill);
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 4; j++) {
                double peak = map.peakGauge(i, j) + atmosphere;
                double atRest = restingGas(map, i, j, fill);
                double expected = (map.prechargeGauge(j) + atmosphere) * map.volume(i) / (atRest - water);
                // the tank's water is squeezed by 4.5e-10 per Pa, 150 L by 0.007 L per bar of difference: 0.4 % of peak
                assertEquals(expected, peak, 6e-3 * expected, i + " " + j);
            }
        }
    }

    private static double restingGas(PeakMap map, int i, int j, double fill) {
        double precharge = map.prechargeGauge(j) + map.setting().system().site().atmosphere();
        return Math.min(map.volume(i), precharge * map.volume(i) / fill);
    }

    private static double taken(PeakMap map, int i, int j, double fill) {
        double atmosphere = map.setting().system().site().atmosphere();
        double precharge = map.prechargeGauge(j) + atmosphere;
        return restingGas(map, i, j, fill) - precharge * map.volume(i) / (map.peakGauge(i, j) + atmosphere);
    }

    @Test
    void everyCellIsOneSimulation() {
        PeakMap map = small(COTTAGE).build().map();
        assertEquals(
                "peaks of " + map.volumeCount() + " volumes at " + map.prechargeCount() + " precharges",
                map.toString());
        HeatUpCase trial = HeatUpCase.coldFill(COTTAGE);
        for (int i = 0; i < map.volumeCount(); i++) {
            for (int j = 0; j < map.prechargeCount(); j++) {
                HotWaterSystem house = trial.house().toBuilder()
                        .vessel(vessel(map.volume(i), map.prechargeGauge(j)))
                        .build();
                RunResult run = Simulation.of(house, trial.duration()).run();
                double peak =
                        run.summary().gauge(run.extremes().highestPressure().value());
                assertEquals(peak, map.peakGauge(i, j), 1, i + " " + j); // Pa; solver tolerance
                assertEquals(run.hazard().isPresent(), map.isAtLeast(i, j));
            }
        }
    }

    @Test
    void peakFallsAsTheVesselGrows() {
        PeakMap map = PeakSurvey.builder(COTTAGE)
                .volumes(LITRE, 2, 3, 5, 8, 12, 20, 35, 60)
                .precharges(BAR, 0.5, 1.5, 3, 3.5, 4, 6)
                .build()
                .map();
        for (int j = 0; j < map.prechargeCount(); j++) {
            for (int i = 1; i < map.volumeCount(); i++) {
                assertTrue(map.peakGauge(i, j) <= map.peakGauge(i - 1, j) + 1, i + " " + j); // Pa; solver tolerance
            }
        }
    }

    /** With its relief valve in place, the house drips with a vessel 1 % below the line, and not with one 1 % above. */
    @Test
    void dripLineIsWhereTheValveBeginsToDrip() {
        PeakMap map = small(COTTAGE).build().map();
        int crossed = 0;
        for (int j = 0; j < map.prechargeCount(); j++) {
            double volume = map.dripVolume(j).orElse(Double.NaN);
            if (volume > map.volume(0)) {
                crossed++;
                assertEquals(0, relieved(1.01 * volume, map.prechargeGauge(j)));
                assertTrue(relieved(0.99 * volume, map.prechargeGauge(j)) > 0, "at precharge " + j);
            }
        }
        assertEquals(4, crossed);
    }

    private static double relieved(double volume, double prechargeGauge) {
        HotWaterSystem house =
                COTTAGE.toBuilder().vessel(vessel(volume, prechargeGauge)).build();
        return Simulation.of(house, Duration.ofHours(12)).run().totals().relieved();
    }

    /** Where a full vessel lets the peak rise steeply, edges lie where the runs have them: volumes 1.5 % off peak beyond and below. */
    @Test
    void edgesOfSteepRisesAreWhereTheRunsHaveThem() {
        double[] precharges = bar(1.2, 1.6, 2);
        PeakSurvey.Builder survey = PeakSurvey.builder(COTTAGE).precharges(PASCAL, precharges);
        PeakMap map = survey.volumes(CUBIC_METRE, MapAxes.chosenVolumes(LITRE.toSi(20)))
                .build()
                .map();
        for (int j = 0; j < precharges.length; j++) {
            for (double limit : bar(5, 6.5, 8, 12, 18)) {
                double volume = map.volumeBelow(j, limit).orElseThrow();
                assertTrue(peak(0.985 * volume, precharges[j]) >= limit, limit + " at " + precharges[j]);
                assertTrue(peak(1.015 * volume, precharges[j]) < limit, limit + " at " + precharges[j]);
            }
            double ended = map.endedVolume(j).orElseThrow();
            double atmosphere = COTTAGE.site().atmosphere();
            double test = COTTAGE.tank().testPressureAbsolute(atmosphere) - atmosphere;
            assertEquals(test, peak(0.995 * ended, precharges[j]), 100); // Pa; how closely a run ends there
            assertTrue(peak(1.005 * ended, precharges[j]) < test - 100);
        }
    }

    private static double peak(double volume, double prechargeGauge) {
        HeatUpCase trial = HeatUpCase.coldFill(COTTAGE);
        HotWaterSystem house =
                trial.house().toBuilder().vessel(vessel(volume, prechargeGauge)).build();
        RunResult run = Simulation.of(house, trial.duration()).run();
        return run.summary().gauge(run.extremes().highestPressure().value());
    }

    /** The lines agree with the search of the sizing, which has a solver of its own setting. */
    @Test
    void linesAgreeWithTheSizing() {
        SizingTarget target = SizingTarget.builder(COTTAGE)
                .vesselRating(Pressure.gauge(10, BAR))
                .build();
        PeakMap map = small(COTTAGE).target(target).build().map();
        SizingResult.Vessel sized = VesselSizing.builder(COTTAGE, target)
                .precharge(VesselSizing.Precharge.STATIC)
                .build()
                .size()
                .smallest()
                .orElseThrow();
        assertEquals(target.gauge(), map.setting().targetGauge().orElseThrow());
        double found = map.targetVolume(2).orElseThrow();
        assertEquals(sized.volume(), found, 3e-5 * found); // accuracy of the line
        assertTrue(map.dripVolume(2).orElseThrow() < found, "the valve opens above the target");
    }

    @Test
    void emptyWhereNoVolumeInTheRangeDoes() {
        PeakMap map = PeakSurvey.builder(COTTAGE)
                .volumes(LITRE, 3, 4, 5)
                .precharges(BAR, 0.4, 3.5, 7.5)
                .build()
                .map();
        for (int j = 0; j < 3; j++) {
            boolean all = map.drips(0, j) && map.drips(1, j) && map.drips(2, j);
            assertEquals(all, map.dripVolume(j).isEmpty());
        }
        assertTrue(map.dripVolume(2).isEmpty(), "gas above the set pressure cannot help");
    }

    @Test
    void smallestOfTheRangeWhereItIsEnough() {
        PeakMap map = PeakSurvey.builder(COTTAGE)
                .volumes(LITRE, 40, 60)
                .precharges(BAR, 3, 3.5)
                .build()
                .map();
        assertEquals(LITRE.toSi(40), map.dripVolume(1).orElseThrow());
        assertFalse(map.drips(0, 1));
    }

    /** A vessel full of water before the heating begins is no vessel: the run ends at the test pressure, 15 bar. */
    @Test
    void peaksAtTheTestPressureAreAtLeastThat() {
        PeakMap map = PeakSurvey.builder(COTTAGE)
                .volumes(LITRE, 0.5, 20)
                .precharges(BAR, 0.3, 3.5)
                .build()
                .map();
        assertTrue(map.isAtLeast(0, 0) && map.drips(0, 0));
        double atmosphere = COTTAGE.site().atmosphere();
        double test = COTTAGE.tank().testPressureAbsolute(atmosphere) - atmosphere;
        assertEquals(test, map.peakGauge(0, 0), 1); // Pa; where the event is located
        assertFalse(map.isAtLeast(1, 1));
    }

    @Test
    void withoutReliefValveNothingDrips() {
        HotWaterSystem house = HotWaterSystem.builder()
                .site(COTTAGE.site())
                .supply(COTTAGE.supply())
                .tank(COTTAGE.tank())
                .heater(COTTAGE.heater())
                .vessel(Houses.vessel(60))
                .build();
        PeakMap map = small(house).build().map();
        assertTrue(map.setting().reliefSetGauge().isEmpty());
        assertFalse(map.drips(0, 0));
        assertTrue(map.dripVolume(0).isEmpty() && map.targetVolume(0).isEmpty());
    }

    @Test
    void openToTheMainsEveryPeakIsThatOfTheMains() {
        HotWaterSystem house = Houses.cottage(3)
                .supply(Parts.supply(Supply.Arrangement.DIRECT, Pressure.gauge(3, BAR), 9))
                .build();
        PeakMap map = small(house).build().map();
        for (int i = 0; i < map.volumeCount(); i++) {
            for (int j = 0; j < map.prechargeCount(); j++) {
                assertEquals(3e5, map.peakGauge(i, j), 1); // Pa; solver tolerance
            }
        }
        assertEquals(map.volume(0), map.dripVolume(0).orElseThrow());
    }

    @Test
    void lowestValveCountsAtTheHeightOfTheDrainCock() {
        HotWaterSystem house = COTTAGE.toBuilder()
                .addReliefValve(
                        Houses.valveBuilder(6.5, 6).height(10, LengthUnit.METRE).build())
                .build();
        double set = small(house).build().map().setting().reliefSetGauge().orElseThrow();
        assertEquals(7, BAR.fromSi(set), 1e-9); // rounding; the other stands at 6.5 + 0.98
    }

    /** A precharge read in the cold garage is that of a warmer room by the gas law; the peak stays that of the house. */
    @Test
    void presentPrechargeIsCorrectedToTheRoom() {
        ExpansionVessel cold = Houses.vesselBuilder(60)
                .precharge(Pressure.gauge(3, BAR))
                .chargedAt(0, TemperatureUnit.CELSIUS)
                .condition(ExpansionVessel.Condition.WATERLOGGED)
                .build();
        HotWaterSystem house = COTTAGE.toBuilder().vessel(cold).build();
        PeakMap.Point present = small(house).build().map().present().orElseThrow();
        double atmosphere = house.site().atmosphere();
        double expected = (3e5 + atmosphere) * (273.15 + 17) / 273.15 - atmosphere;
        assertEquals(expected, present.prechargeGauge(), 1e-6); // Pa; rounding
        assertEquals(12, LITRE.fromSi(present.volume()), 1e-9); // rounding
        HeatUpCase trial = HeatUpCase.coldFill(house);
        ExpansionVessel sound = Houses.vesselBuilder(60)
                .precharge(Pressure.gauge(3, BAR))
                .chargedAt(0, TemperatureUnit.CELSIUS)
                .build();
        RunResult run = Simulation.of(trial.house().toBuilder().vessel(sound).build(), trial.duration())
                .run();
        assertEquals(
                run.summary().gauge(run.extremes().highestPressure().value()), present.peakGauge(), 1); // Pa; solver
    }

    @Test
    void rangesLeftOpenAreChosenAroundTheHouse() {
        PeakMap map = PeakSurvey.builder(Houses.cottage(3.5)
                        .heater(Houses.heater(3, 30))
                        .tank(Parts.tank(30, Shell.rigid(), 1, 10))
                        .build())
                .build()
                .map();
        assertEquals(40, map.volumeCount());
        assertEquals(30, map.prechargeCount());
        assertEquals(1, LITRE.fromSi(map.volume(0)), 1e-9); // rounding
        assertEquals(40, LITRE.fromSi(map.volume(39)), 1e-9); // rounding; three times 12 L, on a round number
        double first = map.prechargeGauge(0);
        double last = map.prechargeGauge(29);
        assertTrue(first <= 0.3 * 3.5e5 && first > 0.2 * 3.5e5, "from " + first);
        assertEquals(5.6, BAR.fromSi(last), 1e-9); // rounding; 1.6 times 3.5 bar
        boolean holdsStatic = false;
        for (int j = 0; j < 30; j++) {
            holdsStatic |= Math.abs(map.prechargeGauge(j) - 3.5e5) < 1e-6;
        }
        assertTrue(holdsStatic, "the static pressure is one of the precharges");
    }
}
