package io.github.heatswell.scenarios.report;

import io.github.heatswell.diagnosis.DiagnosisResult;
import io.github.heatswell.diagnosis.InstalledCheck;
import io.github.heatswell.diagnosis.PressureLog;
import io.github.heatswell.narrative.DiagnosisStory;
import io.github.heatswell.result.Balances;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.readings.OwnersReadings;
import java.util.Objects;
import java.util.Optional;

/**
 * What readings say about a house.
 *
 * @param scenario the house as described
 * @param readings what was read
 * @param log the log as far as it was used
 * @param result what was found
 * @param installed the readings on site against the house as described; empty without such readings
 */
public record DiagnosisAnswer(
        Scenario scenario,
        OwnersReadings readings,
        Optional<PressureLog> log,
        DiagnosisResult result,
        Optional<InstalledCheck> installed) {

    /**
     * Checks that everything is there.
     *
     * @param scenario the house as described
     * @param readings what was read
     * @param log the log as far as it was used
     * @param result what was found
     * @param installed the readings on site against the house as described; empty without such readings
     */
    public DiagnosisAnswer {
        Objects.requireNonNull(scenario, "scenario");
        Objects.requireNonNull(readings, "readings");
        Objects.requireNonNull(log, "log");
        Objects.requireNonNull(result, "result");
        Objects.requireNonNull(installed, "installed");
    }

    /**
     * The balances of all runs behind the answer.
     *
     * @return how many there are, and how many do not close
     */
    public Balances balances() {
        return result.balances().and(installed.map(InstalledCheck::balances).orElse(Balances.NONE));
    }

    /** What the readings say, in sentences. */
    DiagnosisStory story() {
        return new DiagnosisStory(
                        result,
                        scenario.system(),
                        scenario.doubts(),
                        log,
                        readings.spots().all().keySet())
                .doubting(!readings.doubts().isEmpty());
    }
}
