package io.github.heatswell.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.heatswell.assessment.FaultlessHouse;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import java.util.Arrays;
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
        "60 90 120 145 150 158, ''",
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

    @Test
    void theHighestReadingOnSiteCountsLikeOneOfALog() {
        SpotReadings spots = SpotReadings.none().with(SiteCheck.HEAT_UP_MAXIMUM, PressureUnit.PSI.toSi(181));
        assertEquals(
                Optional.of(Overpressure.Level.HAZARD),
                Overpressure.of(HOUSE, Optional.empty(), spots).map(Overpressure::level));
    }
}
