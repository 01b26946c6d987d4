package io.github.heatswell.scenarios.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class AllFaultsAtOnceTest {

    @Test
    void everythingWrongIsReportedInTheOrderOfTheFile() {
        String text = """
                title: Wrong throughout
                site: { altitude: 310, rom: 17 degC }
                supply: { arrangement: chek-valve, pressure: 4,2 bar, water: 9 bar }
                tank: { volume: -230 L, material: steel, diameter: 480 mm, wall: 90 cm, working-pressure: 10 bar }
                heater: { energy: gas, input: 11.2 kW, set-point: 12 degC, differential: 20 K }
                piping:
                  - { material: copper, outside-diameter: 22 mm, wall: 19 mm, length: 14 m }
                  - copper
                relief:
                  - { name: first, opens: 7 bar, full-lift: 6.7 bar, reseats: 8.6 bar, full-flow: 20 L/min }
                  - { name: first, opens: 7 bar }
                vessel: { volume: 12 L, precharge: 12 bar }
                start: []
                run: { duration: 4 h, sample: 5 h }
                colour: green
                """;
        String expected = """
                2:19 site.altitude
                2:24 site.rom
                3:24 supply.arrangement
                3:46 supply.pressure
                3:62 supply.water
                4:17 tank.volume
                4:66 tank.wall
                5:74 heater.differential
                7:56 piping[0].wall
                8:5 piping[1]
                10:45 relief[0].full-lift
                10:63 relief[0].reseats
                11:13 relief[1].name
                12:36 vessel.precharge
                13:1 start
                14:31 run.sample
                15:1 colour
                """;
        String found = Sources.faults(text).stream()
                .map(fault -> fault.at() + " " + fault.message().replaceFirst(": .*", "") + "\n")
                .collect(Collectors.joining());
        assertEquals(expected, found);
    }

    @Test
    void whatFollowsFromAFaultIsNotReportedAgain() {
        // A wrong set pressure says nothing about the reseat pressure, a missing tank nothing about the supply's.
        String text = Sources.with("opens: 7 bar", "opens: 1 brr").replace("volume: 230 L,", "");
        assertEquals(2, Sources.faults(text).size(), () -> Sources.faults(text).toString());
    }

    @Test
    void aMisspeltKeyBesideTheRightOneHidesNothing() {
        String text = Sources.with("opens: 7 bar", "opens: 7 bar, open: 6 bar, reseat: 5 bar")
                .replace("reseats: 5.6", "reseats: 9");
        assertEquals(3, Sources.faults(text).size(), () -> Sources.faults(text).toString());
    }

    @Test
    void everythingThatMustBeGivenIsNamed() {
        String found = Sources.faults("title: Nothing else\n").stream()
                .map(fault -> fault.at() + " " + fault.message().replaceFirst(": .*", ""))
                .collect(Collectors.joining(", "));
        assertEquals(
                "1:1 supply.arrangement, 1:1 supply.pressure, 1:1 tank.volume, 1:1 tank.material, 1:1 heater.energy,"
                        + " 1:1 heater.input, 1:1 heater.set-point",
                found);
    }

    @Test
    void everyLineOfTheMessageNamesTheFile() {
        InvalidScenarioException failure = assertThrows(
                InvalidScenarioException.class, () -> ScenarioReader.read("brook", "title: x\na: 1\nb: 2"));
        assertEquals(
                9,
                failure.getMessage()
                        .lines()
                        .filter(line -> line.startsWith("brook:"))
                        .count());
    }
}
