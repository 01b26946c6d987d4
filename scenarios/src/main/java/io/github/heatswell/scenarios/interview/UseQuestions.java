package io.github.heatswell.scenarios.interview;

import io.github.heatswell.scenarios.interview.Question.Unknown;
import io.github.heatswell.system.DrawProfile;
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
        words.add(AnswerKind.Quantity.NONE);
        words.addAll(DrawProfile.published().keySet());
        return Question.about(
                        DRAWS,
                        "Hot water is used",
                        AnswerKind.Word.of(words).also(AnswerKind.Quantity.NONE, "no", "nothing"))
                .asks("How much hot water is used in a day?")
                .find(
                        "count the people in the house, and ask whether they shower or bathe.",
                        "European profiles: eu-3xs to eu-s range from a washbasin to one person; eu-m is a couple"
                                + " with showers, eu-l a family with showers, eu-xl a family with baths; there are"
                                + " larger ones. US profiles: us-very-small, us-low, us-medium and us-high are"
                                + " about 10, 38, 55 and 84 gallons a day. With none, the tank is heated once from"
                                + " cold, which gives the largest expansion at one time.")
                .ifUnknown(Unknown.leftOut("the tank is heated once from cold, and no water is drawn"))
                .build();
    }

    private static Question drip() {
        return Question.about(
                        DRIP,
                        "It drips",
                        AnswerKind.Word.of("no", "heating", "night", "always")
                                .also("no", "never", "none")
                                .also("heating", "while heating", "yes", "when it heats")
                                .also("night", "at night", "nights")
                                .also("always", "all the time", "day and night"))
                .asks("Does the relief valve drip now, and when?")
                .find(
                        "watch its outlet for a day: during heat-up, at night, or always.",
                        "Put dry paper under the outlet while the heater is on, and fresh paper overnight. Do not"
                                + " touch the discharge: it can scald. The answer does not change the simulation;"
                                + " it becomes the question that the report answers.")
                .ifUnknown(Unknown.leftOut("nobody has checked yet"))
                .build();
    }
}
