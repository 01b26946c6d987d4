package io.github.heatswell.scenarios.teaching;

import io.github.heatswell.assessment.Measure;
import io.github.heatswell.assessment.Measure.Kind;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * Something to work out from the runs of a lesson. Inside it is SI, pressures as a gauge shows them; what is true is 1, what is
 * false 0.
 *
 * @param kind what it measures, as far as that is known
 * @param value how to work it out
 */
record Expression(Optional<Kind> kind, ToDoubleFunction<LessonRun> value) {

    double in(LessonRun run) {
        return value.applyAsDouble(run);
    }

    boolean holds(LessonRun run) {
        return in(run) != 0;
    }

    Measure measure(LessonRun run) {
        return new Measure(kind.orElseThrow(), in(run));
    }

    Expression as(Kind known) {
        return new Expression(Optional.of(known), value);
    }
}
