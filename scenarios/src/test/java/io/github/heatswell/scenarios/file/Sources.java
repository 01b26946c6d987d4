package io.github.heatswell.scenarios.file;

import static org.junit.jupiter.api.Assertions.assertThrows;

import io.github.heatswell.scenarios.document.Fault;
import java.util.List;

/** Texts of scenarios for tests. */
final class Sources {

    /** A sound scenario in which every key is given; each line is one that tests replace. */
    static final String FULL = """
            title: House by the brook
            site: { altitude: 310 m, room: 17 degC }
            supply: { arrangement: check-valve, pressure: 4.2 bar, water: 9 degC }
            tank: { volume: 230 L, material: steel, diameter: 480 mm, wall: 2.2 mm, standing-loss: 2.4 W/K, working-pressure: 10 bar }
            heater: { energy: gas, input: 11.2 kW, recovery-efficiency: 78 %, set-point: 58 degC, differential: 6 K }
            piping:
              - { material: copper, outside-diameter: 22 mm, wall: 0.9 mm, length: 14 m }
            relief:
              - { name: expansion valve, opens: 7 bar, full-lift: 7.7 bar, reseats: 5.6 bar, full-flow: 20 L/min, character: snap }
            vessel: { volume: 12 L, precharge: 4.2 bar, acceptance: 60 %, gas-time-constant: 30 s }
            start: { water: 40 degC, pressure: 4.5 bar }
            run: { duration: 4 h, sample: 1 min }
            """;

    /** A sound scenario with no key that could be left out. */
    static final String LEAST = """
            supply: { arrangement: check-valve, pressure: 4.2 bar }
            tank: { volume: 230 L, material: steel }
            heater: { energy: gas, input: 11.2 kW, set-point: 58 degC }
            """;

    private Sources() {}

    /** The full scenario with a piece of its text replaced. */
    static String with(String piece, String replacement) {
        if (!FULL.contains(piece)) {
            throw new IllegalArgumentException("no such piece: " + piece);
        }
        return FULL.replace(piece, replacement);
    }

    /** The full scenario with a whole line replaced, found by how it begins. */
    static String withLine(String beginning, String replacement) {
        return FULL.replaceFirst("(?m)^" + beginning + ".*$", replacement.replace("\\", "\\\\"));
    }

    /** What is wrong with a text. */
    static List<Fault> faults(String text) {
        return assertThrows(InvalidScenarioException.class, () -> ScenarioReader.read("house", text), text)
                .faults();
    }
}
