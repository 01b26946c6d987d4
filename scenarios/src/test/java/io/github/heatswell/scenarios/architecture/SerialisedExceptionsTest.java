package io.github.heatswell.scenarios.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaModifier;
import io.github.heatswell.scenarios.file.InvalidScenarioException;
import io.github.heatswell.scenarios.file.ScenarioReader;
import io.github.heatswell.scenarios.readings.InvalidReadingsException;
import io.github.heatswell.scenarios.readings.SpotReader;
import io.github.heatswell.scenarios.report.OutputException;
import io.github.heatswell.scenarios.report.ResultFile;
import io.github.heatswell.scenarios.report.ResultFolder;
import io.github.heatswell.scenarios.variation.VariantRuns.VariantFailedException;
import io.github.heatswell.simulation.SimulationException;
import io.github.heatswell.study.Study;
import io.github.heatswell.system.InvalidDescriptionException;
import io.github.heatswell.system.Tank;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.lang.reflect.Constructor;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A public exception of any module arrives on another machine with everything it had to say. */
class SerialisedExceptionsTest {

    @TempDir
    private Path folder;

    @Test
    void everyPublicExceptionKeepsItsContents() throws Exception {
        Map<String, Throwable> thrown = thrown();

        assertEquals(publicExceptions(), thrown.keySet(), "give an instance of every public exception");
        for (Throwable before : thrown.values()) {
            assertEquals(
                    contents(before), contents(copy(before)), before.getClass().getName());
        }
    }

    private Map<String, Throwable> thrown() throws Exception {
        Path file = Files.writeString(folder.resolve("file"), "cold-statik: 4 bar\n");
        SimulationException stopped = stopped();
        return Stream.of(
                        assertThrows(
                                InvalidDescriptionException.class,
                                () -> Tank.builder().build()),
                        assertThrows(
                                InvalidScenarioException.class,
                                () -> ScenarioReader.read("house.yaml", "tank: { volume: -1 L }")),
                        assertThrows(InvalidReadingsException.class, () -> SpotReader.read(file, 1e5)),
                        assertThrows(
                                OutputException.class,
                                () -> ResultFolder.at(file)
                                        .write(List.of(ResultFile.ofText("a", out -> out.append('a'))))),
                        new Study.SampleFailedException("too small", new IllegalArgumentException("volume")),
                        stopped,
                        variantFailed(stopped))
                .collect(Collectors.toMap(failure -> failure.getClass().getName(), failure -> failure));
    }

    /** Only a defect makes one of these, so its constructor is called directly. */
    private static SimulationException stopped() throws ReflectiveOperationException {
        Constructor<SimulationException> constructor = SimulationException.class.getDeclaredConstructor(
                String.class, double.class, double.class, double.class, Throwable.class);
        constructor.setAccessible(true);
        return constructor.newInstance("stopped", 61.5, 4.2e5, 330.0, new ArithmeticException("cause"));
    }

    private static VariantFailedException variantFailed(SimulationException cause) throws ReflectiveOperationException {
        Constructor<VariantFailedException> constructor =
                VariantFailedException.class.getDeclaredConstructor(String.class, SimulationException.class);
        constructor.setAccessible(true);
        return constructor.newInstance("8 L", cause);
    }

    private static Set<String> publicExceptions() {
        return OwnClasses.all().stream()
                .filter(type -> type.isAssignableTo(Throwable.class))
                .filter(type -> type.getModifiers().contains(JavaModifier.PUBLIC))
                .map(JavaClass::getName)
                .collect(Collectors.toSet());
    }

    /** What all of its public methods answer. */
    private static Map<String, Object> contents(Throwable failure) throws ReflectiveOperationException {
        Map<String, Object> contents = new TreeMap<>();
        contents.put("getMessage", failure.getMessage());
        contents.put("getCause", String.valueOf(failure.getCause()));
        for (Method method : failure.getClass().getDeclaredMethods()) {
            if (Modifier.isPublic(method.getModifiers()) && method.getParameterCount() == 0) {
                contents.put(method.getName(), String.valueOf(method.invoke(failure)));
            }
        }
        return contents;
    }

    private static Throwable copy(Throwable failure) throws IOException, ClassNotFoundException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
            out.writeObject(failure);
        }
        try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
            return (Throwable) in.readObject();
        }
    }
}
