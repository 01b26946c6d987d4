package io.github.heatswell.scenarios.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import io.github.heatswell.diagnosis.Cause;
import io.github.heatswell.diagnosis.Diagnosis;
import io.github.heatswell.diagnosis.DiagnosisResult;
import io.github.heatswell.diagnosis.Parameter;
import io.github.heatswell.diagnosis.PressureLog;
import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Trace;
import io.github.heatswell.simulation.Simulation;
import io.github.heatswell.system.Draw;
import io.github.heatswell.system.DrawProfile;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.ReliefFault;
import io.github.heatswell.system.Start;
import io.github.heatswell.units.DurationUnit;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.VolumeUnit;
import java.time.Duration;
import java.util.EnumSet;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Regression: a log of a sound bundled house in which 25 L are drawn during the heat-up, of which the description says nothing. The fall
 * to the supply's pressure was taken for a valve that opens low and closes late, with 100 %.
 */
class DrawnLogDiagnosisTest {

    private static final int DRAWN_AT = 75;

    private static PressureLog log(HotWaterSystem house, int minutes, boolean noted) {
        Draw bath = Draw.builder()
                .timeOfDay(DRAWN_AT, DurationUnit.MINUTE)
                .volume(25, VolumeUnit.LITRE)
                .flow(8, FlowUnit.LITRE_PER_MINUTE)
                .build();
        Trace trace = Simulation.of(
                        house.toBuilder()
                                .draws(DrawProfile.of("untold", List.of(bath)))
                                .build(),
                        Duration.ofHours(3))
                .sampledEvery(Duration.ofMinutes(1))
                .run()
                .trace();
        int count = 180 / minutes;
        double[] times = new double[count];
        double[] gauge = new double[count];
        boolean[] drawn = new boolean[count];
        for (int i = 0; i < count; i++) {
            times[i] = 60.0 * minutes * i;
            gauge[i] = 1e3 * Math.rint(trace.value(Channel.GAUGE_READING, minutes * i) / 1e3);
            drawn[i] = noted && minutes * i > DRAWN_AT && minutes * (i - 1) <= DRAWN_AT;
        }
        return PressureLog.builder(times, gauge).build().drawn(drawn);
    }

    @ParameterizedTest
    @CsvSource({"3, false, 0.003", "10, true, 0.01"})
    void aDrawThatTheDescriptionLeavesOutAccusesNothing(int minutes, boolean noted, double within) {
        HotWaterSystem house = Catalogue.read("mill-cottage-worn-seat").system().toBuilder()
                .changeReliefValves(v -> v.toBuilder().fault(ReliefFault.none()).build())
                .draws(DrawProfile.none())
                .start(Start.builder().build())
                .build();
        Diagnosis.Builder diagnosis = Diagnosis.builder(house).log(log(house, minutes, noted));
        EnumSet.complementOf(EnumSet.of(Cause.AS_DESCRIBED, Cause.RELIEF_OPENS_LOW, Cause.LEAK))
                .forEach(diagnosis::without);
        DiagnosisResult found = diagnosis.build().run();
        assertEquals(Cause.AS_DESCRIBED, found.best().cause(), found.fits()::toString);
        assertFalse(found.misfit());
        double drawn =
                found.best().estimate(Parameter.DRAWN_FIRST).orElseThrow().value();
        assertEquals(0.025, drawn, within, "what was drawn");
    }
}
