package io.github.heatswell.diagnosis;

import static io.github.heatswell.units.PressureUnit.BAR;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.checksheet.CheckProcedure;
import io.github.heatswell.checksheet.CheckSheet;
import io.github.heatswell.result.Balances;
import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.Trace;
import io.github.heatswell.simulation.Simulation;
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
import java.time.Duration;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What a logger and the checks on site would show in a house, against runs of that house. */
class ForecasterTest {

    private static final double AIR = Abbey.plain().build().site().atmosphere();
    private static final double HOUR = 3_600;

    private static PressureLog log(int count, double interval) {
        double[] times = new double[count];
        double[] gauge = new double[count];
        Arrays.setAll(times, i -> interval * i);
        Arrays.fill(gauge, 3e5);
        return PressureLog.builder(times, gauge).build();
    }

    private static RunResult run(HotWaterSystem house, double hours) {
        return Simulation.of(house, Duration.ofSeconds((long) (hours * HOUR)))
                .sampledEvery(Duration.ofSeconds(15))
                .run();
    }

    private static Forecaster.Forecast forecast(HotWaterSystem house, PressureLog log, double start) {
        return new Forecaster(log, Set.of(), new Balances.Count()).of(house, start);
    }

    /** A log of five hours to the minute is forecast from a run four times as fine. */
    @Test
    void readingsAreThoseOfARun() {
        HotWaterSystem house = Abbey.plain().build();
        RunResult run = run(house, 5);
        Trace trace = run.trace();
        PressureLog log = log(300, 60);
        Forecaster.Forecast forecast = forecast(house, log, 0);
        for (int i = 0; i < log.count(); i++) {
            assertEquals(trace.value(Channel.GAUGE_READING, 4 * i), forecast.gauge()[i], 1, "reading " + i);
            assertEquals(trace.value(Channel.WATER_TOP, 4 * i), forecast.top()[i], 1e-4);
            assertEquals(trace.regime(4 * i), forecast.regimes()[i]);
        }
        double off = run.first(Event.Kind.HEATER_OFF).orElseThrow().time();
        double on = run.first(Event.Kind.HEATER_ON).orElseThrow().time();
        assertEquals(off - on, forecast.firstBurn(), 1e-6);
        assertTrue(forecast.spots().isEmpty());
    }

    @Test
    void beforeTheStartTheHouseIsFed() {
        HotWaterSystem house = Abbey.plain().build();
        Trace trace = run(house, 5).trace();
        Forecaster.Forecast forecast = forecast(house, log(300, 60), 1_230);
        for (int i = 0; i <= 20; i++) {
            assertEquals(trace.value(Channel.GAUGE_READING, 0), forecast.gauge()[i], 1e-9);
            assertEquals(Trace.Regime.FED, forecast.regimes()[i]);
        }
        assertEquals(Trace.Regime.SEALED, forecast.regimes()[30]);
        assertEquals(trace.value(Channel.GAUGE_READING, 4 * 100 - 82), forecast.gauge()[100], 1);
        assertEquals(trace.regime(4 * 100 - 82), forecast.regimes()[100]);
    }

    @Test
    void aStartBeforeTheLogIsPossible() {
        HotWaterSystem house = Abbey.plain().build();
        Trace trace = run(house, 7).trace();
        Forecaster forecaster = new Forecaster(log(300, 60), Set.of(), new Balances.Count());
        for (double start : new double[] {600, -1_200, -3_600, 0}) {
            Forecaster.Forecast forecast = forecaster.of(house, start);
            int shift = (int) (-start / 15);
            assertEquals(trace.value(Channel.GAUGE_READING, 4 * 40 + shift), forecast.gauge()[40], 5, "from " + start);
            assertEquals(trace.value(Channel.GAUGE_READING, 4 * 299 + shift), forecast.gauge()[299], 5);
        }
    }

    /** Sealed, giving off water, and sealed again. */
    @Test
    void whatFixesThePressureChangesWithTime() {
        HotWaterSystem house = Abbey.plain().withoutVessel().build();
        Trace trace = run(house, 5).trace();
        Forecaster.Forecast forecast = forecast(house, log(300, 60), 0);
        int same = 0;
        for (int i = 0; i < 300; i++) {
            same += trace.regime(4 * i) == forecast.regimes()[i] ? 1 : 0;
        }
        assertTrue(same >= 298, "of 300, where a sample may fall on a change: " + same);
        assertEquals(
                Set.of(Trace.Regime.SEALED, Trace.Regime.RELIEVING),
                Arrays.stream(forecast.regimes()).collect(Collectors.toSet()));
    }

    @Test
    void anotherHouseIsAnotherRun() {
        Forecaster forecaster = new Forecaster(log(300, 60), Set.of(), new Balances.Count());
        double high = forecaster.of(Abbey.plain().withoutVessel().build(), 0).gauge()[60];
        double low = forecaster.of(Abbey.plain().build(), 0).gauge()[60];
        assertTrue(high > low + 1e5);
    }

    /** Between two samples the reading lies on their straight line; a log of seconds is met by samples of a second. */
    @Test
    void uncommonIntervalsAreMet() {
        HotWaterSystem house = Abbey.plain().build();
        Trace trace = run(house, 5).trace();
        Forecaster.Forecast odd = forecast(house, log(40, 397.3), 0);
        double time = 397.3 * 20;
        int before = (int) (time / 15);
        double share = time / 15 - before;
        double line = (1 - share) * trace.value(Channel.GAUGE_READING, before)
                + share * trace.value(Channel.GAUGE_READING, before + 1);
        assertEquals(line, odd.gauge()[20], 300);
        Forecaster.Forecast seconds = forecast(house, log(31, 1), 0);
        assertEquals(trace.value(Channel.GAUGE_READING, 2), seconds.gauge()[30], 1);
        Forecaster.Forecast brief = forecast(house, log(3, 2), 0);
        assertEquals(trace.value(Channel.GAUGE_READING, 0), brief.gauge()[2], 100);
    }

    /** Within a few pascal of the pressure at that very moment, where it rises by hundreds between two samples. */
    @Test
    void betweenTwoSamplesAReadingLiesOnTheirLine() {
        HotWaterSystem house = Abbey.plain().build();
        Trace seconds = Simulation.of(house, Duration.ofHours(2))
                .sampledEvery(Duration.ofSeconds(1))
                .run()
                .trace();
        Forecaster.Forecast forecast = forecast(house, log(120, 60), 35);
        for (int i = 1; i < 120; i++) {
            assertEquals(seconds.value(Channel.GAUGE_READING, 60 * i - 35), forecast.gauge()[i], 5, "reading " + i);
            assertEquals(seconds.value(Channel.WATER_TOP, 60 * i - 35), forecast.top()[i], 1e-3);
        }
        Forecaster.Forecast later = new Forecaster(log(120, 60), Set.of(), new Balances.Count()).of(house, -3_500);
        assertEquals(seconds.value(Channel.GAUGE_READING, 3_500), later.gauge()[0], 20);
    }

    /** A log of two days is met by more than a sample a minute and a half, and its end by the end of the run. */
    @Test
    void aLongLogIsMetAsWell() {
        HotWaterSystem house = Abbey.plain().build();
        Trace minutes = Simulation.of(house, Duration.ofDays(2)).run().trace();
        Forecaster.Forecast forecast = forecast(house, log(2_881, 60), 0);
        for (int i = 0; i < 2_881; i++) {
            assertEquals(minutes.value(Channel.WATER_TOP, i), forecast.top()[i], 0.05, "reading " + i);
        }
        assertEquals(minutes.value(Channel.GAUGE_READING, 2_880), forecast.gauge()[2_880], 20);
        assertEquals(minutes.regime(2_880), forecast.regimes()[2_880]);
    }

    /** A warm tank rests first: what counts is the time from on to off. */
    @Test
    void aBurnBeginsWhenTheHeaterComesOn() {
        HotWaterSystem warm = Abbey.plain()
                .start(Start.builder().water(55.3, TemperatureUnit.CELSIUS).build())
                .build();
        RunResult run = run(warm, 5);
        double on = run.first(Event.Kind.HEATER_ON).orElseThrow().time();
        double off = run.first(Event.Kind.HEATER_OFF).orElseThrow().time();
        assertTrue(on > 1_000);
        assertEquals(off - on, forecast(warm, log(300, 60), 0).firstBurn(), 1e-6);
    }

    @Test
    void aBurnThatDoesNotEndHasNoLength() {
        assertTrue(Double.isNaN(forecast(Abbey.plain().build(), log(20, 60), 0).firstBurn()));
    }

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
}
