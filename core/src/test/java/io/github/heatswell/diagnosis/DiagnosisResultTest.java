package io.github.heatswell.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.Balances;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.units.TemperatureUnit;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** How a result is read. */
class DiagnosisResultTest {

    static final HotWaterSystem HOUSE = Abbey.plain().build();

    static HypothesisFit fit(Cause cause, double criterion) {
        return Fits.of(cause, criterion, HOUSE);
    }

    static DiagnosisResult result(HypothesisFit... fits) {
        return new DiagnosisResult(List.of(fits), 50, Double.NaN, new Balances(0, 100), Optional.empty(), List.of());
    }

    @Test
    void whatLiesWithinTwentyToOneIsAlike() {
        DiagnosisResult close =
                result(fit(Cause.LEAK, 0), fit(Cause.TRAPPED_AIR, 5.9), fit(Cause.AS_DESCRIBED, DiagnosisResult.ALIKE));
        assertEquals(Cause.LEAK, close.best().cause());
        assertEquals(
                List.of(Cause.LEAK, Cause.TRAPPED_AIR),
                close.alike().stream().map(HypothesisFit::cause).toList());
        assertFalse(close.isDecided());
        assertTrue(result(fit(Cause.LEAK, 0), fit(Cause.AS_DESCRIBED, 6.1)).isDecided());
        assertEquals(5.9, close.of(Cause.TRAPPED_AIR).orElseThrow().criterion());
        assertTrue(close.of(Cause.WATER_TOO_HOT).isEmpty());
    }

    /**
     * Regression: a sound valve was accused as settled because the only draw had left too faint a mark. Of two looks that disagree neither
     * settles anything; where both agree, the surer is no reason to be surer.
     */
    @Test
    void whatASecondLookDoesNotConfirmIsOpen() {
        List<HypothesisFit> first = List.of(
                fit(Cause.RELIEF_OPENS_LOW, 0),
                fit(Cause.LEAK, 30),
                fit(Cause.VESSEL_SMALL, 40),
                fit(Cause.AS_DESCRIBED, 800));
        DiagnosisResult open = result(Comparison.weaker(
                        first, List.of(fit(Cause.AS_DESCRIBED, 0), fit(Cause.RELIEF_OPENS_LOW, 90), fit(Cause.LEAK, 8)))
                .toArray(HypothesisFit[]::new));
        assertFalse(open.isDecided());
        assertEquals(
                List.of(Cause.AS_DESCRIBED, Cause.RELIEF_OPENS_LOW, Cause.LEAK, Cause.VESSEL_SMALL),
                open.fits().stream().map(HypothesisFit::cause).toList());
        assertEquals(0.5, open.best().weight(), 0.01);
        assertEquals(8, open.fits().get(2).criterion());
        DiagnosisResult settled =
                result(Comparison.weaker(first, List.of(fit(Cause.RELIEF_OPENS_LOW, 0), fit(Cause.AS_DESCRIBED, 2000)))
                        .toArray(HypothesisFit[]::new));
        assertTrue(settled.isDecided());
        assertEquals(800, settled.fits().get(3).criterion());
    }

    /** A gauge read a few times fits one of so many causes by chance; a thermometer or a jug is a second kind of evidence. */
    @Test
    void aFewReadingsOfAGaugeAloneSettleNothing() {
        Evidence rise = new Evidence(Evidence.Part.RISE, Optional.empty(), 0, 8, 0, 0, false);
        Evidence jug = new Evidence(Evidence.Part.SEEN_DISCHARGE, Optional.empty(), 0, 1, 0, 0, false);
        assertFalse(ofFew(List.of(rise), 11).isDecided());
        assertTrue(ofFew(List.of(rise, jug), 11).isDecided());
        assertTrue(ofFew(List.of(rise), 12).isDecided());
    }

    private static DiagnosisResult ofFew(List<Evidence> evidence, int readings) {
        return new DiagnosisResult(
                List.of(hot(0, evidence)), readings, Double.NaN, new Balances(0, 100), Optional.empty(), List.of());
    }

    /** Fifty readings with nothing but scatter: four standard deviations of chi-square are 4 sqrt(2 * 50) = 40 above. */
    @Test
    void withoutALogTheSumOfSquaresSaysWhetherItIsExplained() {
        assertFalse(
                result(Fits.with(Cause.LEAK, 0, 90, Optional.empty(), HOUSE)).misfit());
        assertTrue(
                result(Fits.with(Cause.LEAK, 0, 90.1, Optional.empty(), HOUSE)).misfit());
    }

    @Test
    void withALogItsMisfitSaysSo() {
        Misfit serious = new Misfit(3, 0, 0, 0, 1, 100, List.of());
        Misfit slight = new Misfit(1, 0, 0, 0, 1, 100, List.of());
        assertTrue(
                result(Fits.with(Cause.LEAK, 0, 1, Optional.of(serious), HOUSE)).misfit());
        assertFalse(result(Fits.with(Cause.LEAK, 0, 1e3, Optional.of(slight), HOUSE))
                .misfit());
    }

    private static Estimate estimate(Parameter parameter) {
        return new Estimate(parameter, 2, 1, 3, Estimate.Standing.CARRIED, Optional.empty());
    }

    /** Five readings as described: nothing speaks for a hazard, and what they cannot test is not a likely cause. */
    @Test
    void readingsThatAgreeAreNoHazard() {
        SpotReadings agree = SpotReadings.none();
        for (Map.Entry<SiteCheck, Double> one : new Spots(HOUSE, new Balances.Count())
                .read(EnumSet.of(
                        SiteCheck.COLD_STATIC,
                        SiteCheck.HEAT_UP_MAXIMUM,
                        SiteCheck.NEXT_MORNING,
                        SiteCheck.CAUGHT_VOLUME,
                        SiteCheck.HOT_TAP))
                .entrySet()) {
            agree = agree.with(one.getKey(), one.getValue());
        }
        DiagnosisResult result =
                of(agree, Cause.RELIEF_OPENS_HIGH, Cause.WATER_TOO_HOT, Cause.SUPPLY_PRESSURE, Cause.RELIEF_OPENS_LOW);
        assertEquals(Cause.AS_DESCRIBED, result.best().cause());
        assertEquals(List.of(), result.hazards());
    }

    /** A tap of 80 degC and a gauge above what the relief valve is set to are evidence. */
    @Test
    void readingsThatSpeakForAHazardAreOne() {
        SpotReadings cold = SpotReadings.none().with(SiteCheck.COLD_STATIC, 3e5);
        DiagnosisResult hot = of(cold.with(SiteCheck.HOT_TAP, 353.15), Cause.WATER_TOO_HOT, Cause.LEAK);
        assertEquals(
                List.of(Cause.WATER_TOO_HOT),
                hot.hazardousCauses().stream().map(HypothesisFit::cause).toList());
    }

    private static HypothesisFit hot(double criterion, List<Evidence> evidence) {
        return new HypothesisFit(
                Cause.WATER_TOO_HOT,
                "",
                Optional.empty(),
                10,
                criterion,
                1e-3,
                List.of(),
                0,
                Optional.empty(),
                evidence,
                HOUSE,
                List.of(),
                HypothesisFit.Course.NONE);
    }

    /** Draws that nobody told and a heater's input taken wrong hide from a gauge how hot the water gets; a thermometer tells. */
    @Test
    void noGaugeRulesOutWaterThatScalds() {
        HypothesisFit best = Fits.with(Cause.AS_DESCRIBED, 0, 5, Optional.empty(), HOUSE);
        HypothesisFit left = hot(13.8, List.of());
        assertEquals(List.of(left), result(best, left).notRuledOut());
        assertEquals(List.of(), result(best, left).hazards(), "and yet it is no hazard that the readings show");
        HypothesisFit far = hot(200, List.of());
        assertEquals(List.of(far), result(best, far).notRuledOut());
        Evidence tap = new Evidence(Evidence.Part.ON_SITE, Optional.of(SiteCheck.HOT_TAP), 0, 1, 0, 0, false);
        assertEquals(List.of(), result(best, hot(6.1, List.of(tap))).notRuledOut(), "a tap was measured");
        Misfit serious = new Misfit(3, 0, 0, 0, 1, 100, List.of());
        HypothesisFit poor = Fits.with(Cause.LEAK, 0, 1, Optional.of(serious), HOUSE);
        assertEquals(List.of(far), result(poor, far).notRuledOut());
    }

    /** Regression: one reading of the cold tank silenced the caution of a thermostat 17 K too high, and a sound vessel was settled to blame. */
    @Test
    void aThermometerInColdWaterLeavesOpenWhetherItScalds() {
        Evidence cold = new Evidence(Evidence.Part.TEMPERATURES, Optional.empty(), 0, 1, 0, 0, false);
        HypothesisFit best = new HypothesisFit(
                Cause.PRECHARGE_LOW,
                "",
                Optional.empty(),
                5,
                0,
                0.9,
                List.of(new Estimate(
                        Parameter.SET_POINT, 330, 320, 340, Estimate.Standing.NOT_CARRIED, Optional.empty())),
                0,
                Optional.empty(),
                List.of(cold),
                HOUSE,
                List.of(),
                HypothesisFit.Course.NONE);
        HypothesisFit left = hot(200, List.of(cold));
        assertEquals(List.of(left), result(best, left).notRuledOut());
        assertFalse(result(best, left).isDecided());
        assertTrue(result(best, fit(Cause.LEAK, 200)).isDecided());
    }

    private static HypothesisFit opensHigh(double sumOfSquares, double weight, Estimate.Standing standing) {
        return open(Cause.RELIEF_OPENS_HIGH, sumOfSquares, weight, standing);
    }

    private static HypothesisFit open(Cause cause, double sumOfSquares, double weight, Estimate.Standing standing) {
        Estimate setPressure = new Estimate(Parameter.OPENING_PRESSURE, 8e5, 7e5, 9e5, standing, Optional.empty());
        return new HypothesisFit(
                cause,
                "valve",
                Optional.empty(),
                sumOfSquares,
                1,
                weight,
                List.of(setPressure),
                1,
                Optional.empty(),
                List.of(),
                HOUSE,
                List.of(),
                HypothesisFit.Course.NONE);
    }

    /** Almost any opening pressure does, and none does better than the description: nothing is known of the valve. */
    @Test
    void whatReadingsDoNotTestIsUnknown() {
        HypothesisFit best = Fits.with(Cause.AS_DESCRIBED, 0, 5, Optional.empty(), HOUSE);
        HypothesisFit untested = opensHigh(4.5, 0.4, Estimate.Standing.NOT_CARRIED);
        assertEquals(List.of(untested), result(best, untested).untested());
        assertEquals(List.of(), result(best, untested).hazards());
        assertEquals(List.of(untested), result(best, untested).notRuledOut());
        assertEquals(
                List.of(),
                result(best, opensHigh(4.5, 0.4, Estimate.Standing.CARRIED)).untested());
        assertEquals(
                List.of(),
                result(best, opensHigh(3.9, 0.4, Estimate.Standing.NOT_CARRIED)).untested());
    }

    /** Water hotter than the thermostat lets it be tests what heats it, whatever the pressures say. */
    @Test
    void whatAReadingShowsIsTested() {
        HypothesisFit best = Fits.with(Cause.AS_DESCRIBED, 0, 5, Optional.empty(), HOUSE);
        HypothesisFit hot = open(Cause.WATER_TOO_HOT, 4.5, 0.4, Estimate.Standing.NOT_CARRIED);
        Overheat overheat = Overheat.of(
                        HOUSE,
                        Optional.empty(),
                        SpotReadings.none().with(SiteCheck.HOT_TAP, TemperatureUnit.CELSIUS.toSi(97)))
                .orElseThrow();
        assertEquals(List.of(hot), result(best, hot).untested());
        DiagnosisResult shown = new DiagnosisResult(
                List.of(best, hot), 50, Double.NaN, new Balances(0, 100), Optional.empty(), List.of(overheat));
        assertEquals(List.of(), shown.untested());
    }

    /** Readings that fit another cause as well, or that nothing explains, show no hazard; it is not ruled out. */
    @Test
    void aHazardIsOneOnlyIfReadingsTellIt() {
        HypothesisFit high = opensHigh(5, 0.6, Estimate.Standing.CARRIED);
        HypothesisFit hot = Fits.of(Cause.WATER_TOO_HOT, 2, HOUSE);
        HypothesisFit described = Fits.with(Cause.AS_DESCRIBED, 50, 90, Optional.empty(), HOUSE);
        assertEquals(List.of(high, hot), result(high, hot, described).hazards());
        assertEquals(List.of(), result(high, hot, described).notRuledOut());

        DiagnosisResult cannotTell = result(high, Fits.of(Cause.LEAK, 2, HOUSE), described);
        assertEquals(List.of(), cannotTell.hazards());
        assertEquals(List.of(high), cannotTell.notRuledOut());

        Misfit serious = new Misfit(3, 0, 0, 0, 1, 100, List.of());
        HypothesisFit alone = Fits.with(Cause.WATER_TOO_HOT, 0, 900, Optional.of(serious), HOUSE);
        assertEquals(List.of(), result(alone, described).hazards());
        assertEquals(List.of(alone), result(alone, described).notRuledOut());
        assertFalse(result(alone, described).isDecided(), "nothing is singled out that explains nothing");
    }

    /** Two causes at once are named, blamed and called a hazard together; alone, each is another explanation. */
    @Test
    void twoCausesAtOnceAreBothSaid() {
        HypothesisFit both = Fits.pair(Cause.PRECHARGE_LOW, Cause.WATER_TOO_HOT, HOUSE);
        assertEquals(
                "the vessel has lost part of its precharge, and the heater heats the water hotter than described",
                both.inWords());
        assertTrue(both.blames(Cause.PRECHARGE_LOW) && both.blames(Cause.WATER_TOO_HOT));
        assertFalse(both.blames(Cause.LEAK));
        assertTrue(both.isHazard(), "for its second cause");
        assertFalse(Fits.pair(Cause.PRECHARGE_LOW, Cause.LEAK, HOUSE).isHazard());
        assertFalse(Fits.pair(Cause.VESSEL_ISOLATED, Cause.TRAPPED_AIR, HOUSE).shutsIn(true), "air gives room");
        assertTrue(Fits.pair(Cause.LEAK, Cause.VESSEL_ISOLATED, HOUSE).shutsIn(false));
        HypothesisFit alone = Fits.of(Cause.PRECHARGE_LOW, 30, HOUSE);
        assertEquals(alone, result(both, alone).of(Cause.PRECHARGE_LOW).orElseThrow());
    }

    @Test
    void aFitKnowsItsOwnNumbers() {
        List<Estimate> estimates = List.of(estimate(Parameter.LEAK), estimate(Parameter.HEATING_RATE));
        HypothesisFit fit = new HypothesisFit(
                Cause.LEAK,
                "",
                Optional.empty(),
                1,
                0,
                1,
                estimates,
                1,
                Optional.empty(),
                List.of(),
                HOUSE,
                List.of(),
                HypothesisFit.Course.NONE);
        assertEquals(List.of(estimates.get(0)), fit.own());
        assertEquals(estimates.get(1), fit.estimate(Parameter.HEATING_RATE).orElseThrow());
        assertTrue(fit.estimate(Parameter.PRECHARGE).isEmpty());
        for (double inside : new double[] {1, 2, 3}) {
            assertTrue(estimates.get(0).contains(inside));
        }
        assertFalse(estimates.get(0).contains(0.99));
        assertFalse(estimates.get(0).contains(3.01));
    }

    @Test
    void everyCauseNumberAndCheckHasItsWords() {
        List<Stream<String>> all = List.of(
                Arrays.stream(Cause.values()).map(Cause::words),
                Arrays.stream(Parameter.values()).map(Parameter::words),
                Arrays.stream(SiteCheck.values()).map(SiteCheck::words));
        for (Stream<String> words : all) {
            List<String> each = words.toList();
            assertEquals(each.size(), each.stream().distinct().count());
            each.forEach(one -> assertTrue(one.length() > 10 && !one.endsWith("."), one));
        }
        EnumSet<Cause> hazards = EnumSet.noneOf(Cause.class);
        Arrays.stream(Cause.values()).filter(Cause::isHazard).forEach(hazards::add);
        assertEquals(EnumSet.of(Cause.RELIEF_OPENS_HIGH, Cause.WATER_TOO_HOT, Cause.MIXING_VALVE_PASSES), hazards);
    }

    @Test
    void numbersAndChecksHaveTheUnitsTheyAreIn() {
        assertEquals("Pa", Parameter.PRECHARGE.unit());
        assertEquals("m3/s", Parameter.LEAK.unit());
        assertEquals("", Parameter.HEATING_RATE.unit());
        assertEquals(SiteCheck.TYRE_GAUGE, Parameter.PRECHARGE.settledBy());
        assertNull(Parameter.START_OF_HEATING.settledBy());
        assertEquals("m3", SiteCheck.CAUGHT_VOLUME.unit());
        assertEquals("K", SiteCheck.HOT_TAP.unit());
        assertEquals(0.1e5, SiteCheck.COLD_STATIC.usualUncertainty());
    }

    @Test
    void readingsOnSiteAreAddedAndReplaced() {
        SpotReadings none = SpotReadings.none();
        assertTrue(none.isEmpty());
        SpotReadings one = none.with(SiteCheck.HOT_TAP, 330);
        assertTrue(none.isEmpty(), "never changed");
        assertFalse(one.isEmpty());
        assertEquals(new SpotReading(330, 2), one.all().get(SiteCheck.HOT_TAP));
        SpotReadings two =
                one.with(SiteCheck.COLD_STATIC, new SpotReading(3e5, 700)).with(SiteCheck.HOT_TAP, 340);
        assertEquals(
                List.of(SiteCheck.COLD_STATIC, SiteCheck.HOT_TAP),
                List.copyOf(two.all().keySet()));
        assertEquals(340, two.all().get(SiteCheck.HOT_TAP).value());
        assertThrows(UnsupportedOperationException.class, () -> two.all().clear());
    }

    @Test
    void aReadingAgreesWithinTwiceItsUncertainty() {
        assertEquals(-1.5, line(2.85e5).deviation(), 1e-12);
        assertTrue(line(2.8e5).agrees());
        assertTrue(line(3.2e5).agrees());
        assertFalse(line(3.21e5).agrees());
        assertFalse(line(2.79e5).agrees());
        InstalledCheck check = new InstalledCheck(List.of(line(3e5), line(4e5)), Balances.NONE);
        assertFalse(check.asPlanned());
        assertEquals(List.of(line(4e5)), check.differences());
        assertTrue(new InstalledCheck(List.of(line(3e5)), Balances.NONE).asPlanned());
    }

    private static InstalledCheck.Line line(double read) {
        return new InstalledCheck.Line(SiteCheck.COLD_STATIC, 3e5, new SpotReading(read, 0.1e5));
    }

    static PressureLog.Builder log() {
        return PressureLog.builder(
                new double[] {0, 60, 120, 180, 240, 300, 360}, new double[] {3e5, 3e5, 3e5, 3e5, 3e5, 3e5, 3e5});
    }

    static HypothesisFit described(PressureLog log) {
        Diagnosis.Builder builder = Diagnosis.builder(HOUSE).log(log).threads(1);
        EnumSet.complementOf(EnumSet.of(Cause.AS_DESCRIBED)).forEach(builder::without);
        DiagnosisResult result = builder.build().run();
        assertEquals(1, result.fits().size(), "all others are left out");
        assertTrue(result.check().isEmpty(), "there is nothing to tell it from");
        assertEquals(1, result.best().weight(), 1e-12);
        return result.best();
    }

    private static DiagnosisResult of(SpotReadings spots, Cause... causes) {
        Diagnosis.Builder builder = Diagnosis.builder(HOUSE).spots(spots).threads(1);
        EnumSet<Cause> others = EnumSet.complementOf(EnumSet.copyOf(List.of(causes)));
        others.remove(Cause.AS_DESCRIBED);
        others.forEach(builder::without);
        return builder.build().run();
    }

    /** Validation: Schwarz's criterion, the sum of squares and for each open number the logarithm of how many were read. */
    @Test
    void causesAreWeighedByTheCriterion() {
        SpotReadings high =
                SpotReadings.none().with(SiteCheck.COLD_STATIC, 3.3e5).with(SiteCheck.HOT_TAP, 333.15);
        DiagnosisResult result = of(high, Cause.SUPPLY_PRESSURE, Cause.WATER_TOO_HOT);
        assertWeighed(result, 1, 2);
        assertEquals(Cause.SUPPLY_PRESSURE, result.best().cause());
        Estimate supply = result.best().own().get(0);
        assertEquals(3.3e5, supply.value(), 300);
        double reach =
                1.96 * 0.1e5 * 1.5; // a standard uncertainty of 0.1 bar, and half as much again for what is rough
        assertEquals(3.3e5 - reach, supply.low(), 0.05 * reach, "and a little more, as outliers count less");
        assertEquals(3.3e5 + reach, supply.high(), 0.05 * reach);
        assertEquals(4, result.best().estimates().size());
        assertTrue(result.of(Cause.AS_DESCRIBED).isPresent());

        DiagnosisResult clear = of(high.with(SiteCheck.COLD_STATIC, 4e5), Cause.SUPPLY_PRESSURE, Cause.WATER_TOO_HOT);
        assertTrue(clear.isDecided());
        HypothesisFit far = clear.of(Cause.WATER_TOO_HOT).orElseThrow();
        assertTrue(far.criterion() > 20);
        assertTrue(far.estimates().isEmpty(), "too far behind to say what it would have to be");
        assertEquals(0, far.ownNumbers());
    }

    /** A tap that scalds behind a mixing valve: that is the matter, and asked about only where a tap was read. */
    @Test
    void aTapTellsWhetherTheMixingValveWorks() {
        HotWaterSystem mixed = Abbey.plain()
                .heater(Abbey.heater(3, 60).mixedTo(45, TemperatureUnit.CELSIUS).build())
                .build();
        SpotReadings cold = SpotReadings.none().with(SiteCheck.COLD_STATIC, 3e5);
        Set<Cause> others =
                EnumSet.complementOf(EnumSet.of(Cause.AS_DESCRIBED, Cause.MIXING_VALVE_PASSES, Cause.WATER_TOO_HOT));
        Function<SpotReadings, DiagnosisResult> asked = spots -> {
            Diagnosis.Builder builder = Diagnosis.builder(mixed).spots(spots).threads(1);
            others.forEach(builder::without);
            return builder.build().run();
        };
        DiagnosisResult scalds = asked.apply(cold.with(SiteCheck.HOT_TAP, 273.15 + 59));
        assertEquals(Cause.MIXING_VALVE_PASSES, scalds.best().cause());
        assertTrue(scalds.isDecided());
        assertTrue(scalds.best().house().heater().mixedTo().isEmpty());
        DiagnosisResult works = asked.apply(cold.with(SiteCheck.HOT_TAP, 273.15 + 44));
        assertTrue(works.alike().stream().noneMatch(fit -> fit.cause() == Cause.MIXING_VALVE_PASSES));
        assertTrue(asked.apply(cold).of(Cause.MIXING_VALVE_PASSES).isEmpty());
    }

    /** Readings that no cause explains are taken for less certain than they were said to be. */
    @Test
    void whereNothingFitsDifferencesCountLess() {
        SpotReadings impossible = SpotReadings.none()
                .with(SiteCheck.COLD_STATIC, 3e5)
                .with(SiteCheck.HEAT_UP_MAXIMUM, 4.2e5)
                .with(SiteCheck.NEXT_MORNING, 9e5)
                .with(SiteCheck.CAUGHT_VOLUME, 0);
        DiagnosisResult result = of(impossible, Cause.SUPPLY_PRESSURE, Cause.LEAK);
        assertTrue(result.misfit());
        double least = result.fits().stream()
                .mapToDouble(HypothesisFit::sumOfSquares)
                .min()
                .orElseThrow();
        assertTrue(least > 100);
        assertWeighed(result, least / 4, 4); // what is known beforehand of the circumstances counts as readings too
    }

    private static void assertWeighed(DiagnosisResult result, double inflation, int readings) {
        assertEquals(readings, result.readings());
        double[] criteria = result.fits().stream()
                .mapToDouble(fit -> fit.sumOfSquares() / inflation
                        + (fit.cause() == Cause.AS_DESCRIBED ? 0 : 1) * Math.log(readings))
                .toArray();
        double sum = Arrays.stream(criteria)
                .map(c -> Math.exp(-(c - criteria[0]) / 2))
                .sum();
        for (int i = 0; i < criteria.length; i++) {
            HypothesisFit fit = result.fits().get(i);
            assertEquals(criteria[i] - criteria[0], fit.criterion(), 1e-9);
            assertEquals(Math.exp(-(criteria[i] - criteria[0]) / 2) / sum, fit.weight(), 1e-9);
            assertTrue(i == 0 || criteria[i] >= criteria[i - 1], "the best first");
        }
    }
}
