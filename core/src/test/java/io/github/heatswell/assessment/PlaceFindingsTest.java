package io.github.heatswell.assessment;

import static io.github.heatswell.assessment.FaultlessHouse.event;
import static io.github.heatswell.assessment.FaultlessHouse.guard;
import static io.github.heatswell.assessment.FaultlessHouse.heater;
import static io.github.heatswell.assessment.FaultlessHouse.house;
import static io.github.heatswell.assessment.FaultlessHouse.run;
import static io.github.heatswell.assessment.FaultlessHouse.supply;
import static io.github.heatswell.assessment.FaultlessHouse.unguarded;
import static io.github.heatswell.assessment.FaultlessHouse.unmixed;
import static io.github.heatswell.assessment.FaultlessHouse.valve;
import static io.github.heatswell.assessment.FaultlessHouse.vessel;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.assessment.Finding.Authority;
import io.github.heatswell.assessment.Finding.Severity;
import io.github.heatswell.citation.Citation;
import io.github.heatswell.place.Place;
import io.github.heatswell.place.PlaceRule.Topic;
import io.github.heatswell.result.Event;
import io.github.heatswell.sizing.SizingTarget;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.Heater;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Site;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.UnitSystem;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The same house judged where it stands. Validation: every limit and severity is that of the clause named beside the place in the
 * rules by place; where none was read, the finding says so.
 */
class PlaceFindingsTest {

    /** 80 psi in the US (UPC 608.2), 500 kPa by EN 806-2 16.1 and AS/NZS 3500.1 3.3.4; no limit was found for the UK. */
    @ParameterizedTest
    @CsvSource({
        "US_IPC, 5.3, ",
        "US_UPC, 5.3, ",
        "US_UPC, 5.6, FAULT",
        "EN, 4.9, ",
        "EN, 5.3, FAULT",
        "AU_NZ, 5.3, FAULT",
        "UK, 5.3, CAUTION",
        "UK, 5.6, CAUTION",
        "NOT_KNOWN, 5.3, CAUTION",
        "NOT_KNOWN, 5.6, FAULT"
    })
    void staticPressure(Place place, double bar, Severity severity) {
        Optional<Finding> high = find(house().supply(supply(bar).build()), place, "static-pressure-high");
        assertEquals(Optional.ofNullable(severity), high.map(Finding::severity));
    }

    /** A relief valve at 150 psi opens above the 80 psi that expansion control keeps by IPC 607.3; the run says so with the clause. */
    @Test
    void aRunIsJudgedByTheLimitOfThePlace() {
        HotWaterSystem here = at(house().withoutVessel(), Place.US_IPC).build();
        Finding opened = Findings.of(run(here, 7, 60, event(Event.Kind.RELIEF_OPENED, "T&P valve", 7))).stream()
                .filter(finding -> finding.id().equals("relief-valve-controls-expansion"))
                .findFirst()
                .orElseThrow();
        String said = opened.sentence().text(UnitSystem.US);
        assertTrue(said.contains("passed 80 psi") && said.contains("IPC 607.3"), said);
    }

    /** No limit is passed by less than the digits of the sentence show: 80 psi are 5.5158 bar, 500 kPa are 5 bar. */
    @ParameterizedTest
    @CsvSource({"US_UPC, 5.516", "US_UPC, 5.52", "UK, 5.001", "EN, 5.009", "NOT_KNOWN, 5.52"})
    void aLimitIsPassedWhereTheDigitsShowIt(Place place, double bar) {
        Optional<Finding> high = find(house().supply(supply(bar).build()), place, "static-pressure-high");
        assertTrue(high.filter(finding -> finding.limit().orElseThrow().value() > bar * 1e5 - 1000)
                .isEmpty());
    }

    /**
     * Stacking: a US heater maker's training paper of 2015 has 30 degF for gas heaters, 16.7 K; at a 99 degC valve that counts from
     * 82.3 degC on.
     */
    @ParameterizedTest
    @CsvSource({
        "ELECTRIC, 60, ''",
        "GAS, 60, ' tank to 76.7 °C (stacking).'",
        "GAS, 82, ' tank to 98.7 °C (stacking).'",
        "GAS, 83, ' tank to 99.7 °C (stacking), where a temperature and pressure relief valve of 99 °C opens on temperature.'"
    })
    void shortDrawsMakeTheTopOfAGasTankHotter(Heater.Energy energy, double celsius, String said) {
        Finding scald = find(
                        house().heater(unmixed(celsius).energy(energy).build()),
                        Place.US_IPC,
                        "scald-without-mixing-valve")
                .orElseThrow();
        String sentence = scald.sentence().text(UnitSystem.SI);
        assertTrue(sentence.endsWith(said.isEmpty() ? "a child sooner." : said), sentence);
        assertEquals(
                energy == Heater.Energy.GAS, scald.authority().source().text().contains("stacking: a US heater maker"));
    }

    /** 149 degF are 65 degC, hotter than needed by no more than the advice allows; in either unit the advice is the same. */
    @Test
    void oneTemperatureInTwoUnitsHasOneAdvice() {
        List<String> advices = Stream.of(149.0, TemperatureUnit.FAHRENHEIT.fromSi(TemperatureUnit.CELSIUS.toSi(65)))
                .map(fahrenheit -> TemperatureUnit.CELSIUS.fromSi(TemperatureUnit.FAHRENHEIT.toSi(fahrenheit)))
                .map(celsius -> house().heater(unmixed(celsius).build()))
                .map(house -> find(house, Place.AU_NZ, "scald-without-mixing-valve")
                        .orElseThrow()
                        .advice()
                        .text(UnitSystem.SI))
                .distinct()
                .toList();
        assertEquals(1, advices.size(), advices::toString);
        assertFalse(advices.get(0).contains("Turn the thermostat down"));
    }

    /** Below 80 psi while the water heats, by UPC 608.2 (2024); no European or Australian rule on that was found. */
    @ParameterizedTest
    @CsvSource({"US_IPC, true", "US_UPC, true", "NOT_KNOWN, true", "UK, false", "EN, false", "AU_NZ, false"})
    void peak(Place place, boolean limited) {
        HotWaterSystem here = at(house(), place).build();
        assertEquals(limited, has(Findings.of(run(here, 5.6, 60)), "peak-above-code-limit"));
        SizingTarget target = SizingTarget.builder(here)
                .vesselRating(Pressure.gauge(10, PressureUnit.BAR))
                .build();
        assertEquals(limited, target.bounds().stream().anyMatch(bound -> bound.rule() == SizingTarget.Rule.CODE_CAP));
    }

    /** 75 % of the set pressure by EN 806-2 16.1, 80 % by a maker in Australia; of 7 bar, 5.25 and 5.6 bar. */
    @ParameterizedTest
    @CsvSource({"EN, 5.2, false", "EN, 5.3, true", "AU_NZ, 5.5, false", "AU_NZ, 5.7, true", "NOT_KNOWN, 5.3, true"})
    void supplyToRelief(Place place, double bar, boolean close) {
        assertEquals(
                close,
                find(house().supply(supply(bar).build()), place, "supply-near-relief-set")
                        .isPresent());
    }

    /** 210 degF by ANSI Z21.22 is marked as 99 degC; the draft EN 1490 ends at 95 degC, which a sound 99 degC valve only misses. */
    @ParameterizedTest
    @CsvSource({
        "US_UPC, 99, ",
        "EN, 95, ",
        "EN, 99, CAUTION",
        "EN, 99.5, FAULT",
        "NOT_KNOWN, 99, ",
        "US_IPC, 99.5, FAULT"
    })
    void temperatureOfTheRelief(Place place, double celsius, Severity severity) {
        HotWaterSystem.Builder hot = unguarded()
                .addReliefValve(
                        guard(7, 6).opensAt(celsius, TemperatureUnit.CELSIUS).build());
        assertEquals(
                Optional.ofNullable(severity),
                find(hot, place, "tp-relief-temperature-high").map(Finding::severity));
    }

    /** US codes and the UK's G3 ask for a T&P valve, whatever the cut-out; EN 12897 leaves open by what 95 degC is kept. */
    @ParameterizedTest
    @CsvSource({"US_IPC, FAULT", "US_UPC, FAULT", "UK, FAULT", "AU_NZ, FAULT", "EN, NOTE", "NOT_KNOWN, NOTE"})
    void temperatureRelief(Place place, Severity severity) {
        HotWaterSystem.Builder pressureOnly =
                unguarded().addReliefValve(valve(7, 6).build());
        Finding missing =
                find(pressureOnly, place, "temperature-relief-missing").orElseThrow();
        assertEquals(severity, missing.severity());
        String source = missing.authority().source().text();
        assertEquals(
                place.isKnown(),
                source.startsWith(place.rules(Topic.HEAT_RELIEF).get(0).cited() + ": "),
                source);
    }

    /** 48 degC at a bath in the UK (G3), 50 degC in New South Wales (NCC 2022); elsewhere where the burn times of the CPSC end. */
    @ParameterizedTest
    @CsvSource({
        "UK, 48.5, true",
        "UK, 48, false",
        "AU_NZ, 50, false",
        "AU_NZ, 50.5, true",
        "US_UPC, 49, false",
        "US_UPC, 49.5, true"
    })
    void mixedWater(Place place, double celsius, boolean tooHot) {
        Optional<Finding> set = find(
                house().heater(heater(60)
                        .mixedTo(celsius, TemperatureUnit.CELSIUS)
                        .build()),
                place,
                "mixing-valve-set-high");
        assertEquals(tooHot, set.isPresent());
    }

    /** 60 degC by HSE in the UK and G12 in New Zealand; the US codes read name none, and an EN rule excepts houses like these. */
    @ParameterizedTest
    @CsvSource({"UK, HSE", "AU_NZ, G12", "US_IPC, no rule on this was read for this place", "EN, HSE", "NOT_KNOWN, HSE"
    })
    void storedWater(Place place, String source) {
        Finding cool = find(house().heater(heater(55).build()), place, "stored-too-cool")
                .orElseThrow();
        assertTrue(
                cool.authority().source().text().startsWith(source),
                cool.authority().source().text());
        if (place == Place.US_IPC) { // whose figure it is
            assertTrue(cool.authority().source().text().contains("(United Kingdom)"));
        }
        String said = cool.sentence().text(UnitSystem.US);
        boolean foreign = place == Place.US_IPC;
        assertEquals(
                foreign,
                said.contains("None of the rules read for this place requires it; the figure is British."),
                said);
        assertEquals(foreign, said.contains("burns an adult badly in 6 s"), said);
        String advice = cool.advice().text(UnitSystem.US);
        assertEquals(foreign, advice.startsWith("Ask the local building department"), advice);
    }

    /** A relief valve may take the expansion where the rules leave that open, and nowhere else. */
    @ParameterizedTest
    @CsvSource({"EN, CAUTION", "AU_NZ, CAUTION", "UK, FAULT", "US_IPC, FAULT", "US_UPC, FAULT", "NOT_KNOWN, CAUTION"})
    void expansion(Place place, Severity severity) {
        HotWaterSystem.Builder closed =
                unguarded().addReliefValve(valve(7, 6).build()).withoutVessel();
        assertEquals(
                severity,
                find(closed, place, "expansion-control-missing").orElseThrow().severity());
    }

    /**
     * A valve made for the expansion takes it where the rules leave that to it (en, au-nz) or nobody knows them; where they name
     * it among the means (IPC and UPC places), somebody has to agree; UK rules ask for a vessel or room in the heater.
     */
    @ParameterizedTest
    @CsvSource({"EN, NOTE", "AU_NZ, NOTE", "NOT_KNOWN, NOTE", "US_IPC, CAUTION", "US_UPC, CAUTION", "UK, "})
    void valvesMadeForExpansion(Place place, Severity severity) {
        assertEquals(
                Optional.ofNullable(severity),
                find(FaultlessHouse.grouped(6, 5), place, "expansion-valve-provided")
                        .map(Finding::severity));
        HotWaterSystem here = at(FaultlessHouse.grouped(6, 5), place).build();
        List<Finding> found = Findings.of(run(here, 6, 4, 60, 1, event(Event.Kind.RELIEF_OPENED, "safety group", 6)));
        Finding opened = found.stream()
                .filter(one ->
                        one.id().equals("expansion-valve-works") || one.id().equals("relief-valve-controls-expansion"))
                .findFirst()
                .orElseThrow();
        String said = opened.sentence().text(UnitSystem.SI);
        if (severity == null) {
            assertEquals(Severity.FAULT, opened.severity());
            assertTrue(said.contains("That is its job, but the rules here ask for more"), said);
            assertTrue(opened.authority().source().text().startsWith("Approved Document G"), opened::toString);
        } else {
            assertEquals(severity, opened.severity());
            assertTrue(
                    said.contains("is there to discharge the expansion") && said.contains("a year would come to 365 L"),
                    said);
            assertTrue(said.contains("'T&P valve' stayed shut"), said);
            assertTrue(opened.advice().text(UnitSystem.SI).contains("expansion vessel"), opened::toString);
        }
    }

    /** Regression: mains water that ran through a valve for hours was called its work, and "let it drip" the advice. */
    @Test
    void aValveThatRunsOnTheSupplyIsNotAtItsWork() {
        HotWaterSystem here = at(FaultlessHouse.grouped(6, 5), Place.EN).build();
        Event opened = event(Event.Kind.RELIEF_OPENED, "safety group", 6);
        List<Finding> found = Findings.of(run(here, 6, 4, 60, 1, event(Event.Kind.SUPPLY_OPENED, "", 6), opened));
        assertEquals(
                List.of(),
                found.stream()
                        .filter(one -> one.id().startsWith("expansion-valve-works"))
                        .toList());
        Finding told = found.stream()
                .filter(one -> one.id().equals("relief-valve-controls-expansion"))
                .findFirst()
                .orElseThrow();
        String said = told.sentence().text(UnitSystem.SI);
        assertTrue(said.contains("it ran on water from the supply for ") && said.contains("It discharged 1 L"), said);
        assertFalse(told.advice().text(UnitSystem.SI).contains("drips"), told::toString);
    }

    /**
     * BS EN 1490 has the temperature and pressure relief valve "not intended to act as an expansion valve" (its scope, read in a
     * catalogue), and one stands in the UK beside the vessel: without it, a flat, cut off or missing vessel leaves all to the last guard.
     */
    @ParameterizedTest
    @CsvSource({
        "UK, SOUND, false, CAUTION",
        "UK, SOUND, true, FAULT",
        "UK, ISOLATED, false, FAULT",
        "UK, WATERLOGGED, true, FAULT",
        "US_IPC, ISOLATED, true, ",
        "EN, SOUND, true, ",
        "AU_NZ, SOUND, true, ",
        "NOT_KNOWN, SOUND, true, "
    })
    void theLastSafeguardIsNoExpansionValve(
            Place place, ExpansionVessel.Condition condition, boolean opens, Severity severity) {
        HotWaterSystem here = at(house(), place)
                .vessel(vessel(18, 4).condition(condition).build())
                .build();
        List<Finding> found = opens
                ? Findings.of(run(here, 7, 4, 60, 1, event(Event.Kind.RELIEF_OPENED, "T&P valve", 7)))
                : Findings.of(here);
        Optional<Finding> missing = found.stream()
                .filter(one -> one.id().equals(ExpansionValveRule.MISSING))
                .findFirst();
        assertEquals(Optional.ofNullable(severity), missing.map(Finding::severity));
        missing.ifPresent(one -> {
            String said = one.sentence().text(UnitSystem.SI);
            assertTrue(said.contains("'T&P valve', the last safeguard, " + (opens ? "discharged" : "would")), said);
            assertTrue(one.authority().source().text().startsWith("BS EN 1491"), one::toString);
        });
        assertEquals(Optional.empty(), find(FaultlessHouse.grouped(6, 5), Place.UK, ExpansionValveRule.MISSING));
    }

    /** EN 806-2, 16.1, by a trade paper: 75 % of the set pressure, 5.25 bar of 7, also at a safety group. */
    @ParameterizedTest
    @CsvSource({"5.2, false", "5.3, true"})
    void theSupplyKeepsItsDistanceFromASafetyGroup(double bar, boolean near) {
        Optional<Finding> close =
                find(FaultlessHouse.grouped(7, 5.6).supply(supply(bar).build()), Place.EN, "supply-near-relief-set");
        assertEquals(near, close.isPresent());
        close.ifPresent(one -> assertTrue(one.authority().source().text().startsWith("EN 806-2, 16.1"), one::toString));
    }

    /** A topic on which no rule of the place was read says so beside what is said elsewhere. */
    @Test
    void whatNobodyReadIsSaid() {
        HotWaterSystem.Builder weak = unguarded().addReliefValve(guard(12, 9).build());
        Finding high = find(weak, Place.UK, "relief-set-above-tank").orElseThrow();
        assertTrue(high.authority().source().text().startsWith("no rule on this was read for this place"));
        assertFalse(find(weak, Place.NOT_KNOWN, "relief-set-above-tank")
                .orElseThrow()
                .authority()
                .source()
                .text()
                .startsWith("no rule"));
    }

    /** No finding rests on memory, wherever the house stands; a rule that nobody read cannot become an authority. */
    @Test
    void nothingRestsOnMemory() {
        for (Supplier<List<Finding>> found : Cases.all().values()) {
            for (Finding finding : found.get()) {
                assertNotEquals(
                        Citation.Standing.FROM_MEMORY,
                        finding.authority().source().standing(),
                        finding.id());
            }
        }
        assertThrows(
                IllegalArgumentException.class,
                () -> Authority.code("a code nobody read", Citation.Standing.FROM_MEMORY));
    }

    private static Optional<Finding> find(HotWaterSystem.Builder house, Place place, String id) {
        return Findings.of(at(house, place).build()).stream()
                .filter(finding -> finding.id().equals(id))
                .findFirst();
    }

    private static boolean has(List<Finding> findings, String id) {
        return findings.stream().anyMatch(finding -> finding.id().equals(id));
    }

    static HotWaterSystem.Builder at(HotWaterSystem.Builder house, Place place) {
        return house.site(Site.builder()
                .altitude(0, LengthUnit.METRE)
                .room(20, TemperatureUnit.CELSIUS)
                .place(place)
                .build());
    }
}
