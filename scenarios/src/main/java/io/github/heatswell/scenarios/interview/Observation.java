package io.github.heatswell.scenarios.interview;

/** What the owner sees, as the question that the run is to answer. */
final class Observation {

    private Observation() {}

    static String question(Answer answer) {
        return switch (answer.value()) {
            case "no" -> "The relief valve is dry. Does the simulation agree?";
            case "heating" -> "The relief valve drips during heat-up. Is it thermal expansion?";
            case "night" -> "The relief valve drips at night. Is it the mains pressure?";
            case "always" -> "The relief valve drips all the time. Would an undamaged one drip?";
            default -> "What does the pressure do when the water is heated?";
        };
    }
}
