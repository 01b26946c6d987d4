package io.github.heatswell.scenarios.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.scenarios.fault.Fault;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One thing is wrong at a time; it alone is reported, where it stands. */
class BadScenarioTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '\0', textBlock = """
            altitude: 310 m           | altitude: 310           | 2:19 | site.altitude: '310' has no unit; give a length in mm, m, in or ft
            altitude: 310 m           | altitude: 9000 m        | 2:19 | site.altitude: 9000 m is outside the allowed range, -430 m to 5500 m
            altitude: 310 m           | altitude: 310 bar       | 2:19 | site.altitude: 'bar' is a unit of pressure; give a length in mm, m, in or ft
            room: 17 degC             | room: 17 degX           | 2:32 | site.room: 'degX' is not a known unit; give a temperature in degC, degF or K; did you mean degC?
            room: 17 degC             | room: 170 degC          | 2:32 | site.room: 170 degC is outside the allowed range, -30 degC to 60 degC
            room: 17 degC             | room: 290 F             | 2:32 | site.room: 290 degF is outside the allowed range, -22 degF to 140 degF (written as 290 F)
            room: 17 degC             | rom: 17 degC            | 2:26 | site.rom: is not a known key here; did you mean room?
            room: 17 degC             | Room: 17 degC           | 2:26 | site.Room: is not a known key here; did you mean room?
            room: 17 degC             | room:17 degC            | 2:26 | site.room:17 degC: is not a key; put a space after the colon
            room: 17 degC             | room: [17 degC]         | 2:26 | site.room: needs a single value, not a list; write, for example, 'room: 17 degC'
            room: 17 degC             | room: {a: 1}            | 2:26 | site.room: needs a single value, not keys and values; write, for example, 'room: 17 degC'
            title: House by the brook | units: metric           | 1:8  | units: 'metric' is not one of si, us, kpa
            title: House by the brook | question: [1]           | 1:1  | question: needs a single value, not a list; write, for example, 'question: Why does the relief valve drip?'
            room: 17 degC             | room:                   | 2:26 | site.room: needs a single value, not nothing; write, for example, 'room: 17 degC'
            room: 17 degC             | room: 17 degC, colour: red | 2:41 | site.colour: is not a known key here; the known keys are altitude, room
            room: 17 degC             | room: 17 degC, room: 18 degC | 2:41 | room: appears twice, first on line 2
            arrangement: check-valve  | arrangement: chek-valve | 3:24 | supply.arrangement: 'chek-valve' is not one of direct, check-valve, reducing-valve, backflow-preventer; did you mean check-valve?
            arrangement: check-valve  | arrangement: open       | 3:24 | supply.arrangement: 'open' is not one of direct, check-valve, reducing-valve, backflow-preventer
            pressure: 4.2 bar, water  | pressure: 4,2 bar, water | 3:47 | supply.pressure: '4,2 bar' has a comma in the number; use a decimal point: 4.2 bar
            pressure: 4.2 bar, water  | pressure: 4.2, water    | 3:47 | supply.pressure: '4.2' has no unit; give a pressure in
            pressure: 4.2 bar, water  | pressure: 0 bar, water  | 3:47 | supply.pressure: 0 bar is outside the allowed range, above 0 bar to 25 bar
            pressure: 4.2 bar, water  | pressure: -1 bar, water | 3:47 | supply.pressure: -1 bar is outside the allowed range, above 0 bar to 25 bar
            pressure: 4.2 bar, water  | pressure: 400 psi, water | 3:47 | supply.pressure: 400 psi is outside the allowed range, above 0 psi to 362 psi
            pressure: 4.2 bar, water  | pressure: NaN bar, water | 3:47 | supply.pressure: 'NaN bar' is not a finite number
            pressure: 4.2 bar, water  | pressure: .inf, water   | 3:47 | supply.pressure: '.inf' is not a finite number
            pressure: 4.2 bar, water  | pressure: 21 bar, water | 3:47 | supply.pressure: 21 bar gauge must be above ambient pressure and below the tank's test pressure
            pressure: 4.2 bar, water  | pressure: 4 Pa, water   | 3:47 | supply.pressure: 0.00004 bar gauge is next to nothing: it must be more than 10 Pa above ambient pressure
            pressure: 4.2 bar, water  | pressure: 0.9 bar abs, water | 3:47 | supply.pressure: 0.9 bar abs must be above ambient pressure
            water: 9 degC             | water: 95 degC          | 3:63 | supply.water: 95 degC is outside the allowed range
            volume: 230 L             | volume: -230 L          | 4:17 | tank.volume: -230 L is outside the allowed range, 1 L to 20000 L
            volume: 230 L             | volume: 1e9 gal         | 4:17 | tank.volume: 1000000000 gal is outside the allowed range, 0.265 gal to 5280 gal (written as 1e9 gal)
            volume: 230 L             | volume: "1e9\\ngal"         | 4:17 | tank.volume: 1000000000 gal is outside the allowed range, 0.265 gal to 5280 gal (written as 1e9 gal)
            volume: 230 L,            |                         | 4:1  | tank.volume: is missing; write, for example, 'volume: 230 L'
            material: steel           | material: brass         | 4:34 | tank.material: 'brass' is not one of steel, stainless-steel, copper, pex, pe, pp-r, pb, pvc-c, rigid
            diameter: 480 mm          | diameter: 4.8 mm        | 4:51 | tank.diameter: 4.8 mm is outside the allowed range, 50 mm to 3000 mm
            wall: 2.2 mm              | wall: 2.2 m             | 4:65 | tank.wall: 2.2 m is outside the allowed range, 0.0002 m to 0.05 m
            wall: 2.2 mm              | wall: 49 mm             | 4:65 | tank.wall: 49 mm is more than a tenth of the diameter of 480 mm
            steel, diameter: 480 mm, wall: 2.2 mm | pe, compliance: 28 mL | 4:50 | tank.compliance: 'mL' is a unit of volume; give a volume per pressure in mL/bar, L/bar or fl oz/psi
            steel, diameter: 480 mm, wall: 2.2 mm | pe, compliance: 0 mL/bar | 4:50 | tank.compliance: 0 mL/bar is outside the allowed range, 0.001 mL/bar to 10000 mL/bar
            steel, diameter: 480 mm, wall: 2.2 mm | pe, compliance: 30 fl oz/psi | 4:50 | tank.compliance: 30 fl oz/psi is outside the allowed range, 0.00000234 fl oz/psi to 23.3 fl oz/psi
            volume: 230 L, material: steel, diameter: 480 mm, wall: 2.2 mm | volume: 100 L, material: pe, compliance: 9 L/bar | 4:50 | tank.compliance: with this compliance the tank would grow by 90 %
            diameter: 480 mm,         | compliance: 28 mL/bar,  | 4:70 | tank.wall: does not apply to a tank of given compliance; remove it
            wall: 2.2 mm              | wall: 2.2 mm, heads: 25 % | 4:80 | tank.heads: 25 % is outside the allowed range, 33 % to 100 %
            wall: 2.2 mm              | wall: 2.2 mm, heads: 0.5 | 4:80 | tank.heads: '0.5' has no unit; give a ratio in %
            wall: 2.2 mm              | wall: 2.2 mm, heads: elipsoidal | 4:80 | tank.heads: 'elipsoidal' is neither a number with a unit nor one of flat, torispherical, ellipsoidal, hemispherical; did you mean ellipsoidal?
            diameter: 480 mm, wall: 2.2 mm | diameter: 800 mm, wall: 4 mm, heads: hemispherical | 4:78 | tank.heads: heads as deep as 400 mm alone hold more than the tank of 230 L; check its diameter
            wall: 2.2 mm              | wall: 2.2 mm, flue: 300 mm | 4:79 | tank.flue: 300 mm is more than half of the tank's diameter of 480 mm
            wall: 2.2 mm              | wall: 2.2 mm, flue: 10 mm | 4:79 | tank.flue: 10 mm is outside the allowed range, 20 mm to 1000 mm
            diameter: 480 mm, wall: 2.2 mm | compliance: 28 mL/bar, flue: 90 mm | 4:70 | tank.flue: does not apply to a tank of given compliance; remove it
            diameter: 480 mm, wall: 2.2 mm | compliance: 28 mL/bar, heads: 50 % | 4:71 | tank.heads: does not apply to a tank of given compliance; remove it
            standing-loss: 2.4 W/K    | standing-loss: 2.4 W    | 4:88 | tank.standing-loss: 'W' is a unit of power; give a heat loss per degree in W/K or Btu/h/degF
            working-pressure: 10 bar  | working-pressure: 20 bar | 4:115 | tank.working-pressure: 20 bar is outside the allowed range, 0.5 bar to 12.5 bar
            energy: gas               | energy: wood            | 5:19 | heater.energy: 'wood' is not one of gas, electric
            steel, diameter: 480 mm, wall: 2.2 mm | pe, diameter: 480 mm, wall: 0.5 mm | 4:62 | tank.wall: with this wall the tank would grow by 94.8 %
            input: 11.2 kW            | input: 0 kW             | 5:31 | heater.input: 0 kW is outside the allowed range, above 0 kW to 500 kW
            recovery-efficiency: 78 % | recovery-efficiency: 0.78 | 5:61 | heater.recovery-efficiency: '0.78' has no unit; give a ratio in %
            recovery-efficiency: 78 % | recovery-efficiency: 110 % | 5:61 | heater.recovery-efficiency: 110 % is outside the allowed range, 10 % to 100 %
            recovery-efficiency: 78 % | recovery-efficiency: 78 degC | 5:61 | heater.recovery-efficiency: 'degC' is a unit of temperature or temperature difference; give a ratio in %
            set-point: 58 degC        | set-point: 100 degC     | 5:78 | heater.set-point: 100 degC is outside the allowed range, 10 degC to 99 degC
            set-point: 58 degC, differential: 6 K | set-point: 58 degC, differential: 6 | 5:101 | heater.differential: '6' has no unit; give a temperature difference in K or degF
            set-point: 58 degC, differential: 6 K | set-point: 12 degC, differential: 20 K | 5:101 | heater.differential: 20 K would let the water cool to freezing
            outside-diameter: 22 mm   | outside-diameter: 22    | 7:43 | piping[0].outside-diameter: '22' has no unit
            wall: 0.9 mm              | wall: 11 mm             | 7:56 | piping[0].wall: 11 mm leaves no bore in a pipe of 22 mm outside diameter
            copper, outside-diameter: 22 mm, wall: 0.9 mm | pb, outside-diameter: 60 mm, wall: 0.1 mm | 7:52 | piping[0].wall: with this wall the pipe would grow by 106.8 % at the tank's working pressure of 10 bar gauge; at most 75 % is allowed
            material: copper          | material: rigid         | 7:17 | piping[0].material: 'rigid' is not one of steel, stainless-steel, copper, pex, pe, pp-r, pb, pvc-c
            , length: 14 m            |                         | 7:5  | piping[0].length: is missing; write, for example, 'length: 14 m'
            length: 14 m              | lenght: 14 m            | 7:64 | piping[0].lenght: is not a known key here; did you mean length?
            opens: 7 bar              | opens: 70 bar           | 9:37 | relief[0].opens: 70 bar is outside the allowed range, 0.2 bar to 25 bar
            full-lift: 7.7 bar        | full-lift: 6.5 bar      | 9:55 | relief[0].full-lift: 6.5 bar gauge must not be below the set pressure of 7 bar gauge
            full-lift: 7.7 bar        | full-lift: 6.9999 bar   | 9:55 | relief[0].full-lift: 6.9999 bar gauge must not be below the set pressure of 7 bar gauge
            precharge: 4.2 bar        | precharge: 145.04 psi   | 10:36 | vessel.precharge: 10.0002 bar gauge must be above ambient pressure and not above the tank's working pressure of 10 bar gauge
            pressure: 4.5 bar         | pressure: 60.915 psi    | 11:36 | start.pressure: 4.1999 bar gauge is below the supply pressure of 4.2 bar gauge
            reseats: 5.6 bar          | reseats: 7.2 bar        | 9:73 | relief[0].reseats: 7.2 bar gauge must be below the set pressure of 7 bar gauge
            reseats: 5.6 bar          | reseats: 0.5 bar abs    | 9:73 | relief[0].reseats: 0.5 bar abs must be above ambient pressure
            full-flow: 20 L/min       | full-flow: 20 L         | 9:93 | relief[0].full-flow: 'L' is a unit of volume; give a flow in L/min, mL/min, L/h, gal/min or m3/s
            character: snap           | character: lazy         | 9:114 | relief[0].character: 'lazy' is not one of modulating, snap
            name: expansion valve     | name: "a\\u001b[2Jb"    | 9:13 | relief[0].name: contains invisible characters; write plain text
            name: expansion valve     | name: " "               | 9:7  | relief[0].name: needs a single value, not nothing
            volume: 12 L              | volume: 0 L             | 10:19 | vessel.volume: 0 L is outside the allowed range, 0.1 L to 5000 L
            precharge: 4.2 bar        | precharge: 11 bar       | 10:36 | vessel.precharge: 11 bar gauge must be above ambient pressure and not above the tank's working pressure of 10 bar gauge
            acceptance: 60 %          | acceptance: 0 %         | 10:57 | vessel.acceptance: 0 % is outside the allowed range, 5 % to 100 %
            gas-time-constant: 30 s   | gas-time-constant: 2 h  | 10:82 | vessel.gas-time-constant: 2 h is outside the allowed range
            water: 40 degC            | water: 140 degC         | 11:17 | start.water: 140 degC is outside the allowed range
            pressure: 4.5 bar         | pressure: 3 bar         | 11:36 | start.pressure: 3 bar gauge is below the supply pressure of 4.2 bar gauge
            duration: 4 h             | duration: 0 h           | 12:18 | run.duration: 0 h is outside the allowed range, 1 s to 36525 d
            duration: 4 h             | duration: 200 years     | 12:18 | run.duration: 'years' is not a known unit; give a time in s, min, h or d
            duration: 4 h             | duration: 4 m           | 12:18 | run.duration: 'm' is a unit of length; give a time in s, min, h or d
            sample: 1 min             | sample: 0.5 s           | 12:31 | run.sample: 0.5 s is outside the allowed range, 1 s to the duration of the run
            sample: 1 min             | sample: 5 h             | 12:31 | run.sample: 5 h is longer than the run of 4 h
            duration: 4 h, sample: 1 min | duration: 20000 d, sample: 1 s | 12:35 | run.sample: 1 s gives more than 20 million samples
            """)
    void oneSlip(String piece, String replacement, String at, String message) {
        String slip = replacement == null ? "" : replacement;
        only(Sources.faults(Sources.with(piece, slip)), at, message);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '\0', textBlock = """
            site:    | site: 3              | 2:7  | site: needs keys and values, not a single value; its keys are altitude, room
            site:    | site:                | 2:1  | site: needs keys and values, not nothing; its keys are altitude, room
            site:    | site: [1]            | 2:1  | site: needs keys and values, not a list; its keys are altitude, room
            supply:  | suply: { arrangement: direct } | 3:1 | suply: is not a known key here; did you mean supply?
            piping:  | piping: [4]\\nxyz:   | 6:10 | piping[0]: needs keys and values, not a single value
            relief:  | relief: { a: 1 }\\nzz: | 8:1 | relief: needs a list, not keys and values; start every item with '- ', or write [] for none
            vessel:  | vessel: none         | 10:9 | vessel: needs keys and values, not a single value
            start:   | start: ~             | 11:8 | start: needs keys and values, not a single value
            title:   | title: "a\\tb\\u0000" | 1:8 | title: contains invisible characters
            run:     | run: { }\\nrun: { }  | 13:1 | run: appears twice, first on line 12
            """)
    void wrongKinds(String line, String replacement, String at, String message) {
        List<Fault> faults = Sources.faults(Sources.withLine(line, replacement.replace("\\n", "\n")));
        assertTrue(
                faults.stream()
                        .anyMatch(
                                f -> f.at().toString().equals(at) && f.message().startsWith(message)),
                faults::toString);
    }

    @Test
    void dimensionsHaveNoPlaceInARigidTank() {
        List<Fault> faults = Sources.faults(Sources.with("material: steel", "material: rigid"));
        assertEquals(
                "[4:51: tank.diameter: does not apply to a rigid tank; remove it,"
                        + " 4:65: tank.wall: does not apply to a rigid tank; remove it]",
                faults.toString());
    }

    @Test
    void aComplianceHasNoPlaceInARigidTank() {
        String text = Sources.with(
                "material: steel, diameter: 480 mm, wall: 2.2 mm", "material: rigid, compliance: 28 mL/bar");
        only(Sources.faults(text), "4:53", "tank.compliance: does not apply to a rigid tank; remove it");
    }

    @Test
    void anElectricHeaterHasNoFlue() {
        String text =
                Sources.with("wall: 2.2 mm", "wall: 2.2 mm, flue: 90 mm").replace("energy: gas", "energy: electric");
        only(Sources.faults(text), "4:79", "tank.flue: an electric heater has no flue; leave it out");
    }

    @Test
    void aWayOutIsNoPlaceForMorePressure() {
        String text = Sources.with("arrangement: check-valve", "arrangement: direct");
        only(
                Sources.faults(text),
                "11:36",
                "start.pressure: 4.5 bar gauge is above the supply pressure of 4.2 bar gauge");
    }

    @Test
    void twoValvesCannotShareAName() {
        String text = Sources.with(
                "relief:\n",
                "relief:\n  - { name: expansion valve, opens: 7 bar, full-lift: 8 bar, reseats: 6 bar, full-flow: 20 L/min }\n");
        only(Sources.faults(text), "10:13", "relief[1].name: 'expansion valve' is the name of relief[0] too");
    }

    @Test
    void aTypicalValueThatDoesNotFitSaysThatItWasAssumed() {
        String text = Sources.LEAST.replace("pressure: 4.2 bar", "pressure: 20 bar");
        only(Sources.faults(text), "1:47", "supply.pressure: 20 bar gauge must be above ambient pressure and below");
        String vessel = Sources.LEAST + "vessel: { volume: 12 L, precharge: 10.5 bar }\n";
        only(Sources.faults(vessel), "4:36", "vessel.precharge: 10.5 bar gauge must be above ambient pressure");
        String setPressure = Sources.LEAST + "relief:\n  - { opens: 0.21 bar, full-lift: 0.2 bar }\n";
        only(
                Sources.faults(setPressure),
                "5:35",
                "relief[0].full-lift: 0.2 bar gauge must not be below the set pressure");
    }

    @Test
    void noTypicalValueIsMadeFromAnAbsolutePressure() {
        List<Fault> faults = Sources.faults(Sources.LEAST + "relief:\n  - { opens: 8 bar abs }\n");
        assertEquals(
                "[5:5: relief[0].full-lift: is missing; write, for example, 'full-lift: 7.7 bar',"
                        + " 5:5: relief[0].reseats: is missing; write, for example, 'reseats: 5.6 bar']",
                faults.toString());
    }

    private static void only(List<Fault> faults, String at, String message) {
        assertEquals(1, faults.size(), faults::toString);
        assertEquals(at, faults.get(0).at().toString(), faults::toString);
        assertTrue(faults.get(0).message().startsWith(message), faults::toString);
    }
}
