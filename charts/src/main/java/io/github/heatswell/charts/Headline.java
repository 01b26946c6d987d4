package io.github.heatswell.charts;

import io.github.heatswell.result.Event;
import io.github.heatswell.result.Extremes;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.units.UnitSystem;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What was found, in one sentence: the answer first, a hazard before everything else. Pressures are gauge readings.
 */
public final class Headline {

    private Headline() {}

    /**
     * What one run found, such as {@code Relief valve opens after 10 min and gives off 3.1 L}.
     *
     * @param result the run
     * @param units the units to say it in
     * @return a sentence without a full stop
     */
    public static String of(RunResult result, UnitSystem units) {
        Objects.requireNonNull(result, "result");
        Amounts amounts = new Amounts(Objects.requireNonNull(units, "units"));
        Optional<Event> hazard = result.hazard();
        if (hazard.isPresent()) {
            return capitalised(HazardWords.sentence(result, hazard.get(), amounts));
        }
        String relief = relief(result, amounts);
        if (exceedsWorkingPressure(result)) {
            String over = "Pressure peaks at " + peakAgainst(result, workingPressure(result), amounts, "above")
                    + " the tank's working pressure";
            return relief.isEmpty() ? over : over + "; " + relief;
        }
        return relief.isEmpty() ? peak(result, amounts) : capitalised(relief);
    }

    /**
     * What several runs found when held against each other, such as {@code Only “18 L vessel” keeps the relief valve shut;
     * “no vessel” gives off 3.1 L}.
     *
     * @param runs the runs, at least two
     * @param units the units to say it in
     * @return a sentence without a full stop
     * @throws IllegalArgumentException if there are fewer than two runs
     */
    public static String comparing(List<NamedRun> runs, UnitSystem units) {
        Objects.requireNonNull(units, "units");
        if (runs.size() < 2) {
            throw new IllegalArgumentException("runs: a comparison needs at least 2, not " + runs.size());
        }
        return capitalised(new Verdict(runs, new Amounts(units)).sentence());
    }

    /** Whether the highest pressure lies above what the tank's maker allows. */
    static boolean exceedsWorkingPressure(RunResult result) {
        double highest = result.gauge(result.extremes().highestPressure().value());
        return highest > workingPressure(result) * (1 + 1e-9);
    }

    static String capitalised(String sentence) {
        return sentence.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + sentence.substring(1);
    }

    private static double workingPressure(RunResult result) {
        return result.system()
                .tank()
                .workingPressure()
                .gauge(result.system().site().atmosphere());
    }

    private static String relief(RunResult result, Amounts amounts) {
        Openings openings = new Openings(result);
        int count = openings.count();
        if (count == 0) {
            return "";
        }
        String volume = amounts.foundVolume(result.totals().relieved());
        int open = openings.valves().size();
        if (open > 1) {
            return open + " relief valves open, the first " + openings.firstAfter() + ", and give off " + volume
                    + " in all";
        }
        boolean alone = result.system().reliefValves().size() == 1;
        String subject = alone
                ? "relief valve"
                : "relief valve “" + openings.valves().get(0).name() + "”";
        return count == 1
                ? subject + " opens " + openings.firstAfter() + " and gives off " + volume
                : subject + " opens " + Openings.times(count) + ", first " + openings.firstAfter() + ", and gives off "
                        + volume + " in all";
    }

    private static String peak(RunResult result, Amounts amounts) {
        Extremes extremes = result.extremes();
        double atmosphere = result.system().site().atmosphere();
        boolean steady = amounts.decimalsToShow(extremes.highestPressure().value()
                        - extremes.lowestPressure().value())
                != 0;
        String start = steady ? "Pressure stays at " : "Pressure peaks at ";
        return result.system().reliefValves().stream()
                .mapToDouble(valve -> valve.opens().gauge(atmosphere))
                .min()
                .stream()
                .mapToObj(set -> start + peakAgainst(result, set, amounts, "below") + " the relief set pressure")
                .findFirst()
                .orElse(start
                        + amounts.foundPressure(
                                result.gauge(extremes.highestPressure().value()))
                        + "; there is no relief valve");
    }

    private static String peakAgainst(RunResult result, double gauge, Amounts amounts, String side) {
        double peak = result.gauge(result.extremes().highestPressure().value());
        double difference = Math.abs(gauge - peak);
        int decimals = amounts.decimalsToShow(difference);
        return decimals < 0
                ? amounts.foundPressure(peak) + ", just " + side
                : amounts.foundPressure(peak, decimals) + ", " + amounts.foundPressure(difference, decimals) + " "
                        + side;
    }
}
