package io.github.heatswell.narrative;

import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What was found, in one sentence: the answer first, a hazard before everything else. Pressures are gauge readings.
 */
public final class Headline {

    /** With more clauses than this besides the finding, nobody reads the finding. */
    private static final int MAX_CLAUSES = 2;

    private Headline() {}

    /**
     * What one run found, such as {@code Relief valve opens after 10 min 16 s and discharges 3.14 L}.
     *
     * @param result the run
     * @param units the units to say it in
     * @return a sentence without a full stop
     */
    public static String of(RunResult result, UnitSystem units) {
        return of(Objects.requireNonNull(result, "result").summary(), units);
    }

    /**
     * What one run found whose course was not kept.
     *
     * @param summary the run
     * @param units the units to say it in
     * @return a sentence without a full stop
     */
    public static String of(RunSummary summary, UnitSystem units) {
        return of(summary, QuantityFormat.unicode(units));
    }

    /**
     * What one run found, its quantities written in a certain way.
     *
     * @param summary the run
     * @param amounts how quantities are written, such as {@code 3.14 L (0.83 gal)}
     * @return a sentence without a full stop
     */
    public static String of(RunSummary summary, QuantityFormat amounts) {
        Objects.requireNonNull(amounts, "amounts");
        Objects.requireNonNull(summary, "summary");
        Optional<Event> hazard = summary.hazard();
        if (hazard.isPresent()) {
            return capitalised(HazardWords.sentence(summary, hazard.get(), amounts));
        }
        Circumstances circumstances = new Circumstances(summary, amounts);
        PeakWords peak = new PeakWords(summary, amounts);
        String relief = new ReliefWords(summary, amounts, circumstances).sentence();
        List<String> clauses = new ArrayList<>();
        if (peak.exceedsWorkingPressure()) {
            clauses.add((circumstances.peaksDuringShutOff() ? "with the supply shut off, " : "")
                    + peak.overWorkingPressure());
        }
        circumstances.cutOut().ifPresent(clauses::add);
        if (!relief.isEmpty()) {
            clauses.add(relief);
        }
        if (relief.isEmpty() && !peak.exceedsWorkingPressure()) {
            return capitalised(calm(circumstances, peak));
        }
        return capitalised(String.join("; ", clauses)
                + besides(circumstances, !new FedRelief(summary).stretches().isEmpty()));
    }

    /**
     * What several runs found when held against each other, such as {@code Only “18 L vessel” keeps the relief valve shut;
     * “no vessel” discharges 3.14 L}.
     *
     * @param runs the runs, at least two
     * @param units the units to say it in
     * @return a sentence without a full stop
     * @throws IllegalArgumentException if there are fewer than two runs
     */
    public static String comparing(List<NamedRun> runs, UnitSystem units) {
        return comparing(runs, Objects.requireNonNull(runs, "runs").size(), QuantityFormat.unicode(units));
    }

    /**
     * What some of many runs show side by side.
     *
     * @param runs the runs shown, at least two
     * @param among how many runs they were taken from; if that is more, the sentence begins by saying so
     * @param amounts how quantities are written
     * @return a sentence without its full stop
     * @throws IllegalArgumentException if there are fewer than two runs
     */
    public static String comparing(List<NamedRun> runs, int among, QuantityFormat amounts) {
        Objects.requireNonNull(amounts, "amounts");
        if (Objects.requireNonNull(runs, "runs").size() < 2) {
            throw new IllegalArgumentException("runs: a comparison needs at least 2, not " + runs.size());
        }
        String sentence = new Verdict(runs, amounts).sentence();
        return among > runs.size()
                ? "Of the " + runs.size() + " runs shown, out of " + among + ": " + sentence
                : capitalised(sentence);
    }

    public static String capitalised(String sentence) {
        return sentence.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + sentence.substring(1);
    }

    /** No valve discharged anything: what kept it shut, and how high the pressure rose. */
    private static String calm(Circumstances circumstances, PeakWords peak) {
        String rise = peak.sentence();
        List<Optional<String>> clauses = new ArrayList<>();
        String start = rise;
        if (circumstances.cutOut().isPresent()) {
            start = circumstances.cutOut().get() + "; " + rise;
            clauses.add(circumstances.returned());
        } else if (circumstances.leaksHideExpansion()) {
            start = circumstances.leaked().orElseThrow() + ", which hides the expansion; " + rise;
        } else if (circumstances.returned().isPresent()) {
            start = circumstances.returned().get() + "; " + rise;
            clauses.add(circumstances.leaked());
        } else if (circumstances.peaksDuringShutOff()) {
            return joined("with the supply shut off, " + rise, List.of(circumstances.leaked(), circumstances.draws()));
        }
        clauses.add(circumstances.shutOff());
        clauses.add(circumstances.draws());
        return joined(start, clauses);
    }

    /** What else went on. A valve that runs for hours on fed water leaves no room for the taps. */
    private static String besides(Circumstances circumstances, boolean runs) {
        return joined(
                "",
                List.of(
                        circumstances.shutOff(),
                        circumstances.returned(),
                        circumstances.leaked(),
                        runs ? Optional.empty() : circumstances.draws()));
    }

    private static String joined(String start, List<Optional<String>> clauses) {
        List<String> said =
                clauses.stream().flatMap(Optional::stream).limit(MAX_CLAUSES).toList();
        return said.isEmpty() ? start : start + "; " + String.join("; ", said);
    }
}
