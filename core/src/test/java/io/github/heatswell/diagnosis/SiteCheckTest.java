package io.github.heatswell.diagnosis;

import static io.github.heatswell.diagnosis.ForecasterTest.AIR;
import static io.github.heatswell.diagnosis.ForecasterTest.run;
import static io.github.heatswell.units.PressureUnit.BAR;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.checksheet.CheckProcedure;
import io.github.heatswell.checksheet.CheckSheet;
import io.github.heatswell.result.Balances;
import io.github.heatswell.result.Channel;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.system.Draw;
import io.github.heatswell.system.DrawProfile;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.Heater;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Leak;
import io.github.heatswell.system.Start;
import io.github.heatswell.units.DurationUnit;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.VolumeUnit;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What checks on site would show in a house, against runs of it, and which of them tells two houses apart. */
class SiteCheckTest {

    private static Map<SiteCheck, Double> checks(HotWaterSystem house) {
        return new Spots(house, new Balances.Count()).read(EnumSet.allOf(SiteCheck.class));
    }

    /**
     * Regression: a healthy house read as its check sheet tells agrees with its description, under the names of the sheet. Where
     * each forecast is the reading, no cause can explain them better.
     */
    @Test
    void theReadingsOfTheCheckSheetAgreeWithTheHouse() {
        Heater hot = Abbey.heater(6, 70).build();
        for (HotWaterSystem house : List.of(
                Abbey.plain().build(),
                Abbey.plain().withoutVessel().build(),
                Abbey.plain().heater(hot).build())) {
            CheckSheet sheet = CheckProcedure.of(house).simulate(house);
            SpotReadings readings = SpotReadings.none();
            for (SiteCheck check : SiteCheck.values()) {
                for (CheckSheet.Reading reading : sheet.readings()) {
                    if (reading.kind().id().equals(check.limits().field())) {
                        readings = readings.with(check, reading.expectedGauge());
                    }
                }
            }
            assertEquals(
                    Set.of(SiteCheck.COLD_STATIC, SiteCheck.PEAK_AFTER_DRAW, SiteCheck.MORNING_AFTER_DRAW),
                    readings.all().keySet());
            assertTrue(InstalledCheck.of(house, readings).asPlanned(), readings.all()::toString);
            Map<SiteCheck, Double> forecast = checks(house);
            readings.all()
                    .forEach((check, reading) ->
                            assertEquals(reading.value(), forecast.get(check), 100, "event location: " + check));
        }
    }

    /** Against the run of the heat-up, of which each is one number. */
    @Test
    void checksOnSiteAreReadOffAHeatUp() {
        HotWaterSystem house = Abbey.plain().withoutVessel().build();
        RunResult run = run(house, 12);
        double[] gauge = run.trace().values(Channel.GAUGE_READING);
        Map<SiteCheck, Double> shown = checks(house);
        assertEquals(3e5, shown.get(SiteCheck.COLD_STATIC), 1, "as the supply");
        double highest = run.peak().value();
        assertEquals(highest, shown.get(SiteCheck.HEAT_UP_MAXIMUM), 1);
        assertTrue(highest > Arrays.stream(gauge).max().orElseThrow(), "also between two samples");
        assertEquals(gauge[gauge.length - 1], shown.get(SiteCheck.NEXT_MORNING), 1);
        assertEquals(run.totals().relieved(), shown.get(SiteCheck.CAUGHT_VOLUME), 1e-9);
        assertTrue(shown.get(SiteCheck.CAUGHT_VOLUME) > 1e-3);
        assertEquals(333.15, shown.get(SiteCheck.HOT_TAP), 1e-6);
        assertEquals(0, shown.get(SiteCheck.METER_AT_REST), 1e-7);
        assertEquals(0, shown.get(SiteCheck.TYRE_GAUGE), "no vessel");
    }

    /** Nobody opens a tap during the check, the tank starts cold, and a gauge upstairs shows less. */
    @Test
    void checksAreDoneInAColdHouseInWhichNobodyDraws() {
        HotWaterSystem.Builder busy = Abbey.plain()
                .draws(DrawProfile.of(
                        "a bath", List.of(Draw.ofVolume(30_000, 60, VolumeUnit.LITRE, 8, FlowUnit.LITRE_PER_MINUTE))))
                .start(Start.builder()
                        .water(55, TemperatureUnit.CELSIUS)
                        .pressure(Pressure.gauge(5, BAR))
                        .timeOfDay(6, DurationUnit.HOUR)
                        .build());
        Map<SiteCheck, Double> quiet = checks(Abbey.plain().build());
        assertEquals(quiet, checks(busy.build()));
        Map<SiteCheck, Double> upstairs =
                checks(Abbey.plain().gaugeHeight(3, LengthUnit.METRE).build());
        double column = 3 * 9.80665 * 999.8;
        for (SiteCheck check : EnumSet.of(SiteCheck.COLD_STATIC, SiteCheck.HEAT_UP_MAXIMUM, SiteCheck.NEXT_MORNING)) {
            assertEquals(quiet.get(check) - column, upstairs.get(check), 0.01 * column, check.name());
        }
    }

    /** A mixing valve keeps the tap from showing how hot the tank is, and is no reason to leave the reading out. */
    @Test
    void aTapBehindAMixingValveShowsWhatThatGives() {
        HotWaterSystem.Builder mixed = Abbey.plain()
                .heater(Abbey.heater(3, 60).mixedTo(48, TemperatureUnit.CELSIUS).build());
        assertEquals(273.15 + 48, checks(mixed.build()).get(SiteCheck.HOT_TAP), 1e-9);
        HotWaterSystem.Builder lukewarm = Abbey.plain()
                .heater(Abbey.heater(3, 45).mixedTo(48, TemperatureUnit.CELSIUS).build());
        assertEquals(273.15 + 45, checks(lukewarm.build()).get(SiteCheck.HOT_TAP), 1e-6);
        HypothesisFit described = fit(Cause.AS_DESCRIBED, mixed.build());
        HypothesisFit hot = fit(
                Cause.WATER_TOO_HOT,
                Abbey.plain()
                        .heater(Abbey.heater(3, 75)
                                .mixedTo(48, TemperatureUnit.CELSIUS)
                                .build())
                        .build());
        assertEquals(
                SiteCheck.HEAT_UP_MAXIMUM,
                SeparatingCheck.between(hot, described, Set.of(), new Balances.Count())
                        .orElseThrow()
                        .check());
    }

    /** Validation: a leak stated at the pressure of the supply loses that in an hour, which the meter counts. */
    @Test
    void theMeterCountsWhatALeakLoses() {
        Leak leak = Leak.of(2, FlowUnit.MILLILITRE_PER_MINUTE, Pressure.gauge(3, BAR));
        Map<SiteCheck, Double> shown = checks(Abbey.plain().addLeak(leak).build());
        assertEquals(120e-6, shown.get(SiteCheck.METER_AT_REST), 1e-6);
    }

    @Test
    void theTyreGaugeShowsThePrechargeUnlessTheVesselIsFull() {
        assertEquals(3e5, checks(Abbey.plain().build()).get(SiteCheck.TYRE_GAUGE), 1e-6);
        HotWaterSystem.Builder full = Abbey.plain()
                .vessel(Abbey.vessel()
                        .condition(ExpansionVessel.Condition.WATERLOGGED)
                        .build());
        assertEquals(0, checks(full.build()).get(SiteCheck.TYRE_GAUGE));
        HotWaterSystem.Builder cutOff = Abbey.plain()
                .vessel(Abbey.vessel()
                        .condition(ExpansionVessel.Condition.ISOLATED)
                        .build());
        assertEquals(3e5, checks(cutOff.build()).get(SiteCheck.TYRE_GAUGE), 1e-6);
        assertEquals(AIR, 101_325, 1);
    }

    private static HypothesisFit fit(Cause cause, HotWaterSystem house) {
        return Fits.of(cause, 0, house);
    }

    /** The least effort that leaves no doubt: at the tap before the gauge, the gauge before the bucket, that before the vessel. */
    @Test
    void theEasiestCheckThatTellsTwoHousesApart() {
        HotWaterSystem house = Abbey.plain().build();
        HypothesisFit described = fit(Cause.AS_DESCRIBED, house);
        HypothesisFit hot = fit(
                Cause.WATER_TOO_HOT,
                Abbey.plain().heater(Abbey.heater(3, 75).build()).build());
        SeparatingCheck tap = SeparatingCheck.between(hot, described, Set.of(), new Balances.Count())
                .orElseThrow();
        assertEquals(SiteCheck.HOT_TAP, tap.check());
        assertEquals(Cause.WATER_TOO_HOT, tap.first());
        assertEquals(Cause.AS_DESCRIBED, tap.second());
        assertEquals(348.15, tap.expectedFirst(), 1e-6);
        assertEquals(333.15, tap.expectedSecond(), 1e-6);
        assertEquals(7.5, tap.separation(), 1e-6);
        assertTrue(SeparatingCheck.between(described, described, Set.of(), new Balances.Count())
                .isEmpty());
        HypothesisFit both = fit(
                Cause.SUPPLY_PRESSURE,
                Abbey.plain()
                        .supply(Abbey.checkValve(4).build())
                        .heater(Abbey.heater(3, 75).build())
                        .build());
        assertEquals(
                SiteCheck.COLD_STATIC,
                SeparatingCheck.between(both, described, Set.of(), new Balances.Count())
                        .orElseThrow()
                        .check(),
                "the first of two that are as easy");
        assertEquals(
                SiteCheck.HEAT_UP_MAXIMUM,
                SeparatingCheck.between(hot, described, Set.of(SiteCheck.HOT_TAP), new Balances.Count())
                        .orElseThrow()
                        .check());

        HotWaterSystem.Builder full = Abbey.plain()
                .vessel(Abbey.vessel()
                        .condition(ExpansionVessel.Condition.WATERLOGGED)
                        .build());
        HotWaterSystem.Builder cutOff = Abbey.plain()
                .vessel(Abbey.vessel()
                        .condition(ExpansionVessel.Condition.ISOLATED)
                        .build());
        HypothesisFit waterlogged = fit(Cause.VESSEL_WATERLOGGED, full.build());
        HypothesisFit isolated = fit(Cause.VESSEL_ISOLATED, cutOff.build());
        SeparatingCheck tyre = SeparatingCheck.between(waterlogged, isolated, Set.of(), new Balances.Count())
                .orElseThrow();
        assertEquals(SiteCheck.TYRE_GAUGE, tyre.check());
        assertEquals(30, tyre.separation(), 1e-6);
        HypothesisFit without =
                fit(Cause.AS_DESCRIBED, Abbey.plain().withoutVessel().build());
        assertTrue(
                SeparatingCheck.between(without, isolated, Set.of(), new Balances.Count())
                        .isEmpty(),
                "no tyre gauge without a vessel");
        assertTrue(SeparatingCheck.between(waterlogged, isolated, Set.of(SiteCheck.TYRE_GAUGE), new Balances.Count())
                .isEmpty());
    }

    /** A gauge that does not move shows what it showed, and one that reads off its zero does so in a check as well. */
    @Test
    void aCheckIsReadOffTheGaugeThatWasLogged() {
        HotWaterSystem plan = Abbey.plain().build();
        HotWaterSystem low = Abbey.plain().supply(Abbey.checkValve(2).build()).build();
        HypothesisFit supply = shown(Cause.SUPPLY_PRESSURE, low);
        HypothesisFit stuck = shown(Cause.GAUGE_STUCK, plan);
        SeparatingCheck heated = SeparatingCheck.between(supply, stuck, Set.of(), new Balances.Count())
                .orElseThrow();
        assertEquals(SiteCheck.HEAT_UP_MAXIMUM, heated.check(), "after a draw both show 2 bar");
        assertEquals(2e5, heated.expectedSecond(), 0);
        Estimate zero =
                new Estimate(Parameter.GAUGE_ZERO, 0.25e5, 0.1e5, 0.4e5, Estimate.Standing.CARRIED, Optional.empty());
        HypothesisFit off = shown(Cause.SUPPLY_PRESSURE, low, zero);
        SeparatingCheck cold = SeparatingCheck.between(
                        off, shown(Cause.AS_DESCRIBED, plan), Set.of(), new Balances.Count())
                .orElseThrow();
        assertEquals(SiteCheck.COLD_STATIC, cold.check());
        assertEquals(2.25e5, cold.expectedFirst(), 1);
    }

    private static HypothesisFit shown(Cause cause, HotWaterSystem house, Estimate... estimates) {
        return new HypothesisFit(
                cause,
                "",
                Optional.empty(),
                10,
                0,
                0.5,
                List.of(estimates),
                0,
                Optional.empty(),
                List.of(),
                house,
                List.of(2e5, 2e5),
                HypothesisFit.Course.NONE);
    }

    /** The checks agree with the run they are read off. */
    @Test
    void anInstalledPlanAgreesWithItself() {
        HotWaterSystem plan = Abbey.plain().build();
        double highest = Arrays.stream(run(plan, 12).trace().values(Channel.GAUGE_READING))
                .max()
                .orElseThrow();
        SpotReadings readings =
                SpotReadings.none().with(SiteCheck.HEAT_UP_MAXIMUM, highest).with(SiteCheck.TYRE_GAUGE, 0.5e5);
        InstalledCheck check = InstalledCheck.of(plan, readings);
        assertFalse(check.asPlanned());
        assertEquals(2, check.lines().size());
        assertEquals(1, check.differences().size());
        assertEquals(SiteCheck.TYRE_GAUGE, check.differences().get(0).check());
        assertEquals(3e5, check.differences().get(0).planned(), 1e-6);
        assertThrows(IllegalArgumentException.class, () -> InstalledCheck.of(plan, SpotReadings.none()));
    }

    /** By the gas law, at the pressure of the supply; what holds no gas is full. */
    @Test
    void aVesselIsAsFullAsItsGasLeaves() {
        HotWaterSystem house = Abbey.plain().build();
        double air = house.site().atmosphere();
        double charge = house.vessel().orElseThrow().precharge().absolute(air);
        double supply = house.supplyAtStart().absolute(air);
        assertEquals(Math.max(0, 1 - charge / supply), checks(house).get(SiteCheck.VESSEL_FULL), 1e-12, "Boyle");
        assertEquals(0, checks(house).get(SiteCheck.GAS_VALVE));
        HotWaterSystem full = Abbey.plain()
                .vessel(house.vessel().orElseThrow().toBuilder()
                        .condition(ExpansionVessel.Condition.WATERLOGGED)
                        .build())
                .build();
        assertEquals(1, checks(full).get(SiteCheck.VESSEL_FULL));
        assertEquals(1, checks(full).get(SiteCheck.GAS_VALVE));
    }

    private static double waterlogged(SpotReadings readings) {
        return Diagnosis.builder(Abbey.plain().build())
                .spots(readings)
                .threads(2)
                .build()
                .run()
                .of(Cause.VESSEL_WATERLOGGED)
                .orElseThrow()
                .weight();
    }

    /** Water at the gas valve and a heavy vessel make it suspect, gas and a light one clear it, without any log. */
    @Test
    void whatAVesselHoldsMovesTheDiagnosis() {
        SpotReadings none = SpotReadings.none().with(SiteCheck.COLD_STATIC, 3e5);
        double unseen = waterlogged(none);
        for (SiteCheck check : List.of(SiteCheck.GAS_VALVE, SiteCheck.VESSEL_FULL)) {
            double wet = waterlogged(none.with(check, 1));
            double dry = waterlogged(none.with(check, 0));
            assertTrue(wet > 2 * unseen, () -> check + ": water " + wet + ", unseen " + unseen);
            assertTrue(dry < unseen / 2, () -> check + ": gas " + dry + ", unseen " + unseen);
        }
    }

    /** Regression: water was to be caught "in these twelve hours", which nothing had named and which for a log are past. */
    @Test
    void whatToReadStandsByItself() {
        for (SiteCheck check : SiteCheck.values()) {
            assertFalse(check.words().contains("these"), check.words());
        }
    }
}
