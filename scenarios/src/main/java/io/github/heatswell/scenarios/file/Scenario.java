package io.github.heatswell.scenarios.file;

import io.github.heatswell.plant.HotWaterSystem;
import io.github.heatswell.simulation.Simulation;
import java.time.Duration;
import java.util.List;
import java.util.Objects;

/**
 * A house and a run of it. Immutable.
 */
public final class Scenario {

    private final String name;
    private final Header header;
    private final HotWaterSystem system;
    private final RunDraft.Run run;
    private final Costs costs;
    private final Simulation simulation;
    private final Origin origin;

    private Scenario(String name, Content content, Origin origin) {
        this.name = name;
        this.header = content.header();
        this.system = content.system();
        this.run = content.run();
        this.costs = content.costs();
        this.simulation = Simulation.of(system, run.duration()).sampledEvery(run.sample());
        this.origin = origin;
    }

    /** What a scenario says. */
    private record Content(Header header, HotWaterSystem system, RunDraft.Run run, Costs costs) {}

    /** Where a scenario comes from: its text, and what was added to it. */
    private record Origin(String source, List<Assumption> assumptions) {}

    /**
     * A scenario made by a program.
     *
     * @param name its short name, which also names the folder of its results; made safe by {@link ScenarioName#safe}
     * @param title its heading
     * @param system what to simulate
     * @param duration for how long, above 0 to 36525 days
     * @param sample the distance of the samples, 1 s to the duration
     * @return the scenario, with nothing assumed and no source text
     * @throws IllegalArgumentException if duration or sample is outside its range
     */
    public static Scenario of(String name, String title, HotWaterSystem system, Duration duration, Duration sample) {
        Header header = new Header(Objects.requireNonNull(title, "title"), "", "");
        return new Scenario(
                ScenarioName.safe(name),
                new Content(
                        header,
                        system,
                        new RunDraft.Run(
                                duration,
                                sample,
                                system.start().timeOfDay(),
                                system.start().dayOfYear()),
                        Costs.invented()),
                new Origin("", List.of()));
    }

    /** A scenario read from a text. */
    static Scenario read(String name, ScenarioBinder.Bound bound, List<Assumption> assumptions, String source) {
        return new Scenario(
                ScenarioName.safe(name),
                new Content(bound.header(), bound.system().orElseThrow(), bound.run(), bound.costs()),
                new Origin(source, List.copyOf(assumptions)));
    }

    /**
     * The same scenario, sampled differently.
     *
     * @param sample the distance of the samples, 1 s to the duration of the run
     * @return the scenario with that interval
     * @throws IllegalArgumentException if the interval is outside its range or gives more than 20 million samples
     */
    public Scenario sampledEvery(Duration sample) {
        RunDraft.conflict(run.duration(), sample).ifPresent(message -> {
            throw new IllegalArgumentException("sample: " + message);
        });
        List<Assumption> kept = origin.assumptions().stream()
                .filter(assumption -> !assumption.field().equals("run.sample"))
                .toList();
        return new Scenario(
                name, new Content(header, system, run.sampledEvery(sample), costs), new Origin(origin.source(), kept));
    }

    /**
     * The run, ready to start.
     *
     * @return the simulation of the system for the duration, with these samples
     */
    public Simulation simulation() {
        return simulation;
    }

    /**
     * The short name.
     *
     * @return a name that is also a safe folder name
     */
    public String name() {
        return name;
    }

    /**
     * The heading of results.
     *
     * @return the title, or the name if none was given
     */
    public String title() {
        return header.title().isEmpty() ? name : header.title();
    }

    /**
     * What the run is to answer.
     *
     * @return the question, empty if none was given
     */
    public String question() {
        return header.question();
    }

    /**
     * What is expected to come out.
     *
     * @return the expectation, empty if none was given
     */
    public String expectation() {
        return header.expectation();
    }

    /**
     * What is simulated.
     *
     * @return the system
     */
    public HotWaterSystem system() {
        return system;
    }

    /**
     * What water and vessels cost.
     *
     * @return the prices, invented where none were given
     */
    public Costs costs() {
        return costs;
    }

    /**
     * How long the run is.
     *
     * @return the duration
     */
    public Duration duration() {
        return run.duration();
    }

    /**
     * How finely the run is sampled.
     *
     * @return the distance of the samples
     */
    public Duration sample() {
        return run.sample();
    }

    /**
     * Everything that was filled in because the text did not give it.
     *
     * @return the assumptions, in the order of the format
     */
    public List<Assumption> assumptions() {
        return origin.assumptions();
    }

    /**
     * The text the scenario was read from.
     *
     * @return the text, empty if a program made the scenario
     */
    public String source() {
        return origin.source();
    }
}
