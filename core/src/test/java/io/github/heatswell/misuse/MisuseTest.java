package io.github.heatswell.misuse;

import static io.github.heatswell.units.LengthUnit.METRE;
import static io.github.heatswell.units.PressureUnit.BAR;
import static io.github.heatswell.units.TemperatureUnit.CELSIUS;
import static io.github.heatswell.units.VolumeUnit.LITRE;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import io.github.heatswell.ageing.Outlook;
import io.github.heatswell.assessment.Findings;
import io.github.heatswell.checksheet.CheckProcedure;
import io.github.heatswell.checksheet.UncertainCheck;
import io.github.heatswell.diagnosis.Cause;
import io.github.heatswell.diagnosis.Diagnosis;
import io.github.heatswell.diagnosis.PressureLog;
import io.github.heatswell.diagnosis.SiteCheck;
import io.github.heatswell.diagnosis.SpotReadings;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.simulation.Simulation;
import io.github.heatswell.sizing.PeakSurvey;
import io.github.heatswell.sizing.SizingTarget;
import io.github.heatswell.sizing.VesselSizing;
import io.github.heatswell.study.Distribution;
import io.github.heatswell.study.HouseDay;
import io.github.heatswell.study.Study;
import io.github.heatswell.study.StudyResult;
import io.github.heatswell.study.UncertainHouse;
import io.github.heatswell.system.Draw;
import io.github.heatswell.system.DrawProfile;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Leak;
import io.github.heatswell.system.MainsPressure;
import io.github.heatswell.system.Material;
import io.github.heatswell.system.Parts;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.Supply;
import io.github.heatswell.system.SupplyTemperature;
import io.github.heatswell.system.Tank;
import io.github.heatswell.units.EnergyUnit;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.TemperatureDifferenceUnit;
import io.github.heatswell.units.UnitSystem;
import io.github.heatswell.water.GibbsPolynomialWater;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What a programmer new to the library gets wrong: it fails where the mistake is, not later, with a sentence that names the
 * field and says what is allowed or what to write. A null names the argument.
 */
class MisuseTest {

    private static final HotWaterSystem LODGE = Parts.lodge(4.2, 60).build();
    private static final Duration HOUR = Duration.ofHours(1);

    /** A mistake, what is thrown and what it says. */
    private record Misuse(Executable mistake, Class<? extends RuntimeException> thrown, String message) {
        @Override
        public String toString() {
            return message;
        }
    }

    private static Misuse refused(Executable mistake, String message) {
        return new Misuse(mistake, IllegalArgumentException.class, message);
    }

    private static Misuse missing(Executable mistake, String message) {
        return new Misuse(mistake, NullPointerException.class, message);
    }

    @ParameterizedTest
    @MethodSource({"ofUnitsAndParts", "ofWholes", "ofRuns", "ofSizing", "ofStudies", "ofChecksAndYears", "ofDiagnosis"})
    void failsAtOnceAndSaysWhatIsRight(Misuse misuse) {
        RuntimeException thrown = assertThrows(misuse.thrown(), misuse.mistake());
        assertEquals(misuse.message(), thrown.getMessage());
    }

    static Stream<Misuse> ofUnitsAndParts() {
        return Stream.of(
                missing(() -> Pressure.gauge(4.2, null), "a pressure: its unit"),
                refused(() -> Pressure.gauge(Double.NaN, BAR), "a pressure must be a finite number, not NaN"),
                missing(() -> Tank.builder().volume(200, null), "volume: its unit"),
                refused(
                        () -> Tank.builder().volume(Double.NaN, LITRE),
                        "volume: NaN L is outside the allowed range, 1 L to 20000 L"),
                refused(
                        () -> Tank.builder().volume(-200, LITRE),
                        "volume: -200 L is outside the allowed range, 1 L to 20000 L"),
                refused(() -> Tank.builder().layers(0).build(), "layers: 0 is outside the allowed range, 1 to 50"),
                missing(() -> Supply.builder().pressure(null), "pressure"),
                missing(() -> ExpansionVessel.builder().precharge(null), "precharge"),
                missing(() -> ReliefValve.builder().setPressure(null), "setPressure"),
                missing(() -> ReliefValve.builder().name(null), "name"),
                missing(() -> Leak.of(1, FlowUnit.LITRE_PER_MINUTE, null), "at"),
                refused(
                        () -> SupplyTemperature.constant(10, CELSIUS)
                                .warmerBy(Double.NaN, TemperatureDifferenceUnit.KELVIN),
                        "water: NaN K is not a finite difference"),
                refused(
                        () -> new Supply.Outage(60, 30),
                        "shutOff: from 60.0 s to 30.0 s does not run forward from the start of the run"),
                missing(() -> Draw.ofVolume(0, 10, null, 5, FlowUnit.LITRE_PER_MINUTE), "volume: its unit"),
                missing(() -> Draw.ofHeat(0, 1, EnergyUnit.MEGAJOULE, 5, null), "flow: its unit"),
                refused(
                        () -> Draw.ofVolume(100_000, 1, LITRE, 5, FlowUnit.LITRE_PER_MINUTE),
                        "at: 27.7778 h is outside the allowed range, 00:00 to 23:59:59"),
                refused(
                        () -> Draw.ofVolume(0, -1, LITRE, 5, FlowUnit.LITRE_PER_MINUTE),
                        "volume: -1 L is outside the allowed range, above 0 and drawn within a day"),
                missing(() -> MainsPressure.constant(Pressure.gauge(4, BAR)).raisedBy(3, null), "difference: its unit"),
                refused(
                        () -> new Material("x", Double.NaN, 0.3, 12e-6),
                        "youngsModulus: NaN Pa is outside the allowed range, above 0 and finite"),
                refused(
                        () -> new Material("x", 1e9, 0.6, 12e-6),
                        "poissonRatio: 0.6 is outside the allowed range, 0 to 0.5"),
                refused(
                        () -> new Material("x", 1e9, 0.3, 1),
                        "linearExpansion: 1.0 1/K is outside the allowed range, 0 to less than 0.01 1/K"),
                refused(
                        () -> ReliefValve.builder().name("T&P\u0007"),
                        "name: must have 1 to 60 visible characters and not be blank"),
                missing(() -> DrawProfile.of("mine", Arrays.asList((Draw) null)), "draws: one of them"),
                refused(
                        () -> GibbsPolynomialWater.instance().density(60, 5e5),
                        "temperature is 60.0 K, allowed is 273.15 to 423.15 K"));
    }

    static Stream<Misuse> ofWholes() {
        return Stream.of(
                refused(
                        () -> Tank.builder().volume(200, LITRE).build(),
                        "shell: is missing; standingLoss: is missing; workingPressure: is missing"),
                refused(
                        () -> HotWaterSystem.builder().build(),
                        "site: is missing; supply: is missing; tank: is missing; heater: is missing"),
                missing(() -> HotWaterSystem.builder().vessel(null), "vessel"),
                refused(
                        () -> HotWaterSystem.builder().gaugeHeight(100, METRE),
                        "gaugeHeight: 100 m is outside the allowed range, -30 m to 30 m"),
                missing(() -> Findings.of((HotWaterSystem) null), "house"),
                missing(() -> Findings.of((RunSummary) null), "run"));
    }

    static Stream<Misuse> ofRuns() {
        Simulation run = Simulation.of(LODGE, HOUR);
        return Stream.of(
                missing(() -> Simulation.of(null, HOUR), "system"),
                missing(() -> Simulation.of(LODGE, null), "duration"),
                refused(
                        () -> Simulation.of(LODGE, Duration.ZERO),
                        "duration: PT0S is outside the allowed range, above 0 s to 100 years"),
                missing(() -> run.sampledEvery(null), "sample"),
                refused(
                        () -> run.sampledEvery(Duration.ofMillis(1)),
                        "sample: PT0.001S is outside the allowed range, 1 s to the duration of the run, PT1H"),
                missing(() -> run.stream(null), "listener"),
                missing(() -> run.run().first(null), "kind"),
                missing(() -> run.run().trace().values(null), "channel"));
    }

    static Stream<Misuse> ofSizing() {
        SizingTarget target = SizingTarget.builder(LODGE)
                .vesselRating(Pressure.gauge(10, BAR))
                .build();
        return Stream.of(
                missing(() -> SizingTarget.builder(null), "system"),
                missing(() -> SizingTarget.builder(LODGE).own(null), "limit"),
                refused(
                        () -> SizingTarget.builder(LODGE).build(),
                        "vessel-rating: is missing; give vesselRating(...), the maximum working pressure on the"
                                + " vessel's plate"),
                refused(
                        () -> VesselSizing.builder(LODGE, target).build(),
                        "precharge: is missing; give the rule it is set by, such as Precharge.STATIC"),
                refused(
                        () -> VesselSizing.builder(LODGE, target).sizes(List.of()),
                        "sizes: there must be at least one"),
                refused(
                        () -> VesselSizing.builder(LODGE, target).alsoRun(Duration.ZERO),
                        "duration: PT0S must be above 0"),
                refused(
                        () -> PeakSurvey.builder(LODGE).build(),
                        "vessel: is missing; give vesselLike(...), a vessel of the type to look for"),
                refused(
                        () -> PeakSurvey.builder(LODGE).volumes(LITRE, 0.05, 12),
                        "volumes: 0.05 L is outside the allowed range, 0.1 L to 5000 L"),
                missing(() -> PeakSurvey.builder(LODGE).volumes(null, 8, 12), "volumes: its unit"),
                missing(() -> PeakSurvey.builder(LODGE).precharges(BAR, (double[]) null), "precharges"));
    }

    static Stream<Misuse> ofStudies() {
        Study.Builder study =
                Study.builder().input("supply", Distribution.between(0, 1)).outputs(List.of("peak"));
        UncertainHouse house = UncertainHouse.usual(LODGE);
        return Stream.of(
                refused(
                        study::build,
                        "model: is missing; say what turns a value of each input into an answer for each output"),
                missing(() -> Study.builder().input(null, Distribution.between(0, 1)), "name"),
                refused(() -> Study.builder().samples(10), "samples: 10 is outside the allowed range, 16 to 1000000"),
                refused(
                        () -> Distribution.between(2, 1),
                        "low: 2.0 must be below high, 1.0, and the two a finite distance apart"),
                refused(() -> HouseDay.of(values -> LODGE, Duration.ZERO), "duration: PT0S must be above 0"),
                missing(() -> UncertainHouse.usual(null), "described"),
                refused(
                        () -> house.with(UncertainHouse.Quantity.PRECHARGE, Distribution.around(0, 1e4)),
                        "vessel's precharge: the house has none that could be uncertain"),
                refused(
                        () -> house.moved(new double[1]),
                        "values: 7 uncertain quantities need as many deviations, not 1"));
    }

    static Stream<Misuse> ofChecksAndYears() {
        CheckProcedure check = CheckProcedure.of(LODGE);
        return Stream.of(
                missing(() -> CheckProcedure.of(null), "house"),
                missing(() -> check.drawing(10, null), "amount: its unit"),
                refused(
                        () -> check.drawing(300, LITRE).simulate(LODGE),
                        "amount: 300 L is more than the tank holds, 230 L"),
                refused(
                        () -> new UncertainCheck.Gauge(10, 1.6),
                        "span: 0.0001 bar is outside the allowed range, 0.1 bar to 100 bar"),
                missing(() -> UncertainCheck.study(check, null), "house"),
                refused(
                        () -> UncertainCheck.of(
                                check, LODGE, UncertainCheck.Gauge.dialFor(6e5, UnitSystem.SI), unrelated()),
                        "result: these are not the samples of a check; use the study from UncertainCheck.study(...)"),
                refused(
                        () -> Outlook.builder(LODGE, HOUR).build(),
                        "vessel: the house has no intact expansion vessel, so there is no precharge to lose"),
                refused(() -> Outlook.builder(LODGE, HOUR).years(0), "years: 0 is outside the allowed range, 1 to 40"),
                refused(
                        () -> Outlook.builder(LODGE, HOUR).larger(List.of(18.0)),
                        "larger: 18000 L is outside the allowed range, 0.1 L to 5000 L"));
    }

    static Stream<Misuse> ofDiagnosis() {
        double[] times = {0, 60, 120};
        double[] gauge = {4.2e5, 4.3e5, 4.4e5};
        return Stream.of(
                missing(() -> PressureLog.builder(null, gauge), "times"),
                refused(
                        () -> PressureLog.builder(times, new double[2]),
                        "a log of 3 times needs as many pressures, not 2"),
                refused(
                        () -> PressureLog.builder(new double[] {60, 0, 120}, gauge),
                        "reading 1: time must begin at 0 s and run forward, but here it is 60.0 s"),
                refused(
                        () -> PressureLog.builder(times, new double[] {4.2, 4.3, 4.4}),
                        "no pressure in the log reaches 0.01 bar (1000 Pa, gauge); either the unit is wrong,"
                                + " or there is nothing to diagnose"),
                refused(
                        () -> PressureLog.builder(times, gauge).temperature(15, 20, 60),
                        "no temperature of the log reaches 200.0 K; temperatures are given in K, not in degC"),
                refused(
                        () -> Diagnosis.builder(LODGE).build(),
                        "a diagnosis needs a log or at least one reading; give log(...) or spots(...)"),
                missing(() -> Diagnosis.builder(LODGE).without(null), "cause"),
                refused(
                        () -> Diagnosis.builder(LODGE).without(Cause.AS_DESCRIBED),
                        "the case that everything is as described cannot be left out"),
                missing(() -> SpotReadings.none().with(null, 4e5), "check"),
                refused(
                        () -> SpotReadings.none().with(SiteCheck.HOT_TAP, Double.NaN),
                        "a reading must be a finite number, not NaN"));
    }

    private static StudyResult unrelated() {
        return Study.builder()
                .input("one", Distribution.between(0, 1))
                .outputs(List.of("same"))
                .samples(16)
                .model(values -> values)
                .build()
                .run();
    }
}
