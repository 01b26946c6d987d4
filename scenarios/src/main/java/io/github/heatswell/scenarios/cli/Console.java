package io.github.heatswell.scenarios.cli;

import io.github.heatswell.scenarios.report.NextStep;
import io.github.heatswell.scenarios.wording.Printable;
import java.io.PrintWriter;
import java.io.Reader;
import java.io.Writer;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Output and input of a command. A closed reader is not a failure: a report piped into a program that stops reading
 * ends quietly.
 *
 * @param out takes reports
 * @param err takes complaints
 * @param in the source of answers; never closed here
 * @param led takes what comes next where a guide leads, so that no command has to say it; empty where none does
 */
record Console(PrintWriter out, PrintWriter err, Reader in, Optional<Consumer<NextStep>> led) {

    /** A console without input. */
    static Console silent(PrintWriter out, PrintWriter err) {
        return new Console(out, err, Reader.nullReader(), Optional.empty());
    }

    void print(String text) {
        out.print(text);
        out.flush();
    }

    /** Prints complaints, one in a line. */
    void complain(String complaints) {
        complaints.lines().map(Printable::line).forEach(line -> err.print(line + "\n"));
        err.flush();
    }

    /** A console that shows nothing. */
    static Console silent() {
        PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
        return silent(nowhere, nowhere);
    }

    /** Whether output goes to an interactive terminal, as set by the launcher script; false if unset. */
    boolean watched() {
        return Boolean.getBoolean("heatswell.terminal");
    }

    /** Overwrites the terminal's current line. */
    void overwrite(String line) {
        err.print("\r" + line);
        err.flush();
    }
}
