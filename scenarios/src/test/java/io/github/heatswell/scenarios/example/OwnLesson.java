package io.github.heatswell.scenarios.example;

import io.github.heatswell.assessment.Measure;
import io.github.heatswell.assessment.Statement;
import io.github.heatswell.citation.Citation;
import io.github.heatswell.result.EventKind;
import io.github.heatswell.scenarios.lesson.Claim;
import io.github.heatswell.scenarios.lesson.Formula;
import io.github.heatswell.scenarios.lesson.Lesson;
import io.github.heatswell.scenarios.lesson.LessonCase;
import io.github.heatswell.scenarios.lesson.Prediction.Option;
import io.github.heatswell.scenarios.lesson.TryIt;

/** A teacher's own lesson: does a dripping tap hide the growth of the water? */
final class OwnLesson {

    private OwnLesson() {}

    static Lesson lesson() {
        Citation invented = new Citation("an invented house", Citation.Standing.GIVEN);
        return Lesson.builder("the-dripping-tap", "What a dripping tap hides")
                .question("Why did the relief valve begin to drip when the tap was mended?")
                .prediction(
                        "The tap drips while the tank is heated. Does the relief valve open?",
                        run -> run.result(1).first(EventKind.RELIEF_OPENED).isEmpty()
                                ? 1
                                : run.result(1).totals().leaked() > 0 ? 2 : 0,
                        Option.wrong("Yes, as before.", Claim.of("The tap takes what the valve would have released.")),
                        Option.right("No."),
                        Option.wrong(
                                "Yes, and both drip.",
                                Claim.of(
                                        "The valve opens only at its set pressure, which the dripping tap keeps away.",
                                        run -> run.result(1).totals().relieved() == 0)))
                .compare(
                        LessonCase.bundled("tap mended", "orchard-lodge"),
                        LessonCase.bundled("tap drips", "orchard-lodge", "leaks=[{ flow: 150 mL/min, at: 4 bar }]"))
                .notice(Claim.computed(run -> Statement.of(
                        "With the tap mended {} runs out of the relief valve; dripping, the tap loses {}.",
                        new Measure(Measure.Kind.VOLUME, run.result(0).totals().relieved()),
                        new Measure(Measure.Kind.VOLUME, run.result(1).totals().leaked()))))
                .why(
                        Claim.of(
                                "The dripping tap let out what the water gained. Mended, only the relief valve is left to do so."))
                .formula(Formula.of("growth = tap + valve", invented, "tap", "lost by the tap", "valve", "let out"))
                .tryIt(TryIt.of(
                        1,
                        "With a tap that drips more slowly the relief valve opens after all.",
                        run -> run.first(EventKind.RELIEF_OPENED).isPresent(),
                        "leaks=[{ flow: 1 mL/min, at: 4 bar }]"))
                .check(
                        "Was the new washer bad?",
                        Claim.of("No. It only ended a leak that nobody had connected with the heater."))
                .sources(invented)
                .expect(
                        "The dripping tap keeps the valve shut.",
                        run -> run.result(1).totals().relieved() == 0)
                .expect(
                        "The mended one does not.",
                        run -> run.result(0).totals().relieved() > 0)
                .build();
    }
}
