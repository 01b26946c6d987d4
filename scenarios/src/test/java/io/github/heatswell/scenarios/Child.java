package io.github.heatswell.scenarios;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;

/** Java machines of their own, for what a test cannot do to the one it runs in. */
final class Child {

    private Child() {}

    /** How a child ended. */
    record Ended(int status, String out, String err) {}

    /** The command that starts a class of the tests' class path. */
    static List<String> java(Class<?> main, String... arguments) {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-XX:-UsePerfData",
                "-Xshare:auto",
                "-cp",
                System.getProperty("java.class.path"),
                main.getName()));
        command.addAll(List.of(arguments));
        return command;
    }

    /** The command that starts the program. */
    static List<String> heatswell(String... arguments) {
        return java(Heatswell.class, arguments);
    }

    /** A command behind words that start it under other conditions. */
    static List<String> behind(List<String> words, List<String> command) {
        List<String> all = new ArrayList<>(words);
        all.addAll(command);
        return all;
    }

    /** Runs a command to its end. */
    static Ended run(List<String> command) throws IOException, InterruptedException {
        return end(new ProcessBuilder(command).start());
    }

    /** Waits for the end of a process. */
    static Ended end(Process process) throws IOException, InterruptedException {
        CompletableFuture<String> err = CompletableFuture.supplyAsync(() -> text(process.getErrorStream()));
        String out = text(process.getInputStream());
        return new Ended(process.waitFor(), out, err.join());
    }

    /** Whether a command exists and succeeds. */
    static boolean works(String... command) throws InterruptedException {
        try {
            return new ProcessBuilder(command)
                            .redirectErrorStream(true)
                            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                            .start()
                            .waitFor()
                    == 0;
        } catch (IOException e) {
            return false;
        }
    }

    /** Whether a process ignores interrupts, as it does where a shell started its ancestors in the background. */
    static boolean ignoresInterrupts(Process process) throws IOException {
        Path status = Path.of("/proc/" + process.pid() + "/status");
        return Files.exists(status)
                && Files.readAllLines(status).stream()
                        .filter(line -> line.startsWith("SigIgn:"))
                        .anyMatch(line ->
                                (Long.parseUnsignedLong(line.substring(7).strip(), 16) & 2) != 0);
    }

    private static String text(InputStream stream) {
        try {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
