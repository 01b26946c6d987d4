package io.github.heatswell.scenarios.interview;

import java.nio.file.Path;
import java.util.Objects;

/**
 * How an interview ended.
 *
 * @param ending how
 * @param file the finished file, or the unfinished one that keeps the answers or stands in the way
 */
public record Outcome(Ending ending, Path file) {

    /** The ways to end. */
    public enum Ending {
        /** Every question was answered and the file is written. */
        FINISHED,
        /** The owner left; the answers so far, if any, are kept. */
        LEFT,
        /** There was nothing more to read, or nothing sensible; the answers so far, if any, are kept. */
        ENDED,
        /** A file that keeps no answers has the name of the unfinished file; nothing was asked. */
        OBSTRUCTED
    }

    /**
     * Checks that everything is there.
     *
     * @param ending how
     * @param file the finished file, or the unfinished one that keeps the answers or stands in the way
     */
    public Outcome {
        Objects.requireNonNull(ending, "ending");
        Objects.requireNonNull(file, "file");
    }
}
