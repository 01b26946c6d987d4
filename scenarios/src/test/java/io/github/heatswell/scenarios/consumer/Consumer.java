package io.github.heatswell.scenarios.consumer;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** A copy of {@code src/it/consumer}, with a repository of its own, and the Maven that builds it. */
final class Consumer {

    /** What a build of it, or a run, left behind. */
    record Outcome(int exit, String output) {}

    private static final Pattern TESTS = Pattern.compile("<testsuite [^>]*\\btests=\"(\\d+)\"");

    private final Path home;

    private Consumer(Path home) {
        this.home = home;
    }

    /** A fresh copy; what an earlier build left in the same place is removed first. */
    static Consumer copiedTo(Path home) throws IOException {
        if (Files.exists(home)) {
            try (Stream<Path> old = Files.walk(home)) {
                for (Path path : old.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(path);
                }
            }
        }
        Path source = Path.of("src", "it", "consumer");
        try (Stream<Path> files = Files.walk(source)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Path copy = home.resolve(source.relativize(file));
                Files.createDirectories(copy.getParent());
                Files.copy(file, copy);
            }
        }
        return new Consumer(home);
    }

    Path home() {
        return home;
    }

    /** Puts a module's jar and flattened pom where a repository has them. */
    void publish(String module) throws IOException {
        String version = property("heatswell.version");
        String artifact = "heatswell-" + module;
        String name = artifact + "-" + version;
        Path place =
                Files.createDirectories(repository().resolve(Path.of("io", "github", "heatswell", artifact, version)));
        Path project = Path.of("..", module);
        copy(project.resolve(Path.of("target", name + ".jar")), place.resolve(name + ".jar"));
        copy(project.resolve(".flattened-pom.xml"), place.resolve(name + ".pom"));
    }

    /** Runs its tests with the Maven that runs this build. */
    Outcome build() throws IOException, InterruptedException {
        Path settings = home.resolve("settings.xml");
        Files.writeString(
                settings, """
                <settings>
                  <mirrors>
                    <mirror>
                      <id>local-repository-of-the-build</id>
                      <mirrorOf>*</mirrorOf>
                      <url>%s</url>
                    </mirror>
                  </mirrors>
                </settings>
                """.formatted(Path.of(property("maven.repository")).toUri()));
        boolean windows = System.getProperty("os.name").toLowerCase(Locale.ROOT).startsWith("windows");
        List<String> command = new ArrayList<>();
        command.add(Path.of(property("maven.home"), "bin", windows ? "mvn.cmd" : "mvn")
                .toString());
        command.addAll(List.of("-B", "-e", "--no-transfer-progress", "-s", settings.toString()));
        command.addAll(List.of("-gs", settings.toString(), "-Dmaven.repo.local=" + repository()));
        for (String given : property("consumer.properties").trim().split("\\s+")) {
            command.add("-D" + given);
        }
        command.add("test");
        Outcome outcome = outcomeOf(command, System.getProperty("java.home"));
        Files.writeString(home.resolve("build.log"), outcome.output());
        return outcome;
    }

    /**
     * Starts the program of {@code modular} with its own classes and the jars that its build resolved as module path, and with
     * nothing on the class path.
     *
     * @param jdk the JDK that runs it
     * @param folder where it writes
     */
    Outcome startOnModulePath(Path jdk, Path folder) throws IOException, InterruptedException {
        Path target = home.resolve(Path.of("modular", "target"));
        String jars = Files.readString(target.resolve("module-path.txt")).trim();
        return outcomeOf(
                List.of(
                        jdk.resolve(Path.of("bin", "java")).toString(),
                        "-Djava.awt.headless=true",
                        "--module-path",
                        target.resolve("classes") + File.pathSeparator + jars,
                        "--module",
                        "consumer.modular/consumer.modular.Lodge",
                        folder.toString()),
                jdk.toString());
    }

    private Outcome outcomeOf(List<String> command, String jdk) throws IOException, InterruptedException {
        ProcessBuilder process = new ProcessBuilder(command)
                .directory(home.toFile())
                .redirectErrorStream(true)
                .redirectInput(
                        ProcessBuilder.Redirect.from(home.resolve("pom.xml").toFile()));
        process.environment().put("JAVA_HOME", jdk);
        process.environment().remove("MAVEN_ARGS");
        process.environment().remove("CLASSPATH");
        Process running = process.start();
        String output = new String(running.getInputStream().readAllBytes());
        return new Outcome(running.waitFor(), output);
    }

    /** How many tests ran in one of its projects, by the reports of that build. */
    int testsRun(String project) throws IOException {
        int sum = 0;
        try (Stream<Path> reports = Files.list(home.resolve(Path.of(project, "target", "surefire-reports")))) {
            for (Path report :
                    reports.filter(path -> path.toString().endsWith(".xml")).toList()) {
                Matcher tests = TESTS.matcher(Files.readString(report));
                sum += tests.find() ? Integer.parseInt(tests.group(1)) : 0;
            }
        }
        return sum;
    }

    private Path repository() {
        return home.resolve("repository");
    }

    private static void copy(Path from, Path to) throws IOException {
        Files.copy(from, to, StandardCopyOption.REPLACE_EXISTING);
    }

    private static String property(String name) {
        String value = System.getProperty(name);
        if (value == null) {
            throw new IllegalStateException("system property " + name + " is missing: run this test by mvn verify");
        }
        return value;
    }
}
