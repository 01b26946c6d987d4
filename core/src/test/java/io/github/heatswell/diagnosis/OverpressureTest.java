package io.github.heatswell.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.assessment.FaultlessHouse;
import io.github.heatswell.result.Balances;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Regression: readings are judged by the plates alone. Valve and tank are both marked 150 psi, as is common on US heaters; the
 * sound readings are those of a valve that opens 3 % late under a gauge that shows 2 % too much.
 */
class OverpressureTest {

    private static final HotWaterSystem HOUSE = marked(150);

    private static HotWaterSystem marked(double psi) {
        HotWaterSystem house = FaultlessHouse.house().build();
        Pressure plate = Pressure.gauge(psi, PressureUnit.PSI);
        return house.toBuilder()
                .tank(house.tank().toBuilder().workingPressure(plate).build())
                .withoutReliefValves()
                .addReliefValve(house.reliefValves().get(0).toBuilder()
                        .setPressure(plate)
                        .fullLiftPressure(Pressure.gauge(1.1 * psi, PressureUnit.PSI))
                        .reseatPressure(Pressure.gauge(0.8 * psi, PressureUnit.PSI))
                        .build())
                .build();
    }

    private static PressureLog log(String psi) {
        double[] gauge = Arrays.stream(psi.split(" "))
                .mapToDouble(one -> PressureUnit.PSI.toSi(Double.parseDouble(one)))
                .toArray();
        return PressureLog.builder(
                        IntStream.range(0, gauge.length)
                                .mapToDouble(i -> 300.0 * i)
                                .toArray(),
                        gauge)
                .build();
    }

    @ParameterizedTest
    @CsvSource({
        "60 86 116 150 172 181, HAZARD",
        "60 82 106 119 155 190, HAZARD",
        "60 90 140 190 120 118, HAZARD",
        "60 90 120 220 125 130, LONE_READING",
        "60 90 120 145 150 158, WITHIN_ERROR",
        "60 90 120 145 150 151, WITHIN_ERROR",
        "60 90 120 145 150 160, WITHIN_ERROR",
        "60 90 120 145 150 161, HAZARD",
        "60 90 120 145 150 150, ''",
        "60 62 64 66 70 72, ''"
    })
    void aReadingBeyondValveAndGaugeIsAHazard(String psi, String level) {
        assertEquals(
                level,
                Overpressure.of(HOUSE, Optional.of(log(psi)), SpotReadings.none())
                        .map(over -> over.level().name())
                        .orElse(""));
    }

    /** 150 psi, of which a sound valve may open 3 % late, and 0.4 bar for the gauge: the least reading that is a hazard. */
    @Test
    void theReadingFromWhichOnItIsAHazardIsTheOneJudgedBy() {
        double from = Overpressure.hazardFrom(HOUSE).orElseThrow();
        assertEquals(150 * 1.03 + PressureUnit.PSI.fromSi(0.4e5), PressureUnit.PSI.fromSi(from), 1e-9);
    }

    /** The same house with an expansion valve of 90 psi on its cold inlet; without one, that valve alone on a tank of 150 psi. */
    private static HotWaterSystem expansionValve(boolean guarded) {
        ReliefValve valve = ReliefValve.builder()
                .name("expansion valve")
                .kind(ReliefValve.Kind.EXPANSION_VALVE)
                .setPressure(Pressure.gauge(90, PressureUnit.PSI))
                .fullLiftPressure(Pressure.gauge(99, PressureUnit.PSI))
                .reseatPressure(Pressure.gauge(72, PressureUnit.PSI))
                .fullFlow(20, FlowUnit.LITRE_PER_MINUTE)
                .liftCharacteristic(ReliefValve.LiftCharacteristic.MODULATING)
                .build();
        HotWaterSystem.Builder house = HOUSE.toBuilder();
        return (guarded ? house : house.withoutReliefValves())
                .addReliefValve(valve)
                .build();
    }

    /**
     * An expansion valve passes its full flow 20 % above its set pressure, so up to 108 psi and the gauge's 6 psi it may be sound. Beyond
     * it has failed, which is a hazard only where nothing else guards the tank.
     */
    @ParameterizedTest
    @CsvSource({
        "60 80 95 97 98, true, WITHIN_ERROR",
        "60 80 85 88 90, true, ''",
        "60 80 100 108 112, true, ABOVE_SET",
        "60 80 100 108 112, false, ABOVE_SET",
        "60 80 100 112 116, true, GUARDED",
        "60 80 100 112 116, false, HAZARD",
        "60 80 120 150 154, true, GUARDED",
        "60 80 120 160 172, true, HAZARD"
    })
    void anExpansionValveThatFailedIsNoHazardWhereTheTankIsGuarded(String psi, boolean guarded, String level) {
        assertEquals(
                level,
                Overpressure.of(expansionValve(guarded), Optional.of(log(psi)), SpotReadings.none())
                        .map(over -> over.level().name())
                        .orElse(""));
    }

    /** The same rule for the cause: what opens late is a hazard unless it only discharges the expansion of a guarded tank. */
    @Test
    void anExpansionValveThatOpensLateIsNoHazardWhereTheTankIsGuarded() {
        assertFalse(late("expansion valve", true).isHazard());
        assertTrue(late("expansion valve", false).isHazard());
        assertTrue(late(HOUSE.reliefValves().get(0).name(), true).isHazard());
    }

    private static HypothesisFit late(String valve, boolean guarded) {
        return new HypothesisFit(
                Cause.RELIEF_OPENS_HIGH,
                valve,
                Optional.empty(),
                1,
                0,
                1,
                List.of(),
                0,
                Optional.empty(),
                List.of(),
                expansionValve(guarded),
                List.of(),
                HypothesisFit.Course.NONE);
    }

    /** Regression: a program that asked for the hazards of a diagnosis was not told of a reading beyond the plates. */
    @Test
    void hazardsOfADiagnosisNameTheReading() {
        Optional<Overpressure> over =
                Overpressure.of(HOUSE, Optional.of(log("60 86 116 150 172 181")), SpotReadings.none());
        HypothesisFit harmless = Fits.of(Cause.AS_DESCRIBED, 0, HOUSE);
        DiagnosisResult result =
                new DiagnosisResult(List.of(harmless), 6, 1_000, new Balances(0, 1), Optional.empty(), List.of());
        assertEquals(List.of(), result.hazards());
        assertEquals(
                List.of(over.orElseThrow()),
                result.with(List.of(over.orElseThrow())).hazards());
        assertEquals(List.of(), result.with(List.of(over.orElseThrow())).hazardousCauses());
        Optional<Overpressure> slight =
                Overpressure.of(expansionValve(true), Optional.of(log("60 80 100 108 112")), SpotReadings.none());
        assertEquals(Overpressure.Level.ABOVE_SET, slight.orElseThrow().level());
        assertEquals(List.of(), result.with(List.of(slight.orElseThrow())).hazards());
    }

    /** Regression: a logger of a reading a second that sends a wild value now and then called a hazard. Once a minute they may be peaks. */
    @ParameterizedTest
    @CsvSource({"1, LONE_READING", "60, HAZARD"})
    void wildValuesOfAFastLoggerAreNoHazard(double apart, Overpressure.Level level) {
        double[] times = new double[600];
        double[] gauge = new double[times.length];
        for (int i = 0; i < times.length; i++) {
            times[i] = apart * i;
            gauge[i] = PressureUnit.PSI.toSi(i % 100 == 50 ? 181 : 60);
        }
        PressureLog log = PressureLog.builder(times, gauge).build();
        assertEquals(
                Optional.of(level),
                Overpressure.of(HOUSE, Optional.of(log), SpotReadings.none()).map(Overpressure::level));
    }

    @Test
    void theHighestReadingOnSiteCountsLikeOneOfALog() {
        SpotReadings spots = SpotReadings.none().with(SiteCheck.HEAT_UP_MAXIMUM, PressureUnit.PSI.toSi(181));
        assertEquals(
                Optional.of(Overpressure.Level.HAZARD),
                Overpressure.of(HOUSE, Optional.empty(), spots).map(Overpressure::level));
    }
}
