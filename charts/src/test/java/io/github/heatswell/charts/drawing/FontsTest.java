package io.github.heatswell.charts.drawing;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;

class FontsTest {

    @Test
    void findsTheFontsOfThisMachine() {
        assertDoesNotThrow(() -> Type.requireFonts());
    }

    @Test
    void namesWhatToInstallWhenJavaHasNone() {
        for (Throwable riddle : List.of(
                new RuntimeException("Fontconfig head is null, check your fonts or fonts configuration"),
                new InternalError("No physical fonts found"),
                new UnsatisfiedLinkError("libfreetype.so.6"))) {
            IOException told = assertThrows(
                    IOException.class,
                    () -> Type.requireFonts(() -> {
                        if (riddle instanceof RuntimeException exception) {
                            throw exception;
                        }
                        throw (Error) riddle;
                    }));
            assertTrue(told.getMessage().contains("packages for fontconfig and a font"), told.getMessage());
            assertSame(riddle, told.getCause());
        }
    }
}
