package io.github.heatswell.scenarios.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/**
 * Which version of Heatswell this is.
 */
public final class Version {

    private Version() {}

    /**
     * The version number.
     *
     * @return the number the build wrote down, or {@code unknown} if no build did
     */
    public static String number() {
        try (InputStream in = Version.class.getResourceAsStream("version.txt")) {
            return in == null ? "unknown" : new String(in.readAllBytes(), StandardCharsets.UTF_8).strip();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
