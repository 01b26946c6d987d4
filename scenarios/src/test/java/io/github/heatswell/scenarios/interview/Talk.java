package io.github.heatswell.scenarios.interview;

import io.github.heatswell.scenarios.interview.Interview.Outcome;
import io.github.heatswell.scenarios.report.OutputException;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.Reader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * An interview with answers from a list.
 *
 * @param outcome how it ended
 * @param dialogue everything said, with the answers as they would stand on a terminal
 */
record Talk(Outcome outcome, String dialogue) {

    static Talk hold(Path file, UnitSystem units, List<String> answers) throws OutputException {
        StringWriter said = new StringWriter();
        Outcome outcome = Interview.hold(file, Optional.of(units), new Typing(answers, said), new PrintWriter(said));
        return new Talk(outcome, said.toString());
    }

    static Talk hold(Path file, String... answers) throws OutputException {
        return hold(file, UnitSystem.SI, List.of(answers));
    }

    /** The file that was written. */
    String text() throws IOException {
        return Files.readString(outcome.file());
    }

    /** Types a line when the one before was read to its end, and shows it as a terminal does. */
    private static final class Typing extends Reader {
        private final List<String> lines;
        private final StringWriter terminal;
        private int line;
        private int column;

        Typing(List<String> lines, StringWriter terminal) {
            this.lines = lines;
            this.terminal = terminal;
        }

        @Override
        public int read() {
            if (line == lines.size()) {
                return -1;
            }
            String current = lines.get(line) + "\n";
            char c = current.charAt(column++);
            terminal.append(c);
            if (column == current.length()) {
                line++;
                column = 0;
            }
            return c;
        }

        @Override
        public int read(char[] buffer, int offset, int length) {
            throw new AssertionError("an interview must not read ahead");
        }

        @Override
        public void close() {
            throw new AssertionError("an interview must not close what it listens to");
        }
    }
}
