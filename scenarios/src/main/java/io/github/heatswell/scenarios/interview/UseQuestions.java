package io.github.heatswell.scenarios.interview;

import io.github.heatswell.scenarios.interview.Question.Choice;
import io.github.heatswell.scenarios.interview.Question.Unknown;
import io.github.heatswell.scenarios.quantity.Kind;
import io.github.heatswell.scenarios.wording.Spoken;
import io.github.heatswell.system.DrawProfile;
import io.github.heatswell.system.NamedValue;
import io.github.heatswell.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How the hot water is used, what the owner sees, and what else guards the taps and the tank. */
final class UseQuestions {

    static final String DRAWS = "draws";
    static final String DRIP = "drip";
    static final String CUT_OUT = NamedValue.CUT_OUT.field();
    static final String MIXED_TO = NamedValue.MIXED_TO.field();

    private UseQuestions() {}

    static List<Question> list() {
        return List.of(draws(), drip(), cutOut(), mixedTo());
    }

    private static Question draws() {
        List<String> words = new ArrayList<>();
        words.add(AnswerKind.Quantity.NONE);
        words.addAll(DrawProfile.published().keySet());
        return Question.about(
                        DRAWS,
                        "Hot-water use",
                        new People(AnswerKind.Word.of(words).also(AnswerKind.Quantity.NONE, "no", "nothing", "nobody")))
                .asks("How many people use hot water in the house?")
                .find(
                        "count them; a profile is more exact.",
                        "The number of people selects a published daily profile (common practice, no source)."
                                + " European profiles: eu-3xs to eu-s range from a washbasin to one person; eu-m is a couple"
                                + " with showers, eu-l a family with showers, eu-xl a family with baths; there are"
                                + " larger ones. US profiles: us-very-small, us-low, us-medium and us-high are"
                                + " about 10, 38, 55 and 84 gallons a day. With none, the tank is heated once from"
                                + " cold, which gives the largest expansion in one go.")
                .ifUnknown(Unknown.leftOut("the tank is heated once from cold, and no water is drawn"))
                .build();
    }

    /**
     * The people of a household, for whom a published profile is taken, or the name of a profile.
     *
     * @param profiles the names
     */
    private record People(AnswerKind profiles) implements AnswerKind {

        private static final Pattern NUMBER =
                Pattern.compile("(\\d{1,2})(?: of us| people| persons?| adults?)?", Pattern.CASE_INSENSITIVE);
        /** By the number of people, the last for more: common practice, no source. */
        private static final List<String> EUROPEAN = List.of("none", "eu-s", "eu-m", "eu-l", "eu-l", "eu-xl");

        private static final List<String> AMERICAN = List.of("none", "us-low", "us-low", "us-medium", "us-high");

        @Override
        public String understand(String line) {
            return understand(line, UnitSystem.SI);
        }

        @Override
        public String understand(String line, UnitSystem units) {
            Matcher said = NUMBER.matcher(Spoken.of(line).plain());
            if (!said.matches()) {
                return profiles.understand(line);
            }
            int people = Integer.parseInt(said.group(1));
            List<String> usual = units == UnitSystem.US ? AMERICAN : EUROPEAN;
            return usual.get(Math.min(people, usual.size() - 1));
        }

        @Override
        public String offer(UnitSystem units) {
            return "a number, such as 3; none; or a profile, such as "
                    + (units == UnitSystem.US ? "us-medium" : "eu-m");
        }
    }

    /**
     * When it drips; whoever names two times means both.
     *
     * @param words the answers
     */
    private record Times(AnswerKind words) implements AnswerKind {

        private static final Pattern BOTH = Pattern.compile(
                "(?!.*\\b(?:no|not|never|or|but)\\b)(?=.*\\b(?:nights?|overnight)\\b)"
                        + "(?=.*\\b(?:mornings?|heats?|heating|heat-up|showers?)\\b).*",
                Pattern.CASE_INSENSITIVE);

        @Override
        public String understand(String line) {
            return BOTH.matcher(line).matches() ? "both" : words.understand(line);
        }

        @Override
        public String offer(UnitSystem units) {
            return words.offer(units);
        }
    }

    private static Question drip() {
        return Question.about(
                        DRIP,
                        "Drips",
                        new Times(AnswerKind.Word.of("no", "heating", "night", "both", "always")
                                .also("no", "never", "none")
                                .also(
                                        "heating",
                                        "while heating",
                                        "when it heats",
                                        "during heat-up",
                                        "heat-up",
                                        "during heating",
                                        "morning",
                                        "mornings",
                                        "in the morning",
                                        "in the mornings",
                                        "in the morning after showers",
                                        "in the mornings after showers",
                                        "after showers",
                                        "after a shower",
                                        "after hot water use")
                                .also("night", "during the night")
                                .also("night", "at night", "nights")
                                .also("both", "heating and night", "night and heating")
                                .also("always", "all the time", "day and night")
                                .otherwise("; if it drips, say when")))
                .asks("Does the relief valve drip now, and when?")
                .find(
                        "watch its outlet for a day: during heat-up, at night, or always.",
                        "Put dry paper under the outlet while the heater is on, and fresh paper overnight. Do not"
                                + " touch the discharge: it can scald. The answer does not change the simulation;"
                                + " it becomes the question that the report answers.")
                .ifUnknown(Unknown.leftOut("the question stays open"))
                .build();
    }

    private static Question cutOut() {
        return Question.about(
                        CUT_OUT,
                        "Cut-out",
                        AnswerKind.Quantity.of(Kind.TEMPERATURE, new Choice("85 degC", "170 degF"))
                                .orNone("if there is none"))
                .asks("At what temperature does a high-limit cut-out shut the heater off?")
                .find(
                        "the heater's papers; a red reset button often shows that there is one.",
                        "A cut-out, also called high limit, backs up the thermostat: it stays off until"
                                + " somebody resets it. Do not open the heater to look for it.")
                .ifUnknown(Unknown.leftOut("none is assumed"))
                .build();
    }

    private static Question mixedTo() {
        return Question.about(
                        MIXED_TO,
                        "Mixing valve set to",
                        AnswerKind.Quantity.of(Kind.TEMPERATURE, new Choice("48 degC", "120 degF"))
                                .orNone("if there is none"))
                .asks("What temperature is the mixing valve at the heater's hot outlet set to?")
                .find(
                        "a valve with three pipes at the heater's hot outlet; a thermometer at the nearest hot tap.",
                        "A mixing valve adds cold water to what leaves the tank, so that the taps do not scald while the tank stays"
                                + " hot enough. Careful: without one, the tap runs as hot as the tank.")
                .ifUnknown(Unknown.leftOut("none is assumed"))
                .build();
    }
}
