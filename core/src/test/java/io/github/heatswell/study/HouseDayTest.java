package io.github.heatswell.study;

import static io.github.heatswell.units.PressureUnit.BAR;
import static io.github.heatswell.units.PressureUnit.PASCAL;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.assessment.Finding;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.simulation.Simulation;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Parts;
import io.github.heatswell.system.ReliefFault;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.VolumeUnit;
import io.github.heatswell.water.GibbsPolynomialWater;
import io.github.heatswell.water.LiquidWater;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A house as the model of a study. */
class HouseDayTest {

    private static final double ATMOSPHERE = 101_325;
    private static final double COLD_PRESSURE = 4e5;
    private static final double COLD = 283.15;
    private static final double TANK = 0.15;
    private static final double VESSEL = 0.012;

    /** A rigid tank without loss, and a vessel precharged to the pressure of the supply, whose gas stays at 20 degC. */
    private static HotWaterSystem rigid(double setCelsius) {
        return Parts.textbook(TANK * 1000, 10, 4, setCelsius)
                .vessel(ExpansionVessel.builder()
                        .volume(VESSEL * 1000, VolumeUnit.LITRE)
                        .precharge(Pressure.absolute(COLD_PRESSURE, PASCAL))
                        .acceptance(100, RatioUnit.PERCENT)
                        .build())
                .build();
    }

    /** The pressure at which mass is what it was: Boyle's law for the gas, the densities of water for the rest. */
    private static double peakByBoyle(double setCelsius) {
        LiquidWater water = GibbsPolynomialWater.instance();
        double mass = TANK * water.density(COLD, COLD_PRESSURE);
        double low = COLD_PRESSURE;
        double high = 15e5;
        while (high - low > 1e-3) {
            double middle = 0.5 * (low + high);
            double inVessel = VESSEL * (1 - COLD_PRESSURE / middle) * water.density(COLD, middle);
            if (TANK * water.density(setCelsius + 273.15, middle) + inVessel < mass) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low - ATMOSPHERE;
    }

    /** Validation: the peak rises with the set point alone, so its quantiles are the peaks of the set point's quantiles. */
    @Test
    void quantilesOfThePeakFollowFromBoyle() {
        Distribution setPoint = Distribution.between(45, 65);
        StudyResult result = Study.builder()
                .input("set point", setPoint)
                .outputs(HouseDay.outputs())
                .model(HouseDay.of(values -> rigid(values[0]), Duration.ofHours(3)))
                .samples(256)
                .build()
                .run();

        assertEquals(0, result.failed());
        for (double share : new double[] {0.05, 0.25, 0.5, 0.75, 0.95}) {
            double expected = peakByBoyle(setPoint.quantile(share));
            double perSample = (peakByBoyle(65) - peakByBoyle(45)) / 256; // 256 points, 1/256 apart at most twice
            assertEquals(expected, result.spread(0).quantile(share), 2 * perSample);
        }
        for (int i = 0; i < 10; i++) {
            double expected = peakByBoyle(result.input(i)[0]);
            assertEquals(expected, result.output(i, 0), 10); // 10 Pa: the solver's tolerance and the last step
        }
        assertEquals(1, result.importance(0, 0), 1e-12); // rounding
    }

    @Test
    void answersAreThoseOfTheRun() {
        HotWaterSystem dripping =
                Parts.lodge(4.2, 58).addReliefValve(Houses.valve(7)).build();
        double[] answers = HouseDay.of(values -> dripping, Duration.ofDays(1)).answers(new double[0]);
        RunResult run = Simulation.of(dripping, Duration.ofDays(1)).run();

        assertEquals(run.peak().value(), answers[HouseDay.Output.PEAK.ordinal()]);
        assertEquals(run.gauge(run.extremes().lowestPressure().value()), answers[HouseDay.Output.LOWEST.ordinal()]);
        assertEquals(run.totals().relieved(), answers[HouseDay.Output.RELIEVED.ordinal()]);
        assertTrue(answers[HouseDay.Output.RELIEVED.ordinal()] > 0);
        assertEquals(0, answers[HouseDay.Output.HAZARD.ordinal()]);
    }

    @Test
    void aHazardIsAnAnswerAndARefusalIsAFailure() {
        StudyResult result = Study.builder()
                .input("supply", Distribution.between(-4, 4))
                .outputs(HouseDay.outputs())
                .model(HouseDay.of(values -> Parts.lodge(values[0], 58).build(), Duration.ofDays(1)))
                .samples(16)
                .build()
                .run();

        assertEquals(8, result.failed());
        assertEquals("16 of 16 samples of 1 input", result.toString());
        assertTrue(result.firstFailure().orElseThrow().startsWith("pressure: -"), result.firstFailure()::toString);
        assertEquals(1, result.spread(HouseDay.Output.HAZARD.ordinal()).quantile(0)); // no relief valve, no vessel
        assertEquals(20 * 1e5, result.spread(HouseDay.Output.PEAK.ordinal()).quantile(0.5), 1); // test pressure, 1 Pa
        assertEquals(
                BAR.toSi(4), result.spread(HouseDay.Output.LOWEST.ordinal()).quantile(1), 0.5e5);
    }

    /** Contract: of a house whose plates were read, the plates say whether its valve suits its tank of 10 bar, and not the sample. */
    @Test
    void aValveIsJudgedByItsPlate() {
        HouseDay sampled = HouseDay.of(values -> valved(values[0]), Duration.ofMinutes(1));
        assertHazards(List.of("relief-set-above-tank"), sampled, 10.2);
        assertHazards(List.of(), sampled, 9.9);
        assertHazards(List.of(), sampled.withPlatesOf(valved(10)), 10.2);
        assertHazards(List.of("relief-set-above-tank"), sampled.withPlatesOf(valved(10.2)), 9.9);
        HouseDay blocked = HouseDay.of(
                values -> valved(values[0]).toBuilder()
                        .changeReliefValves(valve ->
                                valve.toBuilder().fault(ReliefFault.blocked()).build())
                        .build(),
                Duration.ofMinutes(1));
        assertHazards(List.of("relief-valve-blocked"), blocked.withPlatesOf(valved(10)), 10.2);
    }

    private static HotWaterSystem valved(double opensBar) {
        return Parts.lodge(4, 58)
                .addReliefValve(Parts.valve("a", opensBar, 8).build())
                .build();
    }

    private static void assertHazards(List<String> ids, HouseDay day, double opensBar) {
        double[] values = {opensBar};
        assertEquals(ids, day.hazards(values).stream().map(Finding::id).toList());
        assertEquals(ids.size(), day.answers(values)[HouseDay.Output.HAZARD_FOUND.ordinal()]);
    }
}
