package io.github.heatswell.narrative;

import static io.github.heatswell.assessment.Statement.plain;

import io.github.heatswell.assessment.Statement;
import io.github.heatswell.result.RunSummary;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What one run found, in one sentence: the answer first, a hazard before everything else. Pressures are gauge readings. */
final class RunHeadline {

    /** With more clauses than this besides the finding, nobody reads the finding. */
    private static final int MAX_CLAUSES = 2;

    private final RunSummary summary;
    private final Circumstances circumstances;
    private final PeakWords peak;
    private final ReliefWords relief;

    RunHeadline(RunSummary summary) {
        this.summary = summary;
        this.circumstances = new Circumstances(summary);
        this.peak = new PeakWords(summary);
        this.relief = new ReliefWords(summary, circumstances);
    }

    /** Such as {@code Relief valve opens after 10 min 16 s and discharges 3.14 L}, without a full stop. */
    Statement sentence() {
        if (summary.hazard().isPresent()) {
            return new HazardWords(summary).sentence().capitalised();
        }
        Optional<Statement> relieved = relief.sentence();
        if (relieved.isEmpty() && !peak.exceedsWorkingPressure()) {
            return calm().capitalised();
        }
        List<Statement> clauses = new ArrayList<>();
        if (peak.exceedsWorkingPressure()) {
            clauses.add(peak(peak.overWorkingPressure()));
        }
        circumstances.cutOut().ifPresent(clauses::add);
        relieved.ifPresent(clauses::add);
        return joined(Statement.joined("; ", clauses), besides()).capitalised();
    }

    /** The same for a run over weeks or years: on how many days valves discharged water, and when most. */
    Statement ofDays(List<Double> relieved) {
        boolean own = !Narrative.isByDay(summary)
                || summary.hazard().isPresent()
                || circumstances.openedHot().isPresent()
                || circumstances.cutOut().isPresent();
        Statement over =
                peak.exceedsWorkingPressure() ? peak.overWorkingPressure().then("; ") : plain("");
        return relief.onDays(relieved)
                .filter(days -> !own)
                .map(days -> over.then(days).capitalised())
                .orElseGet(this::sentence);
    }

    private Statement peak(Statement said) {
        return circumstances.peaksDuringShutOff()
                ? plain("with the supply shut off, ").then(said)
                : said;
    }

    /** No valve discharged anything: what kept it shut, and how high the pressure rose. */
    private Statement calm() {
        Statement rise = peak.sentence();
        Optional<Statement> leaked = circumstances.leaked();
        Optional<Statement> returned = circumstances.returned();
        List<Optional<Statement>> clauses = new ArrayList<>();
        Statement start = rise;
        if (circumstances.cutOut().isPresent()) {
            start = circumstances.cutOut().get().then("; ").then(rise);
            clauses.add(returned);
        } else if (circumstances.leaksHideExpansion()) {
            start = leaked.orElseThrow().then(", which hides the expansion; ").then(rise);
        } else if (returned.isPresent()) {
            start = returned.get().then("; ").then(rise);
            clauses.add(leaked);
        } else if (circumstances.peaksDuringShutOff()) {
            return joined(peak(rise), List.of(leaked, circumstances.draws()));
        }
        clauses.add(circumstances.shutOff());
        clauses.add(circumstances.draws());
        return joined(start, clauses);
    }

    /** What else went on. A valve that runs for hours on fed water leaves no room for the taps. */
    private List<Optional<Statement>> besides() {
        return List.of(
                circumstances.shutOff(),
                circumstances.returned(),
                circumstances.leaked(),
                summary.fedRelief().isEmpty() ? circumstances.draws() : Optional.empty());
    }

    private static Statement joined(Statement start, List<Optional<Statement>> clauses) {
        List<Statement> said = new ArrayList<>(List.of(start));
        clauses.stream().flatMap(Optional::stream).limit(MAX_CLAUSES).forEach(said::add);
        return Statement.joined("; ", said);
    }
}
