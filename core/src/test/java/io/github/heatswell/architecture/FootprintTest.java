package io.github.heatswell.architecture;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** A program built on core brings no more with it than the README says. */
class FootprintTest {

    /** Of its solvers of differential equations only the tests make use. */
    private static final Pattern HIPPARCHUS = Pattern.compile("hipparchus-(?!ode)[a-z]+-[0-9.]+\\.jar");

    @Test
    void theReadmeCountsAndWeighsTheJars() throws IOException {
        List<Path> jars = Pattern.compile(File.pathSeparator, Pattern.LITERAL)
                .splitAsStream(System.getProperty("java.class.path"))
                .map(Path::of)
                .filter(path ->
                        HIPPARCHUS.matcher(path.getFileName().toString()).matches())
                .toList();
        double megabytes = jars.stream().mapToLong(FootprintTest::size).sum() / 1e6;

        String said = String.format(Locale.ROOT, "(%d jars, %.1f MB)", jars.size(), megabytes);
        String readme = Files.readString(Path.of("..", "README.md"));
        assertTrue(readme.contains("[Hipparchus](https://hipparchus.org) alone " + said), said);
        String contributing = Files.readString(Path.of("..", ".github", "CONTRIBUTING.md"));
        assertTrue(contributing.contains(String.format(Locale.ROOT, "%.1f MB", megabytes)), said);
    }

    private static long size(Path jar) {
        try {
            return Files.size(jar);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
