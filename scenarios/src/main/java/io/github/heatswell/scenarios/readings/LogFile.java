package io.github.heatswell.scenarios.readings;

import io.github.heatswell.diagnosis.PressureLog;
import java.util.List;
import java.util.Objects;

/**
 * A log and what was strange about its file.
 *
 * @param log the log
 * @param remarks sentences about gaps, repeated readings, jumps of the clock, coarse steps and the like
 */
public record LogFile(PressureLog log, List<String> remarks) {

    /**
     * Checks and copies.
     *
     * @param log the log
     * @param remarks sentences about gaps, repeated readings, jumps of the clock, coarse steps and the like
     */
    public LogFile {
        Objects.requireNonNull(log, "log");
        remarks = List.copyOf(remarks);
    }
}
