package io.github.heatswell.charts;

import io.github.heatswell.plant.HotWaterSystem;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.EventKind;
import io.github.heatswell.result.RunResult;

/** A hazard in words: what happened, and why nothing is shown beyond it. */
final class HazardWords {

    private HazardWords() {}

    /** What the run came to, as it follows a subject: {@code reaches the tank's test pressure of 20.0 bar after 22 min}. */
    static String verb(RunResult result, Event hazard, Amounts amounts) {
        String after = Times.after(hazard.time());
        return switch (hazard.kind()) {
            case TEST_PRESSURE_REACHED ->
                "reaches the tank's test pressure of "
                        + amounts.chosenPressure(
                                result.gauge(result.system().tank().testPressureAbsolute(atmosphere(result))))
                        + " " + after;
            case VAPOUR_FORMS ->
                "comes to the boil " + after + ", at "
                        + amounts.foundPressure(result.gauge(hazard.pressureAbsolute())) + " and a mean of "
                        + amounts.temperature(hazard.waterTemperature());
            case ATMOSPHERE_REACHED -> "falls to the pressure of the surrounding air " + after;
            default ->
                "leaves the range of known water properties " + after + ", at "
                        + amounts.temperature(hazard.waterTemperature());
        };
    }

    /** What the only run came to, as a sentence of its own. */
    static String sentence(RunResult result, Event hazard, Amounts amounts) {
        String subject = switch (hazard.kind()) {
            case VAPOUR_FORMS, WATER_OUT_OF_RANGE -> "water ";
            default -> "";
        };
        return subject + verb(result, hazard, amounts) + cause(result, hazard);
    }

    /** What stood, or did not stand, in the hazard's way; empty where that is not the question. */
    private static String cause(RunResult result, Event hazard) {
        if (hazard.kind() != EventKind.TEST_PRESSURE_REACHED) {
            return "";
        }
        HotWaterSystem system = result.system();
        if (system.reliefValves().isEmpty()) {
            return system.vessel().isEmpty() ? ": no relief valve, no vessel" : ": no relief valve";
        }
        return new Openings(result).count() > 0 ? ": the open relief did not hold it" : ": no relief valve opened";
    }

    /** The warning that stands before everything else. */
    static String warning(Event hazard) {
        return "Hazard: " + hazard.kind().description() + " " + Times.after(hazard.time()) + ". The run ends there; "
                + beyond(hazard.kind()) + ".";
    }

    private static String beyond(EventKind kind) {
        return switch (kind) {
            case TEST_PRESSURE_REACHED -> "no tank is proven beyond its test pressure, and it may burst";
            case VAPOUR_FORMS -> "steam can burst a tank, and what it does is not modelled";
            case ATMOSPHERE_REACHED -> "below it air or dirt can be drawn in and a tank can collapse";
            default -> "what follows cannot be computed";
        };
    }

    private static double atmosphere(RunResult result) {
        return result.system().site().atmosphere();
    }
}
