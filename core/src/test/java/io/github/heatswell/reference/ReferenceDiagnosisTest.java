package io.github.heatswell.reference;

import static io.github.heatswell.units.PressureUnit.BAR;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.diagnosis.Cause;
import io.github.heatswell.diagnosis.Diagnosis;
import io.github.heatswell.diagnosis.DiagnosisResult;
import io.github.heatswell.diagnosis.HypothesisFit;
import io.github.heatswell.diagnosis.Parameter;
import io.github.heatswell.diagnosis.PressureLog;
import io.github.heatswell.diagnosis.RoundTrips;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.VolumeUnit;
import io.github.heatswell.water.GibbsPolynomialWater;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.random.RandomGenerator;
import org.hipparchus.random.Well19937c;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;

/**
 * Validation: the diagnosis reads logs that the integration of the unreduced equations made, with another solver. More
 * houses are looked at with {@code -Dtest.jvm.options=-Dreference.logs=40}, and others from another {@code
 * reference.from} on.
 */
@Order(1)
class ReferenceDiagnosisTest {

    private static final int ORDINARY = 1;
    private static final int CASES = Integer.getInteger("reference.logs", ORDINARY);
    private static final int FROM = Integer.getInteger("reference.from", 5000);

    private final HotWaterSystem described = ComparisonCase.all().stream()
            .filter(one -> "vessel floats".equals(one.name()))
            .findFirst()
            .orElseThrow()
            .system();

    private HotWaterSystem with(double litres, double prechargeBar, ExpansionVessel.Condition condition) {
        ExpansionVessel vessel = ExpansionVessel.builder()
                .volume(litres, VolumeUnit.LITRE)
                .precharge(Pressure.gauge(prechargeBar, BAR))
                .acceptance(90, RatioUnit.PERCENT)
                .condition(condition)
                .build();
        return described.toBuilder().vessel(vessel).build();
    }

    /** One reading a minute, scatter of one per cent, steps of 1 psi; the heater comes on after twenty minutes. */
    private static PressureLog log(HotWaterSystem real) {
        UnreducedSystem equations = new UnreducedSystem(real, GibbsPolynomialWater.instance(), Conductances.ample());
        double atmosphere = real.site().atmosphere();
        RandomGenerator random = new Well19937c(99);
        List<Double> gauge = new ArrayList<>();
        ReferenceRun.of(equations, 8 * 3600, 60, 1e-8).samples().forEach(s -> gauge.add(s.pressure() - atmosphere));
        double[] times = new double[8 * 60];
        double[] readings = new double[times.length];
        double psi = PressureUnit.PSI.factor();
        for (int i = 0; i < times.length; i++) {
            times[i] = 60.0 * i;
            double p = gauge.get(Math.max(0, i - 20)) * (1 + 0.01 * random.nextGaussian());
            readings[i] = psi * Math.rint(p / psi);
        }
        return PressureLog.builder(times, readings).build();
    }

    private DiagnosisResult diagnosed(HotWaterSystem real) {
        return Diagnosis.builder(described).log(log(real)).build().run();
    }

    private static double[] gauge(HotWaterSystem real) {
        UnreducedSystem equations = new UnreducedSystem(real, GibbsPolynomialWater.instance(), Conductances.ample());
        double atmosphere = real.site().atmosphere();
        ReferenceRun run = ReferenceRun.of(equations, RoundTrips.HOURS * 3600, 60, 1e-8);
        return run.samples().stream()
                .mapToDouble(s -> s.pressure() - atmosphere)
                .toArray();
    }

    /** The houses and causes of the round trip, logged by the reference, counted by the same rule. */
    @Test
    void theCauseAndItsNumbersAreFound() {
        RoundTrips trips = new RoundTrips(ReferenceDiagnosisTest::gauge);
        for (int seed = FROM; seed < FROM + CASES; seed++) {
            trips.add(seed);
        }
        if (CASES > ORDINARY) {
            System.out.println(trips); // a long look is for reading
        }
        assertTrue(trips.keepsItsPromise(), trips::toString);
    }

    @Test
    void whatIsSoundIsFoundSound() {
        DiagnosisResult found = diagnosed(described);
        assertEquals(Cause.AS_DESCRIBED, found.best().cause());
        assertFalse(found.misfit());
    }

    /** A vessel that is too small and one that lost charge explain such a log to within 1 of the criterion. */
    private static void isOneOfTwo(DiagnosisResult found, Cause truth, Parameter parameter, double value) {
        HypothesisFit fit = found.of(truth).orElseThrow();
        assertTrue(fit.criterion() < 1, "the criterion, of which 6 is the limit");
        assertTrue(fit.estimate(parameter).orElseThrow().contains(value));
        assertTrue(found.alike().stream().noneMatch(one -> one.cause() == Cause.AS_DESCRIBED));
        assertFalse(found.isDecided());
        assertFalse(found.misfit());
    }

    @Test
    void aLostChargeIsFound() {
        DiagnosisResult found = diagnosed(with(24, 1.8, ExpansionVessel.Condition.SOUND));
        isOneOfTwo(found, Cause.PRECHARGE_LOW, Parameter.PRECHARGE, 1.8e5);
    }

    @Test
    void aSmallVesselIsFound() {
        DiagnosisResult found = diagnosed(with(9, 4.0, ExpansionVessel.Condition.SOUND));
        isOneOfTwo(found, Cause.VESSEL_SMALL, Parameter.VESSEL_VOLUME, 9e-3);
    }

    @Test
    void aMissingCushionIsFound() {
        DiagnosisResult found = diagnosed(described.toBuilder().withoutVessel().build());
        assertTrue(found.alike().stream().anyMatch(fit -> fit.cause() == Cause.VESSEL_ISOLATED));
        assertTrue(found.alike().stream().noneMatch(fit -> fit.cause() == Cause.AS_DESCRIBED));
        assertFalse(found.misfit());
    }
}
