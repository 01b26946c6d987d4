package io.github.heatswell.scenarios.interview;

import io.github.heatswell.units.UnitSystem;

/** Summary of the answers as understood. */
final class Summary {

    private static final int LABEL = 30;

    private static final String INDENT = "  ";

    private Summary() {}

    /** What was understood of one answer. */
    static String of(Question question, Answers answers, UnitSystem units) {
        Lines.Line line = new Lines(answers, units).of(question).orElseThrow();
        Answers.Answer answer = answers.to(question).orElseThrow();
        if (answers.say(question.id(), AnswerKind.Quantity.NONE)
                && question.id().equals(ReliefQuestions.OPENS)) {
            return "HAZARD: there is no relief valve. A heater without one can explode. Turn it off and call a"
                    + " licensed professional";
        }
        if (!line.given()) {
            return line.comment();
        }
        String remark = answer.known()
                ? answer.guessed() && !question.id().equals(PlaceQuestion.PLACE) ? "a guess" : ""
                : line.comment();
        return line.value() + (remark.isEmpty() ? "" : " (" + remark + ")");
    }

    /** Says everything that was understood, a line or two for each answer. */
    static void say(Answers answers, UnitSystem units, Dialogue dialogue) {
        for (Question question : Questions.after(answers)) {
            if (answers.has(question)) {
                String label = units.spelled(question.label()) + " ";
                String dots = ".".repeat(Math.max(1, LABEL - label.length()));
                dialogue.say(label + dots + " " + of(question, answers, units), INDENT, INDENT + INDENT);
            }
        }
    }
}
