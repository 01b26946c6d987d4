package io.github.heatswell.scenarios.cli;

import java.io.PrintWriter;
import java.io.StringWriter;

/**
 * What a command printed and returned, with line ends as in the golden files, whatever the machine's are.
 *
 * @param status the exit status
 * @param out what it printed
 * @param err what it complained of
 */
public record Outcome(int status, String out, String err) {

    /** Executes a command line. */
    public static Outcome execute(String... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int status = CommandFactory.heatswell(new PrintWriter(out), new PrintWriter(err))
                .execute(arguments);
        return new Outcome(status, plain(out), plain(err));
    }

    private static String plain(StringWriter text) {
        return text.toString().replace("\r\n", "\n");
    }
}
