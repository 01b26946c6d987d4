package io.github.heatswell.narrative;

import static io.github.heatswell.assessment.Measure.gauge;
import static io.github.heatswell.assessment.Measure.temperature;
import static io.github.heatswell.assessment.Measure.volume;
import static io.github.heatswell.assessment.Statement.plain;

import io.github.heatswell.assessment.Measure;
import io.github.heatswell.assessment.Statement;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.sizing.SizingTarget;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** What one run found, in one sentence: the answer first, a hazard before everything else. Pressures are gauge readings. */
final class RunHeadline {

    /** With more clauses than this besides the finding, nobody reads the finding. */
    private static final int MAX_CLAUSES = 2;

    /** A pressure that moves by less than this (Pa) stays where it is. */
    private static final double STILL = 5e3;

    private final RunSummary summary;
    private final Incidents incidents;
    private final ReliefWords relief;
    private final boolean exceeds;

    RunHeadline(RunSummary summary) {
        this.summary = summary;
        this.incidents = new Incidents(summary);
        this.exceeds = Limit.workingPressure(summary).passed();
        this.relief = new ReliefWords(summary, incidents);
    }

    /** Such as {@code The relief valve opens after 10 min 16 s and discharges 3.14 L}, without a full stop. */
    Statement sentence() {
        if (!summary.system().tank().neverFails()) {
            return told().capitalised();
        }
        boolean beyond = Limit.testPressure(summary).passed();
        return plain(beyond ? "Textbook run, which no real heater survives: " : "Textbook run: ")
                .then(told());
    }

    private Statement told() {
        if (summary.hazard().isPresent()) {
            return new HazardWords(summary).sentence();
        }
        Optional<Statement> relieved = relief.sentence();
        if (relieved.isEmpty() && !exceeds) {
            return calm();
        }
        List<Statement> clauses = new ArrayList<>();
        if (exceeds) {
            clauses.add(peak(overWorkingPressure()));
        }
        incidents.cutOut().ifPresent(clauses::add);
        relieved.ifPresent(clauses::add);
        return joined(Statement.joined("; ", clauses), besides());
    }

    /** The same for a run over weeks or years: on how many days valves discharged water, and when most. */
    Statement ofDays(List<Double> relieved) {
        boolean own = !Narrative.isByDay(summary)
                || summary.hazard().isPresent()
                || incidents.openedHot().isPresent()
                || incidents.cutOut().isPresent();
        Statement over = exceeds ? overWorkingPressure().then("; ") : plain("");
        return relief.onDays(relieved)
                .filter(days -> !own)
                .map(days -> over.then(days).capitalised())
                .orElseGet(this::sentence);
    }

    private Statement peak(Statement said) {
        return incidents.peaksDuringShutOff()
                ? plain("with the supply shut off, ").then(said)
                : said;
    }

    /** No valve discharged anything: what kept it shut, and how high the pressure rose. */
    private Statement calm() {
        Statement rise = peakSentence();
        Optional<Statement> leaked = incidents.leaked();
        Optional<Statement> returned = incidents.returned();
        List<Optional<Statement>> clauses = new ArrayList<>();
        Statement start = rise;
        if (incidents.cutOut().isPresent()) {
            start = incidents.cutOut().get().then("; ").then(rise);
            clauses.add(returned);
        } else if (incidents.leaksHideExpansion()) {
            start = leaked.orElseThrow().then(", which hides the expansion; ").then(rise);
        } else if (returned.isPresent()) {
            start = returned.get().then("; ").then(rise);
            clauses.add(leaked);
        } else if (incidents.peaksDuringShutOff()) {
            return joined(peak(rise), List.of(leaked, incidents.draws()));
        }
        clauses.add(incidents.shutOff());
        clauses.add(incidents.draws());
        boolean idle = !summary.heats() && incidents.cutOut().isEmpty();
        return joined(idle ? plain("the heater never switches on; ").then(start) : start, clauses);
    }

    /** What else went on. A valve that runs for hours on fed water leaves no room for the taps. */
    private List<Optional<Statement>> besides() {
        return List.of(
                incidents.shutOff(),
                incidents.returned(),
                incidents.leaked(),
                summary.fedRelief().isEmpty() ? incidents.draws() : Optional.empty());
    }

    /** The course in clauses, for those who cannot see a picture of it. */
    Statement course() {
        List<Statement> clauses = new ArrayList<>();
        clauses.add(pressures());
        clauses.add(plain("the hottest water reaches ")
                .then(temperature(summary.extremes().highestTemperature().value())));
        clauses.add(firstOpening());
        summary.hazard()
                .map(hazard -> plain(
                                "the run ends in a hazard: " + hazard.kind().description() + " ")
                        .then(incidents.moments().at(hazard.time())))
                .ifPresent(clauses::add);
        return Statement.joined("; ", clauses).then(".");
    }

    private Statement pressures() {
        double atmosphere = summary.system().site().atmosphere();
        double supply = summary.gauge(summary.system().supplyAtStart().absolute(atmosphere));
        double lowest = summary.gauge(summary.extremes().lowestPressure().value());
        if (highest() - supply < STILL) {
            return plain("the pressure stays at ").then(gauge(supply));
        }
        Statement starts = plain("the pressure starts at ").then(gauge(supply));
        return (supply - lowest < STILL ? starts : starts.then(", falls to ").then(gauge(lowest)))
                .then(" and reaches at most ")
                .then(gauge(highest()))
                .then(" ")
                .then(incidents
                        .moments()
                        .at(summary.extremes().highestPressure().time()));
    }

    private Statement firstOpening() {
        if (summary.system().reliefValves().isEmpty()) {
            return plain("there is no relief valve");
        }
        return summary.first(Event.Kind.RELIEF_OPENED)
                .map(opening -> plain("the relief valve opens ")
                        .then(incidents.moments().at(opening.time()))
                        .then(" and discharges ")
                        .then(volume(summary.totals().relieved())))
                .orElse(plain("the relief valve stays shut"));
    }

    private static Statement joined(Statement start, List<Optional<Statement>> clauses) {
        List<Statement> said = new ArrayList<>(List.of(start));
        clauses.stream().flatMap(Optional::stream).limit(MAX_CLAUSES).forEach(said::add);
        return Statement.joined("; ", said);
    }

    /** The peak against the limit of the place where it exceeds that, or else the lowest set pressure of the valves that can open. */
    private Statement peakSentence() {
        boolean steady = summary.extremes().isSteady();
        Statement peak = plain(steady ? "the pressure stays at about " : "the pressure peaks at ")
                .then(gauge(highest()));
        OptionalDouble limit = overLimitHere();
        if (limit.isPresent()) {
            return peak.then(", ")
                    .then(against(limit.getAsDouble()))
                    .then(" the limit here, ")
                    .then(gauge(limit.getAsDouble()));
        }
        return Limit.reliefSet(summary)
                .map(set -> peak.then(", ").then(against(set.gauge())).then(" the relief set pressure"))
                .orElseGet(() -> peak.then(
                        summary.system().reliefValves().isEmpty()
                                ? "; there is no relief valve"
                                : summary.system().reliefValves().size() == 1
                                        ? "; the relief valve is blocked"
                                        : "; no relief valve can open"));
    }

    /** What the rules of the place allow (Pa, gauge), where the peak exceeds it. */
    private OptionalDouble overLimitHere() {
        return Stream.of(summary.system())
                .filter(house -> house.site().place().isKnown())
                .flatMap(house -> SizingTarget.cap(house).stream())
                .mapToDouble(rule -> rule.limit().orElseThrow())
                .filter(limit -> highest() > limit)
                .findFirst();
    }

    /** The peak against what the tank's maker allows. */
    private Statement overWorkingPressure() {
        double limit = Limit.workingPressure(summary).gauge();
        Statement over = plain("the pressure peaks at ")
                .then(gauge(highest()))
                .then(", ")
                .then(against(limit));
        return summary.system().tank().workingPressureGiven()
                ? over.then(" the tank's working pressure")
                : over.then(" the ").then(gauge(limit)).then(" assumed for the tank");
    }

    private double highest() {
        return summary.peak().value();
    }

    private Statement against(double limit) {
        double difference = Math.abs(limit - highest());
        return plain("")
                .then(new Measure(Measure.Kind.PRESSURE_GAP, difference))
                .then(highest() > limit ? " above" : " below");
    }
}
