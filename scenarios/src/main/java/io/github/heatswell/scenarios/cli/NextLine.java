package io.github.heatswell.scenarios.cli;

import io.github.heatswell.place.Place;
import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.report.NextStep;
import io.github.heatswell.scenarios.wording.Typed;
import io.github.heatswell.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The last line of a command: the next command, to be pasted, about the same house with the same place, changes and units. */
final class NextLine {

    private NextLine() {}

    /** The line of a command that is about no house, or whose words are all there. */
    static String of(String... words) {
        return "\nNext: " + Typed.command(List.of(words)) + "\n";
    }

    /**
     * The line after an answer.
     *
     * @param step what comes next
     * @param house the scenario as the command line names it
     * @param request the command line that was answered
     */
    static String of(NextStep step, String house, Request request) {
        return of(words(step, house, request).toArray(String[]::new));
    }

    /** The command, as a command line has it word by word. */
    static List<String> words(NextStep step, String house, Request request) {
        List<String> words = new ArrayList<>(List.of(step.command(), house));
        Optional.ofNullable(request.option(Specs.PLACE, (Place) null))
                .ifPresent(place -> words.addAll(List.of(Specs.PLACE, place.key())));
        List<Change> kept = request.option(Specs.SET, List.<Change>of()).stream()
                .filter(change ->
                        step.changes().stream().noneMatch(other -> other.field().equals(change.field())))
                .toList();
        kept.forEach(change -> words.addAll(List.of(Specs.SET, change.toString())));
        step.changes().forEach(change -> words.addAll(List.of(Specs.SET, change.toString())));
        Optional.ofNullable(request.option(Specs.UNITS, (UnitSystem) null))
                .ifPresent(units -> words.addAll(List.of("-u", units.name().toLowerCase(Locale.ROOT))));
        return words;
    }
}
