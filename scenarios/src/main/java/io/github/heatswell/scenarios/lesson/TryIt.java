package io.github.heatswell.scenarios.lesson;

import io.github.heatswell.result.RunResult;
import io.github.heatswell.scenarios.catalogue.Catalogue;
import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.file.Scenario;
import java.util.List;
import java.util.Objects;
import java.util.function.Predicate;

/**
 * Something to try oneself.
 *
 * @param scenario the name of a bundled scenario
 * @param changes what to change in it, at least one field
 * @param shows what will be seen, in one or two sentences
 * @param claim the same as a test of the run
 */
public record TryIt(String scenario, List<Change> changes, String shows, Predicate<RunResult> claim) {

    /**
     * Copies the changes.
     *
     * @param scenario the name of a bundled scenario
     * @param changes what to change in it, at least one field
     * @param shows what will be seen, in one or two sentences
     * @param claim the same as a test of the run
     * @throws IllegalArgumentException if no scenario of that name is bundled or nothing is changed
     */
    public TryIt {
        if (!Catalogue.names().contains(scenario)) {
            throw new IllegalArgumentException("no scenario of the name " + scenario + " is bundled");
        }
        changes = List.copyOf(changes);
        Texts.requireCount("the changes to try", changes.size(), 1, Integer.MAX_VALUE);
        Texts.require("what the trial shows", shows);
        Objects.requireNonNull(claim, "claim");
    }

    /**
     * A trial by its changes as they are typed.
     *
     * @param scenario the name of a bundled scenario
     * @param shows what will be seen, in one or two sentences
     * @param claim the same as a test of the run
     * @param changes what to change in it, each such as {@code tank.volume=150 L}
     * @return the trial
     * @throws IllegalArgumentException if no scenario of that name is bundled, nothing is changed or a change is none
     */
    public static TryIt of(String scenario, String shows, Predicate<RunResult> claim, String... changes) {
        return new TryIt(scenario, List.of(changes).stream().map(Change::of).toList(), shows, claim);
    }

    /**
     * The command to type.
     *
     * @return the command with one {@code --set} for each change
     */
    public String command() {
        return Commands.run(scenario, changes);
    }

    /**
     * What the command runs.
     *
     * @return the changed scenario
     * @throws io.github.heatswell.scenarios.file.InvalidScenarioException if it makes no sense with the changes
     */
    public Scenario changed() {
        return Catalogue.read(scenario).with(changes);
    }
}
