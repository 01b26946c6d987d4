package io.github.heatswell.scenarios.example;

import io.github.heatswell.finding.Measure;
import io.github.heatswell.finding.Statement;
import io.github.heatswell.result.EventKind;
import io.github.heatswell.scenarios.lesson.Formula;
import io.github.heatswell.scenarios.lesson.Lesson;
import io.github.heatswell.scenarios.lesson.LessonCase;
import io.github.heatswell.scenarios.lesson.TryIt;
import io.github.heatswell.source.Source;
import java.util.List;

/** A teacher's own lesson: does a dripping tap hide the growth of the water? */
final class OwnLesson {

    private OwnLesson() {}

    static Lesson lesson() {
        Source invented = new Source("an invented house", Source.Standing.GIVEN);
        return Lesson.builder("the-dripping-tap", "What a dripping tap hides")
                .question("Why did the relief valve begin to drip when the tap was mended?")
                .prediction(
                        "The tap drips while the tank is heated. Does the relief valve open?",
                        List.of("Yes.", "No."),
                        run -> run.result(1).first(EventKind.RELIEF_OPENED).isPresent() ? 0 : 1)
                .compare(
                        LessonCase.bundled("tap mended", "orchard-lodge"),
                        LessonCase.bundled("tap drips", "orchard-lodge", "leaks=[{ flow: 150 mL/min, at: 4 bar }]"))
                .notice(run -> List.of(Statement.of(
                        "With the tap mended {} runs out of the relief valve; dripping, the tap loses {}.",
                        new Measure(Measure.Kind.VOLUME, run.result(0).totals().relieved()),
                        new Measure(Measure.Kind.VOLUME, run.result(1).totals().leaked()))))
                .why("The dripping tap let out what the water gained. Mended, only the relief valve is left to do so.")
                .formula(Formula.of("growth = tap + valve", invented, "tap", "lost by the tap", "valve", "let out"))
                .tryIt(TryIt.of(
                        "mill-cottage-dripping-tap",
                        "Without the leak the valve opens.",
                        run -> run.first(EventKind.RELIEF_OPENED).isPresent(),
                        "leaks=none"))
                .check("Was the new washer bad?", "No. It only ended a leak that nobody had connected with the heater.")
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
