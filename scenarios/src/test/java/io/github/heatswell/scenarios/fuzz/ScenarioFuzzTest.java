package io.github.heatswell.scenarios.fuzz;

import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.RunSummary;
import io.github.heatswell.scenarios.catalogue.Catalogue;
import io.github.heatswell.scenarios.cli.Outcome;
import io.github.heatswell.scenarios.file.InvalidScenarioException;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.file.ScenarioReader;
import io.github.heatswell.scenarios.file.Sources;
import io.github.heatswell.scenarios.generated.Chance;
import io.github.heatswell.scenarios.generated.RandomScenario;
import io.github.heatswell.scenarios.generated.RandomScenarios;
import io.github.heatswell.simulation.SimulationException;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.api.io.TempDir;

/**
 * Scenario files in which something went wrong are read, or refused with places and sentences, quickly and without a trace; what is
 * read can be simulated. More of them are looked at with {@code -Dtest.jvm.options=-Dfuzz.cases=100000}.
 */
class ScenarioFuzzTest {

    private static final int ONE_IN = 50;
    /** How many random files are mutated beside those that come with the program. */
    private static final int RANDOM = 40;

    /** The tolerance of a run whose file says nothing of it. */
    private static final double USUAL = 1e-8;

    private static final Duration SHORT = Duration.ofDays(1);

    @TempDir
    Path folder;

    private Cases cases;
    private int read;

    @Test
    void anyFileIsReadOrRefused(TestReporter reporter) {
        List<String> texts = new ArrayList<>(List.of(Sources.FULL, Sources.RICH));
        Catalogue.names().forEach(name -> texts.add(Catalogue.text(name)));
        for (int seed = 0; seed < RANDOM; seed++) {
            RandomScenario file = RandomScenarios.tame(seed);
            texts.add(seed % 4 == 0 ? file.json() : file.yaml());
        }
        cases = new Cases(folder.resolve("house.yaml"), YamlMutations.ALL, texts);
        cases.all(reporter, this::use);
        reporter.publishEntry(read + " of them are scenarios");
        assertTrue(read > Cases.COUNT / 50 && read < Cases.COUNT, "some are scenarios, some are not: " + read);
    }

    private void use(Path file, Chance chance) throws IOException {
        try {
            Scenario scenario = cases.timed(ScenarioReader::read);
            read++;
            if (chance.oneIn(ONE_IN) && scenario.duration().compareTo(SHORT) <= 0) {
                simulate(scenario);
            }
            return;
        } catch (InvalidScenarioException refused) {
            ComplaintRules.broken(refused.faults(), file).forEach(cases::broken);
        } catch (IOException unread) {
            cases.unread(unread);
        }
        if (chance.oneIn(ONE_IN)) {
            String out = folder.resolve("out").toString();
            Outcome outcome = Outcome.execute("run", file.toString(), "-o", out);
            cases.refused(outcome.status(), outcome.err());
        }
    }

    private void simulate(Scenario scenario) {
        try {
            RunSummary run = scenario.simulation().stream((time, values, regime) -> {});
            boolean asUsual =
                    run.numerics().relativeTolerance() <= USUAL; // who asks for less is told that the books stay open
            if (asUsual && !run.audit().closes()) {
                cases.broken("the books do not close: " + run.audit());
            }
        } catch (SimulationException failed) {
            cases.broken("cannot be simulated: " + failed.getMessage());
        }
    }
}
