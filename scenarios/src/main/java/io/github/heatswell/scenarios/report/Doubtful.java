package io.github.heatswell.scenarios.report;

import io.github.heatswell.narrative.NamedSummary;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.units.QuantityFormat;
import java.util.List;
import java.util.stream.Stream;

/** Unknowns of a house, stated before any answer that assumes a value for them. */
final class Doubtful {

    private static final int MAX_RUNS = 6;

    private Doubtful() {}

    /** For several runs, with their names. */
    static List<String> remarks(List<NamedSummary> runs, QuantityFormat shown) {
        return runs.stream()
                .flatMap(run -> run.doubts().sentence().stream().map(said -> run.name() + ": " + said.text(shown)))
                .limit(MAX_RUNS)
                .toList();
    }

    /** The sentence, if there is one, before other remarks. */
    static List<String> before(Scenario scenario, QuantityFormat shown, List<String> remarks) {
        return Stream.concat(scenario.doubts().sentence().stream().map(said -> said.text(shown)), remarks.stream())
                .toList();
    }
}
