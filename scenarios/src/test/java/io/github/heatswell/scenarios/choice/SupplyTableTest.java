package io.github.heatswell.scenarios.choice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.narrative.Narrative;
import io.github.heatswell.narrative.SizeAdvice.LowerSupply;
import io.github.heatswell.scenarios.catalogue.Catalogue;
import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.file.ScenarioReader;
import io.github.heatswell.scenarios.report.ResultFile;
import io.github.heatswell.scenarios.report.SizingReport;
import io.github.heatswell.sizing.NominalSize;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import io.github.heatswell.units.VolumeUnit;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Regression: a supply that stands just below its limit called for 108 gal, and nothing was said of setting the valve lower. */
class SupplyTableTest {

    private static final String UNDERPUMPED = """
            question: Is the 4.5 gal vessel charged to 40 psi good enough?
            supply:
              arrangement: reducing-valve
              pressure: 105 psi
              water: 45 degF
              reducing-valve: { set: 75 psi, bypass-opens: 3 psi }
            tank:    { volume: 50 gal, material: steel, working-pressure: 150 psi }
            heater:  { energy: gas, input: 40000 Btu/h, set-point: 140 degF }
            piping:
              - { material: copper, outside-diameter: 0.875 in, wall: 0.045 in, length: 60 ft }
            relief:
              - { name: T&P valve, opens: 150 psi, opens-at: 210 degF }
            vessel:  { volume: 4.5 gal, precharge: 40 psi }
            draws:   us-medium
            run:     { duration: 24 h }
            """;

    private static String said(VesselAnswer answer, UnitSystem units) {
        return SizingReport.answer(answer, units).report().get().text().replaceAll("\\s+", " ");
    }

    @Test
    void aSupplyThatLeavesNoRoomIsSetLower() {
        VesselAnswer answer =
                VesselChoice.of(ScenarioReader.read("elm", UNDERPUMPED)).build().answer();
        noStepIsLeftOut(answer);
        LowerSupply lower = answer.supplies().cheapest().orElseThrow();
        assertTrue(lower.owned() && !lower.supply().fitted() && lower.price().isEmpty(), lower::toString);
        String text = said(answer, UnitSystem.US);
        assertTrue(
                text.contains("No: the 4.5 gal expansion tank of this house is too small at the present supply."),
                text);
        assertTrue(
                text.contains("The cheapest way that works: have the reducing valve set to 50 psi (54 psi with no water"
                        + " running). Then the 4.5 gal expansion tank of this house, precharged to 54 psi instead of 40"
                        + " psi, stays"
                        + " within the limit in nine of ten sampled houses, with nothing to buy."),
                text);
        assertTrue(
                text.matches(
                        "(?s).*More pressure at the faucets takes a larger expansion tank: ([\\d.]+ gal at 65 psi, )?"
                                + "[\\d.]+ gal at 60 psi, [\\d.]+ gal at 55 psi\\. .*"),
                text);
        assertTrue(text.contains("set to 50 psi"), "the way that is advised is in the table");
        assertTrue(text.contains(" Supply set as it is 70 psi 65 psi 60 psi"), "each head in one line: " + text);
        assertTrue(text.contains("Precharge 79 74 69 64 59 54 49"), "every setting: " + text);
        assertTrue(
                text.contains(
                        "cheapest of these: 4.5 gal with the supply set to 50 psi and the expansion tank recharged to 54"
                                + " psi, nothing to buy"),
                text);
        assertTrue(text.matches("(?s).* 4\\.5 gal (drips |no room |[\\d.]+ )+[\\d.]+ cheapest .*"), text);
        assertFalse(text.matches("(?s).*\\d (bar|L|degC)\\b.*"), text);
    }

    /** Regression: the table took a setting within 2 psi and asked for 6 gal, where the house with that setting was told 4.5 gal. */
    @Test
    void aSettingCallsForOneSizeWhetherInTheTableOrInTheHouse() {
        Scenario house = ScenarioReader.read("doubtful", """
                supply:
                  arrangement: reducing-valve
                  pressure: 110 psi +- 9 psi
                  water: 55 degF +- 2 degF
                  reducing-valve: { set: 75 psi +- 9 psi }
                tank:   { volume: 50 gal +- 3 gal, material: steel }
                heater: { energy: gas, input: 40000 Btu/h +- 2000 Btu/h, set-point: 120 degF +- 5 degF }
                relief:
                  - { opens: 150 psi +- 5 psi, opens-at: 210 degF }
                site: { place: us-ipc }
                """);
        SupplyTable.Column column = VesselChoice.of(house).build().answer().supplies().columns().stream()
                .filter(one -> one.setting()
                        .filter(set -> Math.abs(PressureUnit.PSI.fromSi(set.value()) - 60) < 1e-6)
                        .isPresent())
                .findFirst()
                .orElseThrow();
        VesselAnswer there = VesselChoice.of(house.with(List.of(Change.of("supply.reducing-valve.set=60 psi"))))
                .build()
                .answer();
        assertEquals(there.recommended().orElseThrow().volume(), column.sure().orElseThrow(), 1e-9);
    }

    /** Regression: who only set the valve lower, as a table told, still had a drip; the charge it takes is that at the vessel's height. */
    @Test
    void aLowerSupplyNamesTheChargeThatGoesWithIt() {
        String high = UNDERPUMPED
                .replaceAll("precharge: 40 psi", "precharge: 40 psi, height: 10 ft")
                .replaceAll("(?m)^(draws|run):.*\n", "");
        VesselAnswer answer =
                VesselChoice.of(ScenarioReader.read("elm", high)).build().answer();
        double air = answer.scenario().system().site().atmosphere();
        QuantityFormat shown = QuantityFormat.ascii(UnitSystem.US);
        LowerSupply lower = answer.supplies().cheapest().orElseThrow();
        assertTrue(lower.owned(), lower::toString);
        String charge = shown.pressure(lower.precharge().gauge(air));
        assertFalse(shown.pressure(lower.supply().standing().gauge(air)).equals(charge));
        String text = said(answer, UnitSystem.US).replace("tank", "vessel");
        assertTrue(text.contains("and the expansion vessel recharged to " + charge + ", nothing to buy"), text);
        String choices = text.substring(text.indexOf("What you can do"));
        assertTrue(choices.contains("recharged"), choices);
        assertTrue(text.matches("(?s).* Precharge ([\\d.]+ )+" + charge.replace(" psi", "") + " .*"), text);
    }

    /** Regression: the papers told the fitter to charge the vessel that was bought to the old supply, where it is far too small. */
    @Test
    void thePapersAreAboutTheWayThatIsAdvised() throws IOException {
        String bare = UNDERPUMPED.replaceAll("(?m)^vessel:.*\\n", "").replaceAll("(?m)^(draws|run):.*\\n", "");
        VesselAnswer answer = VesselChoice.of(ScenarioReader.read("elm", bare))
                .bought(NominalSize.of(2, VolumeUnit.US_GALLON))
                .build()
                .answer();
        double air = answer.scenario().system().site().atmosphere();
        double charge = answer.supplies().cheapest().orElseThrow().precharge().gauge(air);
        VesselAnswer work = answer.forTheWork();
        ExpansionVessel vessel = work.proposed().orElseThrow().system().vessel().orElseThrow();
        assertEquals(charge, vessel.precharge().gauge(air), 1);
        assertTrue(work.tooSmall().isPresent() && work.bought().isEmpty());
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        for (ResultFile file : SizingReport.answer(answer, UnitSystem.US).files()) {
            if (file.name().equals("report.html")) {
                file.writeTo(bytes);
            }
        }
        String page = bytes.toString(StandardCharsets.UTF_8)
                .replaceAll("<[^>]*>", " ")
                .replace('\u00a0', ' ')
                .replace('\u202f', ' ')
                .replaceAll(" \\([\\d.]+ (bar|L)\\)", "")
                .replaceAll("\\s+", " ");
        String todo = page.substring(page.indexOf("What to do "), page.indexOf("For the authority: "));
        assertTrue(todo.contains("of 2 gal that was bought is too small: the pressure would go to "), todo);
        assertTrue(todo.contains("Have the reducing valve set to 50 psi. The supply must then be at 54 psi"), todo);
        assertTrue(todo.contains("installed, charged to 54 psi before it is connected"), todo);
        assertTrue(todo.contains("Have the reducing valve set to 50 psi, read with a little water running"), todo);
        assertTrue(todo.contains("Pump it up by hand to 54 psi"), todo);
        assertFalse(todo.contains("79 psi"), todo);
        assertTrue(page.contains("because the supply at its highest leaves only 0.6 psi below the limit."), page);
        assertTrue(
                page.indexOf("have the reducing valve set to 50 psi") < page.indexOf("108 gal"),
                "what can be had first");
        String authority = page.substring(page.indexOf("For the authority: "));
        assertTrue(authority.contains("All of this is with the reducing valve set to 50 psi"), authority);
    }

    /** The columns are next to each other in steps of 5 psi, also where the way that is advised is far down. */
    private static void noStepIsLeftOut(VesselAnswer answer) {
        List<SupplyTable.Column> columns = answer.supplies().columns();
        double air = answer.scenario().system().site().atmosphere();
        for (int i = 2; i < columns.size(); i++) {
            double higher = columns.get(i - 1).setting().orElseThrow().gauge(air);
            assertEquals(
                    PressureUnit.PSI.toSi(5),
                    higher - columns.get(i).setting().orElseThrow().gauge(air),
                    1);
        }
        assertEquals(7, columns.size());
    }

    /** The house after the advice was followed is one whose vessel is large enough, by the same question. */
    @ParameterizedTest
    @ValueSource(strings = {"mill-cottage-high-mains", "orchard-lodge"})
    void whoeverFollowsTheAdviceIsToldThatItIsEnough(String name) {
        Scenario scenario = Catalogue.read(name);
        LowerSupply lower =
                VesselChoice.of(scenario).build().answer().supplies().cheapest().orElseThrow();
        double air = scenario.system().site().atmosphere();
        double set = PressureUnit.BAR.fromSi(lower.supply().valve().gauge(air));
        double charge = PressureUnit.BAR.fromSi(lower.precharge().gauge(air));
        Scenario followed = scenario.with(List.of(
                Change.of("supply.arrangement=reducing-valve"),
                Change.of("supply.reducing-valve={ set: " + set + " bar }"),
                Change.of("vessel={ volume: " + VolumeUnit.LITRE.fromSi(lower.volume()) + " L, precharge: " + charge
                        + " bar }")));
        VesselAnswer again = VesselChoice.of(followed).build().answer();
        assertTrue(again.recommended().orElseThrow().volume() <= lower.volume() * (1 + 1e-9));
        assertTrue(said(again, UnitSystem.SI)
                .contains(
                        " vessel of this house is large enough and its precharge is right: there is nothing to buy."));
    }

    /** Nothing that is normal life goes unmentioned because it costs nothing now. */
    @Test
    void whatElseCouldBeDoneHasItsPrice() {
        VesselAnswer answer =
                VesselChoice.of(Catalogue.read("tannery-yard")).build().answer();
        List<DischargingValve> valves = answer.valves();
        assertEquals(
                List.of(DischargingValve.Kind.COLD_RELIEF, DischargingValve.Kind.SAFETY_GROUP),
                valves.stream().map(DischargingValve::kind).toList());
        double asItIs = answer.waterAsItIs().orElseThrow().volume();
        for (DischargingValve valve : valves) {
            assertEquals(
                    asItIs,
                    valve.water().orElseThrow().volume(),
                    0.05 * asItIs,
                    "the water that swells goes somewhere");
        }
        String text = said(answer, UnitSystem.SI);
        for (String row : List.of(
                "Do nothing drips while the water",
                "A relief valve on the",
                "A safety group, set to",
                "0.96 m3 4.32 EUR")) {
            assertTrue(text.contains(row), text);
        }
        assertTrue(text.contains("scale may"), "regression: nothing said that a valve which drips for good may stick");
        VesselAnswer near =
                VesselChoice.of(Catalogue.read("orchard-lodge")).build().answer();
        assertTrue(
                near.valves().stream().noneMatch(valve -> valve.kind() == DischargingValve.Kind.COLD_RELIEF),
                "4.5 bar less a tenth is below the supply");
    }

    /** Regression: a house at 4 bar was told first to set its valve to 2 bar, which leaves a shower one floor up less than 1 bar. */
    @Test
    void aShowerKeepsItsPressureAndAValveThatDripsByDesignIsNoFault() {
        String house = """
                site: { place: au-nz }
                supply: { arrangement: reducing-valve, pressure: 700 kPa, water: 15 degC, reducing-valve: { set: 500 kPa } }
                tank: { volume: 250 L, material: steel, working-pressure: 1000 kPa }
                heater: { energy: electric, input: 3.6 kW, set-point: 65 degC, cut-out: 85 degC }
                relief:
                  - { name: cold valve, kind: expansion-valve, opens: 700 kPa }
                  - { name: PTR valve, opens: 1000 kPa, opens-at: 99 degC, rated-input: 10 kW }
                vessel: { volume: 8 L, precharge: 350 kPa, rating: 1000 kPa }
                """;
        VesselAnswer answer =
                VesselChoice.of(ScenarioReader.read("wattle", house)).build().answer();
        double lowest = answer.supplies().columns().stream()
                .flatMap(column -> column.setting().stream())
                .mapToDouble(setting -> PressureUnit.BAR.fromSi(setting.value()))
                .min()
                .orElseThrow();
        assertEquals(3, lowest, 1e-9, "1.4 bar at the shower, 0.5 bar up to it and 0.7 bar of droop");
        String text = said(answer, UnitSystem.KPA);
        assertTrue(text.contains("have the reducing valve set to 300 kPa"), text);
        String page = SizingPage.words(answer, UnitSystem.KPA);
        assertTrue(page.contains("No setting is looked at that leaves less than 1"), page);
        String step = Narrative.normalDrip(answer.asItIs().summary())
                .orElseThrow()
                .text(QuantityFormat.ascii(UnitSystem.KPA));
        assertTrue(step.startsWith("'cold valve' is made to discharge the expansion"), step);
        assertFalse(text.contains("A question for the tank's manufacturer"), "of a valve that opens at the plate");
    }
}
