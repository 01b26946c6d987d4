package io.github.heatswell.assessment;

import static io.github.heatswell.assessment.Measure.temperature;

import io.github.heatswell.assessment.Finding.Authority;
import io.github.heatswell.assessment.Finding.Severity;
import io.github.heatswell.system.Draw;
import io.github.heatswell.system.NamedValue;
import java.util.OptionalDouble;
import java.util.function.Consumer;

/** Water asked for cooler than the cold feed: no tap or mixing valve can give it, and no hot water is drawn for it. */
final class MixedWaterRule implements Rule {

    private static final double DAY = 86_400;
    /** The days of a year, each of which a long run meets again. */
    private static final int YEAR = 365;

    private static final Authority MIXING =
            Authority.computed("from the description: mixed water is no cooler than the cooler of its parts");

    @Override
    public void look(AssessmentContext subject, Consumer<CandidateFinding> found) {
        double feed = warmestFeed(subject);
        OptionalDouble coolest = subject.house.draws().draws().stream()
                .map(Draw::mixedTemperature)
                .flatMapToDouble(OptionalDouble::stream)
                .min();
        if (coolest.isPresent() && coolest.getAsDouble() < feed) {
            found.accept(cooler(
                    "mixed-draw-below-feed",
                    coolest.getAsDouble(),
                    feed,
                    "A tap is asked for {}, but the cold feed can be as warm as {}: no tap can run that cool, and such a draw takes no"
                            + " hot water.",
                    "Check the temperature of the draw and that of the feed."));
        }
        OptionalDouble valve = subject.house.heater().mixedTo();
        if (valve.isPresent() && valve.getAsDouble() < feed) {
            found.accept(cooler(
                    "mixing-valve-below-feed",
                    valve.getAsDouble(),
                    feed,
                    "The mixing valve is set to {}, but the cold feed can be as warm as {}: it cannot deliver water that cool.",
                    "Check the setting of the mixing valve and the temperature of the feed."));
        }
    }

    /** The warmest the feed is on the day of the start, or on any day of a run (K). */
    private static double warmestFeed(AssessmentContext subject) {
        int first = subject.house.start().dayOfYear();
        double days = subject.run.map(run -> run.end() / DAY).orElse(0.0);
        double warmest = 0;
        for (int day = 0; day <= Math.min(YEAR, Math.ceil(days)); day++) {
            warmest = Math.max(warmest, subject.house.supply().water().on(first + day));
        }
        return warmest;
    }

    private static CandidateFinding cooler(String id, double wanted, double feed, String sentence, String advice) {
        return Finding.draft(id, Severity.NOTE)
                .compares(NamedValue.MIXED_TO, NamedValue.COLD)
                .says(sentence, temperature(wanted), temperature(feed))
                .found(temperature(wanted))
                .limit(temperature(feed))
                .advises(advice)
                .by(MIXING);
    }
}
