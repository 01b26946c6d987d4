package io.github.heatswell.scenarios;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Starts the program in a Java machine of its own. */
class StartUpTest {

    /** What a program printed, complaints included, and returned. */
    private record Outcome(int status, String text) {}

    @ParameterizedTest
    @ValueSource(strings = {"list", "--help", "run --help", "--version"})
    void whatDoesNotSimulateLoadsNeitherChartsNorSimulation(String arguments) throws Exception {
        Outcome outcome = start(List.of("-Xlog:class+load"), arguments.split(" "));
        assertEquals(0, outcome.status());
        List<String> heavy = outcome.text()
                .lines()
                .filter(line ->
                        line.matches(".*\\b(io\\.github\\.heatswell\\.(charts|simulation|water|system|result)\\."
                                + "|org\\.jfree|org\\.hipparchus|org\\.apache|com\\.fasterxml|java\\.awt\\.).*"))
                .toList();
        assertEquals(List.of(), heavy);
    }

    /** Nor has it Java generate what compares and hashes records, which would be generated anew in every start. */
    @Test
    void aCommandLoadsNoOther(@TempDir Path folder) throws Exception {
        Outcome outcome = start(List.of("-Xlog:class+load"), "run", "orchard-lodge", "--out", folder.toString());
        assertEquals(0, outcome.status());
        List<String> commands = outcome.text()
                .lines()
                .filter(line -> line.contains("Command source:"))
                .map(line -> line.replaceFirst(".*\\.(\\w+Command) source:.*", "$1"))
                .filter(name -> name.matches("\\w+Command"))
                .toList();
        assertEquals(List.of("CliCommand", "ScenarioCommand", "RunCommand"), commands); // its own kinds, and itself
        assertFalse(outcome.text().contains("java.lang.runtime.ObjectMethods "), "a record is compared or hashed");
    }

    @Test
    void noStackTraceIsShown() throws Exception {
        Outcome outcome = start(List.of(), "run", "nowhere.yaml");
        assertEquals(2, outcome.status());
        assertTrue(outcome.text().lines().noneMatch(line -> line.startsWith("\tat ")), outcome.text());
    }

    private static Outcome start(List<String> options, String... arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC"));
        command.addAll(options);
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), Heatswell.class.getName()));
        command.addAll(List.of(arguments));
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        String text = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        return new Outcome(process.waitFor(), text);
    }
}
