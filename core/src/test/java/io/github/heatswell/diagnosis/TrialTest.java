package io.github.heatswell.diagnosis;

import static io.github.heatswell.units.PressureUnit.BAR;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.Balances;
import io.github.heatswell.result.Trace;
import io.github.heatswell.system.Circulation;
import io.github.heatswell.system.Draw;
import io.github.heatswell.system.DrawProfile;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.MainsPressure;
import io.github.heatswell.system.Start;
import io.github.heatswell.system.Supply;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.VolumeUnit;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a search may change, where it begins, and what cannot be simulated. */
class TrialTest {

    private static final double UNCERTAINTY = 1_000;

    private static PressureLog.Builder log(int count, IntToDoubleFunction gauge) {
        double[] times = new double[count];
        double[] readings = new double[count];
        Arrays.setAll(times, i -> 60.0 * i);
        Arrays.setAll(readings, gauge);
        return PressureLog.builder(times, readings).uncertainty(UNCERTAINTY);
    }

    private static Trial trial(HotWaterSystem.Builder house, Cause cause, PressureLog log, SpotReadings spots) {
        HotWaterSystem built = house.build();
        Hypothesis hypothesis = Hypothesis.of(built).stream()
                .filter(one -> one.cause() == cause)
                .findFirst()
                .orElseThrow();
        return new Trial(built, hypothesis, Target.fine(log, spots));
    }

    private static Trial trial(Cause cause, PressureLog log) {
        return trial(Abbey.plain(), cause, log, SpotReadings.none());
    }

    private static SpotReadings cold() {
        return SpotReadings.none().with(SiteCheck.COLD_STATIC, 3e5);
    }

    private static List<Parameter> open(Trial trial) {
        return trial.parameters().stream().map(FreeParameter::parameter).toList();
    }

    /** A search in long blocks comes by the same places as the one that follows it. */
    @Test
    void aPlaceIsSimulatedOnceHoweverOftenASearchComesBack() {
        PressureLog log = log(50, i -> 3e5).build();
        Trial trial = trial(Cause.AS_DESCRIBED, log);
        double[] here = new double[trial.parameters().size()];
        double[] there = here.clone();
        there[trial.index(Parameter.SUPPLY_PRESSURE)] = 1;
        double[] first = trial.residuals(here);
        trial.residuals(there);
        assertEquals(2, trial.target().balances().sum().runs());
        assertArrayEquals(first, trial.residuals(here));
        Trial coarse = trial.coarse();
        assertArrayEquals(trial(Cause.AS_DESCRIBED, log).coarse().residuals(there), coarse.residuals(there));
        assertEquals(2, trial.target().balances().sum().runs());
    }

    @Test
    void whatIsKnownRoughlyIsOpenWhateverTheCause() {
        List<Parameter> rough = List.of(
                Parameter.SUPPLY_PRESSURE, Parameter.HEATING_RATE, Parameter.SET_POINT, Parameter.SET_PRESSURE_SHARE);
        assertEquals(rough, open(trial(Abbey.plain(), Cause.AS_DESCRIBED, null, cold())));
        assertEquals(
                List.of(
                        Parameter.SET_POINT,
                        Parameter.SUPPLY_PRESSURE,
                        Parameter.HEATING_RATE,
                        Parameter.SET_PRESSURE_SHARE),
                open(trial(Abbey.plain(), Cause.WATER_TOO_HOT, null, cold())),
                "the cause comes first, and nothing twice");
        assertEquals(
                Parameter.START_OF_HEATING,
                open(trial(Cause.AS_DESCRIBED, log(50, i -> 3e5).build())).get(9));
    }

    /** Regression: a reseat pressure that was only assumed fixed the opening pressure, and a valve that held its reseat was accused. */
    @Test
    void anAssumedReseatPressureIsOpen() {
        HotWaterSystem house = Abbey.plain().build();
        PressureLog log = log(50, i -> 3e5).build();
        Target target = Target.fine(log, SpotReadings.none(), Set.of(Parameter.RESEAT_SHARE), DrawMarks.none());
        for (Hypothesis cause : Hypothesis.of(house)) {
            assertTrue(open(new Trial(house, cause, target)).contains(Parameter.RESEAT_SHARE), cause::toString);
        }
    }

    @Test
    void howRoughlyItIsKnown() {
        List<FreeParameter> rough =
                trial(Abbey.plain(), Cause.AS_DESCRIBED, null, cold()).parameters();
        assertEquals(0.1e5, rough.get(0).spread(), 1e-9);
        assertEquals(3e5, rough.get(0).starts().get(0), 1e-6);
        assertEquals(0.1, rough.get(1).spread());
        List<FreeParameter> rougher = trial(Abbey.plain(), Cause.AS_DESCRIBED, null, cold())
                .against(Target.fine(null, cold()).withDoubts())
                .parameters();
        assertEquals(0.15, rougher.get(1).spread(), "a second look trusts the description less");
        assertEquals(2.5, rough.get(2).spread());
        assertEquals(333.15, rough.get(2).starts().get(0), 1e-9);
        HotWaterSystem.Builder faint =
                Abbey.plain().supply(Abbey.checkValve(0.6).build());
        assertEquals(
                0.06e5,
                trial(faint, Cause.AS_DESCRIBED, null, cold())
                        .parameters()
                        .get(0)
                        .spread(),
                1e-6);
    }

    /** The beginning is the median of five; the rise begins with the first of five in a row that lie above its scatter. */
    @Test
    void theHeatUpBeginsAboutWhereThePressureRises() {
        double[] beginning = {9e5, 3.01e5, 3e5, 2.99e5, 3.02e5};
        PressureLog log = log(400, i -> i < 5 ? beginning[i] : i == 20 ? 5e5 : i < 100 ? 3e5 : 4e5)
                .build();
        Trial trial = trial(Cause.AS_DESCRIBED, log);
        FreeParameter start = trial.parameters().get(9);
        assertEquals(6_000 - 10_800, start.low(), 1e-6);
        assertEquals(6_000 + 10_800, start.high(), 1e-6);
        assertEquals(6_000, start.starts().get(0), 1e-6);
        assertEquals(3.01e5, new Circumstances(Abbey.plain().build(), log, Set.of(), DrawMarks.none()).beginning());
        FreeParameter flat = trial(Cause.AS_DESCRIBED, log(40, i -> 3e5).build())
                .parameters()
                .get(9);
        assertEquals(0, flat.starts().get(0), 1e-6, "no rise to be seen");
        PressureLog slight = log(40, i -> i < 9 ? 3e5 : 3e5 + 2_000).build();
        assertEquals(
                0,
                trial(Cause.AS_DESCRIBED, slight).parameters().get(9).starts().get(0),
                1e-6,
                "two uncertainties are not above two");
    }

    @Test
    void theStartIsKnownWhereTheBurnerWasLoggedOrTheClockRules() {
        PressureLog plain = log(50, i -> 3e5).build();
        boolean[] on = new boolean[50];
        Arrays.fill(on, 10, 20, true);
        PressureLog burner = log(50, i -> 3e5).burner(on).build();
        assertTrue(trial(Cause.AS_DESCRIBED, plain).startIsOpen());
        FreeParameter between = trial(Cause.AS_DESCRIBED, burner).parameters().get(9);
        assertEquals(540, between.low(), 1e-6, "last seen off");
        assertEquals(600, between.high(), 1e-6, "first seen on");
        Arrays.fill(on, true);
        PressureLog atOnce = log(50, i -> 3e5).burner(on).build();
        assertFalse(trial(Cause.AS_DESCRIBED, atOnce).startIsOpen(), "the run begins with the log");

        HotWaterSystem.Builder drawing = Abbey.plain()
                .draws(DrawProfile.of(
                        "a bath", List.of(Draw.ofVolume(600, 60, VolumeUnit.LITRE, 8, FlowUnit.LITRE_PER_MINUTE))));
        HotWaterSystem.Builder shut = Abbey.plain()
                .supply(Abbey.checkValve(3)
                        .addOutage(new Supply.Outage(100, 200))
                        .build());
        HotWaterSystem.Builder night = Abbey.plain()
                .supply(Abbey.checkValve(3)
                        .mains(MainsPressure.daily(
                                Map.of(0.0, Pressure.gauge(4, BAR), 20_000.0, Pressure.gauge(3, BAR))))
                        .build());
        HotWaterSystem.Builder pumped = Abbey.pumped(Circulation.builder()
                .flow(3, FlowUnit.LITRE_PER_MINUTE)
                .pump(List.of(
                        Circulation.Hours.builder().from(21_600).to(79_200).build()))
                .build());
        for (HotWaterSystem.Builder clock : List.of(drawing, shut, night, pumped)) {
            assertFalse(
                    trial(clock, Cause.AS_DESCRIBED, plain, SpotReadings.none()).startIsOpen());
            assertFalse(trial(clock, Cause.AS_DESCRIBED, burner, SpotReadings.none())
                    .startIsOpen());
        }
        HotWaterSystem.Builder always = Abbey.pumped(
                Circulation.builder().flow(3, FlowUnit.LITRE_PER_MINUTE).build());
        assertTrue(
                trial(always, Cause.AS_DESCRIBED, plain, SpotReadings.none()).startIsOpen(), "a pump without a clock");
    }

    /**
     * Regression: where the first rise came hours after the first reading, that reading was not among the starts that were tried, so
     * that a tank that was warm at first never began as it was described.
     */
    @Test
    void theRunMayBeginWithTheLogHoweverLateItRises() {
        PressureLog late = log(500, i -> i < 300 ? 3e5 : 4e5).build();
        FreeParameter start = trial(Cause.AS_DESCRIBED, late).parameters().get(9);
        assertEquals(0, start.low(), 1e-6);
        assertEquals(18_000 + 10_800, start.high(), 1e-6);
    }

    @Test
    void aForecastBeginsWhenTheHeaterCameOn() {
        boolean[] on = new boolean[200];
        Arrays.fill(on, 100, 150, true);
        Trial known = trial(Cause.AS_DESCRIBED, log(200, i -> 3e5).burner(on).build());
        Forecaster.Forecast forecast = known.forecast(new double[10]);
        assertEquals(Trace.Regime.FED, forecast.regimes().apply(99));
        assertEquals(3e5, forecast.gauge()[99], 1);
        assertEquals(Trace.Regime.SEALED, forecast.regimes().apply(110));
        assertTrue(forecast.gauge()[150] > 3.01e5);
        Trial open = trial(Cause.AS_DESCRIBED, log(200, i -> 3e5).build());
        double later = open.parameters().get(9).position(5_970);
        assertArrayEquals(
                forecast.gauge(),
                open.forecast(new double[] {0, 0, 0, 0, 0, 0, 0, 0, 0, later}).gauge(),
                3);
    }

    /** Each start of the cause twice, with the supply as the log begins, and as described with a warm tank; and once as it begins. */
    @Test
    void whereASearchBegins() {
        PressureLog log = log(50, i -> 3.15e5).build();
        List<double[]> starts = trial(Cause.RELIEF_OPENS_LOW, log).starts();
        assertEquals(2 * 10 * 2 + 1, starts.size());
        assertEquals(1.5, starts.get(0)[2], 1e-9, "one and a half times a tenth of a bar");
        assertArrayEquals(new double[] {0, 0, 1.5, 0, 0, 0, 0, 0, 0, 0, 0}, starts.get(20), 1e-9);
        assertArrayEquals(new double[] {0, 0, 0, 0, 0, 0, 0, 5.0 / 3, 0, 0, 0}, starts.get(21), 1e-9, "25 K of 15 K");
        List<Double> own = starts.subList(21, 41).stream()
                .map(start -> start[0])
                .distinct()
                .toList();
        assertEquals(10, own.size());
        assertEquals(2, starts.stream().map(start -> start[1]).distinct().count());
        PressureLog far = log(50, i -> 3.9e5).build();
        assertEquals(3, trial(Cause.AS_DESCRIBED, far).starts().get(0)[0], "no further than is likely");
        PressureLog low = log(50, i -> 1.9e5).build();
        assertEquals(-3, trial(Cause.AS_DESCRIBED, low).starts().get(0)[0]);
        FreeParameter supply = trial(Cause.SUPPLY_PRESSURE, far).parameters().get(0);
        List<double[]> free = trial(Cause.SUPPLY_PRESSURE, far).starts();
        assertEquals(3.9e5, supply.value(free.get(3)[0]), 1e-3, "as far as the log says where nothing is known");
        PressureLog none = log(50, i -> 0.05e5).build();
        double[] lowest = trial(Cause.SUPPLY_PRESSURE, none).starts().get(3);
        assertEquals(supply.low(), supply.value(lowest[0]), 1e-3);
    }

    @Test
    void aGaugeAboveTheTankShowsLess() {
        PressureLog log = log(50, i -> 3e5).build();
        Trial trial =
                trial(Abbey.plain().gaugeHeight(2, LengthUnit.METRE), Cause.AS_DESCRIBED, log, SpotReadings.none());
        // a standard deviation of the supply is 0.1 bar; densities of cold water differ by a thousandth
        assertEquals(2 * 999.7 * 9.80665 / 1e4, trial.starts().get(0)[0], 2e-3);
    }

    @Test
    void aHouseIsSimulatedOnceForEveryStartOfTheHeatUp() {
        Trial trial = trial(Cause.AS_DESCRIBED, log(50, i -> 3e5).build());
        HotWaterSystem first = trial.house(new double[] {0, 0, 0, 0, 0, 0, 0, 0, 0, 0});
        assertSame(first, trial.house(new double[] {0, 0, 0, 0, 0, 0, 0, 1, -1, 2}), "nor for another gauge");
        assertNotSame(first, trial.house(new double[] {0.1, 0, 0, 0, 0, 0, 0, 0, 0, 0}));
        double[] position = new double[10];
        trial.forecast(position);
        trial.forecast(position);
        assertEquals(new Balances(0, 1), trial.target().balances().sum());
        trial.coarse().forecast(new double[] {0.1, 0, 0, 0, 0, 0, 0, 0, 0, 0});
        assertEquals(new Balances(0, 2), trial.target().balances().sum(), "those in long blocks too");
        assertSame(trial.hypothesis(), trial.coarse().hypothesis());
    }

    @Test
    void whatIsKnownBeforehandIsAReading() {
        Trial trial = trial(Abbey.plain(), Cause.RELIEF_STUCK_OPEN, null, cold());
        double[] residuals = trial.residuals(new double[] {0.4, 0, 0.5, -0.25, 0});
        assertEquals(6, residuals.length);
        assertArrayEquals(new double[] {0, 0, 0.5, -0.25, 0}, Arrays.copyOfRange(residuals, 1, 6), "the cause is free");
        assertEquals(14, Trial.sumOfSquares(new double[] {1, -2, 3}));
    }

    @Test
    void whatCannotBeSimulatedIsWorseThanAnythingThatCan() {
        Trial trial = trial(Abbey.plain(), Cause.AS_DESCRIBED, null, cold().with(SiteCheck.HOT_TAP, 333.15));
        double[] residuals = trial.residuals(new double[] {0, 0, 1e3, 0});
        assertEquals(Target.robust(1e3), residuals[0]);
        assertEquals(Target.robust(1e3), residuals[1]);
    }

    @Test
    void positionsAreKeptWithinTheirRange() {
        Trial trial = trial(Abbey.plain(), Cause.LEAK, null, cold());
        double[] clamped = trial.clamp(new double[] {99, -99, 0.5, 99});
        FreeParameter leak = trial.parameters().get(0);
        assertArrayEquals(new double[] {leak.position(leak.high()), -5, 0.5, 5}, clamped, 1e-9);
    }

    @Test
    void numbersThatMultiplyAreSearchedOnALogarithm() {
        FreeParameter known = FreeParameter.known(Parameter.HEATING_RATE, 2, 0.1);
        assertEquals(2 * Math.exp(0.1), known.value(1), 1e-12);
        assertEquals(1, known.position(2 * Math.exp(0.1)), 1e-12);
        assertEquals(2 * Math.exp(-0.5), known.low(), 1e-12);
        assertEquals(2 * Math.exp(0.5), known.high(), 1e-12);
        assertFalse(known.isOpen());
        FreeParameter open = FreeParameter.open(Parameter.SET_POINT, 300, 320, 0.25, 0.5);
        assertEquals(List.of(305.0, 310.0), open.starts());
        assertEquals(2, open.unit(), 1e-12, "a tenth of the range");
        assertEquals(309, open.value(2), 1e-12);
        assertEquals(-2.5, open.clamp(-7), 1e-12);
        assertEquals(7.5, open.clamp(70), 1e-12);
        assertTrue(open.isOpen());
    }

    /** Regression: trials searched at a time, each without another reading, wrote to the same memory, and a diagnosis now and then broke off. */
    @Test
    void trialsWithoutAReadingShareNoMemory() {
        Trial trial = trial(Cause.AS_DESCRIBED, log(12, i -> 3e5).build());
        double[] position = new double[trial.parameters().size()];
        assertSame(trial.house(position), trial.coarse().house(position), "these follow each other");
        assertNotSame(trial.house(position), trial.without(3).house(position));
    }

    /** Cold water, water still warming and water below the element say nothing of how hot it gets; heated water does. */
    @ParameterizedTest
    @CsvSource({"10, NaN, NaN, true", "10, 40, 59, true", "14, 13, 14, true", "10, 56, 55, false", "59, 20, NaN, false"
    })
    void onlyWaterThatWasHeatedTellsHowHotItGets(double first, double second, double third, boolean hidden) {
        double[] kelvin = {273.15 + first, 273.15 + second, 273.15 + third};
        HotWaterSystem.Builder house = Abbey.plain()
                .start(Start.builder().water(first, TemperatureUnit.CELSIUS).build());
        Trial trial = trial(
                house, Cause.AS_DESCRIBED, log(3, i -> 3e5).temperature(kelvin).build(), SpotReadings.none());
        assertEquals(hidden, trial.heatHidden(new double[trial.parameters().size()]));
    }
}
