package io.github.heatswell.diagnosis;

import static io.github.heatswell.units.PressureUnit.BAR;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Trace;
import io.github.heatswell.simulation.Simulation;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.VolumeUnit;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Regression: of several vessels each is suspected by itself, by its name, and the others stay as described. */
class SeveralVesselsDiagnosisTest {

    private static final double LOST = 1;

    private static HotWaterSystem described() {
        return Abbey.plain()
                .vessel(Abbey.vessel().volume(8, VolumeUnit.LITRE).build())
                .addVessel(Abbey.vessel()
                        .volume(6, VolumeUnit.LITRE)
                        .name("in the tank")
                        .build())
                .build();
    }

    private static PressureLog log(HotWaterSystem real) {
        Trace trace = Simulation.of(real, Duration.ofHours(8))
                .sampledEvery(Duration.ofMinutes(10))
                .run()
                .trace();
        double[] times = new double[trace.count()];
        double[] gauge = trace.values(Channel.GAUGE_READING);
        for (int i = 0; i < times.length; i++) {
            times[i] = trace.grid().time(i);
            gauge[i] = 1e3 * Math.rint(gauge[i] / 1e3); // a gauge that shows hundredths of a bar
        }
        return PressureLog.builder(times, gauge).build();
    }

    @Test
    void theLostPrechargeOfOneOfTwoIsAmongTheCauses() {
        HotWaterSystem house = described();
        HotWaterSystem real = house.toBuilder()
                .changeVessel(
                        1,
                        vessel -> vessel.toBuilder()
                                .precharge(Pressure.gauge(LOST, BAR))
                                .build())
                .build();
        DiagnosisResult found = Diagnosis.builder(house).log(log(real)).build().run();
        HypothesisFit fit = found.fits().stream()
                .filter(one ->
                        one.cause() == Cause.PRECHARGE_LOW && one.device().equals("in the tank"))
                .findFirst()
                .orElseThrow();
        assertTrue(fit.criterion() < 6, "it explains the readings: " + fit.criterion());
        assertTrue(fit.estimate(Parameter.PRECHARGE).orElseThrow().contains(LOST * 1e5), fit::toString);
        assertEquals(house.vessels().get(0), fit.house().vessels().get(0));
        double described = found.of(Cause.AS_DESCRIBED).orElseThrow().criterion();
        assertTrue(
                described > 3,
                "a hotter thermostat and a larger tank would explain it, both together hardly: " + described);
        assertEquals("the vessel has lost part of its precharge ('in the tank')", fit.inWords());
    }

    @Test
    void everyVesselThatWorksHasItsCauses() {
        HotWaterSystem house = described().toBuilder()
                .addVessel(Abbey.vessel()
                        .condition(ExpansionVessel.Condition.ISOLATED)
                        .build())
                .build();
        List<String> suspects = Hypothesis.of(house).stream()
                .filter(one -> one.cause() == Cause.VESSEL_WATERLOGGED)
                .map(Hypothesis::device)
                .toList();
        assertEquals(List.of("vessel 1", "in the tank"), suspects);
    }

    @Test
    void aTyreGaugeOnOneOfTwoIsRefused() {
        SpotReadings spots = SpotReadings.none().with(SiteCheck.TYRE_GAUGE, 1e5);
        Diagnosis.Builder diagnosis = Diagnosis.builder(described()).spots(spots);
        String said =
                assertThrows(IllegalArgumentException.class, diagnosis::build).getMessage();
        assertTrue(said.startsWith("tyre-gauge: the house has 2 expansion vessels"), said);
    }
}
