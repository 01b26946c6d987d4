package io.github.heatswell.assessment;

import static io.github.heatswell.assessment.FaultlessHouse.guard;
import static io.github.heatswell.assessment.FaultlessHouse.house;
import static io.github.heatswell.assessment.FaultlessHouse.supply;
import static io.github.heatswell.assessment.FaultlessHouse.valve;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.assessment.Doubts.Doubt;
import io.github.heatswell.assessment.Finding.Severity;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.NamedValue;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.UnitSystem;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Regression: what becomes of a finding, and what is said, while values it rests on are not known. */
class WeighedFindingsTest {

    private static final String HIGH = "static-pressure-high";

    /** A house as its supply (bar) would be written. */
    private static Optional<HotWaterSystem> under(String bar) {
        return Optional.of(
                house().supply(supply(Double.parseDouble(bar)).build()).build());
    }

    private static Doubt range(String field, String taken, String... ends) {
        return new Doubt(
                field, Statement.plain(taken), Optional.of(Statement.plain(String.join(" to ", ends))), List.of(ends));
    }

    private static Doubt usual(String field, String taken) {
        return new Doubt(field, Statement.plain(taken), Optional.empty(), List.of());
    }

    private static Doubts of(Doubt... doubts) {
        return Doubts.of(List.of(doubts), changes -> under(changes.getOrDefault("supply.pressure", "6.3")));
    }

    private static String said(Statement statement) {
        return statement.text(UnitSystem.SI);
    }

    /**
     * Contract: a comparison of an unknown value is a fault only if it holds at both ends of up to four ranges. The stricter limit of
     * the supply is 5 bar, the milder 80 psi (5.52 bar), at which it is a fault.
     */
    @ParameterizedTest
    @CsvSource({
        "6, 6.6, 1, FAULT",
        "6, 6.6, 4, FAULT",
        "6, 6.6, 5, CAUTION",
        "4.9, 6.6, 1, CAUTION",
        "6, 5.2, 1, CAUTION",
        "6, gone, 1, CAUTION",
        "'', '', 1, CAUTION"
    })
    void aComparisonHoldsAtBothEnds(String low, String high, int ranges, Severity severity) {
        Doubt doubt =
                low.isEmpty() ? usual("supply.pressure", "6.3 bar") : range("supply.pressure", "6.3 bar", low, high);
        Doubts doubts = Doubts.of(Collections.nCopies(ranges, doubt), changes -> {
            String bar = changes.getOrDefault("supply.pressure", "6.3");
            return bar.equals("gone") ? Optional.empty() : under(bar);
        });
        Finding known = LimitsTest.only(Findings.of(under("6.3").orElseThrow()), HIGH);
        Finding weighed = LimitsTest.only(Findings.of(under("6.3").orElseThrow(), doubts), HIGH);
        assertEquals(severity, weighed.severity());
        assertEquals(
                said(known.sentence()) + " Not confirmed on site: the supply pressure, "
                        + (low.isEmpty() ? "assumed 6.3 bar." : "taken as 6.3 bar (" + low + " to " + high + ")."),
                said(weighed.sentence()));
        assertEquals(
                severity == Severity.FAULT
                        ? said(known.advice())
                        : NamedValue.SUPPLY.check() + ". Go on only if that confirms it. " + said(known.advice()),
                said(weighed.advice()));
    }

    /** Contract: a finding on one relief valve rests on its own plate, and of two valves each is called by its name. */
    @Test
    void aFindingOnAValveRestsOnItsOwnPlate() {
        HotWaterSystem two = LimitsTest.withRelief(guard(11, 9))
                .addReliefValve(valve(11.5, 9).build())
                .build();
        Function<Map<String, String>, Optional<HotWaterSystem>> always = changes -> Optional.of(two);
        Doubts doubts = Doubts.of(
                List.of(range("relief[0].opens", "11 bar", "9 bar", "13 bar"), usual("relief[1].opens", "11.5 bar")),
                always);
        String both = said(LimitsTest.only(Findings.of(two, doubts), "relief-set-above-tank")
                .sentence());
        assertTrue(
                both.endsWith(
                        " Not confirmed on site: the set pressure of 'T&P valve', taken as 11 bar (9 bar to 13 bar);"
                                + " the set pressure of 'safety valve', assumed 11.5 bar."),
                both);
        HotWaterSystem late = LimitsTest.withRelief(guard(7, 6).opensAt(100, TemperatureUnit.CELSIUS))
                .addReliefValve(valve(6.5, 5).build())
                .build();
        for (int of : new int[] {0, 1}) {
            Doubts one =
                    Doubts.of(List.of(usual("relief[" + of + "].opens-at", "100 °C")), changes -> Optional.of(late));
            String told = said(LimitsTest.only(Findings.of(late, one), "tp-relief-temperature-high")
                    .sentence());
            assertEquals(of == 0, told.contains("Not confirmed on site"), told);
        }
    }

    /** Contract: values given as a range are told before an answer, usual ones after it, and two of the former behind it. */
    @Test
    void whatIsNotKnownIsToldOnce() {
        Doubt supply = range("supply.pressure", "4 bar", "3 bar", "5 bar");
        Doubt arrangement = Doubt.ofChoice("supply.arrangement", "a check valve");
        Doubt volume = usual("tank.volume", "200 L");
        Doubt nowhere = usual("tank.colour", "white");
        Doubts both = of(supply, arrangement, volume, nowhere);
        assertEquals(
                "Not known: the supply pressure, taken as 4 bar (3 bar to 5 bar); what sits in the cold feed, taken as a check"
                        + " valve. What follows assumes these values and may change with them.",
                said(both.sentence().orElseThrow()));
        assertEquals(
                "This relies on values nobody has measured: the volume of the tank, assumed 200 L. A different value may change"
                        + " this answer. "
                        + NamedValue.TANK_VOLUME.check() + ".",
                said(both.assumed().orElseThrow()));
        assertEquals(
                ", if the supply pressure is 4 bar and what sits in the cold feed is a check valve",
                said(both.caveat()));
        assertEquals(
                Doubts.AS_TAKEN,
                of(supply, arrangement, range("heater.set-point", "60 °C", "55 °C", "65 °C"))
                        .caveat());
        assertEquals(Optional.empty(), of(volume).sentence());
        assertEquals("", said(of(volume).caveat()));
        assertEquals(Optional.empty(), of(supply).assumed());
    }

    /** Contract: with a vessel in place of one nobody knew, nothing of the old one is in doubt; a field it only begins like is. */
    @Test
    void aPartThatIsReplacedIsKnown() {
        Doubts doubts = of(
                        usual("vessel", "missing"),
                        usual("vessel.precharge", "4 bar"),
                        usual("vessels[0].volume", "18 L"),
                        usual("tank.volume", "200 L"))
                .without("vessel");
        assertFalse(doubts.has(NamedValue.VESSEL));
        assertFalse(doubts.has(NamedValue.PRECHARGE));
        assertTrue(doubts.has(NamedValue.VESSEL_VOLUME));
        assertTrue(doubts.has(NamedValue.TANK_VOLUME));
    }
}
