package io.github.heatswell.scenarios.interview;

import io.github.heatswell.system.StandardProfiles;
import java.util.ArrayList;
import java.util.List;

/** How the hot water is used, and what the owner sees. */
final class UseQuestions {

    static final String DRAWS = "draws";
    static final String DRIP = "drip";

    private UseQuestions() {}

    static List<Question> list() {
        return List.of(draws(), drip());
    }

    private static Question draws() {
        List<String> words = new ArrayList<>();
        words.add(AmountAnswer.NONE);
        words.addAll(StandardProfiles.load().names());
        return Question.about(DRAWS, "Hot water is used", WordAnswer.of(words).also(AmountAnswer.NONE, "no", "nothing"))
                .asks("How much hot water is used in a day?")
                .find(
                        "none, or the published profile that comes nearest.",
                        "Profiles of the European rules: eu-3xs to eu-s from a washbasin to one person, eu-m a couple"
                                + " with showers, eu-l a family with showers, eu-xl a family with baths, more above"
                                + " that. Of the United States' rules: us-very-small, us-low, us-medium and us-high,"
                                + " about 10, 38, 55 and 84 gallons a day. With none, the tank is heated once from cold"
                                + " and left alone, which swells the most in one go.")
                .ifUnknown(Unknown.leftOut("the tank is heated once from cold and left alone"))
                .build();
    }

    private static Question drip() {
        return Question.about(
                        DRIP,
                        "It drips",
                        WordAnswer.of("no", "heating", "night", "always")
                                .also("no", "never", "none")
                                .also("heating", "while heating", "yes", "when it heats")
                                .also("night", "at night", "nights")
                                .also("always", "all the time", "day and night"))
                .asks("Does the relief valve drip now, and when?")
                .find(
                        "watch its outlet for a day: while the heater heats, at night, or always.",
                        "Put a dry paper under the outlet while the heater heats, and another over night. Do not touch"
                                + " what comes out: it can scald. The answer changes nothing in the simulation; it"
                                + " stands in the file as the question that the run is to answer.")
                .ifUnknown(Unknown.leftOut("nobody has watched yet"))
                .build();
    }
}
