package io.github.heatswell.sizing;

import static io.github.heatswell.units.PressureUnit.BAR;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.narrative.Narrative;
import io.github.heatswell.narrative.SizeAdvice;
import io.github.heatswell.result.Balances;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.UnitSystem;
import io.github.heatswell.units.VolumeUnit;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Validation: gas of one precharge in several vessels is the gas of one vessel of their joint volume, so that what one more
 * vessel beside others has to be is what is missing of the volume for a house without any.
 */
class OneMoreVesselTest {

    private static final double PRESENT = 3e-3;
    private static final double PRECHARGE = 3.5e5;

    private static HotWaterSystem.Builder bare() {
        return Houses.cottage(3.5).withoutVessel();
    }

    private static HotWaterSystem withTwo() {
        ExpansionVessel one = PeakSurveyTest.vessel(PRESENT, PRECHARGE);
        return bare().addVessel(one).addVessel(one).build();
    }

    private static SizingResult sized(HotWaterSystem house) {
        SizingTarget target = SizingTarget.builder(house)
                .vesselRating(Pressure.gauge(10, BAR))
                .build();
        return VesselSizing.builder(house, target)
                .precharge(VesselSizing.Precharge.STATIC)
                .vesselLike(PeakSurveyTest.vessel(PRESENT, PRECHARGE))
                .build()
                .size();
    }

    @Test
    void itIsWhatIsMissingOfTheVolumeForAll() {
        double staticGauge = sized(bare().build()).supplyStatic().value();
        assertEquals(PRECHARGE, staticGauge, 1, "the precharge of those present is that of the rule");
        double all = sized(bare().build()).smallest().orElseThrow().volume();
        double more = sized(withTwo()).smallest().orElseThrow().volume();
        assertTrue(all > 2 * PRESENT, "those present are not enough: " + all);
        assertEquals(all, more + 2 * PRESENT, 1e-6 * all);
    }

    @Test
    void whereThosePresentAreEnoughNoneIsNeeded() {
        ExpansionVessel large = PeakSurveyTest.vessel(15e-3, PRECHARGE);
        HotWaterSystem house = bare().addVessel(large).addVessel(large).build();
        assertEquals(SizingResult.Outcome.NONE_NEEDED, sized(house).outcome());
    }

    /** Regression: a vessel that takes no water is named before one more is bought, and where none is needed too. */
    @Test
    void oneThatTakesNoWaterIsNamedFirst() {
        for (double litres : new double[] {2, 40}) {
            ExpansionVessel one = PeakSurveyTest.vessel(litres * 1e-3, PRECHARGE);
            HotWaterSystem house = bare().addVessel(one.toBuilder()
                            .condition(ExpansionVessel.Condition.WATERLOGGED)
                            .build())
                    .addVessel(one)
                    .build();
            String said = Narrative.of(new SizeAdvice(sized(house), house, Optional.empty()))
                    .headline()
                    .text(UnitSystem.SI);
            assertEquals("Not all the vessels work: “vessel 1” has lost its gas", said);
        }
    }

    @Test
    void theWorstPeakIsThatOfTheJointVolume() {
        Balances.Count count = new Balances.Count();
        HotWaterSystem whole =
                bare().vessel(PeakSurveyTest.vessel(2 * PRESENT, PRECHARGE)).build();
        // two solutions of the same equations
        assertEquals(VesselSizing.worstPeak(whole, count), VesselSizing.worstPeak(withTwo(), count), 1);
    }

    @Test
    void aMapIsOverTheOneAdded() {
        PeakMap beside = map(withTwo(), 4e-3, 8e-3);
        PeakMap instead = map(bare().build(), 4e-3 + 2 * PRESENT, 8e-3 + 2 * PRESENT);
        for (int i = 0; i < 2; i++) {
            // two solutions of the same equations
            assertEquals(instead.peakGauge(i, 0), beside.peakGauge(i, 0), 1);
        }
        assertTrue(beside.present().isEmpty());
    }

    private static PeakMap map(HotWaterSystem house, double... volumes) {
        return PeakSurvey.builder(house)
                .vesselLike(PeakSurveyTest.vessel(PRESENT, PRECHARGE))
                .volumes(VolumeUnit.CUBIC_METRE, volumes)
                .precharges(PressureUnit.PASCAL, PRECHARGE, PRECHARGE + 0.5e5)
                .build()
                .map();
    }
}
