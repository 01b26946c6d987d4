package io.github.heatswell.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.assessment.FaultlessHouse;
import io.github.heatswell.system.Heater;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.units.TemperatureUnit;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Water is judged by what is set alone. The limits are 30 degF (16.7 K) of stacking above the thermostat, as ANSI Z21.10.1 allows, no
 * more than the cut-out or a T&amp;P valve of 99 degC lets through, and twice the 2 K of a household thermometer; what boils in the open is
 * always beyond them.
 */
class OverheatTest {

    private static HotWaterSystem set(double celsius, double cutOut, double mixed) {
        Heater.Builder heater = FaultlessHouse.unmixed(celsius);
        if (cutOut > 0) {
            heater.cutOut(cutOut, TemperatureUnit.CELSIUS);
        }
        if (mixed > 0) {
            heater.mixedTo(mixed, TemperatureUnit.CELSIUS);
        }
        return FaultlessHouse.house().heater(heater.build()).build();
    }

    private static String judged(HotWaterSystem house, SpotReadings spots) {
        return Overheat.of(house, Optional.empty(), spots)
                .map(hot -> hot.exceeded() + (hot.isHazard() ? "" : " " + hot.level()) + (hot.boils() ? " boils" : ""))
                .orElse("");
    }

    /** Set point, cut-out (0: none), mixing valve (0: none), tap (degC). */
    @ParameterizedTest
    @CsvSource({
        "60, 0, 0, 68.9, ''",
        "60, 0, 0, 69.1, THERMOSTAT ABOVE_SET",
        "60, 0, 0, 80.6, THERMOSTAT ABOVE_SET",
        "60, 0, 0, 80.7, THERMOSTAT",
        "60, 0, 0, 98.9, THERMOSTAT",
        "60, 0, 0, 99, THERMOSTAT boils",
        "60, 0, 0, 110, THERMOSTAT boils",
        "60, 70, 0, 74.1, THERMOSTAT",
        "60, 70, 0, 73.9, THERMOSTAT ABOVE_SET",
        "80, 0, 0, 98.9, THERMOSTAT ABOVE_SET",
        "80, 0, 0, 99, THERMOSTAT boils",
        "96, 0, 0, 99, ''",
        "60, 0, 45, 53.9, ''",
        "60, 0, 45, 54.1, MIXING_VALVE ABOVE_SET",
        "60, 0, 45, 59.1, MIXING_VALVE",
        "60, 0, 45, 90, THERMOSTAT"
    })
    void aTapFarAboveWhatIsSetIsAHazard(double set, double cutOut, double mixed, double tap, String level) {
        SpotReadings spots = SpotReadings.none().with(SiteCheck.HOT_TAP, TemperatureUnit.CELSIUS.toSi(tap));
        assertEquals(level, judged(set(set, cutOut, mixed), spots));
    }

    /** What is less sure needs to be hotter. */
    @Test
    void aRoughThermometerProvesLess() {
        SpotReadings rough =
                SpotReadings.none().with(SiteCheck.HOT_TAP, new SpotReading(TemperatureUnit.CELSIUS.toSi(84), 5));
        assertEquals("THERMOSTAT ABOVE_SET", judged(set(60, 0, 0), rough));
    }

    /** One wild value of a sensor, as some send at power-on, is no hazard; the last reading, or two, are. */
    @ParameterizedTest
    @CsvSource({
        "20 40 60 60 60, ''",
        "20 40 85 41 42, LONE_READING",
        "20 40 85 85 42, HAZARD",
        "20 40 60 75 85, HAZARD",
        "20 90 60 98 105, HAZARD"
    })
    void aTankIsJudgedByItsThermometer(String celsius, String level) {
        double[] kelvin = Arrays.stream(celsius.split(" "))
                .mapToDouble(one -> TemperatureUnit.CELSIUS.toSi(Double.parseDouble(one)))
                .toArray();
        double[] times =
                IntStream.range(0, kelvin.length).mapToDouble(i -> 600.0 * i).toArray();
        double[] gauge = IntStream.range(0, kelvin.length).mapToDouble(i -> 4e5).toArray();
        Optional<Overheat> hot = Overheat.of(
                set(60, 0, 0),
                Optional.of(
                        PressureLog.builder(times, gauge).temperature(kelvin).build()),
                SpotReadings.none());
        assertEquals(level, hot.map(one -> one.level().name()).orElse(""));
        assertTrue(hot.isEmpty()
                || hot.get().reading() == Arrays.stream(kelvin).max().orElseThrow());
    }
}
