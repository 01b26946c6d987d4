package io.github.heatswell.scenarios.report;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.core.io.JsonStringEncoder;
import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.EOFException;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * A browser without a screen, started once for the pages of a class, as a start takes longer than a page. Each page is loaded with
 * nothing kept from another. It is told what to do, and answers, in JSON texts that end with a zero byte, over standard input and
 * output, so that it ends when this program does.
 */
public final class Browser implements AutoCloseable {

    private static final List<String> NAMES =
            List.of("chromium", "chromium-browser", "google-chrome", "google-chrome-stable");

    /** Longer than this (s) no page takes; a browser that hangs must not hang the build. */
    private static final long PATIENCE = 120;

    private static final Set<String> SAYING =
            Set.of("Runtime.consoleAPICalled", "Runtime.exceptionThrown", "Log.entryAdded");

    /** So long (ms) by its own clock a page may go on after it was loaded. */
    private static final int AFTERWARDS = 200;

    private final Process process;
    private final OutputStream orders;
    private final InputStream answers;
    private final Path log;
    private final List<String> said = new ArrayList<>();
    private final Set<String> happened = new HashSet<>();
    private int count;

    private Browser(String program, Path folder) throws IOException {
        log = folder.resolve("browser.log");
        // It takes orders from its third file and answers on its fourth.
        process = new ProcessBuilder(
                        "/bin/sh",
                        "-c",
                        "exec \"$@\" 3<&0 4>&1 </dev/null >/dev/null",
                        "sh",
                        program,
                        "--headless",
                        "--no-sandbox",
                        "--disable-gpu",
                        "--disable-quic",
                        "--no-first-run",
                        "--no-startup-window",
                        "--disable-background-networking",
                        "--disable-component-update",
                        "--disable-sync",
                        "--disable-dev-shm-usage",
                        "--allow-file-access-from-files",
                        "--host-resolver-rules=MAP * ~NOTFOUND",
                        "--user-data-dir=" + Files.createTempDirectory(folder, "profile"),
                        "--window-size=1000,900",
                        "--remote-debugging-pipe")
                .redirectError(log.toFile())
                .start();
        orders = process.getOutputStream();
        answers = new BufferedInputStream(process.getInputStream());
    }

    /** What has become of a page: as it is after loading, and what it said on the console, thrown errors included. */
    public record Outcome(String page, List<String> console) {}

    /**
     * Starts the browser of this machine; the environment variable HEATSWELL_BROWSER names another, or "none". Without one the test is
     * skipped, unless the system property {@code browser.required} is true.
     */
    public static Browser start(Path folder) throws IOException {
        Optional<String> program = program();
        assertTrue(
                program.isPresent() || !Boolean.getBoolean("browser.required"),
                "there must be a browser: install chromium or set HEATSWELL_BROWSER");
        assumeTrue(program.isPresent(), "there is no browser on this machine");
        return new Browser(program.orElseThrow(), folder);
    }

    private static Optional<String> program() {
        String named = System.getenv("HEATSWELL_BROWSER");
        if (named != null && !named.isBlank()) {
            return Optional.of(named).filter(name -> !name.equals("none"));
        }
        return NAMES.stream()
                .flatMap(name -> Stream.of(
                                System.getenv().getOrDefault("PATH", "").split(File.pathSeparator))
                        .map(place -> Path.of(place, name)))
                .filter(Files::isExecutable)
                .findFirst()
                .map(Path::toString);
    }

    /** Loads a page and returns what has become of it. */
    public Outcome load(Path page) throws IOException {
        return with(page, session -> {
            settle(session);
            Map<String, Object> evaluated =
                    order(session, "Runtime.evaluate", "{\"expression\":\"document.documentElement.outerHTML\"}");
            return new Outcome((String) part(evaluated, "result").get("value"), List.copyOf(said));
        });
    }

    /** Loads a page and asks it: what comes of a promise, in as much time as it takes, in the place of the page. */
    public Outcome ask(Path page, String promise) throws IOException {
        String expression = "{\"awaitPromise\":true,\"expression\":\""
                + String.valueOf(JsonStringEncoder.getInstance().quoteAsString(promise)) + "\"}";
        return with(
                page,
                session -> new Outcome(
                        (String) part(order(session, "Runtime.evaluate", expression), "result")
                                .get("value"),
                        List.copyOf(said)));
    }

    /** Prints a page. */
    public byte[] print(Path page) throws IOException {
        return with(page, session -> {
            settle(session);
            return Base64.getDecoder().decode((String)
                    order(session, "Page.printToPDF", "{\"printBackground\":true,\"preferCSSPageSize\":true}")
                            .get("data"));
        });
    }

    @FunctionalInterface
    private interface Use<T> {
        T of(String session) throws IOException;
    }

    private <T> T with(Path page, Use<T> use) throws IOException {
        CompletableFuture<Void> patience = new CompletableFuture<>();
        patience.completeOnTimeout(null, PATIENCE, TimeUnit.SECONDS).thenRun(process::destroyForcibly);
        try {
            Object context = order("", "Target.createBrowserContext", "{}").get("browserContextId");
            Object target = order(
                            "",
                            "Target.createTarget",
                            "{\"url\":\"about:blank\",\"browserContextId\":\"" + context + "\"}")
                    .get("targetId");
            String session =
                    (String) order("", "Target.attachToTarget", "{\"targetId\":\"" + target + "\",\"flatten\":true}")
                            .get("sessionId");
            said.clear();
            happened.clear();
            for (String domain : List.of("Page", "Runtime", "Log")) {
                order(session, domain + ".enable", "{}");
            }
            order(session, "Page.navigate", "{\"url\":\"" + page.toUri() + "\"}");
            await("Page.loadEventFired");
            T result = use.of(session);
            order("", "Target.disposeBrowserContext", "{\"browserContextId\":\"" + context + "\"}");
            return result;
        } finally {
            patience.cancel(false);
        }
    }

    private void settle(String session) throws IOException {
        order(
                session,
                "Emulation.setVirtualTimePolicy",
                "{\"policy\":\"pauseIfNetworkFetchesPending\",\"budget\":" + AFTERWARDS + "}");
        await("Emulation.virtualTimeBudgetExpired");
    }

    private Map<String, Object> order(String session, String method, String parameters) throws IOException {
        String of = session.isEmpty() ? "" : "\"sessionId\":\"" + session + "\",";
        String order =
                "{\"id\":" + ++count + "," + of + "\"method\":\"" + method + "\",\"params\":" + parameters + "}\0";
        orders.write(order.getBytes(StandardCharsets.UTF_8));
        orders.flush();
        Map<String, Object> answer = next();
        while (!Double.valueOf(count).equals(answer.get("id"))) {
            answer = next();
        }
        if (answer.get("result") == null) {
            throw new IOException(method + ": " + answer);
        }
        return part(answer, "result");
    }

    private void await(String event) throws IOException {
        while (!happened.remove(event)) {
            next();
        }
    }

    private Map<String, Object> next() throws IOException {
        ByteArrayOutputStream text = new ByteArrayOutputStream();
        int read = answers.read();
        while (read > 0) {
            text.write(read);
            read = answers.read();
        }
        if (read < 0) {
            throw new EOFException("the browser has ended: " + Files.readString(log));
        }
        Map<String, Object> message = JsonText.object(text.toString(StandardCharsets.UTF_8));
        String event = String.valueOf(message.get("method"));
        happened.add(event);
        String told = message.toString();
        // What a page asks for is read from itself.
        if (SAYING.contains(event) && !told.contains("source=network")) {
            said.add(told);
        }
        return message;
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> part(Map<String, Object> whole, String name) {
        return (Map<String, Object>) whole.get(name);
    }

    @Override
    public void close() throws IOException {
        order("", "Browser.close", "{}");
        process.onExit().orTimeout(PATIENCE, TimeUnit.SECONDS).join();
    }
}
