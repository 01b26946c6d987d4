package io.github.heatswell.ageing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.assessment.FaultlessHouse;
import io.github.heatswell.assessment.Findings;
import io.github.heatswell.assessment.PrechargeTarget;
import io.github.heatswell.result.Balances;
import io.github.heatswell.result.Event;
import io.github.heatswell.study.Houses;
import io.github.heatswell.study.UncertainHouse;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Parts;
import io.github.heatswell.system.Supply;
import io.github.heatswell.system.SupplyTemperature;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.TemperatureDifferenceUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.UnitSystem;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the years do to a house with an expansion vessel. */
class OutlookTest {

    private static final Duration RUN = Duration.ofHours(8);
    private static final PrechargeLoss LOSS = new PrechargeLoss(0.12);

    /** Cold water between about 5 and 15 degrees, coldest in winter. */
    private static HotWaterSystem lodge(double vesselLitres, double prechargeBar) {
        HotWaterSystem steady = Parts.lodge(4, 60)
                .addReliefValve(Houses.valve(7))
                .vessel(Houses.vessel(vesselLitres, prechargeBar))
                .build();
        Supply seasonal = steady.supply().toBuilder()
                .water(SupplyTemperature.seasonal(8, TemperatureUnit.CELSIUS, 18, TemperatureDifferenceUnit.KELVIN))
                .build();
        return steady.toBuilder().supply(seasonal).build();
    }

    /**
     * Validation: ideal gas at one temperature. With less than the precharge at which the diaphragm rests at its stop while the house
     * is cold, a vessel has no room left, so how much less changes nothing but itself: dripping does not begin because of it.
     */
    @Test
    void belowTheStopOfTheDiaphragmTheChargeChangesNothing() {
        HotWaterSystem house = lodge(18, 3);
        double air = house.site().atmosphere();
        double free = 1 - house.vessel().orElseThrow().acceptance();
        double atStop = (4e5 + air) * free - air;
        PrechargeLoss none = new PrechargeLoss(0);
        Function<Double, OutlookCourse.Month> left =
                precharge -> new Ageing(lodge(18, precharge / 1e5), RUN, 0, new Balances.Count()).month(0, 18e-3, none);
        OutlookCourse.Month just = left.apply(0.98 * atStop);
        OutlookCourse.Month less = left.apply(0.4 * atStop);

        assertTrue(atStop > 0.5e5, "a precharge that may be left");
        assertEquals(just.peakGauge(), less.peakGauge(), 1, "two solutions of the same equations");
        assertEquals(
                just.relievedDaily(),
                less.relievedDaily(),
                1e-6 * just.relievedDaily(),
                "two solutions of the same equations");
        assertTrue(left.apply(1.5 * atStop).relievedDaily() < 0.9 * just.relievedDaily());
    }

    private static Outlook.Builder known(HotWaterSystem house) {
        return Outlook.builder(house, RUN)
                .years(6)
                .fading(PrechargeLoss.Range.exactly(LOSS))
                .uncertain(List.of(), values -> house)
                .sampled(study -> study.samples(16));
    }

    /**
     * Validation: in a rigid tank without piping the vessel takes what real water grows by from 10 degrees at 4 bar to 60
     * degrees at 8 bar (densities 999.70 and 983.20 kg/m3 at one atmosphere and compressibilities 4.78e-10 and 4.45e-10
     * 1/Pa, IAPWS-95), and its gas obeys Boyle's law: the valve at pm opens once {@code p0 = dV / (V (1/ps - 1/pm))} in
     * absolute pressures. The vessel's own water is at room temperature, 998.2 kg/m3.
     */
    @Test
    void theLimitOfTheChargeFollowsFromBoyle() {
        double airPressure = 101_325;
        HotWaterSystem house = Parts.textbook(200, 10, 4, 60)
                .addReliefValve(Houses.valve(7))
                .vessel(Houses.vessel(7.8, 2.95))
                .build();
        double cold = 999.70 * (1 + 4.78e-10 * (4e5 - airPressure));
        double hot = 983.20 * (1 + 4.45e-10 * 7e5);
        double grown = 0.2 * (cold - hot) / (998.2 * (1 + 4.6e-10 * 7e5));
        double limit = grown / (0.0078 * (1 / 4e5 - 1 / (7e5 + airPressure))) - airPressure;

        OptionalDouble found = known(house).build().simulate().limit().lowestGauge();

        assertEquals(limit, found.orElseThrow(), 0.004e5); // densities to 0.01 kg/m3
    }

    /** Contract: each month has its place in the year, its charge by the law, and its own run. */
    @Test
    void monthsFollowTheLawAndTheSeasons() {
        OutlookResult found = known(lodge(12, 3.5)).build().simulate();
        List<OutlookCourse.Month> months = found.expected().months();
        assertEquals(72, months.size());
        for (OutlookCourse.Month month : months) {
            assertEquals(month.number() / 12.0, month.years(), 1 / 12.0); // somewhere in its month
            assertEquals(LOSS.left(3.5e5, 4e5, month.years()), month.prechargeGauge(), 1); // rounding
        }
        for (int month = 12; month < months.size(); month++) {
            OutlookCourse.Month before = months.get(month - 12);
            assertEquals(before.dayOfYear(), months.get(month).dayOfYear(), "months have the same days each year");
            assertTrue(
                    months.get(month).peakGauge() >= before.peakGauge() - 200, // root finding at an open valve
                    "with less charge month " + month + " peaks no lower than a year before");
        }
    }

    /** Regression: a run of an hour left out the night, in which what leaks in through a closed supply valve drips out. */
    @Test
    void aShortRunGoesOnThroughTheNight() {
        HotWaterSystem sound = lodge(12, 3.5);
        HotWaterSystem leaking = sound.toBuilder()
                .supply(FaultlessHouse.reduced(8.5, FaultlessHouse.reducer(3.5))
                        .seatLeakage(0.05, FlowUnit.LITRE_PER_MINUTE)
                        .build())
                .build();
        Outlook.Builder hour = Outlook.builder(leaking, Duration.ofHours(1))
                .years(1)
                .uncertain(List.of(), values -> leaking)
                .sampled(study -> study.samples(16));
        OutlookResult found = hour.build().simulate();
        assertTrue(found.expected().firstDripping().isPresent());
        assertEquals(1, found.onset().withinYears().value());
    }

    /** Contract: winter's water is colder and grows more. */
    @Test
    void winterPeaksHigher() {
        List<OutlookCourse.Month> months = known(lodge(12, 3.5))
                .fading(PrechargeLoss.Range.exactly(new PrechargeLoss(0)))
                .build()
                .simulate()
                .expected()
                .months();
        assertTrue(months.get(1).peakGauge() > months.get(7).peakGauge() + 500);
        assertEquals(months.get(1).peakGauge(), months.get(13).peakGauge(), "nothing fades");
    }

    /** Contract: without uncertainty the interval is the course's own first month, found without looking at all. */
    @ParameterizedTest
    @CsvSource({"12, 3.5, 1", "12, 3.5, 100", "12, 3.5, 200", "12, 3.5, 300", "9, 3.9, 40", "18, 3.5, 1"})
    void theFirstDrippingIsThatOfTheCourse(double litres, double precharge, int startDay) {
        HotWaterSystem described = lodge(litres, precharge);
        HotWaterSystem house = described.toBuilder()
                .start(described.start().toBuilder().dayOfYear(startDay).build())
                .build();
        OutlookResult found = known(house).build().simulate();
        OptionalDouble course = found.expected()
                .firstDripping()
                .map(month -> OptionalDouble.of(month.years()))
                .orElse(OptionalDouble.empty());
        assertEquals(course, found.onset().early());
        assertEquals(course, found.onset().middle());
        assertEquals(course, found.onset().late());
        assertEquals(course.isPresent() ? 1 : 0, found.onset().withinYears().value());
    }

    /** Contract: below its limit the vessel drips, above it does not, and the fading comes to it when the courses say so. */
    @Test
    void theLimitIsWhereDrippingBegins() {
        HotWaterSystem house = lodge(12, 3.5);
        OutlookResult found = known(house).build().simulate();
        double limit = found.limit().lowestGauge().orElseThrow();
        OutlookCourse.Month first = found.expected().firstDripping().orElseThrow();
        List<OutlookCourse.Month> dry = found.expected().months().stream()
                .filter(month -> !month.drips() && month.dayOfYear() == first.dayOfYear())
                .toList();
        assertTrue(first.prechargeGauge() < limit);
        assertFalse(dry.isEmpty());
        assertTrue(dry.get(dry.size() - 1).prechargeGauge() > limit - 0.12 * 4e5 / 12);
        double early = found.onset().early().orElseThrow();
        assertEquals(Math.min(1, early / 2), found.checkEvery().orElseThrow());
    }

    /** Contract: the pump is called for, and set, by the rule of the findings, and earlier only if the valve would drip before. */
    @Test
    void thePumpFollowsTheRuleOfTheFindings() {
        for (double precharge : new double[] {3.5, 4}) {
            HotWaterSystem house = lodge(12, precharge);
            OutlookResult.ChargeLimit limit = known(house).build().simulate().limit();
            PrechargeTarget rule = PrechargeTarget.of(house).orElseThrow();
            double safe = limit.lowestGauge().orElseThrow() + OutlookResult.ChargeLimit.MARGIN;
            assertTrue(safe < rule.tooLowGauge());
            assertEquals(rule.tooLowGauge(), limit.rechargeBelowGauge().orElseThrow());
            assertEquals(rule.pumpToGauge(), limit.pumpToGauge().orElseThrow());
            double low = rule.tooLowGauge();
            double years = precharge * 1e5 <= low ? 0 : LOSS.yearsUntil(precharge * 1e5, low, rule.pumpToGauge());
            assertEquals(years, limit.rechargeAfter().orElseThrow(), 1e-9); // rounding
            String advice = Findings.of(lodge(12, 3)).stream()
                    .filter(finding -> finding.id().equals("precharge-below-static"))
                    .map(finding -> finding.advice().text(UnitSystem.SI))
                    .findFirst()
                    .orElseThrow();
            assertTrue(
                    advice.contains(
                            "shows " + QuantityFormat.unicode(UnitSystem.SI).pressure(rule.pumpToGauge())),
                    advice);
        }
    }

    /** Contract: nobody is told to charge a vessel beyond a plate; the supply has to come down first. */
    @Test
    void noPumpIsCalledForBeyondAPlate() {
        HotWaterSystem house = lodge(12, 2.9);
        HotWaterSystem weak = house.toBuilder()
                .vessel(house.vessel().orElseThrow().toBuilder()
                        .rating(Pressure.gauge(3, PressureUnit.BAR))
                        .build())
                .build();
        assertFalse(PrechargeTarget.of(weak).orElseThrow().isAllowed());
        OutlookResult.ChargeLimit limit = known(weak).build().simulate().limit();
        assertEquals(OptionalDouble.empty(), limit.pumpToGauge());
        assertEquals(OptionalDouble.empty(), limit.rechargeBelowGauge());
    }

    /** Contract: more charge than is right drips at first, fades until it is right, and goes on. */
    @Test
    void anOverchargedVesselDripsAtBothEnds() {
        OutlookResult found = known(lodge(14, 6.2)).years(15).build().simulate();
        assertEquals(0, found.expected().firstDripping().orElseThrow().number());
        OutlookCourse.Month again = found.expected().drippingAgain().orElseThrow();
        assertTrue(again.prechargeGauge() < 4e5, "the second time too little gas is left");
        assertEquals(OptionalDouble.empty(), found.limit().lowestGauge());
        assertEquals(OptionalDouble.empty(), found.checkEvery());
        assertEquals(
                found.expected().months().get(0).years(), found.onset().late().orElseThrow());
    }

    /** Contract: a larger vessel drips later and less. */
    @Test
    void aLargerVesselDripsLaterAndLess() {
        OutlookResult found =
                known(lodge(12, 3.5)).larger(List.of(0.018, 0.014)).build().simulate();
        List<OutlookCourse> courses = new ArrayList<>(List.of(found.expected()));
        courses.addAll(found.larger());
        assertEquals(0.014, courses.get(1).vesselVolume());
        for (int i = 1; i < courses.size(); i++) {
            assertTrue(courses.get(i).relieved() < courses.get(i - 1).relieved());
            assertTrue(courses.get(i)
                            .firstDripping()
                            .map(OutlookCourse.Month::number)
                            .orElse(999)
                    > courses.get(i - 1)
                            .firstDripping()
                            .map(OutlookCourse.Month::number)
                            .orElse(999));
        }
        double sum = 0;
        for (int year = 0; year < 6; year++) {
            sum += found.expected().relievedInYear(year);
        }
        assertEquals(found.expected().relieved(), sum, 1e-12); // rounding
    }

    /** Contract: what is uncertain widens the interval, with the same numbers on any number of threads. */
    @Test
    void uncertaintyMakesAnInterval() {
        HotWaterSystem house = lodge(12, 3.5);
        Function<Integer, OutlookResult.DripOnset> onset = threads -> Outlook.builder(house, RUN)
                .years(10)
                .sampled(study -> study.samples(32).threads(threads))
                .build()
                .simulate()
                .onset();
        OutlookResult.DripOnset one = onset.apply(1);
        OutlookResult.DripOnset three = onset.apply(3);
        double early = one.early().orElseThrow();
        assertTrue(early < one.middle().orElseThrow());
        assertEquals(one.early(), three.early());
        assertEquals(one.middle(), three.middle());
        assertEquals(one.withinYears(), three.withinYears());
        assertEquals(
                1 + UncertainHouse.usual(house).inputs().size(),
                one.result().inputs().size());
    }

    /** Contract: a mains that rises in winter shows there, and in the peaks of no other house. */
    @Test
    void theMainsSwingsWithTheSeasons() {
        HotWaterSystem house = lodge(12, 3.5);
        List<OutlookCourse.Month> even =
                known(house).years(1).build().simulate().expected().months();
        List<OutlookCourse.Month> swung = known(house)
                .years(1)
                .mainsSwing(1e5)
                .build()
                .simulate()
                .expected()
                .months();
        int higher = 0;
        for (int month = 0; month < 12; month++) {
            higher += swung.get(month).peakGauge() > even.get(month).peakGauge() ? 1 : 0;
        }
        assertTrue(higher >= 5 && higher <= 7, "the mains is higher in half of the year, not in " + higher + " months");
    }

    /** Contract: a month in which the tank's working pressure is exceeded says so, and the charge must not fade so far. */
    @Test
    void alarmsAreKept() {
        HotWaterSystem house = Parts.lodge(4, 60).vessel(Houses.vessel(12, 3.9)).build();
        OutlookResult found = known(house).years(10).build().simulate();
        OutlookCourse.Month month = found.gravest().orElseThrow();
        assertTrue(month.isHazard(), "without a relief valve a vessel without gas is none");
        assertEquals(Event.Kind.TEST_PRESSURE_REACHED, month.alarm().orElseThrow());
        OutlookCourse.Month first = found.expected().months().stream()
                .filter(each -> each.alarm().isPresent())
                .findFirst()
                .orElseThrow();
        assertTrue(first.number() > 0 && first.peakGauge() > 10e5);
        double lowest = found.limit().lowestGauge().orElseThrow();
        assertTrue(first.prechargeGauge() < lowest, "the first alarm comes with less than the lowest charge");
        assertTrue(lowest < found.expected().months().get(first.number() - 1).prechargeGauge() + 100);
        assertFalse(found.expected().firstDripping().isPresent());
    }

    /** Contract: refusals. */
    @Test
    void refusesWhatHasNoAnswer() {
        HotWaterSystem house = lodge(12, 3.5);
        HotWaterSystem isolated = house.toBuilder()
                .vessel(house.vessel().orElseThrow().toBuilder()
                        .condition(ExpansionVessel.Condition.ISOLATED)
                        .build())
                .build();
        HotWaterSystem weakMains = house.toBuilder()
                .supply(house.supply().toBuilder()
                        .pressure(Pressure.gauge(0.4, PressureUnit.BAR))
                        .build())
                .build();
        refused(() -> Outlook.builder(house, RUN).years(0), "years: 0 is outside the allowed range, 1 to 40");
        refused(() -> Outlook.builder(house, RUN).years(41), "years: 41 is outside the allowed range, 1 to 40");
        refused(
                () -> Outlook.builder(house, RUN).mainsSwing(11e5),
                "mains-swing: 11 bar is outside the allowed range, 0 bar to 10 bar");
        refused(() -> Outlook.builder(house, Duration.ZERO), "run: PT0S must be above 0");
        refused(
                () -> Outlook.builder(isolated, RUN).build(),
                "vessel: the house has no intact expansion vessel, so" + " there is no precharge to lose");
        refused(
                () -> Outlook.builder(weakMains, RUN).mainsSwing(2e5).build(),
                "mains-swing: with it, the mains' pressure: -0.6 bar is outside the allowed range, above 0 bar to 25 bar");
    }

    private static void refused(Executable wrong, String message) {
        assertEquals(
                message, assertThrows(IllegalArgumentException.class, wrong).getMessage());
    }
}
