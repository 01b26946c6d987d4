package io.github.heatswell.scenarios.interview;

import io.github.heatswell.scenarios.interview.Interview.Outcome.Ending;
import io.github.heatswell.scenarios.readings.InvalidReadingsException;
import io.github.heatswell.scenarios.readings.TypedReadings;
import io.github.heatswell.scenarios.report.OutputException;
import io.github.heatswell.scenarios.report.ReadingsSheet;
import io.github.heatswell.scenarios.wording.Spoken;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Takes readings from paper, line by line, and keeps them in a file that {@code diagnose} reads. */
public final class ReadingsTalk {

    /** A list needs so many readings. */
    private static final int MIN_READINGS = 3;

    private static final String UNIT = "The pressures have no unit. What does the gauge read in: psi, bar or kPa?";

    private final Dialogue dialogue;
    private final HouseFile file;
    private final UnitSystem units;
    private final double alarming;
    private TypedReadings typed;

    /** A talk about a house whose relief valve should not let the pressure rise so far (Pa, gauge). */
    ReadingsTalk(Dialogue dialogue, Path file, UnitSystem units, double alarming) {
        this.dialogue = dialogue;
        this.alarming = alarming;
        typed = TypedReadings.none().doubtingFrom(alarming);
        this.units = units;
        this.file = new HouseFile(file);
    }

    /**
     * Asks for readings until there are no more, and writes the file after every line.
     *
     * @param file where the list belongs; lines that it holds already are gone on from
     * @param units of the examples
     * @param in gives the lines; stays open
     * @param out takes the questions; stays open
     * @return how it ended: obstructed if the file holds something else
     * @throws OutputException if the file cannot be written
     */
    public static Ending hold(Path file, UnitSystem units, Reader in, PrintWriter out) throws OutputException {
        return new ReadingsTalk(new Dialogue(in, out), file, units, Double.POSITIVE_INFINITY).hold(Optional.empty());
    }

    /** Whether a line reads as one of a list, with a unit or without. */
    static boolean isReading(String line) {
        try {
            return TypedReadings.none().with(line).readings() > 0;
        } catch (InvalidReadingsException refused) {
            return refused.isUnitMissing();
        }
    }

    /** The same, where a line was typed already. */
    Ending hold(Optional<String> first) throws OutputException {
        if (file.exists() && !hasGoneOn()) {
            return Ending.OBSTRUCTED;
        }
        dialogue.say(
                "Type your readings as you wrote them down, one per line or all pasted at once: a time, the pressure, and what you"
                        + " saw, such as " + ReadingsSheet.examples(units) + ". Type done after the last line,"
                        + " back to remove the last line, or ? for how to take readings. They are kept in "
                        + file.path() + ".");
        if (typed.lines() > 0) {
            dialogue.say(file.path() + " holds readings: go on after " + typed.taken() + ".");
        }
        if (first.isPresent() && !take(first.get())) {
            return Ending.ENDED;
        }
        while (true) {
            Optional<String> line = dialogue.hear();
            String word = line.map(one -> one.toLowerCase(Locale.ROOT)).orElse("done");
            if (word.equals("done") || word.equals("end") || word.equals("fertig")) {
                if (typed.readings() >= MIN_READINGS) {
                    return Ending.FINISHED;
                }
                if (line.isEmpty()) {
                    return Ending.ENDED;
                }
                dialogue.say("A diagnosis needs at least " + MIN_READINGS + " readings; there are " + typed.readings()
                        + ". Type more, or quit to continue another time.");
            } else if (Interview.LEAVE.contains(word)) {
                return Ending.LEFT;
            } else if (List.of("?", "help", "hilfe").contains(word)) {
                ReadingsSheet.how(units).forEach(how -> dialogue.say(how, "   ", "   "));
            } else if (List.of("back", "undo", "zur\u00fcck").contains(word)) {
                typed = typed.withoutLast();
                dialogue.say("Taken back; "
                        + (typed.readings() == 1 ? "1 reading is left." : typed.readings() + " readings are left."));
                keep();
            } else if (!word.isEmpty() && !take(line.orElseThrow())) {
                return Ending.ENDED;
            }
        }
    }

    /** Reads the lines kept before; false if they are something else. */
    private boolean hasGoneOn() {
        try {
            typed = TypedReadings.of(Files.readString(file.path())).doubtingFrom(alarming);
            return typed.readings() > 0;
        } catch (IOException | InvalidReadingsException other) {
            return false;
        }
    }

    /** Takes a line, and asks for the unit where none is known yet; false at the end of the input. */
    private boolean take(String line) throws OutputException {
        try {
            typed = typed.with(line);
        } catch (InvalidReadingsException refused) {
            if (refused.isUnitMissing()) {
                return takeOnceTheUnitIsKnown(line);
            }
            dialogue.say("Not kept: " + typed.complaint(refused) + ".");
            return true;
        }
        dialogue.say(typed.taken(), "-> ", "   ");
        keep();
        return true;
    }

    /** Asks for the unit of the gauge; whoever pastes a list has the other lines come first. */
    private boolean takeOnceTheUnitIsKnown(String line) throws OutputException {
        List<String> waiting = new ArrayList<>(List.of(line));
        dialogue.say(UNIT);
        while (true) {
            Optional<String> next = dialogue.hear();
            String said = next.map(one -> Spoken.of(one).plain().toLowerCase(Locale.ROOT))
                    .orElse("");
            if (next.isEmpty() || Interview.LEAVE.contains(said)) {
                return false;
            }
            if (List.of("psi", "bar", "kpa").contains(said)) {
                typed = typed.in(said);
                for (String one : waiting) {
                    take(one);
                }
                return true;
            }
            if (said.isEmpty() || !Character.isDigit(said.charAt(0))) {
                dialogue.say(UNIT);
            } else {
                waiting.add(next.get());
            }
        }
    }

    private void keep() throws OutputException {
        file.write(typed.text());
    }
}
