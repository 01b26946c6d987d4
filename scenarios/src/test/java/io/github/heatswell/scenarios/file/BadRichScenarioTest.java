package io.github.heatswell.scenarios.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.scenarios.fault.Fault;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One slip in one of the further keys gives one message, at the right place. */
class BadRichScenarioTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '\0', textBlock = """
            at: 06:00, pressure: 5 bar | at: 25:00, pressure: 5 bar | 3:20 | supply.pressure[0].at: 25:00 is outside the allowed range, 00:00 to 23:59:59; midnight is 00:00
            at: 06:00, pressure: 5 bar | at: 6, pressure: 5 bar | 3:20 | supply.pressure[0].at: '6' is not a time of day; write hours and minutes: 06:30 or 18:30
            at: 06:00, pressure: 5 bar | at: 26:00 pm, pressure: 5 bar | 3:20 | supply.pressure[0].at: 26:00 pm is not a time of day
            pressure: 5 bar } | pressure: 50 bar } | 3:37 | supply.pressure[0].pressure: 50 bar is outside the allowed range, above 0 bar to 25 bar
            pressure: 5 bar } | presure: 5 bar } | 3:27 | supply.pressure[0].presure: is not a known key here; did you mean pressure?
            at: 23:30 | at: 06:00 | 3:3 | supply.pressure: gives two pressures for the same time of day
            [{ at: 06:00, pressure: 5 bar }, { at: 23:30, pressure: 8 bar }] | [] | 3:3 | supply.pressure: is an empty timetable; give at least one time with a pressure
            [{ at: 06:00, pressure: 5 bar }, { at: 23:30, pressure: 8 bar }] | { at: 06:00 } | 3:3 | supply.pressure: needs a single value or a list, not keys and values; write, for example, 'pressure: 4.2 bar'
            [{ at: 06:00, pressure: 5 bar }, | [5 bar, | 3:14 | supply.pressure[0]: needs keys and values, not a single value; its keys are at, pressure
            annual-mean: 10 degC, | | 4:3 | supply.water.annual-mean: is missing; write, for example, 'annual-mean: 10 degC'
            annual-mean: 10 degC | annual-mean: 50 degC | 4:25 | supply.water.annual-mean: 50 degC is outside the allowed range, -10 degC to 35 degC
            monthly-swing: 18 K | monthly-swing: 18 bar | 4:49 | supply.water.monthly-swing: 'bar' is a unit of pressure; give a temperature difference in K or degF
            monthly-swing: 18 K | monthly-swing: 51 K | 4:49 | supply.water.monthly-swing: 51 K is outside the allowed range, 0 K to 50 K
            hemisphere: south | hemisphere: west | 4:67 | supply.water.hemisphere: 'west' is not one of north, south
            seat-leakage: 5 mL/min | seat-leakage: 11 L/min | 5:17 | supply.seat-leakage: 11 L/min is outside the allowed range, 0 L/min to 10 L/min
            set: 3.5 bar | set: 0.2 bar | 6:26 | supply.reducing-valve.set: 0.2 bar is outside the allowed range, 0.5 bar to 12 bar
            set: 3.5 bar, | | 6:3 | supply.reducing-valve.set: is missing; write, for example, 'set: 3.5 bar'
            lock-up-rise: 0.2 bar | lock-up-rise: 3 bar | 6:49 | supply.reducing-valve.lock-up-rise: 3 bar is outside the allowed range, 0 bar to 2 bar
            droop: 0.6 bar | droop: 5 bar | 6:65 | supply.reducing-valve.droop: 5 bar is outside the allowed range, 0 bar to 4 bar
            rated-flow: 25 L/min | rated-flow: 25 L | 6:86 | supply.reducing-valve.rated-flow: 'L' is a unit of volume
            bypass-opens: 0.1 bar | bypass-opens: 2.1 bar | 6:110 | supply.reducing-valve.bypass-opens: 2.1 bar is outside the allowed range, 0 bar to 2 bar
            bypass-opens: 0.1 bar | by-pass: 0.1 bar | 6:96 | supply.reducing-valve.by-pass: is not a known key here
            mixed-to: 48 degC | mixed-to: 90 degC | 9:142 | heater.mixed-to: 90 degC is outside the allowed range, 30 degC to 80 degC
            rated-input: 40000 Btu/h | rated-input: 0 kW | 15:123 | relief[2].rated-input: 0 kW is outside the allowed range, above 0 kW to 2000 kW
            rating: 150 psi | rating: 0.4 bar | 16:131 | vessel.rating: 0.4 bar is outside the allowed range, 0.5 bar to 25 bar
            volume: 8 L, precharge: 3.2 bar | precharge: 3.2 bar | 22:11 | vessels[0].volume: is missing; write, for example, 'volume: 12 L'
            name: in the tank | name: on the wall | 22:19 | vessels[0].name: 'on the wall' is already the name of another vessel
            name: in the tank | name: On the Wall | 22:19 | vessels[0].name: 'On the Wall' is already the name of another vessel
            precharge: 3.2 bar | precharge: 17 bar | 22:56 | vessels[0].precharge: 17 bar is outside the allowed range, above 0 bar to 16 bar
            precharge: 3.2 bar | precharge: 12 bar | 22:56 | vessels[0].precharge: 12 bar gauge must be above ambient pressure and not above the tank's working pressure of 10 bar gauge
            mounting: horizontal-supported | mounting: sideways | 16:150 | vessel.mounting: 'sideways' is not one of upright, hanging, horizontal, horizontal-supported
            empty-mass: 10 lb | empty-mass: 10 L | 16:184 | vessel.empty-mass: 'L' is a unit of volume
            length: 380 mm | length: 6 m | 16:199 | vessel.length: 6 m is outside the allowed range, 0.05 m to 5 m
            arrangement: reducing-valve | arrangement: check-valve | 6:3 | supply.reducing-valve: is allowed only with the arrangement reducing-valve
            from: 2 h, to: 3 h | from: 3 h, to: 2 h | 7:31 | supply.shut-off[0].to: must be later than from; both count from the start of the run
            from: 2 h, to: 3 h | from: -2 h, to: 3 h | 7:22 | supply.shut-off[0].from: -2 h is outside the allowed range, 0 s to 36525 d
            from: 1 d, to: 25 h | from: 2.5 h, to: 25 h | 7:3 | supply.shut-off: the times overlap
            layers: 12 | layers: 0 | 8:67 | tank.layers: 0 is outside the allowed range, 1 to 50
            layers: 12 | layers: 51 | 8:67 | tank.layers: 51 is outside the allowed range, 1 to 50
            inlet-mixing: 20 % | inlet-mixing: 101 % | 8:150 | tank.inlet-mixing: 101 % is outside the allowed range, 0 % to 100 %
            inlet-mixing: 20 % | inlet-mixing: 5 % | 8:150 | tank.inlet-mixing: 5 % of the tank is not more than one of its 12 layers, which is mixed anyway; give it 21 layers, or leave this out
            inlet-mixing: 20 % | inlet-mixing: 1 % | 8:150 | tank.inlet-mixing: 1 % of the tank is not more than one of its 12 layers, which is mixed anyway; leave it out
            layers: 12, height: 1.3 m, | layers: 1, | 8:134 | tank.inlet-mixing: needs layers; a tank without layers is mixed as a whole
            layers: 12 | layers: 1.5 | 8:67 | tank.layers: '1.5' is not a whole number
            height: 1.3 m, | height: 13 m, | 8:79 | tank.height: 13 m is outside the allowed range, 0.1 m to 10 m
            material: steel, diameter: 480 mm, layers: 12, height: 1.3 m, never-fails: no, expansion: 12 ppm/K, | material: rigid, layers: 12, | 8:1 | tank.height: is missing; write, for example, 'height: 1300 mm'
            air: 0.2 L | air: 0 L | 8:129 | tank.air: 0 L is outside the allowed range, above 0 L to 100 L
            air: 0.2 L | air: 3 L | 8:129 | tank.air: 3 L is more than the highest layer of the tank has room for once the pressure is lost; up to 1.4
            expansion: 12 ppm/K | expansion: 301 ppm/K | 8:114 | tank.expansion: 301 ppm/K is outside the allowed range, 0 ppm/K to 300 ppm/K
            expansion: 12 ppm/K | expansion: 12 mm | 8:114 | tank.expansion: 'mm' is a unit of length; give a linear expansion in ppm/K, mm/(m K) or ppm/degF
            material: steel, diameter: 480 mm, | material: rigid, | 8:96 | tank.expansion: does not apply to a rigid tank; remove it
            stiffness-at: 60 degC | stiffness-at: 96 degC | 11:92 | piping[0].stiffness-at: 96 degC is outside the allowed range, 0 degC to 95 degC
            loaded-for: 1 h | loaded-for: 2000 h | 11:113 | piping[0].loaded-for: 2000 h is outside the allowed range, 0.1 h to 1000 h
            stiffness-at: 60 degC, loaded-for: 1 h | loaded-for: 1 h }, { material: steel, outside-diameter: 22 mm, wall: 3 mm, length: 14 m, stiffness-at: 60 degC | 11:181 | piping[1].stiffness-at: makes no difference for metal; remove it
            carries: hot | carries: warm | 11:199 | piping[1].carries: 'warm' is not one of cold, hot, loop
            carries: hot | carries: cold | 11:217 | piping[1].insulation: makes no difference for a pipe that carries cold water; remove it, or say 'carries: hot' or 'carries: loop'
            carries: hot, | | 11:203 | piping[1].insulation: makes no difference for a pipe that carries cold water; remove it, or say 'carries: hot' or 'carries: loop'
            insulation: 13 mm | insulation: -1 mm | 11:216 | piping[1].insulation: -1 mm is outside the allowed range, 0 mm to 200 mm
            insulation: 13 mm | insulation: 0.3 m | 11:216 | piping[1].insulation: 0.3 m is outside the allowed range, 0 m to 0.2 m
            insulation: 13 mm | insulation: 13 | 11:216 | piping[1].insulation: '13' has no unit; give a length in
            insulation: 13 mm | insulation: 1 W/K | 11:216 | piping[1].insulation: 'W/K' is a unit of heat loss per degree; give a length in
            flow: 3 L/min | flow: 0 L/min | 23:22 | circulation.flow: 0 L/min is outside the allowed range, above 0 L/min to 100 L/min
            flow: 3 L/min, | | 23:1 | circulation.flow: is missing; write, for example, 'flow: 3 L/min'
            from: 05:30, to: 22:00 | from: 05:30, to: 05:30 | 23:57 | circulation.pump[0].to: is the same time as from; leave pump out for one that always runs
            from: 05:30, to: 22:00 | from: 05:30 | 23:38 | circulation.pump[0].to: is missing; write, for example, 'to: 22:00'
            from: 05:30, to: 22:00 | from: 05:30, to: 24:00 | 23:57 | circulation.pump[0].to: 24:00 is outside the allowed range, 00:00 to 23:59:59; midnight is 00:00
            return: 30 % | return: 96 % | 23:75 | circulation.return: 96 % is outside the allowed range, 0 % to 95 %
            carries: loop | carries: hot | 23:1 | circulation: needs pipes; describe flow and return as piping that carries a loop
            circulation: { flow: 3 L/min, pump: [{ from: 05:30, to: 22:00 }], return: 30 % } | | 1:1 | circulation: is missing, though piping carries a loop; give the flow of its pump, such as 3 L/min
            never-fails: no | never-fails: true | 8:99 | tank.never-fails: 'true' is not one of yes, no
            tolerance: 1e-9 | tolerance: 1e-13 | 21:62 | run.tolerance: '1e-13' is not one of 1e-4, 1e-5, 1e-6, 1e-7, 1e-8, 1e-9, 1e-10, 1e-11, 1e-12
            height: 10 % | height: 96 % | 9:70 | heater.height: 96 % is outside the allowed range, 0 % to 95 %
            height: 10 % | height: 80 % | 10:3 | heater.upper: must sit above the lower element
            height: 70 % | height: 96 % | 10:33 | heater.upper.height: 96 % is outside the allowed range, 0 % to 95 %
            height: 70 %, | | 10:3 | heater.upper.height: is missing; write, for example, 'height: 70 %'
            differential: 4 K | differential: 41 K | 10:73 | heater.upper.differential: 41 K is outside the allowed range, 0.1 K to 40 K
            energy: electric | energy: gas | 10:3 | heater.upper: a gas burner has no second element
            simultaneous: yes | simultaneous: true | 9:90 | heater.simultaneous: 'true' is not one of yes, no
            thermostat: stuck | thermostat: broken | 9:107 | heater.thermostat: 'broken' is not one of stuck, working
            cut-out: 85 degC | cut-out: 40 degC | 9:123 | heater.cut-out: 40 degC is outside the allowed range, 50 degC to 130 degC
            cut-out: 85 degC | cut-out: 59 degC | 9:123 | heater.cut-out: must be above the set point, or the cut-out trips on every heat-up
            height: 2 m | height: 31 m | 13:42 | relief[0].height: 31 m is outside the allowed range, -30 m to 30 m
            leaks-from: 3 bar | leaks-from: 7.5 bar | 13:68 | relief[0].fault.leaks-from: 7.5 bar gauge must be below the set pressure of 7 bar gauge
            leaks-from: 3 bar, | | 13:47 | relief[0].fault.leaks-from: is missing; write, for example, 'leaks-from: 3 bar'
            , leakage: 10 mL/min | | 13:47 | relief[0].fault.leakage: is missing; write, for example, 'leakage: 10 mL/min'
            leakage: 10 mL/min | leakage: 0 mL/min | 13:84 | relief[0].fault.leakage: 0 mL/min is outside the allowed range, above 0 mL/min to 10000 mL/min
            leakage: 10 mL/min | leakage: 10 mL/min, stuck-open: 5 % | 13:107 | relief[0].fault.stuck-open: cannot be combined with leaks-from; describe one fault
            fault: { stuck-open: 5 % } | fault: { stuck-open: 105 % } | 14:56 | relief[1].fault.stuck-open: 105 % is outside the allowed range, 0.01 % to 100 %
            fault: { stuck-open: 5 % } | fault: {} | 14:35 | relief[1].fault.stuck-open: is missing; write, for example, 'stuck-open: 5 %'
            fault: { stuck-open: 5 % } | fault: stuck | 14:42 | relief[1].fault: 'stuck' is not one of blocked
            fault: { stuck-open: 5 % } | fault: [blocked] | 14:35 | relief[1].fault: needs a single value or keys and values, not a list; write, for example, 'fault: blocked'
            location: tank-top | location: branch | 15:44 | relief[2].location: must be tank-top for a valve that opens at a temperature
            location: tank-top | location: top | 15:44 | relief[2].location: 'top' is not one of branch, tank-top
            kind: expansion-valve | kind: group | 13:103 | relief[0].kind: 'group' is not one of relief-valve, expansion-valve, safety-group
            kind: expansion-valve | kind: expansion-valve, location: tank-top | 13:130 | relief[0].location: must be branch for an expansion valve or a safety group, which sit on the cold inlet
            kind: expansion-valve | kind: safety-group | 13:103 | relief[0].kind: the check valve in a safety group closes the way to the bypass of the reducing valve; leave the bypass out
            location: tank-top, opens-at | location: tank-top, kind: safety-group, opens-at | 15:60 | relief[2].kind: a valve that opens at a temperature is neither an expansion valve nor a safety group, which respond to pressure only; leave the temperature or the kind out
            opens-at: 99 degC | opens-at: 120 degC | 15:64 | relief[2].opens-at: 120 degC is outside the allowed range, 50 degC to 110 degC
            opens-at: 99 degC, | | 15:5 | relief[2].opens-at: is missing
            reseats-at: 88 degC | reseats-at: 99 degC | 15:85 | relief[2].reseats-at: must be below the temperature at which the valve opens
            charged-at: 5 degC | charged-at: 5 | 16:57 | vessel.charged-at: '5' has no unit; give a temperature in degC, degF or K
            charged-at: 5 degC | charged-at: 61 degC | 16:57 | vessel.charged-at: 61 degC is outside the allowed range, -30 degC to 60 degC
            temperature: 30 degC | temperature: 71 degC | 16:78 | vessel.temperature: 71 degC is outside the allowed range, -30 degC to 70 degC
            height: 1.8 m | height: 31 m | 16:95 | vessel.height: 31 m is outside the allowed range, -30 m to 30 m
            height: 1.8 m, | height: 1.8 m, location: in-tank, | 16:78 | vessel.temperature: follows the tank's water, since location is in-tank; leave temperature out
            temperature: 30 degC, height: 1.8 m, | height: 1.8 m, location: in-tank, | 16:73 | vessel.height: 1.8 m is outside the tank, into which the vessel is built; its height is 1.3 m
            precharge: 3.2 bar } | precharge: 3.2 bar, location: in-tank, height: -100 mm } | 22:92 | vessels[0].height: -0.1 m is outside the tank, into which the vessel is built; its height is 1.3 m
            precharge: 3.2 bar } | precharge: 3.2 bar, location: tank } | 22:75 | vessels[0].location: 'tank' is not one of branch, in-tank
            condition: isolated | condition: burst | 16:113 | vessel.condition: 'burst' is not one of sound, isolated, waterlogged
            trapped-air: 0.5 L | trapped-air: 0 L | 17:14 | trapped-air: 0 L is outside the allowed range, above 0 L to 100 L
            trapped-air: 0.5 L | trapped-air: 3 L | 17:14 | trapped-air: 3 L is more than the cold piping holds, 2.814 L
            flow: 40 mL/min, | | 18:9 | leaks[0].flow: is missing; write, for example, 'flow: 40 mL/min'
            flow: 40 mL/min | flow: 21 L/min | 18:17 | leaks[0].flow: 21 L/min is outside the allowed range, above 0 L/min to 20 L/min
            at: 4 bar | at: 0 bar | 18:32 | leaks[0].at: 0 bar is outside the allowed range, 0.1 bar to 25 bar
            leaks: [{ flow: 40 mL/min, at: 4 bar }] | leaks: { flow: 40 mL/min, at: 4 bar } | 18:1 | leaks: needs a list, not keys and values; write, for example, 'leaks: [{ flow: 40 mL/min, at: 4 bar }]'
            at: 07:00 | at: 24:00 | 19:15 | draws[0].at: 24:00 is outside the allowed range
            at: 07:00 | at: 19:15:00 | 19:1 | draws: the draw at 19:15 lasts 6 min 40 s and runs into the next one at 19:15
            volume: 40 L | volume: 0 L | 19:30 | draws[0].volume: 0 L is outside the allowed range, above 0 and drawn within a day
            volume: 40 L, | | 19:9 | draws[0].volume: is missing; write, for example, 'volume: 40 L'
            volume: 40 L, flow: 6 L/min | volume: 40 L, flow: 1e-3 L/min | 19:30 | draws[0].volume: takes longer than a day at this flow
            volume: 40 L, | volume: 40 L, energy: 1 kWh, | 19:44 | draws[0].energy: cannot be combined with volume; give one of them
            energy: 1.4 kWh | energy: 1.4 kW | 19:93 | draws[1].energy: 'kW' is a unit of power; give an energy in kWh, MJ, J or Btu
            energy: 1.4 kWh | energy: -1 MJ | 19:93 | draws[1].energy: -1 MJ is outside the allowed range, above 0 MJ to 9997.2 MJ
            flow: 8 L/min | flow: 201 L/min | 19:108 | draws[1].flow: 201 L/min is outside the allowed range, above 0 L/min to 200 L/min
            mixed: 40 degC | mixed: 10 degC | 19:58 | draws[0].mixed: 10 degC is outside the allowed range, 20 degC to 95 degC
            gauge: { height: 1.5 m } | gauge: 1.5 m | 20:8 | gauge: needs keys and values, not a single value; write, for example, 'gauge: { height: 1.5 m }'
            gauge: { height: 1.5 m } | gauge: { height: 31 m } | 20:18 | gauge.height: 31 m is outside the allowed range, -30 m to 30 m
            gauge: { height: 1.5 m } | gage: { height: 1.5 m } | 20:1 | gage: is not a known key here; did you mean gauge?
            begins: 06:00 | begins: noon | 21:16 | run.begins: 'noon' is not a time of day
            day: 15 Jan | day: 0 | 21:28 | run.day: 0 is outside the allowed range, 1 to 366
            day: 15 Jan | day: 30 Feb | 21:28 | run.day: '30 Feb' is not a day of a 365-day year; that month has 28 days
            day: 15 Jan | day: Ju 15 | 21:28 | run.day: 'Ju 15' is not a day of the year; write a date such as 15 Jan, or a number from 1 to 366
            day: 15 Jan | day: 2026-01-15 | 21:28 | run.day: '2026-01-15' is not a day of the year
            """)
    void oneSlip(String piece, String replacement, String at, String message) {
        List<Fault> faults = Sources.faults(Sources.richWith(piece, replacement == null ? "" : replacement));
        assertEquals(1, faults.size(), faults::toString);
        assertEquals(at, faults.get(0).at().toString(), faults::toString);
        assertTrue(faults.get(0).message().startsWith(message), faults::toString);
    }

    @Test
    void aSecondElementAloneMayHeatAtTheSameTime() {
        String text = Sources.LEAST.replace("set-point: 58 degC", "set-point: 58 degC, simultaneous: yes");
        assertEquals(
                "[3:74: heater.simultaneous: needs an upper element]",
                Sources.faults(text).toString());
    }

    @Test
    void aReducingValveMustBeDescribed() {
        String text = Sources.LEAST.replace("check-valve", "Reducing_Valve");
        assertEquals(
                "[1:1: supply.reducing-valve: is missing; write, for example, 'reducing-valve: { set: 3.5 bar }']",
                Sources.faults(text).toString());
    }

    @Test
    void nothingLeaksWhereNothingCloses() {
        String text = Sources.LEAST.replace("check-valve", "direct, seat-leakage: 1 mL/min");
        assertEquals(
                "[1:46: supply.seat-leakage: is allowed only with a check valve, reducing valve or backflow preventer]",
                Sources.faults(text).toString());
    }

    @Test
    void aMisspeltProfileGetsAHint() {
        assertTrue(Sources.faults(Sources.LEAST + "draws: eu-mm\n")
                .get(0)
                .message()
                .endsWith("did you mean eu-m?"));
    }

    @Test
    void severalSlipsInOnePartAreReportedTogether() {
        String text = Sources.richWith("opens-at: 99 degC, reseats-at: 88 degC", "opens-at: 99, reseats-at: 88")
                .replace("leaks-from: 3 bar, leakage: 10 mL/min", "leaks-from: 3, leakage: 10")
                .replace("trapped-air: 0.5 L", "trapped-air: 3 L")
                .replace("outside-diameter: 22 mm", "outside-diameter: 22");
        assertEquals(5, Sources.faults(text).size(), () -> Sources.faults(text).toString());
    }
}
