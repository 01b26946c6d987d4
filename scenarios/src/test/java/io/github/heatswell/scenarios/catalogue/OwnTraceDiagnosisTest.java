package io.github.heatswell.scenarios.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.diagnosis.Cause;
import io.github.heatswell.diagnosis.Diagnosis;
import io.github.heatswell.diagnosis.DiagnosisResult;
import io.github.heatswell.diagnosis.Parameter;
import io.github.heatswell.diagnosis.PressureLog;
import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Trace;
import io.github.heatswell.simulation.Simulation;
import io.github.heatswell.system.HotWaterSystem;
import java.time.Duration;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Regression: a trace of the library itself without noise, logged with temperature and burner or without, is explained by the
 * house it came from, however far apart its readings are.
 */
class OwnTraceDiagnosisTest {

    private static final int HOURS = 12;

    /** The idle minutes put before the run, so that the heater comes on at no reading and at no middle of two. */
    private static PressureLog log(HotWaterSystem house, int minutes, boolean temperature, boolean burner, int idle) {
        Trace trace = Simulation.of(house, Duration.ofHours(HOURS))
                .sampledEvery(Duration.ofMinutes(1))
                .run()
                .trace();
        int count = (HOURS * 60 + idle) / minutes;
        double[] times = new double[count];
        double[] gauge = new double[count];
        double[] kelvin = new double[count];
        boolean[] on = new boolean[count];
        for (int i = 0; i < count; i++) {
            times[i] = 60.0 * minutes * i;
            int at = Math.max(0, i * minutes - idle);
            gauge[i] = trace.value(Channel.GAUGE_READING, at);
            kelvin[i] = trace.value(Channel.WATER_TOP, at);
            on[i] = i * minutes >= idle && trace.value(Channel.HEATER_POWER, at) > 0;
        }
        PressureLog.Builder log = PressureLog.builder(times, gauge);
        if (temperature) {
            log.temperature(kelvin);
        }
        return (burner ? log.burner(on) : log).build();
    }

    @ParameterizedTest
    @CsvSource({"2, true, true, 0", "10, true, false, 0", "10, true, true, 33"})
    void theHouseAsDescribedExplainsItsOwnTrace(int minutes, boolean temperature, boolean burner, int idle) {
        HotWaterSystem described = Catalogue.read("orchard-lodge").system();
        DiagnosisResult found = Diagnosis.builder(described)
                .log(log(described, minutes, temperature, burner, idle))
                .build()
                .run();
        assertEquals(Cause.AS_DESCRIBED, found.best().cause(), found.fits()::toString);
        assertFalse(found.misfit());
        assertTrue(
                found.best().estimate(Parameter.HEATING_RATE).orElseThrow().contains(1),
                found.best().estimates()::toString);
    }
}
