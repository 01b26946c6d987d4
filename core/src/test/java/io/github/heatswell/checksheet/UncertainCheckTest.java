package io.github.heatswell.checksheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.study.Distribution;
import io.github.heatswell.study.Houses;
import io.github.heatswell.study.UncertainHouse;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Parts;
import io.github.heatswell.units.UnitSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The tolerances of the readings. */
class UncertainCheckTest {

    private static UncertainCheck check(UncertainHouse house, int threads) {
        CheckProcedure procedure = CheckProcedure.of(house.described());
        return UncertainCheck.of(
                procedure,
                house,
                UncertainCheck.Gauge.dialFor(6e5, UnitSystem.SI),
                UncertainCheck.study(procedure, house)
                        .samples(64)
                        .threads(threads)
                        .build()
                        .run());
    }

    private static UncertainHouse withVessel() {
        return UncertainHouse.usual(Parts.lodge(4.2, 58)
                .addReliefValve(Houses.valve(7))
                .vessel(Houses.vessel(18, 4))
                .build());
    }

    /** Validation: the cold static reading is the supply's pressure, so its band is that of the supply's pressure. */
    @Test
    void theColdReadingIsAsUncertainAsTheSupply() {
        UncertainCheck check = check(withVessel(), 2);
        Distribution supply = Distribution.around(4.2e5, 0.15e5);
        UncertainCheck.ToleratedReading cold = check.readings().get(0);

        double apart = 0.02e5; // 64 evenly strewn samples: at 5 % and 95 % neighbours lie 0.01 bar apart
        assertEquals(supply.quantile(0.05), cold.low(), apart);
        assertEquals(supply.quantile(0.95), cold.high(), apart);
        assertEquals(64, cold.samples());
        assertEquals(0, check.result().failed());
        assertEquals(1, check.result().importance(0, 0), 1e-9);
        assertEquals(0, check.dripping().value());
        assertEquals(0, check.hazardous().value());
        for (UncertainCheck.ToleratedReading reading : check.readings()) {
            assertTrue(reading.low() <= reading.reading().expectedGauge());
            assertTrue(reading.high() >= reading.reading().expectedGauge());
            assertTrue(reading.agrees(reading.reading().expectedGauge()));
        }
    }

    @Test
    void threadsChangeNothing() {
        UncertainCheck one = check(withVessel(), 1);
        UncertainCheck five = check(withVessel(), 5);

        assertEquals(one.readings(), five.readings());
        assertEquals(one.sheet(), five.sheet());
    }

    @Test
    void aStiffHouseDripsWhateverItsNumbers() {
        HotWaterSystem house =
                Parts.lodge(4.2, 58).addReliefValve(Houses.valve(7)).build();
        UncertainCheck check = check(UncertainHouse.usual(house), 2);

        assertEquals(1, check.dripping().value());
        assertTrue(
                check.sampled().runs() >= 2 * check.result().completed()
                        && check.sampled().open() == 0,
                "each sample is a run with the heater off and one with it on: " + check.sampled());
        // the valve opens within 3 % (two standard deviations) of 7 bar, so nine tenths lie within 1.65/2 of that
        UncertainCheck.ToleratedReading peak = check.readings().get(CheckSheet.Reading.Kind.PEAK.ordinal());
        assertEquals(7e5 * (1 - 0.03 * 0.82), peak.low(), 0.05e5);
        assertEquals(7e5 * (1 + 0.03 * 0.82), peak.high(), 0.05e5);
    }

    @Test
    void hazardsAndFailuresAreCounted() {
        UncertainHouse house = UncertainHouse.usual(Parts.lodge(4.2, 58).build())
                .with(UncertainHouse.Quantity.SET_POINT, Distribution.between(0, 60));
        UncertainCheck check = check(house, 2);

        assertTrue(check.result().failed() > 0);
        assertTrue(check.result().firstFailure().orElseThrow().startsWith("setPoint: "));
        assertEquals(1, check.hazardous().value());
        int morning = CheckSheet.Reading.Kind.NEXT_MORNING.ordinal();
        assertEquals(0, check.result().spread(morning).answered(), "no reading where the hazard came first");
        assertTrue(check.sheet().hazard().isPresent());
    }

    /** Whoever watches a valve of 10 bar, set no lower than the expected peak, must see on the dial that it opens. */
    @ParameterizedTest
    @CsvSource({"SI, 16", "US, 160"})
    void theOpeningOfTheValveLiesOnTheDial(UnitSystem units, double dial) {
        HotWaterSystem house = Parts.lodge(4.2, 58)
                .addReliefValve(Houses.valve(10))
                .vessel(Houses.vessel(18, 4))
                .build();
        UncertainCheck check = check(UncertainHouse.usual(house), 2);
        UncertainCheck.Gauge gauge = UncertainCheck.gaugeFor(check.sheet(), house, check.result(), units);
        assertEquals(units.pressure().toSi(dial), gauge.span(), 1e-6);
        UncertainCheck read = new UncertainCheck(check.sheet(), gauge, check.result());
        read.readings().forEach(reading -> assertTrue(reading.highest() <= gauge.span(), reading.toString()));
    }

    @Test
    void theGaugeAddsInQuadrature() {
        CheckSheet.Reading reading = new CheckSheet.Reading(CheckSheet.Reading.Kind.PEAK, 5e5, 100);
        UncertainCheck.ToleratedReading tolerated =
                new UncertainCheck.ToleratedReading(reading, 4.6e5, 5.4e5, 0.3e5, 99);

        assertEquals(4.5e5, tolerated.lowest(), 1e-6); // 3, 4, 5
        assertEquals(5.5e5, tolerated.highest(), 1e-6);
        assertTrue(tolerated.agrees(4.51e5));
        assertFalse(tolerated.agrees(4.49e5));
        assertFalse(tolerated.agrees(5.51e5));
        assertEquals(0.16e5, UncertainCheck.Gauge.dialFor(9e5, UnitSystem.SI).error(), 1e-6);
        assertEquals(
                16e5, UncertainCheck.Gauge.dialFor(10.3e5, UnitSystem.SI).span(), "a reading must lie on the dial");
        assertEquals(40e5, UncertainCheck.Gauge.dialFor(30e5, UnitSystem.SI).span());
        assertThrows(IllegalArgumentException.class, () -> new UncertainCheck.Gauge(0, 1.6));
        assertThrows(IllegalArgumentException.class, () -> new UncertainCheck.Gauge(10e5, Double.NaN));
    }
}
