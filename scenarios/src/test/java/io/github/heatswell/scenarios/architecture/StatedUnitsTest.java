package io.github.heatswell.scenarios.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javax.tools.SimpleJavaFileObject;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every number that other programs can see names its unit where it is described, and every pressure its reference. */
class StatedUnitsTest {

    @ParameterizedTest
    @ValueSource(strings = {"core", "charts", "scenarios"})
    void everyPublicNumberNamesItsUnit(String module) throws IOException {
        List<SourceText> sources;
        try (Stream<Path> files = Files.walk(Path.of("..", module, "src", "main", "java"))) {
            sources = files.filter(file -> file.toString().endsWith(".java"))
                    .sorted()
                    .map(SourceText::read)
                    .toList();
        }

        assertTrue(sources.size() > 20, "the sources of " + module + " are elsewhere");
        assertEquals("", String.join("\n", StatedUnits.missingIn(sources)));
    }

    /** What must not pass: first the declaration in a public class, then what is said of it. */
    static Stream<Arguments> silentNumbers() {
        return Stream.of(
                Arguments.of(
                        "/** A. @param volume the volume */ public void fill(double volume) {}",
                        "Sample.fill volume: no unit in 'the volume'"),
                Arguments.of("public void fill(double... volumes) {}", "Sample.fill volumes: no unit in ''"),
                Arguments.of(
                        "/** A. @param made makes it */ protected Sample(Function<double[], String> made) {}",
                        "Sample.<init> made: no unit in 'makes it'"),
                Arguments.of(
                        "/** A. @return the mass, if known */ public OptionalDouble mass() { return null; }",
                        "Sample.mass returns: no unit in 'the mass, if known'"),
                Arguments.of(
                        "/** {@return the mass} */ public double mass() { return 1; }",
                        "Sample.mass returns: no unit in 'the mass'"),
                Arguments.of(
                        "/** A. @param p the set pressure (Pa) */ public void set(double p) {}",
                        "Sample.set p: neither absolute, gauge nor difference in 'the set pressure (Pa)'"),
                Arguments.of(
                        "/** A. @param mass the mass (kg) @param time when */ public record R(double mass, Double time) {}",
                        "Sample.R time: no unit in 'when'"),
                Arguments.of(
                        "/** A. */ public interface I { /** A. @param time when */ void at(double time); }",
                        "Sample.I.at time: no unit in 'when'"),
                Arguments.of(
                        "/** The longest. */ public static final double MOST = 1;",
                        "Sample MOST: no unit in 'The longest.'"));
    }

    @ParameterizedTest
    @MethodSource("silentNumbers")
    void aNumberWithoutItsUnitIsFound(String declaration, String complaint) {
        assertEquals(List.of(complaint), StatedUnits.missingIn(List.of(SourceText.with(declaration))));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/** A. @param volume the volume (m3), above 0 */ public void fill(double volume) {}",
                "/** A. @param value the volume @param unit its unit */ public void fill(double value, VolumeUnit unit) {}",
                "/** A. @return the pressure (Pa, gauge) */ public double pressure() { return 1; }",
                "/** A. @param pressureAbsolute the pressure (Pa) */ public void set(double pressureAbsolute) {}",
                "/** A. @return the value, in the SI unit of the channel */ public double value() { return 1; }",
                "@Override public double inherited() { return 1; }",
                "public int count() { return 1; }",
                "void hidden(double volume) {}",
                "private record Hidden(double volume) {}",
                "static class Inside { public double volume() { return 1; } }"
            })
    void aNumberWithItsUnitOrOutOfSightPasses(String declaration) {
        assertEquals(List.of(), StatedUnits.missingIn(List.of(SourceText.with(declaration))));
    }

    private static final class SourceText extends SimpleJavaFileObject {
        private final String text;

        SourceText(URI place, String text) {
            super(place, Kind.SOURCE);
            this.text = text;
        }

        static SourceText read(Path file) {
            try {
                return new SourceText(file.toUri(), Files.readString(file));
            } catch (IOException unreadable) {
                throw new UncheckedIOException(unreadable);
            }
        }

        static SourceText with(String declaration) {
            return new SourceText(
                    URI.create("string:///Sample.java"),
                    "/** A. */ public class Sample {\n" + tags(declaration) + "\n}");
        }

        /** Block tags count at the beginning of a line only. */
        private static String tags(String declaration) {
            return declaration.replace(" @param", "\n * @param").replace(" @return", "\n * @return");
        }

        @Override
        public CharSequence getCharContent(boolean ignoreEncodingErrors) {
            return text;
        }
    }
}
