package io.github.heatswell.narrative;

import static io.github.heatswell.assessment.Measure.gauge;
import static io.github.heatswell.assessment.Statement.plain;

import io.github.heatswell.assessment.Measure;
import io.github.heatswell.assessment.Statement;
import io.github.heatswell.result.Balances;
import io.github.heatswell.system.HotWaterSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * What every command judges a house against: the limit of a sizing, and the peak of the worst heat-up, from a cold fill with every
 * tap closed, by the best estimates. Whether a relief valve drips is another question, answered separately.
 *
 * @param house the house
 * @param limitGauge what the peak must not exceed (Pa, gauge)
 * @param worstGauge the peak of the worst heat-up with the vessel as it is (Pa, gauge), the relief valves taken out; where that reaches
 *     the test pressure of the tank, that
 * @param leastPrechargeGauge the lowest precharge of the only vessel with which the worst heat-up keeps the limit (Pa, gauge), 0 if any
 *     does; empty where none does, or it was not looked for
 * @param balances those of the heat-ups
 */
public record Yardstick(
        HotWaterSystem house,
        double limitGauge,
        double worstGauge,
        OptionalDouble leastPrechargeGauge,
        Balances balances) {

    /** Where a run ends at a pressure, it ends this close (Pa) to it. */
    private static final double SAME = 100;

    /**
     * Checks that everything is there.
     *
     * @param house the house
     * @param limitGauge what the peak must not exceed (Pa, gauge)
     * @param worstGauge the peak of the worst heat-up (Pa, gauge)
     * @param leastPrechargeGauge the lowest precharge with which the worst heat-up keeps the limit (Pa, gauge)
     * @param balances those of the heat-ups
     */
    public Yardstick {
        Objects.requireNonNull(house, "house");
        Objects.requireNonNull(leastPrechargeGauge, "leastPrechargeGauge");
        Objects.requireNonNull(balances, "balances");
    }

    /**
     * Whether the worst heat-up stays within the limit.
     *
     * @return true if it does
     */
    public boolean holds() {
        return !Limit.passes(worstGauge, limitGauge);
    }

    /**
     * Whether a run is judged otherwise than the worst heat-up.
     *
     * @param peakGauge the highest pressure of the run (Pa, gauge)
     * @return true if one of the two stays within the limit and the other does not
     */
    public boolean isOtherwise(double peakGauge) {
        return holds() == Limit.passes(peakGauge, limitGauge);
    }

    /**
     * The precharge below which the limit is passed. That is neither where a relief valve begins to drip nor what the trade calls
     * underpumped.
     *
     * @return a whole sentence; empty where no precharge keeps the limit, or it was not looked for
     */
    public Optional<Statement> prechargeThatKeeps() {
        if (leastPrechargeGauge.isEmpty()) {
            return Optional.empty();
        }
        double least = leastPrechargeGauge.getAsDouble();
        return Optional.of((least == 0
                        ? plain("Even without any precharge a heat-up from a cold fill stays within the limit of ")
                        : plain("Below ")
                                .then(gauge(least))
                                .then(" of precharge a heat-up from a cold fill exceeds the limit of "))
                .then(gauge(limitGauge))
                .then("."));
    }

    /**
     * How the worst heat-up peaks.
     *
     * @return a pressure, or that the relief valve would drip
     */
    public Statement worst() {
        return drips() ? plain("would drip") : plain(bursts() ? "over " : "").then(gauge(worstGauge));
    }

    /**
     * How the worst heat-up stands to the limit.
     *
     * @return such as {@code met, with 0.3 bar to spare} or {@code exceeded by 0.3 bar}; without a number where the relief valve or the
     * tank's end hides it
     */
    public Statement standing() {
        return drips() || bursts()
                ? plain(holds() ? "met" : "exceeded")
                : plain(holds() ? "met, with " : "exceeded by ")
                        .then(new Measure(Measure.Kind.PRESSURE_DIFFERENCE, Math.abs(limitGauge - worstGauge)))
                        .then(holds() ? " to spare" : "");
    }

    private boolean drips() {
        OptionalDouble relief = Limit.reliefSetGauge(house);
        return relief.isPresent() && worstGauge >= relief.getAsDouble();
    }

    /** Whether the tank is at its test pressure before any relief valve opens. */
    private boolean bursts() {
        double air = house.site().atmosphere();
        return !drips()
                && !house.tank().neverFails()
                && worstGauge >= house.tank().testPressureAbsolute(air) - air - SAME;
    }

    /** Which of several runs exceed one limit in their worst heat-up; empty if none does, or their limits differ. */
    static Optional<Statement> exceeded(List<NamedSummary> runs, List<Optional<Yardstick>> yardsticks) {
        List<Yardstick> judged = yardsticks.stream().flatMap(Optional::stream).toList();
        List<String> beyond = IntStream.range(0, runs.size())
                .filter(i -> yardsticks.get(i).filter(each -> !each.holds()).isPresent())
                .mapToObj(i -> "“" + runs.get(i).name() + "”")
                .toList();
        if (beyond.isEmpty()
                || judged.stream().mapToDouble(Yardstick::limitGauge).distinct().count() > 1) {
            return Optional.empty();
        }
        String who = beyond.size() == runs.size() ? (runs.size() == 2 ? "both" : "all of them") : named(beyond);
        return Optional.of(
                plain("In the worst heat-up " + who + (beyond.size() == 1 ? " exceeds" : " exceed") + " the limit of ")
                        .then(gauge(judged.get(0).limitGauge()))
                        .then("."));
    }

    /** What joins runs with their worst heat-ups where these are judged otherwise. */
    static Optional<Statement> joined(List<NamedSummary> runs, List<Optional<Yardstick>> yardsticks) {
        List<String> below = names(runs, yardsticks, false);
        List<String> above = names(runs, yardsticks, true);
        List<Statement> said = new ArrayList<>();
        if (!below.isEmpty()) {
            said.add(plain("In the worst heat-up (from a cold fill with every tap closed, as in 'heatswell size'), "
                    + named(below) + " would exceed the limit, though " + here(below.size(), "stays", "stay")
                    + " within it here."));
        }
        if (!above.isEmpty()) {
            said.add(plain("In the worst heat-up (from a cold fill with every tap closed, as in 'heatswell size'), "
                    + named(above) + " would stay within the limit, though "
                    + here(above.size(), "exceeds", "exceed")
                    + " it here."));
        }
        return said.isEmpty() ? Optional.empty() : Optional.of(Statement.joined(" ", said));
    }

    private static List<String> names(List<NamedSummary> runs, List<Optional<Yardstick>> yardsticks, boolean holds) {
        return IntStream.range(0, runs.size())
                .filter(i -> yardsticks
                        .get(i)
                        .filter(each -> each.holds() == holds
                                && each.isOtherwise(runs.get(i).summary().peak().value()))
                        .isPresent())
                .mapToObj(i -> "“" + runs.get(i).name() + "”")
                .toList();
    }

    private static String here(int runs, String one, String several) {
        return runs == 1 ? "it " + one : (runs == 2 ? "both " : "they ") + several;
    }

    private static String named(List<String> names) {
        int most = 4;
        return names.size() > most ? names.size() + " of the runs" : String.join(" and ", names);
    }

    /**
     * What joins a run with the worst heat-up where they are judged otherwise.
     *
     * @param what what the run is called at the beginning of a sentence, such as {@code This run}
     * @param peakGauge the highest pressure of the run (Pa, gauge)
     * @return a whole sentence or two; empty where both are judged alike
     */
    public Optional<Statement> joined(String what, double peakGauge) {
        if (!isOtherwise(peakGauge)) {
            return Optional.empty();
        }
        return Optional.of(
                holds()
                        ? plain(what + " goes above the limit of ")
                                .then(gauge(limitGauge))
                                .then(
                                        ", which 'heatswell size' works to, though a heat-up from a cold fill with every tap"
                                                + " closed would peak at ")
                                .then(gauge(worstGauge))
                                .then(" only.")
                        : plain(what + " stays within the limit of ")
                                .then(gauge(limitGauge))
                                .then(", but a heat-up from a cold fill with every tap closed would not: ")
                                .then(
                                        drips()
                                                ? plain("the relief valve would drip")
                                                : plain(
                                                                bursts()
                                                                        ? "it would reach the tank's test pressure of "
                                                                        : "it would peak at ")
                                                        .then(gauge(worstGauge))
                                                        .then(bursts() ? ", beyond which it may burst" : ""))
                                .then(". 'heatswell size' uses that case."));
    }
}
