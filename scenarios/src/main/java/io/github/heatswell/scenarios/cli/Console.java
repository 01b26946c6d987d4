package io.github.heatswell.scenarios.cli;

import io.github.heatswell.scenarios.wording.Printable;
import java.io.PrintWriter;
import java.io.Reader;
import java.io.Writer;

/**
 * Where a command prints, and where it listens. Nobody listening any more is no reason to fail: a report piped into a program that has read
 * enough ends quietly.
 *
 * @param out takes reports
 * @param err takes complaints
 * @param in gives the answers to what a command asks; never closed here
 */
record Console(PrintWriter out, PrintWriter err, Reader in) {

    /** A console on which nobody says anything. */
    static Console silent(PrintWriter out, PrintWriter err) {
        return new Console(out, err, Reader.nullReader());
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

    /** Whether somebody watches a terminal; the starting script knows, and where it does not say, nobody does. */
    boolean watched() {
        return Boolean.getBoolean("heatswell.terminal");
    }

    /** Writes over the line in which the terminal's cursor stands. */
    void overwrite(String line) {
        err.print("\r" + line);
        err.flush();
    }
}
