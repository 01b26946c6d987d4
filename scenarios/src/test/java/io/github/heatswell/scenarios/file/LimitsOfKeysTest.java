package io.github.heatswell.scenarios.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.scenarios.file.FormatKey.Single;
import io.github.heatswell.scenarios.quantity.Kind;
import io.github.heatswell.units.Decimals;
import io.github.heatswell.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;

/**
 * The table of keys as a test: every limit is allowed in every unit, what lies beyond is not, and no message calls a value outside of
 * a range that it seems to lie in.
 */
class LimitsOfKeysTest {

    private static final Pattern REFUSED = Pattern.compile(
            "(?:[^:]+: )?(\\S+(?: \\S+)?) is outside the allowed range, (above )?(\\S+ \\S+) to (\\S+ \\S+)");

    /** As far beyond a limit (-) as six digits would not show; the first is beyond what changes of units may cost. */
    private static final List<Double> BEYOND = List.of(1e-8, 1e-7, 1e-6, 1e-4, 0.1);

    /** A limit of a key in one unit. */
    private record Limit(FormatKey key, Single single, Unit unit, double si, boolean high) {

        double value() {
            return unit.fromSi(si);
        }

        String text(double value, int digits) {
            return Decimals.significant(value, digits) + " " + unit.symbol();
        }
    }

    @Test
    void everyLimitIsAllowedInEveryUnit(TestReporter reporter) {
        List<String> refused = new ArrayList<>();
        List<Limit> limits = limits().filter(LimitsOfKeysTest::allowed).toList();
        for (Limit limit : limits) {
            Stream.of(limit.text(limit.value(), 12), limit.text(limit.value(), 17))
                    .flatMap(text -> limit.single().refusal(text).stream()
                            .map(message -> limit.key().path() + ": " + text + ": " + message))
                    .forEach(refused::add);
        }
        reporter.publishEntry(limits.size() + " limits");
        assertTrue(limits.size() > 350, "few limits: " + limits.size());
        assertEquals(List.of(), refused);
    }

    @Test
    void whatLiesBeyondIsRefusedAndTheMessageMakesSense() {
        List<String> broken = new ArrayList<>();
        limits().forEach(limit -> BEYOND.forEach(part -> {
            double step = part * Math.max(Math.abs(limit.si()), limit.si() == 0 ? 1 : 0);
            double beyond = limit.si() + (limit.high() ? step : -step);
            String text = limit.text(limit.unit().fromSi(beyond), 17);
            Optional<String> refusal = limit.single().refusal(text);
            if (refusal.isEmpty()) {
                broken.add(limit.key().path() + ": " + text + " is taken");
            } else {
                contradiction(limit, refusal.get()).ifPresent(what -> broken.add(what + ": " + refusal.get()));
            }
        }));
        assertEquals(List.of(), broken);
    }

    /** What is said to be a limit is allowed when it is written down, and what is said to be outside is not. */
    private static Optional<String> contradiction(Limit limit, String message) {
        Matcher parts = REFUSED.matcher(message);
        if (!parts.matches()) {
            // Ranges that end with something else than a number, such as the length of the run.
            return message.contains("is outside the allowed range, ")
                    ? Optional.empty()
                    : Optional.of(limit.key().path() + " without a range");
        }
        if (limit.single().refusal(parts.group(1)).isEmpty()) {
            return Optional.of(limit.key().path() + " shows an allowed value");
        }
        boolean lowRefused =
                parts.group(2) == null && limit.single().refusal(parts.group(3)).isPresent();
        return lowRefused || limit.single().refusal(parts.group(4)).isPresent()
                ? Optional.of(limit.key().path() + " shows a limit that is refused")
                : Optional.empty();
    }

    private static boolean allowed(Limit limit) {
        return limit.high() || limit.single().range().orElseThrow().lowAllowed();
    }

    private static Stream<Limit> limits() {
        return FormatKey.all().stream()
                .filter(key -> key.single().flatMap(Single::range).isPresent())
                .filter(key -> key.single().flatMap(Single::kind).isPresent())
                .flatMap(LimitsOfKeysTest::limits);
    }

    private static Stream<Limit> limits(FormatKey key) {
        Single single = key.single().orElseThrow();
        FormatRange range = single.range().orElseThrow();
        Kind<?> kind = single.kind().orElseThrow();
        return kind.units().stream().flatMap(unit -> {
            Limit low = new Limit(key, single, unit, range.low(), false);
            Limit high = new Limit(key, single, unit, range.high(), true);
            return Double.isInfinite(range.high()) ? Stream.of(low) : Stream.of(low, high);
        });
    }
}
