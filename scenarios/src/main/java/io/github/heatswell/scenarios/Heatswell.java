package io.github.heatswell.scenarios;

import io.github.heatswell.scenarios.cli.CommandFactory;
import io.github.heatswell.scenarios.cli.ExitStatus;
import java.io.BufferedReader;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.io.Reader;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;

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

    /**
     * Standard output. It records the first write failure, which writers swallow, and then discards further output.
     */
    static final class StandardOutput extends OutputStream {

        /** POSIX file types: pipes, and sockets, which some shells use instead. */
        private static final int KIND = 0170000;

        private static final int PIPE = 0010000;
        private static final int SOCKET = 0140000;

        private final OutputStream out;
        private String trouble;

        StandardOutput() {
            this(new FileOutputStream(FileDescriptor.out));
        }

        StandardOutput(OutputStream out) {
            this.out = out;
        }

        @Override
        public void write(int b) {
            write(new byte[] {(byte) b}, 0, 1);
        }

        @Override
        public void write(byte[] bytes, int offset, int length) {
            if (trouble != null) {
                return;
            }
            try {
                out.write(bytes, offset, length);
            } catch (IOException e) {
                trouble = String.valueOf(e.getMessage());
            }
        }

        /**
         * Why part of the output was lost; empty if none was, or if the reader closed the pipe early, as {@code head} does.
         */
        Optional<String> trouble() {
            return Optional.ofNullable(trouble)
                    .filter(said -> !said.toLowerCase(Locale.ROOT).contains("pipe") && !isPipe());
        }

        /** Whether the output is a pipe; independent of the language of the system's error message. */
        private static boolean isPipe() {
            try {
                Object mode = Files.getAttribute(Path.of("/dev/fd/1"), "unix:mode");
                int kind = mode instanceof Integer number ? number & KIND : 0;
                return kind == PIPE || kind == SOCKET;
            } catch (IOException | UnsupportedOperationException | IllegalArgumentException e) {
                return false;
            }
        }
    }
}
