package io.github.heatswell.scenarios.interview;

import io.github.heatswell.scenarios.wording.Printable;
import io.github.heatswell.scenarios.wording.Spoken;
import io.github.heatswell.scenarios.wording.Wrapped;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.Reader;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** A line-based dialogue: output and input. Closes neither. */
final class Dialogue {

    /** Longest answer; the rest is discarded. */
    private static final int MAX_LENGTH = 1000;

    private static final Set<String> GO_ON = Set.of("yes", "no", "quit", "exit", "q");

    private final Reader in;
    private final PrintWriter out;

    Dialogue(Reader in, PrintWriter out) {
        this.in = in;
        this.out = out;
    }

    /** Says something in as many lines as it takes. */
    void say(String text) {
        say(text, "", "");
    }

    /** Says something, with something before the first line and before all others. */
    void say(String text, String first, String rest) {
        out.print(Wrapped.lines(Printable.line(text), first, rest));
        out.flush();
    }

    void blankLine() {
        out.print("\n");
        out.flush();
    }

    /** Asks whether to go on from answers kept earlier; the answer in lower case, or empty. */
    Optional<String> goOn(Path kept, int count) {
        blankLine();
        say(kept + " has " + count
                + " answers from an earlier interview. Continue from there? Type yes, or no to start over.");
        for (int asked = 0; asked < Interviewer.PATIENCE; asked++) {
            Optional<String> answer = hear().map(line -> Spoken.of(line).plain().toLowerCase(Locale.ROOT));
            if (answer.isEmpty() || GO_ON.contains(answer.get())) {
                return answer;
            }
            say(
                    "Type yes to go on with the first unanswered question, no to forget the answers and start over, or quit to"
                            + " leave and keep them.");
        }
        return Optional.empty();
    }

    /** The next line without its end and without blanks around it; empty once there are no more. */
    Optional<String> hear() {
        StringBuilder line = new StringBuilder();
        try {
            int c = in.read();
            if (c < 0) {
                return Optional.empty();
            }
            for (; c >= 0 && c != '\n'; c = in.read()) {
                if (line.length() < MAX_LENGTH) {
                    line.append((char) c);
                }
            }
        } catch (IOException e) {
            // Input failed, which counts as leaving.
            return Optional.empty();
        }
        return Optional.of(line.toString().strip());
    }
}
