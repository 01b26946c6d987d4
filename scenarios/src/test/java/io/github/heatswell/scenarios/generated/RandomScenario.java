package io.github.heatswell.scenarios.generated;

import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.file.ScenarioReader;
import io.github.heatswell.scenarios.generated.Part.Keyed;
import io.github.heatswell.system.HotWaterSystem;
import java.time.Duration;

/** A random valid scenario file. */
public final class RandomScenario {

    private final long seed;
    private final Keyed file;

    RandomScenario(long seed, Keyed file) {
        this.seed = seed;
        this.file = file;
    }

    /** The seed that makes it again. */
    public long seed() {
        return seed;
    }

    /** The file, with one key a line. */
    public String yaml() {
        return Layout.yaml(file);
    }

    /** The same file as JSON, which is YAML too. */
    public String json() {
        return Layout.json(file);
    }

    /** What a reader makes of it. */
    public Scenario scenario() {
        return ScenarioReader.read(toString(), yaml());
    }

    /** The house it describes. */
    public HotWaterSystem system() {
        return scenario().system();
    }

    /** How long it runs; a few run for years. */
    public Duration duration() {
        return scenario().duration();
    }

    Keyed file() {
        return file;
    }

    @Override
    public String toString() {
        return "random-" + seed;
    }
}
