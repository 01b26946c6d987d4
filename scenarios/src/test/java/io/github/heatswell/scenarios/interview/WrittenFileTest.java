package io.github.heatswell.scenarios.interview;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.assessment.Findings;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.file.ScenarioReader;
import io.github.heatswell.scenarios.file.UncertainField;
import io.github.heatswell.scenarios.interview.Interview.Outcome;
import io.github.heatswell.study.Distribution;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.Supply;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Contracts of the file: it reads back as what was answered, and what was not known is a range or says so. */
@Order(1)
class WrittenFileTest {

    /** An atmosphere (Pa) to compare gauge readings at; any will do. */
    private static final double AIR = 101_325;

    /** Of conversions there and back (-). */
    private static final double ROUNDING = 1e-9;

    @TempDir
    private Path folder;

    private Scenario scenario(UnitSystem units, List<String> answers) throws IOException {
        return read(text(units, answers));
    }

    private String text(UnitSystem units, List<String> answers) throws IOException {
        Path file = folder.resolve("house-" + folder.toFile().list().length + ".yaml");
        Talk talk = Talk.hold(file, units, answers);
        assertEquals(new Outcome(Outcome.Ending.FINISHED, file), talk.outcome(), talk.dialogue());
        return talk.text();
    }

    /** Reads a file back, also with everything uncertain as low and as high as a study takes it. */
    private static Scenario read(String text) {
        Scenario scenario = ScenarioReader.read("house", text);
        List<Distribution> spreads =
                scenario.uncertain().stream().map(field -> field.distribution()).toList();
        scenario.drawn(spreads.stream().mapToDouble(Distribution::low).toArray());
        scenario.drawn(spreads.stream().mapToDouble(Distribution::high).toArray());
        return scenario;
    }

    private static List<String> uncertain(Scenario scenario) {
        return scenario.uncertain().stream()
                .map(field -> field.field() + ": " + field.text())
                .toList();
    }

    private static void assertGauge(double bar, Pressure pressure) {
        assertEquals(bar * 1e5, pressure.gauge(AIR), 1e5 * ROUNDING);
    }

    /** Who answers in psi reads the next report in psi. */
    @Test
    void theFileSaysHowToRunItInTheUnitsOfTheAnswers() throws IOException {
        assertTrue(text(UnitSystem.US, Answering.us()).contains("heatswell run FILE -u us\n"));
        assertTrue(text(UnitSystem.SI, Answering.si()).contains("heatswell run FILE\n"));
    }

    @Test
    void metricAnswersReadBack() throws IOException {
        Scenario scenario = scenario(UnitSystem.SI, Answering.si());
        HotWaterSystem system = scenario.system();
        assertEquals("Orchard lodge", scenario.title());
        assertTrue(scenario.question().startsWith("The relief valve drips during heat-up."));
        assertEquals(Supply.Arrangement.CHECK_VALVE, system.supply().arrangement());
        assertGauge(5.1, system.supply().mains().entries().get(3600.0));
        assertGauge(4.2, system.supply().mains().entries().get(7 * 3600.0));
        assertEquals(4, system.supply().mains().entries().size());
        assertEquals(0.23, system.tank().volume(), ROUNDING);
        assertGauge(10, system.tank().workingPressure());
        assertEquals(11_200, system.heater().input(), 11_200 * ROUNDING);
        assertEquals(273.15 + 58, system.heater().setPoint(), 300 * ROUNDING);
        ReliefValve valve = system.reliefValves().get(0);
        assertGauge(7, valve.setPressure());
        assertTrue(valve.setTemperature().isEmpty());
        ExpansionVessel vessel = system.vessel().orElseThrow();
        assertEquals(0.012, vessel.volume(), ROUNDING);
        assertGauge(3.5, vessel.precharge());
        assertTrue(system.draws().draws().isEmpty());
        assertEquals(
                List.of(
                        "supply.pressure[0].pressure: 5.1 bar +- 0.3 bar",
                        "supply.pressure[1].pressure: 5.1 bar +- 0.3 bar",
                        "supply.pressure[2].pressure: 4.2 bar +- 0.3 bar",
                        "supply.pressure[3].pressure: 4.2 bar +- 0.3 bar",
                        "supply.water: 9 degC +- 1 K",
                        "tank.volume: 230 L +- 7 L",
                        "heater.input: 11.2 kW +- 0.6 kW",
                        "heater.set-point: 58 degC +- 3 K",
                        "relief[0].opens: 7 bar +- 0.2 bar",
                        "vessel.volume: 12 L +- 0.4 L",
                        "vessel.precharge: 3.5 bar +- 0.2 bar"),
                uncertain(scenario));
    }

    @Test
    void americanAnswersReadBack() throws IOException {
        HotWaterSystem system = scenario(UnitSystem.US, Answering.us()).system();
        double psi = 6894.757293168361; // a pound-force (0.45359237 kg x 9.80665 m/s2) on a square inch (0.0254 m)
        assertEquals(Supply.Arrangement.REDUCING_VALVE, system.supply().arrangement());
        assertTrue(system.supply().mains().isConstant());
        assertGauge(90 * psi / 1e5, system.supply().mains().entries().get(0.0));
        assertGauge(
                50 * psi / 1e5, system.supply().reducingValve().orElseThrow().set());
        assertEquals(50 * 3.785411784e-3, system.tank().volume(), ROUNDING); // 231 cubic inches
        assertEquals(273.15 + (125 - 32) / 1.8, system.heater().setPoint(), 300 * ROUNDING);
        assertEquals(
                273.15 + (210 - 32) / 1.8,
                system.reliefValves().get(0).setTemperature().orElseThrow(),
                400 * ROUNDING);
        assertTrue(system.vessel().isEmpty());
        assertFalse(system.draws().draws().isEmpty());
    }

    @ParameterizedTest
    @ValueSource(strings = {"SI", "US"})
    void whatIsNotKnownIsARangeOrSaysSo(String units) throws IOException {
        String text = text(UnitSystem.valueOf(units), Answering.nothing());
        Scenario scenario = read(text);
        assertEquals("My house", scenario.title());
        assertEquals(Supply.Arrangement.CHECK_VALVE, scenario.system().supply().arrangement());
        List<String> lines = text.lines().toList();
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i);
            if (line.matches(" +(- )?[a-z-]+: \\S.*") && !line.startsWith("  typical: ")) {
                assertTrue(line.contains(" to ") || line.matches(".*: [a-z-]+"), line);
                assertTrue(comment(lines, i).contains("not known"), line);
            }
        }
        assertEquals(
                List.of(
                        "supply.pressure",
                        "supply.water",
                        "tank.volume",
                        "heater.input",
                        "heater.set-point",
                        "relief[0].opens"),
                scenario.uncertain().stream().map(UncertainField::field).toList());
        assertFalse(text.contains("+-") && !text.contains("A +- B"), text);
    }

    /** A "don't know" to a choice stays one: findings that rest on it say so; an answer to it does not. */
    @Test
    void choicesThatAreNotKnownStayDoubts() throws IOException {
        String said = scenario(UnitSystem.SI, Answering.nothing())
                .doubts()
                .sentence()
                .orElseThrow()
                .text(UnitSystem.SI);
        for (String choice : List.of(
                "what sits in the cold feed, taken as a check valve",
                "the expansion vessel, taken as missing",
                "the material of the tank, taken as steel",
                "what heats the water, taken as electricity",
                "the set temperature of a relief valve, taken as none")) {
            assertTrue(said.contains(choice), said);
        }
        assertFalse(text(UnitSystem.SI, Answering.si()).contains("not-known:"));
    }

    /** The comment above a line. */
    private static String comment(List<String> lines, int at) {
        StringBuilder comment = new StringBuilder();
        for (int i = at - 1; i >= 0 && lines.get(i).strip().startsWith("#"); i--) {
            comment.insert(0, lines.get(i).strip().substring(1));
        }
        return comment.toString();
    }

    /** A bypass decides whether a relief valve opens: it is asked, and one that nobody looked up is among what is assumed. */
    @Test
    void theBypassOfAReducingValveIsAskedAndElseAssumed() throws IOException {
        Scenario known = scenario(UnitSystem.US, Answering.replacing(Answering.us(), 6, "1 psi"));
        assertEquals(
                PressureUnit.PSI.toSi(1),
                known.system()
                        .supply()
                        .reducingValve()
                        .orElseThrow()
                        .bypassOpens()
                        .orElseThrow(),
                1e-6);
        for (String answer : List.of("none", "dk")) {
            Scenario without = scenario(UnitSystem.US, Answering.replacing(Answering.us(), 6, answer));
            assertTrue(without.system()
                    .supply()
                    .reducingValve()
                    .orElseThrow()
                    .bypassOpens()
                    .isEmpty());
            boolean assumed = without.assumptions().stream()
                    .anyMatch(one -> one.field().equals("supply.reducing-valve.bypass-opens"));
            assertEquals(answer.equals("dk"), assumed);
            String fault = Findings.of(without.system(), without.doubts()).stream()
                    .filter(finding -> finding.id().equals("expansion-control-missing"))
                    .findFirst()
                    .orElseThrow()
                    .sentence()
                    .text(UnitSystem.US);
            assertEquals(assumed, fault.contains("the bypass of the reducing valve, assumed none"), fault);
            assertEquals(!assumed, fault.contains("described without a bypass"), fault);
        }
    }

    /** Every question left open alone, in a house with everything, in one unit system and the other by turns. */
    @Test
    void anyOneAnswerMayBeMissing() throws IOException {
        List<String> all = new ArrayList<>(Answering.si());
        all.set(2, "reducing-valve");
        all.add(5, "3 bar");
        all.add(6, "0.2 bar");
        all.set(16, "8 bar");
        all.add(17, "99 degC");
        for (int i = 0; i < all.size(); i++) {
            List<String> answers = new ArrayList<>(all);
            answers.set(i, "dk");
            if (i == 3) {
                answers.remove(4);
            } else if (i == 2) {
                answers.subList(5, 7).clear();
            } else if (i == 16) {
                answers.remove(17);
            } else if (i == 18) {
                answers.subList(19, 21).clear();
            }
            UnitSystem units = UnitSystem.values()[i % 2];
            assertTrue(scenario(units, answers).simulation() != null, answers.toString());
        }
    }

    /** The spread of a reading may reach beyond what a file allows; then the reading stands alone. */
    @Test
    void readingsAtTheEdgeOfTheirRangeAreTaken() throws IOException {
        List<String> answers = new ArrayList<>(Answering.us());
        answers.set(3, "362 psi");
        answers.set(7, "0 degC");
        answers.set(13, "99 degC");
        answers.set(14, "25 bar");
        HotWaterSystem system = scenario(UnitSystem.US, answers).system();
        assertEquals(273.15 + 99, system.heater().setPoint(), 400 * ROUNDING);
        assertGauge(25, system.reliefValves().get(0).setPressure());
    }

    /** Where what else is known leaves no room for the usual range, the question stays. */
    @Test
    void aUsualRangeThatCannotBeIsNotTaken() throws IOException {
        List<String> answers = new ArrayList<>(Answering.si());
        answers.set(3, "1 bar");
        answers.set(4, "dk");
        answers.set(8, "3.5 bar");
        answers.set(17, "dk");
        answers.add(18, "1.5 bar");
        Path file = folder.resolve("low.yaml");
        Talk talk = Talk.hold(file, UnitSystem.SI, answers);
        String said = talk.dialogue().replaceAll("\\s+", " ");
        assertTrue(
                said.contains("Not accepted: the usual range, 1 bar to 4 bar, conflicts with the earlier answers (4 bar"
                        + " gauge must be"),
                said);
        assertEquals(Outcome.Ending.FINISHED, talk.outcome().ending(), said);
        assertGauge(1.5, read(talk.text()).system().vessel().orElseThrow().precharge());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Mill: the cottage",
                "\"quoted\" and 'single'",
                "#42 # not a comment",
                "back\\slash \\n \\\" end\\",
                "{ a: b } [c] & *d !e |f >g %h @i `j",
                "- item",
                "yes",
                "null",
                "4.2",
                "--- ... ---",
                "  blanks \t around   and within ",
                "a = b: #: title = c",
                "Grüße, 家"
            })
    void titlesMeanNothingButThemselves(String title) throws IOException {
        List<String> answers = Answering.replacing(Answering.us(), 1, title);
        String expected = title.strip().replaceAll("\\s+", " ");
        assertEquals(expected, scenario(UnitSystem.SI, answers).title());

        Path other = folder.resolve("resumed.yaml");
        Talk.hold(other, UnitSystem.SI, List.of("us-ipc", title, "quit"));
        List<String> rest = new ArrayList<>(answers);
        rest.remove(0);
        rest.set(0, "yes");
        assertEquals(
                expected, read(Talk.hold(other, UnitSystem.SI, rest).text()).title());
    }

    @ParameterizedTest
    @ValueSource(strings = {"\u001b[31mred", "a\u0000b", "right\u202eleft", "x\u2028y\u0085z"})
    void titlesThatCommandATerminalAreRefused(String title) throws IOException {
        Talk talk = Talk.hold(folder.resolve("h.yaml"), "dk", title, "x".repeat(121), "x".repeat(120), "quit");
        assertTrue(talk.dialogue().contains("Not accepted: this contains invisible characters"));
        assertTrue(talk.dialogue().contains("Not accepted: this has 121 characters; up to 120 are allowed."));
        assertTrue(talk.dialogue().contains("3 of "));
    }

    @Test
    void noReliefValveIsSaidPlainly() throws IOException {
        List<String> answers = new ArrayList<>(Answering.us());
        answers.set(14, "none");
        answers.remove(15);
        String text = text(UnitSystem.US, answers);
        assertTrue(
                text.contains("# Answered: there is no relief valve. A heater without one can explode.\nrelief: []"));
        assertTrue(read(text).system().reliefValves().isEmpty());
    }
}
