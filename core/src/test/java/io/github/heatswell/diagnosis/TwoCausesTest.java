package io.github.heatswell.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.system.HotWaterSystem;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hipparchus.random.RandomGenerator;
import org.hipparchus.random.Well19937c;
import org.junit.jupiter.api.Test;

/** Regression: two faults at once are found where no single one explains a log; the build looks at one house and the causes nearest to it. */
class TwoCausesTest {

    private static final Set<Cause> LOOKED_AT = EnumSet.of(
            Cause.AS_DESCRIBED,
            Cause.LEAK,
            Cause.RELIEF_SEAT_WEEPS,
            Cause.VESSEL_WATERLOGGED,
            Cause.REDUCING_VALVE_CREEPS);

    private static Hypothesis cause(HotWaterSystem house, Cause cause) {
        return Hypothesis.of(house).stream()
                .filter(one -> one.cause() == cause)
                .findFirst()
                .orElseThrow();
    }

    /** A house whose log tells: many that have two faults show no more than one of them would. */
    @Test
    void twoFaultsAtOnceAreFoundWhereNoSingleOneExplainsALog() {
        RandomGenerator random = new Well19937c(400);
        HotWaterSystem house = KnownTruth.house(random);
        Hypothesis truth = cause(house, Cause.VESSEL_WATERLOGGED).and(cause(house, Cause.REDUCING_VALVE_CREEPS));
        KnownTruth known = KnownTruth.of(house, truth, random);
        Diagnosis.Builder diagnosis = Diagnosis.builder(house).log(known.log());
        EnumSet.complementOf(EnumSet.copyOf(LOOKED_AT)).forEach(diagnosis::without);
        DiagnosisResult found = diagnosis.build().run();
        HypothesisFit best = found.best();
        assertTrue(best.blames(Cause.VESSEL_WATERLOGGED) && best.blames(Cause.REDUCING_VALVE_CREEPS), best::inWords);
        assertFalse(found.misfit());
        for (Cause one : List.of(Cause.VESSEL_WATERLOGGED, Cause.REDUCING_VALVE_CREEPS)) {
            assertTrue(found.of(one).orElseThrow().criterion() > DiagnosisResult.ALIKE, "alone it is not enough");
        }
        assertTrue(best.estimate(Parameter.SEAT_LEAKAGE).orElseThrow().contains(known.values()[0]), best::toString);
    }

    /** Whatever no single cause explains: faults of one thing exclude each other, and the house as described is no fault. */
    @Test
    void twoCausesAreOfTwoThings() {
        HotWaterSystem house = KnownTruth.house(new Well19937c(102));
        Hypothesis small = cause(house, Cause.VESSEL_SMALL);
        assertTrue(small.goesWith(cause(house, Cause.SUPPLY_PRESSURE)));
        assertTrue(small.goesWith(cause(house, Cause.RELIEF_OPENS_LOW)));
        assertFalse(small.goesWith(cause(house, Cause.PRECHARGE_LOW)), "of one vessel");
        assertFalse(small.goesWith(cause(house, Cause.AS_DESCRIBED)), "no fault");
        assertFalse(
                cause(house, Cause.RELIEF_SEAT_WEEPS).goesWith(cause(house, Cause.RELIEF_OPENS_LOW)), "of one valve");
    }

    @Test
    void bothAreDoneToTheHouse() {
        HotWaterSystem house = KnownTruth.house(new Well19937c(102));
        Hypothesis both = cause(house, Cause.VESSEL_SMALL).and(cause(house, Cause.WATER_TOO_HOT));
        HotWaterSystem changed = both.house(house, both.open(), new double[] {2e-3, 350});
        assertEquals(2e-3, changed.vessel().orElseThrow().volume(), 1e-12);
        assertEquals(350, changed.heater().setPoint(), 1e-9);
        assertEquals(2, both.numbers());
        assertEquals(Optional.of(Cause.WATER_TOO_HOT), both.also().map(Hypothesis::cause));
    }
}
