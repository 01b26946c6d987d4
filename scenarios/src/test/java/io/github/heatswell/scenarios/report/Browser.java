package io.github.heatswell.scenarios.report;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** A browser without a screen, started anew for every page. */
public final class Browser {

    private static final List<String> NAMES =
            List.of("chromium", "chromium-browser", "google-chrome", "google-chrome-stable");

    /** Longer than this (s) no page takes; a browser that hangs must not hang the build. */
    private static final long PATIENCE = 120;

    private final String program;
    private final Path folder;
    private int starts;

    private Browser(String program, Path folder) {
        this.program = program;
        this.folder = folder;
    }

    /** What a start printed: the page as it is after loading, and what the browser logged. */
    public record Outcome(String page, String log) {}

    /** The browser of this machine; the environment variable HEATSWELL_BROWSER names another, or "none". */
    public static Optional<Browser> find(Path folder) {
        String named = System.getenv("HEATSWELL_BROWSER");
        if ("none".equals(named)) {
            return Optional.empty();
        }
        if (named != null && !named.isBlank()) {
            return Optional.of(new Browser(named, folder));
        }
        return NAMES.stream()
                .flatMap(name -> Stream.of(
                                System.getenv().getOrDefault("PATH", "").split(File.pathSeparator))
                        .map(place -> Path.of(place, name)))
                .filter(Files::isExecutable)
                .findFirst()
                .map(path -> new Browser(path.toString(), folder));
    }

    /** Loads a page and returns what has become of it. */
    public Outcome load(Path page) throws IOException, InterruptedException {
        return start("--dump-dom", "--virtual-time-budget=5000", page.toUri().toString());
    }

    /** Prints a page. */
    public byte[] print(Path page) throws IOException, InterruptedException {
        Path pdf = folder.resolve("print-" + ++starts + ".pdf");
        Outcome outcome = start(
                "--no-pdf-header-footer", "--print-to-pdf=" + pdf, page.toUri().toString());
        if (!Files.exists(pdf)) {
            throw new IOException("nothing was printed: " + outcome.log());
        }
        return Files.readAllBytes(pdf);
    }

    private Outcome start(String... arguments) throws IOException, InterruptedException {
        Path profile = Files.createTempDirectory(folder, "profile");
        Path out = folder.resolve("out-" + ++starts);
        Path log = folder.resolve("log-" + starts);
        List<String> command = new ArrayList<>(List.of(
                program,
                "--headless",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-quic",
                "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--disable-dev-shm-usage",
                "--allow-file-access-from-files",
                "--enable-logging=stderr",
                "--v=0",
                "--host-resolver-rules=MAP * ~NOTFOUND",
                "--user-data-dir=" + profile,
                "--window-size=1000,900"));
        command.addAll(List.of(arguments));
        Process process = new ProcessBuilder(command)
                .redirectOutput(out.toFile())
                .redirectError(log.toFile())
                .start();
        if (!process.waitFor(PATIENCE, TimeUnit.SECONDS)) {
            process.destroyForcibly().waitFor();
            throw new IOException("the browser did not end: " + read(log));
        }
        if (process.exitValue() != 0) {
            throw new IOException("the browser ended with " + process.exitValue() + ": " + read(log));
        }
        return new Outcome(read(out), read(log));
    }

    private static String read(Path file) {
        try {
            return new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
