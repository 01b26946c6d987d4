package io.github.heatswell.narrative;

import io.github.heatswell.assessment.Doubts;
import io.github.heatswell.assessment.Findings;
import io.github.heatswell.assessment.Severity;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.EventKind;
import io.github.heatswell.result.Phase;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.ReliefFault;
import io.github.heatswell.units.QuantityFormat;
import java.util.ArrayList;
import java.util.List;

/** A hazard in words: what happened, and why nothing is shown beyond it. */
public final class HazardWords {

    private HazardWords() {}

    /** What the run came to, as it follows a subject: {@code reaches the tank's test pressure of 20 bar after 22 min}. */
    public static String verb(RunSummary summary, Event hazard, QuantityFormat amounts) {
        String after = when(summary, amounts).at(hazard.time());
        return switch (hazard.kind()) {
            case TEST_PRESSURE_REACHED ->
                "reaches the tank's test pressure of "
                        + amounts.pressure(
                                summary.gauge(summary.system().tank().testPressureAbsolute(atmosphere(summary))))
                        + " " + after;
            case VAPOUR_FORMS ->
                "comes to the boil " + after + ", at "
                        + amounts.pressure(summary.gauge(hazard.pressureAbsolute())) + " and a mean of "
                        + amounts.temperature(hazard.waterTemperature());
            case ATMOSPHERE_REACHED -> "falls to the pressure of the surrounding air " + higherUp(hazard) + after;
            case RELIEF_CHATTERS ->
                "has a relief valve that chatters " + after + ", at "
                        + amounts.pressure(summary.gauge(hazard.pressureAbsolute()));
            case WATER_FREEZES -> "begins to freeze " + after;
            default ->
                "leaves the range of known water properties " + after + ", at "
                        + amounts.temperature(hazard.waterTemperature());
        };
    }

    /** What the only run came to, as a sentence of its own. */
    public static String sentence(RunSummary summary, Event hazard, QuantityFormat amounts) {
        if (hazard.kind() == EventKind.RELIEF_CHATTERS) {
            return "relief valve chatters " + when(summary, amounts).at(hazard.time())
                    + ": it opens and closes several times a second, at "
                    + amounts.pressure(summary.gauge(hazard.pressureAbsolute()));
        }
        String subject = switch (hazard.kind()) {
            case VAPOUR_FORMS, WATER_OUT_OF_RANGE, WATER_FREEZES -> "water ";
            default -> "";
        };
        return subject + verb(summary, hazard, amounts) + cause(summary, hazard);
    }

    /** What stood, or did not stand, in the hazard's way; empty where that is not the question. */
    private static String cause(RunSummary summary, Event hazard) {
        return switch (hazard.kind()) {
            case TEST_PRESSURE_REACHED -> notRelieved(summary);
            case VAPOUR_FORMS, WATER_OUT_OF_RANGE -> notStopped(summary);
            case ATMOSPHERE_REACHED -> withoutSupply(summary);
            default -> "";
        };
    }

    private static String notRelieved(RunSummary summary) {
        HotWaterSystem system = summary.system();
        if (system.reliefValves().isEmpty()) {
            return system.vessel().isEmpty() ? ": no relief valve, no vessel" : ": no relief valve";
        }
        if (new Openings(summary).count() > 0) {
            return ": the open relief did not hold it";
        }
        String blocked = blocked(system, false);
        return ": " + (blocked.isEmpty() ? "no relief valve opened" : blocked);
    }

    /** Why the heat was neither switched off nor let out. */
    private static String notStopped(RunSummary summary) {
        HotWaterSystem system = summary.system();
        List<String> causes = new ArrayList<>();
        if (system.heater().thermostatStuck()) {
            causes.add(
                    system.heater().cutOut().isPresent()
                            ? "the thermostat is stuck"
                            : "the thermostat is stuck and there is no cut-out");
        }
        String blocked = blocked(system, true);
        if (!blocked.isEmpty()) {
            causes.add(blocked);
        }
        return causes.isEmpty() ? "" : ": " + String.join("; ", causes);
    }

    /** The blocked valves by name; of those that mind temperature only, if asked. */
    private static String blocked(HotWaterSystem system, boolean mindingTemperature) {
        List<String> names = system.reliefValves().stream()
                .filter(valve -> valve.condition() == ReliefFault.Condition.BLOCKED)
                .filter(valve -> !mindingTemperature || valve.setTemperature().isPresent())
                .map(valve -> "“" + valve.name() + "”")
                .toList();
        return names.isEmpty()
                ? ""
                : String.join(" and ", names) + (names.size() == 1 ? " is blocked" : " are blocked");
    }

    private static String withoutSupply(RunSummary summary) {
        if (!goesOn(summary, Phase.SUPPLY_SHUT_OFF)) {
            return "";
        }
        return goesOn(summary, Phase.DRAW)
                ? ": a tap is open while the supply is shut off"
                : ": the supply is shut off";
    }

    /** Where the pressure is that of the air, if not at the drain cock. */
    private static String higherUp(Event hazard) {
        return hazard.device().isEmpty() ? "" : "at an open valve higher up ";
    }

    /** Whether something went on when the run ended. */
    private static boolean goesOn(RunSummary summary, Phase phase) {
        return summary.intervals(phase).stream().anyMatch(interval -> interval.contains(summary.end()));
    }

    private static When when(RunSummary summary, QuantityFormat amounts) {
        return When.of(summary.system(), summary.end(), amounts);
    }

    /**
     * The warning that stands before everything else: the hazard that ended the run, or else the gravest finding by which people
     * may be hurt; empty without either.
     */
    public static String warning(RunSummary summary, Doubts doubts, QuantityFormat amounts) {
        return summary.hazard()
                .map(event -> ended(summary, event, amounts))
                .or(() -> Findings.of(summary, doubts).stream()
                        .filter(finding -> finding.severity() == Severity.HAZARD)
                        .findFirst()
                        .map(finding -> "Hazard: " + finding.sentence().text(amounts)))
                .orElse("");
    }

    private static String ended(RunSummary summary, Event hazard, QuantityFormat amounts) {
        return "Hazard: " + hazard.kind().description() + " "
                + when(summary, amounts).at(hazard.time()) + ". The run ends there; "
                + beyond(hazard) + ".";
    }

    private static String beyond(Event hazard) {
        return switch (hazard.kind()) {
            case TEST_PRESSURE_REACHED -> "no tank is proven beyond its test pressure, and it may burst";
            case VAPOUR_FORMS -> "steam can burst a tank, and what it does is not modelled";
            case RELIEF_CHATTERS -> "no valve stands that for long, and what follows is not modelled";
            case ATMOSPHERE_REACHED -> "below it air or dirt can be drawn in and a tank can collapse";
            case WATER_FREEZES -> "ice bursts tanks and pipes, and what it does is not modelled";
            default -> "water as hot as that bursts into steam where it escapes, and no further course is computed";
        };
    }

    private static double atmosphere(RunSummary summary) {
        return summary.system().site().atmosphere();
    }
}
