package io.github.heatswell.scenarios.file;

import static org.junit.jupiter.api.Assertions.assertThrows;

import io.github.heatswell.scenarios.fault.Fault;
import java.util.List;

/** Texts of scenarios for tests. */
public final class Sources {

    /** A sound scenario in which every key is given; each line is one that tests replace. */
    public static final String FULL = """
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

    /** A house in the US behind a reducing valve, without a vessel. */
    public static final String REDUCED = """
            site: { place: us-ipc }
            supply:
              arrangement: reducing-valve
              pressure: 85 psi
              reducing-valve: { set: 60 psi }
              water: 54 degF
            tank: { volume: 50 gal, material: steel, working-pressure: 150 psi }
            heater: { energy: gas, input: 40000 Btu/h, set-point: 125 degF }
            relief:
              - { opens: 150 psi, opens-at: 210 degF }
            """;

    /** A sound scenario with no key that could be left out. */
    static final String LEAST = """
            supply: { arrangement: check-valve, pressure: 4.2 bar }
            tank: { volume: 230 L, material: steel }
            heater: { energy: gas, input: 11.2 kW, set-point: 58 degC }
            """;

    /** A sound scenario that uses every further key; each line is one that tests replace. */
    public static final String RICH = """
            supply:
              arrangement: reducing-valve
              pressure: [{ at: 06:00, pressure: 5 bar }, { at: 23:30, pressure: 8 bar }]
              water: { annual-mean: 10 degC, monthly-swing: 18 K, hemisphere: south }
              seat-leakage: 5 mL/min
              reducing-valve: { set: 3.5 bar, lock-up-rise: 0.2 bar, droop: 0.6 bar, rated-flow: 25 L/min, bypass-opens: 0.1 bar }
              shut-off: [{ from: 2 h, to: 3 h }, { from: 1 d, to: 25 h }]
            tank: { volume: 230 L, material: steel, diameter: 480 mm, layers: 12, height: 1.3 m, never-fails: no, expansion: 12 ppm/K, air: 0.2 L, inlet-mixing: 20 % }
            heater: { energy: electric, input: 3 kW, set-point: 58 degC, height: 10 %, simultaneous: yes, thermostat: stuck, cut-out: 85 degC, mixed-to: 48 degC,
              upper: { input: 2 kW, height: 70 %, set-point: 60 degC, differential: 4 K } }
            piping: [{ material: pex, outside-diameter: 22 mm, wall: 3 mm, length: 14 m, stiffness-at: 60 degC, loaded-for: 1 h }, { material: copper, outside-diameter: 18 mm, wall: 1 mm, length: 6 m, carries: hot, insulation: 13 mm }, { material: copper, outside-diameter: 15 mm, wall: 1 mm, length: 30 m, carries: loop }]
            relief:
              - { name: first, opens: 7 bar, height: 2 m, fault: { leaks-from: 3 bar, leakage: 10 mL/min }, kind: expansion-valve }
              - { name: second, opens: 8 bar, fault: { stuck-open: 5 % } }
              - { name: third, opens: 9 bar, location: tank-top, opens-at: 99 degC, reseats-at: 88 degC, fault: blocked, rated-input: 40000 Btu/h }
            vessel: { volume: 12 L, precharge: 3.5 bar, charged-at: 5 degC, temperature: 30 degC, height: 1.8 m, condition: isolated, rating: 150 psi, mounting: horizontal-supported, empty-mass: 10 lb, length: 380 mm, name: on the wall }
            trapped-air: 0.5 L
            leaks: [{ flow: 40 mL/min, at: 4 bar }]
            draws: [{ at: 07:00, volume: 40 L, flow: 6 L/min, mixed: 40 degC }, { at: 19:15:30, energy: 1.4 kWh, flow: 8 L/min }]
            gauge: { height: 1.5 m }
            run: { begins: 06:00, day: 15 Jan, duration: 2 d, tolerance: 1e-9 }
            vessels: [{ name: in the tank, volume: 8 L, precharge: 3.2 bar }]
            circulation: { flow: 3 L/min, pump: [{ from: 05:30, to: 22:00 }], return: 30 % }
            """;

    private Sources() {}

    /** The rich scenario with a piece of its text replaced. */
    static String richWith(String piece, String replacement) {
        if (!RICH.contains(piece)) {
            throw new IllegalArgumentException("no such piece: " + piece);
        }
        return RICH.replace(piece, replacement);
    }

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
