package io.github.heatswell.narrative;

import static io.github.heatswell.assessment.Measure.gauge;
import static io.github.heatswell.assessment.Measure.temperature;
import static io.github.heatswell.assessment.Statement.plain;

import io.github.heatswell.assessment.Findings;
import io.github.heatswell.assessment.Measure;
import io.github.heatswell.assessment.Moments;
import io.github.heatswell.assessment.Statement;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.ReliefFault;
import java.util.ArrayList;
import java.util.List;

/** The hazard that ended a run: what happened, and what failed to prevent it. */
final class HazardWords {

    private final RunSummary summary;
    private final HotWaterSystem system;
    private final Event hazard;
    private final Statement when;

    HazardWords(RunSummary summary) {
        this.summary = summary;
        this.system = summary.system();
        this.hazard = summary.hazard().orElseThrow();
        this.when = Moments.of(system, summary.end()).at(hazard.time());
    }

    /** What the run came to, as it follows a subject: {@code reaches the tank's test pressure of 20 bar after 22 min}. */
    Statement verb() {
        Measure pressure = gauge(summary.gauge(hazard.pressureAbsolute()));
        return switch (hazard.kind()) {
            case TEST_PRESSURE_REACHED ->
                plain("reaches the tank's test pressure of ")
                        .then(gauge(Limit.testPressure(summary).gauge()))
                        .then(" ")
                        .then(when);
            case VAPOUR_FORMS ->
                plain(system.tank().air().isPresent() ? "fills the top of the tank with steam " : "comes to the boil ")
                        .then(when)
                        .then(", at ")
                        .then(pressure)
                        .then(" and a mean of ")
                        .then(temperature(hazard.waterTemperature()));
            case ATMOSPHERE_REACHED ->
                plain("falls to the pressure of the surrounding air " + higherUp())
                        .then(when);
            case RELIEF_CHATTERS ->
                plain("has a relief valve that chatters ")
                        .then(when)
                        .then(", at ")
                        .then(pressure);
            case WATER_FREEZES -> plain("begins to freeze ").then(when);
            default ->
                plain("leaves the range of known water properties ")
                        .then(when)
                        .then(", at ")
                        .then(temperature(hazard.waterTemperature()));
        };
    }

    /** What the only run came to, as a sentence of its own. */
    Statement sentence() {
        if (hazard.kind() == Event.Kind.RELIEF_CHATTERS) {
            return plain("the relief valve chatters ")
                    .then(when)
                    .then(": it opens and closes several times a second, at ")
                    .then(gauge(summary.gauge(hazard.pressureAbsolute())));
        }
        String subject = switch (hazard.kind()) {
            case WATER_FREEZES ->
                hazard.device().isEmpty() ? "water in the tank " : "water in the " + hazard.device() + " ";
            case VAPOUR_FORMS, WATER_OUT_OF_RANGE -> "water ";
            case ATMOSPHERE_REACHED -> "pressure ";
            default -> "";
        };
        return plain(subject).then(verb()).then(cause());
    }

    /** What stood, or did not stand, in the hazard's way; empty where that is not the question. */
    private String cause() {
        return switch (hazard.kind()) {
            case TEST_PRESSURE_REACHED -> notRelieved();
            case VAPOUR_FORMS, WATER_OUT_OF_RANGE -> notStopped();
            case ATMOSPHERE_REACHED -> ": " + Findings.whyEmptied(summary);
            default -> "";
        };
    }

    private String notRelieved() {
        if (system.reliefValves().isEmpty()) {
            return system.vessel().isEmpty() ? ": no relief valve, no vessel" : ": no relief valve";
        }
        if (summary.totals().openings() > 0) {
            return ": the open relief did not hold it";
        }
        String blocked = blocked(false);
        return ": " + (blocked.isEmpty() ? "no relief valve opened" : blocked);
    }

    /** Why the heat was neither switched off nor discharged. */
    private String notStopped() {
        List<String> causes = new ArrayList<>();
        if (system.heater().thermostatStuck()) {
            causes.add(
                    system.heater().cutOut().isPresent()
                            ? "the thermostat is stuck"
                            : "the thermostat is stuck and there is no cut-out");
        }
        String blocked = blocked(true);
        if (!blocked.isEmpty()) {
            causes.add(blocked);
        }
        return causes.isEmpty() ? "" : ": " + String.join("; ", causes);
    }

    /** The blocked valves by name; of those that open on temperature only, if asked. */
    private String blocked(boolean byTemperature) {
        List<String> names = system.reliefValves().stream()
                .filter(valve -> valve.condition() == ReliefFault.Condition.BLOCKED)
                .filter(valve -> !byTemperature || valve.setTemperature().isPresent())
                .map(valve -> "“" + valve.name() + "”")
                .toList();
        return names.isEmpty()
                ? ""
                : String.join(" and ", names) + (names.size() == 1 ? " is blocked" : " are blocked");
    }

    /** Where the pressure is that of the air, if not at the drain cock. */
    private String higherUp() {
        return hazard.device().isEmpty() ? "" : "at an open valve higher up ";
    }
}
