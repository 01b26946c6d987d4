package io.github.heatswell.ageing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.narrative.Narrative;
import io.github.heatswell.study.Houses;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Parts;
import io.github.heatswell.units.UnitSystem;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The years with several vessels, each of which loses precharge from its own. */
class SeveralVesselsOutlookTest {

    private static final PrechargeLoss LOSS = new PrechargeLoss(0.12);

    private static HotWaterSystem.Builder lodge() {
        return Parts.lodge(3.5, 60).addReliefValve(Houses.valve(7));
    }

    private static OutlookResult outlook(HotWaterSystem house) {
        return Outlook.builder(house, Duration.ofHours(4))
                .years(3)
                .fading(PrechargeLoss.Range.exactly(LOSS))
                .uncertain(List.of(), values -> house)
                .sampled(study -> study.samples(16))
                .build()
                .simulate();
    }

    /** Validation: two vessels of one precharge are one of their joint volume, as long as they live. */
    @Test
    void twoHalvesAgeAsOneWhole() {
        ExpansionVessel half = Houses.vessel(6, 3.5);
        HotWaterSystem two = lodge().addVessel(half).addVessel(half).build();
        HotWaterSystem one = lodge().vessel(Houses.vessel(12, 3.5)).build();
        OutlookResult both = outlook(two);
        OutlookResult whole = outlook(one);
        for (int i = 0; i < both.expected().months().size(); i++) {
            OutlookCourse.Month expected = whole.expected().months().get(i);
            OutlookCourse.Month found = both.expected().months().get(i);
            assertEquals(expected.prechargeGauge(), found.prechargeGauge(), 1e-6);
            assertEquals(expected.peakGauge(), found.peakGauge(), 2, "two solutions of the same equations");
        }
        // the search for the limit stops within 100 Pa
        assertEquals(
                whole.limit().lowestGauge().orElseThrow(),
                both.limit().lowestGauge().orElseThrow(),
                200);
    }

    /** Validation: a vessel behind a closed valve has no part in it, whatever it loses. */
    @Test
    void oneOutOfServiceChangesNothing() {
        ExpansionVessel works = Houses.vessel(12, 3.5);
        ExpansionVessel shut = Houses.vessel(8, 1).toBuilder()
                .condition(ExpansionVessel.Condition.ISOLATED)
                .build();
        OutlookResult alone = outlook(lodge().vessel(works).build());
        OutlookResult beside = outlook(lodge().addVessel(shut).addVessel(works).build());
        assertEquals(alone.expected(), beside.expected());
        assertEquals(alone.limit(), beside.limit());
        HotWaterSystem house = lodge().addVessel(shut).addVessel(works).build();
        String first = Narrative.of(beside, house).remarks().get(0).text(UnitSystem.SI);
        assertTrue(first.contains("“vessel 1” is behind a closed isolating valve. Have that fixed first"), first);
    }

    /** Regression: the answer names each vessel and what to pump it to. */
    @Test
    void theAnswerNamesThem() {
        HotWaterSystem two = lodge().addVessel(
                        Houses.vessel(12, 3.5).toBuilder().name("on the wall").build())
                .addVessel(Houses.vessel(6, 3).toBuilder().name("in the tank").build())
                .build();
        OutlookResult found = outlook(two);
        String care = Narrative.of(found, two).remarks().stream()
                .map(remark -> remark.text(UnitSystem.SI))
                .filter(said -> said.contains("Check the precharge of every vessel every "))
                .findFirst()
                .orElseThrow();
        assertTrue(care.contains("Pump “on the wall” up to "), care);
        assertTrue(care.contains("At the same time, pump “in the tank” to "), care);
        assertTrue(
                Narrative.of(found, two).facts().text(UnitSystem.SI).startsWith("2 vessels, “on the wall” charged to"));
    }

    @Test
    void noneOfSeveralIsExchanged() {
        ExpansionVessel half = Houses.vessel(6, 3.5);
        HotWaterSystem two = lodge().addVessel(half).addVessel(half).build();
        Outlook.Builder outlook = Outlook.builder(two, Duration.ofHours(4)).larger(List.of(18e-3));
        assertTrue(assertThrows(IllegalArgumentException.class, outlook::build)
                .getMessage()
                .startsWith("larger: "));
    }
}
