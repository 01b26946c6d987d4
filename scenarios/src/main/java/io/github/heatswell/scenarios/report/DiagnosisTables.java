package io.github.heatswell.scenarios.report;

import io.github.heatswell.diagnosis.DiagnosisResult;
import io.github.heatswell.diagnosis.Estimate;
import io.github.heatswell.diagnosis.Evidence;
import io.github.heatswell.diagnosis.HypothesisFit;
import io.github.heatswell.diagnosis.InstalledCheck;
import io.github.heatswell.diagnosis.PressureLog;
import io.github.heatswell.narrative.DiagnosisStory;
import io.github.heatswell.scenarios.report.Block.Grid;
import io.github.heatswell.units.Decimals;
import io.github.heatswell.units.QuantityFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The tables of a printed diagnosis. */
final class DiagnosisTables {

    private static final int MAX_CAUSES = 8;
    private static final int MAX_ALIKE = 3;
    private static final int MAX_ON_SCREEN = 5;

    private final DiagnosisAnswer answer;
    private final DiagnosisResult result;
    private final QuantityFormat shown;
    private final DiagnosisStory story;
    private final DiagnosisCells cells;

    DiagnosisTables(DiagnosisAnswer answer, QuantityFormat shown) {
        this.answer = answer;
        this.result = answer.result();
        this.shown = shown;
        this.story = answer.story();
        this.cells = new DiagnosisCells(result, shown);
    }

    /** How the causes are ordered; where none explains the readings, a weight tells them apart and no more. */
    String order() {
        return result.misfit()
                ? "Causes, the greatest weight first, which counts notes, plates and readings on site too; "
                        + (result.isUnexplained() ? "none explains the readings" : "one reading is not explained")
                        + ", so the weights only compare them"
                : isAsDescribedBefore()
                        ? "Causes: the house as described, which explains the readings, then the likeliest first"
                        : "Causes, the likeliest first";
    }

    /** Whether the house as described goes before a likelier fault. */
    private boolean isAsDescribedBefore() {
        return story.listed().get(0) != result.best();
    }

    /** The causes with how well each explains the readings. */
    Grid causes() {
        return new Grid(
                order()
                        + ". A weight is a cause's share among those considered: it falls with how far off the"
                        + " cause is, and with each value the cause leaves open. "
                        + answer.log()
                                .map(log ->
                                        "Off by is the typical difference between prediction and reading (root mean square)."
                                                + (log.tellsItsScatter()
                                                        ? ""
                                                        : " Where the pressure moved fast a reading counts less, because its time may be a minute"
                                                                + " off."))
                                .orElse(
                                        "Off by is how far predictions are from what was read, in uncertainties of a reading."),
                List.of("Cause", weighed(), "Off by"),
                rows(ranked()));
    }

    /** Those of them that have some weight, for the screen. */
    Grid likeliest() {
        List<HypothesisFit> listed = story.listed();
        return new Grid(
                order(),
                List.of("Cause", weighed(), "Off by"),
                rows(listed.stream()
                        .filter(fit -> fit == listed.get(0) || !cells.isHardlyLikely(fit))
                        .filter(fit -> !result.untested().contains(fit))
                        .limit(MAX_ON_SCREEN)
                        .toList()));
    }

    private String weighed() {
        return result.misfit() ? "Relative weight" : "Weight";
    }

    private List<List<String>> rows(List<HypothesisFit> fits) {
        return fits.stream()
                .map(fit -> List.of(
                        PageWords.capitalised(fit.inWords() + cells.standing(fit)), cells.weight(fit), offBy(fit)))
                .toList();
    }

    /** The root mean square of prediction less reading; without a log that of the residuals. */
    private String offBy(HypothesisFit fit) {
        return answer.log()
                .map(log -> shown.pressureDifference(Math.sqrt(IntStream.range(0, log.count())
                        .mapToDouble(i -> Math.pow(fit.gauge().get(i) - log.gauge(i), 2))
                        .average()
                        .orElseThrow())))
                .orElseGet(() -> Decimals.fixed(Math.sqrt(fit.sumOfSquares() / result.readings()), 1));
    }

    /** What parts of the log speak for and against each cause; empty without a log. */
    Optional<Grid> evidence() {
        List<List<String>> rows = ranked().stream()
                .filter(fit -> !fit.evidence().isEmpty())
                .map(fit -> List.of(
                        PageWords.capitalised(fit.inWords()),
                        "For it: " + parts(fit, false) + ". Against it: " + parts(fit, true) + "."))
                .toList();
        return rows.isEmpty()
                ? Optional.empty()
                : Optional.of(new Grid(
                        "The evidence for and against each cause. The parts of the log are named by the cause's own run:"
                                + " what is open in that run may have been shut in the house. A part counts against a cause in two"
                                + " cases: it alone makes the cause twenty times less likely than the likeliest, or the cause misses it"
                                + " by more than the uncertainty of the readings. In brackets, by how much the prediction is above"
                                + " the log (+) or below it (-) on average.",
                        List.of("Cause", "What the readings say"),
                        rows));
    }

    private String parts(HypothesisFit fit, boolean against) {
        String parts = fit.evidence().stream()
                .filter(part -> part.against() == against)
                .map(part -> against ? part(part) : part.words())
                .collect(Collectors.joining("; "));
        if (!parts.isEmpty()) {
            return parts;
        }
        return against && cells.isNeedless(fit)
                ? "nothing but that a cause which assumes less explains the readings too"
                : "nothing";
    }

    private String part(Evidence part) {
        if (!shown.shows(part.meanDifference())) {
            return part.words();
        }
        return part.words() + " (it predicts "
                + shown.pressureDifference(Math.abs(part.meanDifference()))
                        .replace(" (", ", ")
                        .replace(")", "")
                + (part.meanDifference() > 0 ? " too much)" : " too little)");
    }

    /** The numbers of each cause that explains the readings about as well as the likeliest; none where nothing does. */
    Stream<Grid> estimates() {
        return explaining().stream()
                .limit(MAX_ALIKE)
                .filter(fit -> !fit.estimates().isEmpty())
                .map(fit -> new Grid(
                        "The numbers, if " + fit.inWords() + ". Pressures are gauge readings.",
                        List.of("Number", "Best estimate", "95 % interval"),
                        fit.estimates().stream().map(this::estimate).toList()));
    }

    private List<HypothesisFit> explaining() {
        return result.isUnexplained()
                ? List.of()
                : story.listed().stream().filter(result.alike()::contains).toList();
    }

    private List<String> estimate(Estimate estimate) {
        String name = PageWords.capitalised(estimate.parameter().words());
        String settled = estimate.settledBy()
                .filter(check -> story.hazard().isEmpty())
                .map(check -> "; read " + check.words() + " to settle it")
                .orElse("");
        return switch (estimate.standing()) {
            case CARRIED ->
                List.of(
                        name,
                        cells.value(estimate, estimate.value()),
                        cells.value(estimate, estimate.low()) + " to " + cells.value(estimate, estimate.high()));
            case AS_DESCRIBED -> List.of(name, "these readings do not say", "hardly narrower than assumed");
            case NOT_CARRIED -> List.of(name, "not known", "these readings do not say" + settled);
        };
    }

    /** What the separating check would show. */
    Optional<Grid> check() {
        return result.check()
                .filter(check -> !story.isHazardByReading())
                .map(check -> new Grid(
                        (result.isDecided()
                                        ? "The site check that confirms it: "
                                        : "The site check that tells them apart: ")
                                + check.check().words() + "." + story.heating(check),
                        List.of("If this is the cause", "It reads"),
                        List.of(
                                List.of(
                                        PageWords.capitalised(check.first().words()),
                                        cells.value(check.check(), check.expectedFirst())),
                                List.of(
                                        PageWords.capitalised(check.second().words()),
                                        cells.value(check.check(), check.expectedSecond())))));
    }

    /** The readings on site against the house as described. */
    Optional<Grid> installed() {
        return answer.installed()
                .map(check -> new Grid(
                        check.asPlanned()
                                ? "Readings on site: all as described"
                                : "Readings on site: not all as described",
                        List.of("Reading", "As described", "Read"),
                        check.lines().stream().map(this::line).toList()));
    }

    private List<String> line(InstalledCheck.Line line) {
        return List.of(
                PageWords.capitalised(line.check().words()),
                cells.value(line.check(), line.planned()),
                cells.value(line.check(), line.reading().value()) + (line.agrees() ? ", agrees" : ", DIFFERS"));
    }

    /** What was found about the readings themselves. */
    Grid readings() {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("Readings used", used()));
        answer.log().ifPresent(log -> {
            rows.add(List.of("Length of the log that was used", shown.time(log.end())));
            if (Double.isFinite(result.uncertainty())) {
                rows.add(List.of(
                        "Standard uncertainty of a reading of the log",
                        shown.pressureDifference(result.uncertainty())
                                + (log.tellsItsScatter()
                                        ? ", from how far readings are off the line between their neighbours"
                                        : ", assumed: a gauge read by hand")));
            }
        });
        List<String> remarks = answer.readings().remarks();
        for (int i = 0; i < remarks.size(); i++) {
            String remark = remarks.get(i);
            rows.add(List.of("Found in the file, " + (i + 1), PageWords.capitalised(remark)));
        }
        if (remarks.isEmpty() && answer.log().isPresent()) {
            rows.add(List.of("Found in the file", "No gaps, repeated times, clock jumps, coarse steps or outliers"));
        }
        rows.add(List.of("Simulations run", String.valueOf(answer.balances().runs())));
        return new Grid("About the readings", List.of("What", "Found"), rows, true);
    }

    /** How many readings there were of each kind; a row of a log may hold several. */
    private String used() {
        List<String> kinds = new ArrayList<>();
        int rest = result.readings();
        if (answer.log().isPresent()) {
            PressureLog log = answer.log().get();
            int temperatures = (int) IntStream.range(0, log.count())
                    .filter(i -> log.temperature(i).isPresent())
                    .count();
            kinds.add(log.count() + " of pressure");
            kinds.add(temperatures == 0 ? "" : temperatures + " of temperature");
            int seen = log.sightings().size();
            kinds.add(seen == 0 ? "" : seen + " from your notes on heater, relief pipe and taps");
            rest -= log.count() + temperatures + seen;
        }
        int spots = answer.readings().spots().all().size();
        kinds.add(rest > spots ? "how long the heater ran at first" : "");
        kinds.add(spots == 0 ? "" : spots + " on site");
        return kinds.stream().filter(kind -> !kind.isEmpty()).collect(Collectors.joining(", "));
    }

    /** The likeliest, and in any case all that explain the readings about as well as the first. */
    private List<HypothesisFit> ranked() {
        List<HypothesisFit> listed = story.listed();
        List<HypothesisFit> first =
                listed.subList(0, Math.min(Math.max(MAX_CAUSES, result.alike().size()), listed.size()));
        List<HypothesisFit> hazards = result.notRuledOut();
        return listed.stream()
                .filter(fit -> first.contains(fit) || hazards.contains(fit))
                .toList();
    }
}
