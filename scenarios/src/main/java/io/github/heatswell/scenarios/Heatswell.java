package io.github.heatswell.scenarios;

import io.github.heatswell.scenarios.cli.CommandFactory;
import io.github.heatswell.scenarios.cli.ExitStatus;
import java.io.BufferedReader;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.io.Reader;
import java.nio.charset.Charset;

/**
 * The entry point of the program {@code heatswell}.
 */
public final class Heatswell {

    /** Same as {@link ExitStatus#FAILED}, repeated because loading that class may be what fails. */
    private static final int STATUS_FAILED = 5;

    private Heatswell() {}

    /**
     * Runs the command line and exits the JVM.
     *
     * @param arguments the command-line arguments; {@code --help} explains them
     */
    public static void main(String[] arguments) {
        // Charts are drawn into files; without this, Java would ask for a screen.
        System.setProperty("java.awt.headless", "true");
        StandardOutput output = new StandardOutput();
        PrintWriter out = writer(output, "stdout.encoding");
        PrintWriter err = writer(System.err, "stderr.encoding");
        int status = execute(arguments, out, err);
        out.flush();
        if (output.trouble().isPresent()) {
            err.println("heatswell: cannot write to standard output: "
                    + output.trouble().get());
            status = Math.max(status, ExitStatus.NOT_WRITTEN.code());
        }
        err.flush();
        System.exit(status);
    }

    /** Runs the command line; a failure before it is set up, such as a damaged jar, is reported in one line too. */
    private static int execute(String[] arguments, PrintWriter out, PrintWriter err) {
        try {
            return CommandFactory.heatswell(out, err, reader(System.in)).execute(arguments);
        } catch (RuntimeException | Error e) {
            err.print("heatswell: the program cannot be started: ");
            err.print(e.toString().replaceAll("\\s+", " "));
            err.print('\n');
            return STATUS_FAILED;
        }
    }

    /** A reader in the encoding of the terminal. It reads nothing until asked. */
    private static Reader reader(InputStream stream) {
        String terminal =
                System.getProperty("stdout.encoding", Charset.defaultCharset().name());
        String encoding = System.getProperty("stdin.encoding", terminal);
        return new BufferedReader(new InputStreamReader(stream, Charset.forName(encoding)));
    }

    /** A writer in the encoding of the terminal, which may differ from that of files. */
    private static PrintWriter writer(OutputStream stream, String property) {
        String encoding = System.getProperty(property, Charset.defaultCharset().name());
        return new PrintWriter(new OutputStreamWriter(stream, Charset.forName(encoding)), true);
    }
}
