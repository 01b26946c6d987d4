package io.github.heatswell.narrative;

import static io.github.heatswell.units.PressureUnit.BAR;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.ageing.Outlook;
import io.github.heatswell.ageing.OutlookResult;
import io.github.heatswell.ageing.PrechargeLoss;
import io.github.heatswell.assessment.FaultlessHouse;
import io.github.heatswell.assessment.Findings;
import io.github.heatswell.assessment.Statement;
import io.github.heatswell.checksheet.CheckProcedure;
import io.github.heatswell.checksheet.CheckSheet.Reading.Kind;
import io.github.heatswell.checksheet.UncertainCheck;
import io.github.heatswell.study.SampledPeaks;
import io.github.heatswell.study.StudyResult;
import io.github.heatswell.study.UncertainHouse;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.MainsPressure;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.time.Duration;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Regression: what is said of samples, of the years ahead and with a check sheet. */
class UncertainStoriesTest {

    private static final QuantityFormat SI = QuantityFormat.unicode(UnitSystem.SI);

    private static HotWaterSystem house(double litres, double chargeBar) {
        return FaultlessHouse.house()
                .vessel(FaultlessHouse.vessel(litres, chargeBar).build())
                .build();
    }

    /** Peaks 5.01, 5.02 ... 6 bar. */
    private static SampledPeaks.Builder hundred() {
        return SampledPeaks.builder(
                IntStream.rangeClosed(1, 100).mapToDouble(i -> 5e5 + 1e3 * i).toArray());
    }

    private static String headline(SampledPeaks.Builder sampled) {
        return Narrative.of(sampled.build()).headline().text(SI);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "12 | 32  | 12 of 32 samples (38 %, give or take 8.6 %)",
                "0  | 128 | none of the 128 samples (so in at most about 2.3 % of such houses, with 95 % confidence)",
                "50 | 50  | all 50 samples (so in at least about 94 % of such houses, with 95 % confidence)",
                "0  | 1   | none of the 1 samples (so in at most about 95 % of such houses, with 95 % confidence)",
                "999 | 1000 | 999 of 1000 samples (over 99 %, give or take 0.1 %)",
                "1000 | 1000 | all 1000 samples (so in over 99 % of such houses, with 95 % confidence)"
            })
    void aShareSaysHowSureItIs(int count, int of, String said) {
        assertEquals(said, SpreadStory.inWords(new StudyResult.Share(count, of)).text(SI));
        assertEquals(
                "A relief valve discharges in " + said,
                SpreadStory.dripping(new StudyResult.Share(count, of)).text(SI));
    }

    @Test
    void peaksAreToldWhereNoValveDischarges() {
        assertEquals("Half of the peaks are at least 5.5 bar, one in twenty at least 5.95 bar", headline(hundred()));
        assertTrue(headline(hundred().endedEarly(3)).endsWith("; a run that reaches the test pressure ends there"));
        assertEquals(
                "A relief valve discharges in 11 of 100 samples (11 %, give or take 3.1 %)",
                headline(hundred().reliefSet(5.9e5)));
        assertTrue(headline(hundred().reliefSet(5.9e5).reliefVaries(true).dripping(0))
                .startsWith("Half of the peaks"));
    }

    /** Regression: a house of which every sample passed the limit was told how its peaks lie, and not that they are too high. */
    @Test
    void theLimitIsToldFirst() {
        assertEquals(
                "The limit of 5.8 bar is exceeded in 20 of 100 samples (20 %, give or take 4 %)",
                headline(hundred().limit(5.8e5)));
        assertEquals(
                "The limit of 5.8 bar is exceeded in 20 of 100 samples (20 %, give or take 4 %), but no relief valve discharges",
                headline(hundred().limit(5.8e5).reliefSet(7e5)));
        assertEquals(
                "A relief valve discharges in 11 of 100 samples (11 %, give or take 3.1 %); the limit of 5.8 bar is exceeded in 20"
                        + " of the 100",
                headline(hundred().limit(5.8e5).reliefSet(5.9e5)));
    }

    @Test
    void samplesThatEndInAHazardAreSaidFirst() {
        Narrative ended = Narrative.of(hundred().endedEarly(3).build());
        assertTrue(ended.hazard().isPresent());
        assertEquals(
                "In 3 of 100 samples (3 %, give or take 1.7 %) the run ends in a hazard. What follows is not modelled.",
                ended.hazard().orElseThrow().text(SI));
        assertFalse(Narrative.of(hundred().build()).hazard().isPresent());
    }

    @Test
    void linesAcrossSamplesHaveNames() {
        SampledPeaks fixed = hundred().reliefSet(5.9e5).build();
        assertEquals(
                "relief valve set, 5.9 bar: reached in 11 of 100 samples",
                SpreadStory.reached(fixed, 5.9e5).text(SI));
        assertEquals(
                "relief valve set, 7 bar: reached in none of 100 samples",
                SpreadStory.reached(fixed, 7e5).text(SI));
        assertEquals(
                "working pressure, 5 bar: exceeded in all 100 samples",
                SpreadStory.exceeded(fixed, 5e5).text(SI));
        assertEquals(
                "assumed working pressure, 5.99 bar: exceeded in 1 of 100 samples",
                SpreadStory.exceeded(hundred().assumedWorkingPressure(5.99e5).build(), 5.99e5 + 1)
                        .text(SI));
        assertEquals(
                "relief valve set, about 5.9 bar: discharges in 40 of 100 samples",
                SpreadStory.reached(
                                hundred()
                                        .reliefSet(5.9e5)
                                        .reliefVaries(true)
                                        .dripping(40)
                                        .build(),
                                5.9e5)
                        .text(SI));
    }

    @Test
    void factsTellTheRangeOfThePeaks() {
        String many =
                Narrative.of(hundred().subject("A subject.").build()).facts().text(SI);
        assertTrue(
                many.startsWith("A subject. Nine in ten of the 100 samples peak between 5.05 bar and 5.95 bar. "),
                many);
        String few = Narrative.of(
                        SampledPeaks.builder(DoubleStream.of(5e5, 5.5e5, 6e5).toArray())
                                .build())
                .facts()
                .text(SI);
        assertTrue(few.startsWith("The 3 samples peak between 5 bar and 6 bar. "), few);
    }

    @Test
    void hazardsOfSamplesNameTheFirst() {
        String said = SpreadStory.hazards(2, Findings.of(Houses.bare().build())).text(SI);
        assertTrue(said.startsWith("The first of them: "), said);
        assertTrue(said.endsWith(" Each sample is judged by its own values. 2 of the runs end in it."), said);
        assertTrue(SpreadStory.hazards(0, List.of()).text(SI).endsWith("None of the runs ends in it."));
    }

    private static OutlookResult outlook(HotWaterSystem house, double yearly, int years) {
        return Outlook.builder(house, Duration.ofHours(8))
                .years(years)
                .fading(PrechargeLoss.Range.exactly(new PrechargeLoss(yearly)))
                .uncertain(List.of(), values -> house)
                .sampled(study -> study.samples(16).threads(1))
                .build()
                .simulate();
    }

    @Test
    void theYearsAreToldByTheirFirstDripping() {
        HotWaterSystem house = house(14, 4);
        OutlookResult found = outlook(house, 0.25, 6);
        Narrative told = Narrative.of(found, house);
        String answer = told.answer().text(SI);
        assertTrue(
                answer.matches(
                        "A relief valve drips from [A-Z][a-z]+ of year \\d, once the precharge is below .* bar\\..*"),
                answer);
        assertTrue(
                answer.contains("Of 16 simulated houses within the uncertainties, all start to drip within 6 years: "),
                answer);
        assertTrue(answer.contains("Check the precharge every "), answer);
        assertTrue(
                answer.contains("Pump it up to "
                        + SI.pressure(found.limit().pumpToGauge().orElseThrow()) + " when it reads less than "
                        + SI.pressure(found.limit().rechargeBelowGauge().orElseThrow())),
                answer);
        assertEquals(
                "14 L vessel, charged to 4 bar, losing 25 % of its gauge pressure a year. Each point is the worst day of its"
                        + " month.",
                told.facts().text(SI));
        assertEquals(List.of(), told.alarms());
    }

    @Test
    void aHouseThatStaysDryIsSaidToStayDry() {
        HotWaterSystem house = house(35, 4);
        String answer = Narrative.of(outlook(house, 0, 1), house).answer().text(SI);
        assertTrue(answer.startsWith("No relief valve drips within a year. "), answer);
        assertTrue(
                answer.contains("none drips within a year; with 95 % confidence, at most 17 % of such houses do."),
                answer);
    }

    @Test
    void whatIsUnderpumpedTodayIsPumpedUpFirst() {
        HotWaterSystem house = house(2, 2);
        String answer = Narrative.of(outlook(house, 0.1, 1), house).answer().text(SI);
        assertTrue(answer.startsWith("A relief valve drips with today's precharge, which is too low already."), answer);
        assertTrue(answer.contains("Today's precharge is 2 bar, but 4 bar would match the supply."), answer);
        assertFalse(answer.contains("Topping up the precharge does not help here"), answer);
    }

    @Test
    void whatDripsTodayIsNotCuredByPumping() {
        HotWaterSystem house = house(2, 4);
        String answer = Narrative.of(outlook(house, 0.1, 1), house).answer().text(SI);
        assertTrue(
                answer.startsWith("A relief valve drips with today's precharge; loss of precharge is not the cause."),
                answer);
        assertTrue(answer.contains("at least nineteen in twenty drip right away."), answer);
        assertTrue(answer.contains("Topping up the precharge does not help here"), answer);
    }

    @Test
    void theLossIsToldWithItsBasis() {
        assertEquals(
                "The vessel is assumed to lose 25 % of its gauge pressure a year. The supply keeps the gas at its pressure, so the"
                        + " precharge falls by about the same amount every year. This rate was given.",
                OutlookStory.basis(PrechargeLoss.Range.exactly(new PrechargeLoss(0.25)))
                        .text(SI));
        String usual = OutlookStory.basis(PrechargeLoss.Range.usual()).text(SI);
        assertTrue(
                usual.contains("a year (possible range 3 % to 25 %). The supply keeps the gas at its pressure"), usual);
        assertTrue(usual.contains(" every year. The basis is weak: "), usual);
        assertFalse(usual.contains("--"), usual + " names an option, which a program that asks has not");
    }

    private static List<String> remarks(HotWaterSystem house, boolean reseatVaries) {
        CheckProcedure procedure = CheckProcedure.of(house);
        UncertainHouse uncertain = UncertainHouse.usual(house);
        UncertainCheck check = UncertainCheck.of(
                procedure,
                uncertain,
                new UncertainCheck.Gauge(10e5, 1.6),
                UncertainCheck.study(procedure, uncertain)
                        .samples(16)
                        .threads(1)
                        .build()
                        .run());
        return Narrative.remarks(check, house, reseatVaries).stream()
                .map(remark -> remark.text(SI))
                .toList();
    }

    @Test
    void aWordIsSpelledAsWhereTheUnitsAreUsed() {
        assertEquals("a tire gauge", Statement.plain("a tyre gauge").text(UnitSystem.US));
        assertEquals("a tyre gauge", Statement.plain("a tyre gauge").text(UnitSystem.SI));
        assertEquals(
                "License number; two liters, labeled in color, enameled, not modeled beside its neighbors",
                UnitSystem.US.spelled(
                        "Licence number; two litres, labelled in colour, enamelled, not modelled beside its neighbours"));
        assertEquals(
                "our own judgment: at the gas valve, vapor forms",
                UnitSystem.US.spelled("our own judgement: at the gas cock, vapour forms"));
        assertEquals("like a car tire's", UnitSystem.US.spelled("like a car tyre's"));
        assertEquals("a key, tyre-gauge: 40 psi", UnitSystem.US.spelled("a key, tyre-gauge: 40 psi"));
        assertEquals(
                "An expansion tank, two expansion tanks and the expansion tank's shutoff valve, on city water",
                UnitSystem.US.spelled("A vessel, two vessels and the expansion vessel's isolating valve, on mains"));
        assertEquals(
                "an installer; have an expansion tank installed, or install one; fitted to data; the best fit",
                UnitSystem.US.spelled("a fitter; have a vessel fitted, or fit one; fitted to data; the best fit"));
        assertEquals("a shutoff valve; City water", UnitSystem.US.spelled("an isolating valve; Mains"));
        assertEquals(
                "A house open to the water main, close to city water pressure",
                UnitSystem.US.spelled("A house open to the mains, close to mains pressure"));
        assertEquals(
                "back into\nthe water main; the city water", UnitSystem.US.spelled("back into\nthe mains; the mains"));
        assertEquals("up to the city water pressure", UnitSystem.US.spelled("up to the mains pressure"));
        assertEquals(
                "Ask the local building department; run a hot faucet, not tap water, at the hose bibb or drain valve",
                UnitSystem.US.spelled(
                        "Ask the local authority; run a hot tap, not tap water, at the garden tap or drain cock"));
        String names = "vessel.volume, 'wall vessel', \"the mains\" and \u201cvessel 2\u201d, vessels[0]";
        assertEquals(names, UnitSystem.US.spelled(names));
        assertEquals("a vessel on the mains", UnitSystem.SI.spelled("a vessel on the mains"));
    }

    @Test
    void aSheetSaysForWhichHouseItIs() {
        List<String> kept = remarks(house(35, 4), false);
        assertEquals("This sheet is for the house with a vessel of 35 L, charged to 4 bar.", kept.get(0));
        assertEquals("Use a gauge that reads from 0 to 10 bar or the next usual range.", kept.get(1));
        assertTrue(
                kept.contains(
                        "No relief valve is expected to discharge after the draw. The heat-up of the cold tank before it expands more"
                                + " water, so a valve may drip then."),
                kept::toString);
        String range = kept.get(kept.size() - 1);
        assertTrue(range.startsWith("The range covers nine in ten of 16 simulated houses"), range);
        assertFalse(range.contains("reseat pressure is assumed"), range);

        List<String> low = remarks(house(35, 3), true);
        assertEquals(
                "The vessel should be charged to 4 bar; once it is, this sheet no longer applies and a new run is needed.",
                low.get(1));
        assertTrue(low.get(low.size() - 1).contains("reseat pressure is assumed, and varied from 70 % to 95 %"));

        assertTrue(
                remarks(house(35, 3.8), false).stream().noneMatch(said -> said.contains("should be charged")),
                "DIN 4807-5 by a trade page: 0.2 bar below the supply is as right, and the findings say nothing");
        HotWaterSystem driven = house(35, 3).toBuilder()
                .supply(FaultlessHouse.supply(7.3).build())
                .build();
        assertTrue(
                remarks(driven, false).stream().noneMatch(said -> said.contains("should be charged")),
                "the supply comes first");

        HotWaterSystem nightly = house(35, 4.5).toBuilder()
                .supply(FaultlessHouse.supply(4)
                        .mains(MainsPressure.daily(
                                Map.of(0.0, Pressure.gauge(4.5, BAR), 6 * 3600.0, Pressure.gauge(3.6, BAR))))
                        .build())
                .build();
        assertEquals(
                "The supply differs by the hour, from 3.6 bar to 4.5 bar. This sheet begins with 4.5 bar: begin at an hour at"
                        + " which the gauge shows that, cold and with no water running.",
                remarks(nightly, false).get(1),
                "regression: by day its owner found the gauge off before anything was heated");

        List<String> dripping = remarks(Houses.warm().build(), false);
        assertEquals("This sheet is for the house without an expansion vessel.", dripping.get(0));
        assertTrue(
                dripping.stream()
                        .anyMatch(said -> said.matches("Relief valves are expected to discharge .* between"
                                + " closing the taps and the next morning, first after .*\\.")),
                dripping::toString);
    }

    /** The supply moves every reading, then the heat-up counts, then the night; who has no vessel is not sent to one. */
    @Test
    void readingsOffTheSheetAreToldByTheFirstThatCounts() {
        assertEquals(Optional.empty(), Narrative.offSheet(Map.of(), true));
        assertEquals("The supply comes first, for", off(true, Kind.COLD_STATIC, 1, Kind.PEAK, 1));
        assertEquals("The vessel takes too little", off(true, Kind.PEAK, 1, Kind.HALF_HOUR, -1));
        assertEquals("The pressure rises further than", off(false, Kind.HALF_HOUR, 1, Kind.QUARTER_HOUR, -1));
        assertEquals("The water expands less than", off(false, Kind.QUARTER_HOUR, -1, Kind.NEXT_MORNING, 1));
        assertEquals("The pressure stayed up. The", off(true, Kind.NEXT_MORNING, 1, Kind.AFTER_DRAW, -1));
        assertEquals("Water was lost in the", off(true, Kind.NEXT_MORNING, -1, Kind.AFTER_DRAW, 1));
        assertEquals("It was read too early", off(true, Kind.AFTER_DRAW, 1, Kind.AFTER_DRAW, 1));
    }

    private static String off(boolean vessel, Kind one, double above, Kind other, double otherAbove) {
        Map<Kind, Double> off = new EnumMap<>(Kind.class);
        off.put(other, otherAbove);
        off.put(one, above);
        String said = Narrative.offSheet(off, vessel).orElseThrow().text(UnitSystem.SI);
        return String.join(" ", List.of(said.split(" ")).subList(0, 5));
    }
}
