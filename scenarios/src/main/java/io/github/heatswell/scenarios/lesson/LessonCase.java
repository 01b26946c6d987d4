package io.github.heatswell.scenarios.lesson;

import io.github.heatswell.result.Channel;
import io.github.heatswell.scenarios.catalogue.Catalogue;
import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.file.Scenario;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * One of the houses a lesson compares.
 *
 * @param label what tells it from the other cases, in a few words
 * @param scenario the house and the run of it
 * @param channel the quantity to look at
 */
public record LessonCase(String label, Scenario scenario, Channel channel) {

    /**
     * Checks that everything is there.
     *
     * @param label what tells it from the other cases, in a few words
     * @param scenario the house and the run of it
     * @param channel the quantity to look at
     * @throws IllegalArgumentException if the label is blank
     */
    public LessonCase {
        Texts.require("the label of a case", label);
        Objects.requireNonNull(scenario, "scenario");
        Objects.requireNonNull(channel, "channel");
    }

    /**
     * A bundled scenario, or one that differs from it, with the pressure to look at.
     *
     * @param label what tells it from the other cases, in a few words
     * @param name the name of the bundled scenario
     * @param changes what differs, each such as {@code tank.volume=150 L}
     * @return the case
     * @throws IllegalArgumentException if there is no such scenario or a change is none
     * @throws io.github.heatswell.scenarios.file.InvalidScenarioException if the changed scenario makes no sense
     */
    public static LessonCase bundled(String label, String name, String... changes) {
        List<Change> made = List.of(changes).stream().map(Change::of).toList();
        return new LessonCase(label, Catalogue.read(name).with(made), Channel.GAUGE_READING);
    }

    /**
     * The same case with another quantity to look at.
     *
     * @param shown the quantity
     * @return the case
     */
    public LessonCase showing(Channel shown) {
        return new LessonCase(label, scenario, shown);
    }

    /**
     * The command that runs this case.
     *
     * @return the command, or empty if the scenario was not made from a bundled one
     */
    public Optional<String> command() {
        boolean bundled = Catalogue.names().contains(scenario.name())
                && Catalogue.text(scenario.name()).equals(scenario.source());
        return bundled ? Optional.of(Commands.run(scenario.name(), scenario.changes())) : Optional.empty();
    }
}
