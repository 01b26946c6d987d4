package io.github.heatswell.scenarios.report;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.charts.Chart;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.scenarios.catalogue.Catalogue;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.file.ScenarioReader;
import io.github.heatswell.scenarios.variation.VariantRuns;
import io.github.heatswell.scenarios.variation.Variation;
import io.github.heatswell.simulation.Simulation;
import io.github.heatswell.system.Draw;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.UnitSystem;
import io.github.heatswell.units.VolumeUnit;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.api.io.TempDir;

/** Regression: a program that hands over the wrong thing is told so before anything is written. */
class ResultArgumentsTest {

    private static final Scenario LODGE = Catalogue.read("orchard-lodge");
    private static final RunResult RUN = LODGE.simulation().run();

    @TempDir
    private Path folder;

    @Test
    void aRunOfAnotherHouseIsRefused() {
        RunResult changed = Simulation.of(LODGE.system().toBuilder().build(), LODGE.duration())
                .run();
        refused("not a run of the house of scenario 'orchard-lodge'", () -> Results.of(LODGE, changed, UnitSystem.SI));
        refused("Scenario.of", () -> Results.answer(LODGE, changed, UnitSystem.SI));
    }

    @Test
    void aRunOfAnotherDurationIsRefused() {
        RunResult shorter =
                Simulation.of(LODGE.system(), LODGE.duration().minusHours(1)).run();
        RunResult longer =
                Simulation.of(LODGE.system(), LODGE.duration().plusHours(1)).run();
        refused("asks for", () -> Results.of(LODGE, shorter, UnitSystem.SI));
        refused("asks for", () -> Results.of(LODGE, longer, UnitSystem.SI));
    }

    @Test
    void aScenarioOfTheChangedHouseTakesItsRun() {
        Scenario changed = Scenario.of(
                "changed",
                "A changed lodge",
                LODGE.system().toBuilder().build(),
                Duration.ofHours(4),
                Duration.ofMinutes(1));
        RunResult run = changed.simulation().run();
        CommandResult answer = Results.answer(changed, run, UnitSystem.SI);
        assertEquals(6, answer.files().size());
        assertTrue(answer.report().get().text().contains("A changed lodge"));
    }

    @Test
    void twoFilesOfOneNameAreRefused() {
        Path results = folder.resolve("results");
        List<ResultFile> files = List.of(
                ResultFile.ofText("a.txt", out -> out.append('1')), ResultFile.ofText("a.txt", out -> out.append('2')));
        refused("'a.txt'", () -> ResultFolder.at(results).write(files));
        assertFalse(Files.exists(results));
    }

    @Test
    void nothingIsRunInNoThreads() {
        refused("threads: -3 is outside the allowed range, 1 or more", () -> VariantRuns.of(List.of(), -3));
    }

    @Test
    void aFolderInPlaceOfAFileIsNamed() {
        String message = assertThrows(IOException.class, () -> ScenarioReader.read(folder))
                .getMessage();
        assertTrue(message.startsWith(folder + ": ") && message.contains("folder"), message);
    }

    @Test
    void nullsAreRefusedByName() {
        missing("scenario", () -> Results.of(null, RUN, UnitSystem.SI));
        missing("result", () -> Results.of(LODGE, null, UnitSystem.SI));
        missing("units", () -> Results.of(LODGE, RUN, null));
        missing("folder", () -> ResultFolder.at(null));
        missing("parent", () -> ResultFolder.inside(null, "a"));
        missing("name", () -> ResultFolder.inside(folder, null));
        missing("text", () -> ResultFile.ofText("a.txt", null));
        missing("files", () -> ResultFolder.at(folder).write(null));
        missing("out", () -> ResultFile.ofText("a.txt", out -> {}).writeTo(null));
        missing("text", () -> Variation.of(null));
        missing("change", () -> LODGE.system().toBuilder().changeHeater(null));
        missing("change", () -> LODGE.system().toBuilder().changeTank(null));
        missing("change", () -> LODGE.system().toBuilder().changeVessel(null));
        missing("change", () -> LODGE.system().toBuilder().changeReliefValves(null));
        missing("name", () -> Catalogue.read(null));
        missing("name", () -> Catalogue.listing(null));
        missing("file", () -> ScenarioReader.read(null));
        missing("text", () -> ScenarioReader.read("a", null));
        Chart chart = Chart.of(RUN, UnitSystem.SI);
        missing("out", () -> chart.writePng((OutputStream) null));
        missing("out", () -> chart.writeSvg(null));
    }

    /** Contract: what a program asks wrongly is answered in its own terms. */
    @Test
    void aProgramIsToldWhatIsWrong() {
        HotWaterSystem.Builder empty = HotWaterSystem.builder();
        String nothing = assertThrows(
                        IllegalStateException.class,
                        () -> empty.changeHeater(heater -> heater.toBuilder().build()))
                .getMessage();
        assertEquals("heater: is not set yet, so there is none to change", nothing);
        refused("did you mean orchard-lodge?", () -> Catalogue.read("orchard-loge"));
        String one = assertThrows(IllegalArgumentException.class, () -> Variation.of("tank.volume=1 L"))
                .getMessage();
        assertFalse(one.contains("--set"), one);
    }

    /** Contract: a result needs no folder. */
    @Test
    void aFileGivesItsBytes() throws IOException {
        assertEquals(
                "1",
                new String(ResultFile.ofText("a.txt", out -> out.append("1")).bytes(), UTF_8));
    }

    /** Contract: a debugger shows what a thing is. */
    @Test
    void thingsSayWhatTheyAre() {
        Scenario house = Catalogue.read("orchard-lodge-vessel");
        assertTrue(house.toString().startsWith("orchard-lodge-vessel: "), house::toString);
        assertEquals(
                "12 L vessel, precharge 4.2 bar gauge",
                house.system().vessel().orElseThrow().toString());
        assertTrue(house.system().toString().endsWith(" L vessel, precharge 4.2 bar gauge"), house.system()::toString);
        assertTrue(house.simulation().toString().contains(house.system().toString()));
        assertEquals(
                "40 L at 8 L/min from 7 h",
                Draw.ofVolume(7 * 3_600, 40, VolumeUnit.LITRE, 8, FlowUnit.LITRE_PER_MINUTE)
                        .toString());
    }

    private static void refused(String part, Executable mistake) {
        String message = assertThrows(IllegalArgumentException.class, mistake).getMessage();
        assertTrue(message.contains(part), message);
    }

    private static void missing(String name, Executable mistake) {
        assertEquals(name, assertThrows(NullPointerException.class, mistake).getMessage());
    }
}
