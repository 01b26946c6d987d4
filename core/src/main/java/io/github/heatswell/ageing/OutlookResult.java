package io.github.heatswell.ageing;

import io.github.heatswell.result.Balances;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * Result of the look ahead.
 *
 * @param years how many
 * @param expected the course at the expected rate of precharge loss
 * @param slow the course at the slowest rate
 * @param fast the course at the fastest rate
 * @param larger the expected course with larger vessels, charged as the present one is today, the smallest first
 * @param onset when dripping begins with the present vessel, with its uncertainty
 * @param limit how low the precharge of the present vessel may fall
 * @param balances those of all runs behind it
 */
public record OutlookResult(
        int years,
        OutlookCourse expected,
        OutlookCourse slow,
        OutlookCourse fast,
        List<OutlookCourse> larger,
        DripOnset onset,
        ChargeLimit limit,
        Balances balances) {

    private static final double MAX_UNCHECKED = 1;
    private static final double SHORTEST_UNCHECKED = 1.0 / OutlookMonth.MONTHS_OF_YEAR;

    /**
     * Checks that everything is there and copies the list.
     *
     * @param years how many
     * @param expected the course at the expected rate of precharge loss
     * @param slow the course at the slowest rate
     * @param fast the course at the fastest rate
     * @param larger the expected course with larger vessels, charged as the present one is today, the smallest first
     * @param onset when dripping begins with the present vessel, with its uncertainty
     * @param limit how low the precharge of the present vessel may fall
     * @param balances those of all runs behind it
     */
    public OutlookResult {
        Objects.requireNonNull(expected, "expected");
        Objects.requireNonNull(slow, "slow");
        Objects.requireNonNull(fast, "fast");
        Objects.requireNonNull(onset, "onset");
        Objects.requireNonNull(limit, "limit");
        Objects.requireNonNull(balances, "balances");
        larger = List.copyOf(Objects.requireNonNull(larger, "larger"));
    }

    /**
     * How long the charge may go unchecked: a year, which is common practice, or half of the time to the earliest
     * likely dripping ({@link DripOnset#early}, or all the time looked at if it is later) if that is shorter, but not
     * less than a month.
     *
     * @return the time between two checks (years); empty if today's charge is no good, so that there is nothing to wait
     *     for
     */
    public OptionalDouble checkEvery() {
        if (limit.lowestGauge().isEmpty()) {
            return OptionalDouble.empty();
        }
        double half = onset.early().orElse(years) / 2;
        return OptionalDouble.of(Math.max(SHORTEST_UNCHECKED, Math.min(MAX_UNCHECKED, half)));
    }

    /**
     * The earliest month, in any of the courses of the present vessel, whose worst day ends in a hazard, or, if none does, in
     * which the tank's working pressure is exceeded. If several courses have the same, that of the expected one.
     *
     * @return the month, or empty if there is neither
     */
    public Optional<OutlookMonth> gravest() {
        return Stream.of(expected, fast, slow)
                .flatMap(course -> course.gravest().stream())
                .min(Comparator.comparing((OutlookMonth month) -> !month.isHazard())
                        .thenComparingInt(OutlookMonth::number));
    }
}
