package io.github.heatswell.narrative;

import static io.github.heatswell.assessment.Measure.gauge;
import static io.github.heatswell.assessment.Measure.volume;
import static io.github.heatswell.assessment.Statement.plain;

import io.github.heatswell.assessment.Doubts;
import io.github.heatswell.assessment.Measure;
import io.github.heatswell.assessment.Moments;
import io.github.heatswell.assessment.Statement;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.Totals;
import io.github.heatswell.system.ReliefFault;
import io.github.heatswell.system.ReliefValve;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** The answer of several runs compared: hazards first, then which of them stop the dripping. */
final class Verdict {

    private static final int MAX_NAMES = 2;

    /** So many hazards are listed one by one. */
    private static final int MAX_HAZARDS = 6;

    /** Volumes that differ by no more than this share (-) read alike. */
    private static final double ALIKE = 1e-3;

    /** Pressures closer than this (Pa) read alike. */
    private static final double SAME = 500;

    private static final Comparator<NamedSummary> BY_VOLUME =
            Comparator.comparingDouble(run -> run.summary().totals().relieved());

    private static final Comparator<NamedSummary> BY_PEAK =
            Comparator.comparingDouble(run -> run.summary().peak().value());

    private final List<NamedSummary> runs;

    Verdict(List<NamedSummary> runs) {
        this.runs = runs;
    }

    Statement sentence() {
        List<NamedSummary> hazards = having(runs, run -> run.summary().hazard().isPresent());
        List<NamedSummary> sound = having(runs, run -> run.summary().hazard().isEmpty());
        List<Statement> parts = new ArrayList<>();
        if (!hazards.isEmpty()) {
            parts.add(hazardPart(hazards));
        }
        heldRunaways(sound, parts);
        List<NamedSummary> strained =
                having(sound, run -> Limit.workingPressure(run.summary()).passed());
        if (!strained.isEmpty()) {
            parts.add(plain(names(strained) + (strained.size() == 1 ? " exceeds" : " exceed") + limit(strained)));
        }
        if (!sound.isEmpty()) {
            parts.addAll(reliefParts(sound));
        }
        return Statement.joined("; ", parts).then(caveat());
    }

    /** On what the answer rests that nobody knows, if it does in any of the runs. */
    private Statement caveat() {
        List<Statement> caveats =
                runs.stream().map(run -> run.doubts().caveat()).distinct().toList();
        return caveats.size() == 1 ? caveats.get(0) : Doubts.AS_TAKEN;
    }

    /** The runs that a hazard ended, with the moments; empty without one. */
    Optional<Statement> hazards() {
        double end = runs.stream().mapToDouble(run -> run.summary().end()).max().orElseThrow();
        Moments moments =
                Moments.common(runs.stream().map(run -> run.summary().system()).toList(), end);
        List<NamedSummary> ended = having(runs, run -> run.summary().hazard().isPresent());
        if (ended.isEmpty()) {
            return Optional.empty();
        }
        List<Statement> told = ended.stream()
                .limit(MAX_HAZARDS)
                .map(run -> told(run, run.summary().hazard().orElseThrow(), moments))
                .toList();
        int more = ended.size() - told.size();
        return Optional.of(Statement.joined("; ", told)
                .then(more > 0 ? "; and " + more + " more" : "")
                .then(ended.size() == 1 ? ". That run ends there." : ". Those runs end there."));
    }

    private static Statement told(NamedSummary run, Event hazard, Moments moments) {
        return plain(quoted(run) + ": " + hazard.kind().description() + " ")
                .then(moments.at(hazard.time()))
                .then(run.doubts().caveat());
    }

    /** From which peak to which the runs go, how many of them reach a relief valve, and how many a picture shows. */
    Statement peaks(int shown) {
        double from = runs.stream().min(BY_PEAK).orElseThrow().summary().peak().value();
        double to = runs.stream().max(BY_PEAK).orElseThrow().summary().peak().value();
        long reached = runs.stream()
                .flatMap(run -> Limit.reliefSet(run.summary()).stream())
                .filter(Limit::reached)
                .count();
        Statement peaks = to - from < SAME
                ? plain("All peaks are at ").then(gauge(to))
                : plain("Peaks go from ")
                        .then(gauge(from))
                        .then(" (" + plainNames(peaking(from)) + ") to ")
                        .then(gauge(to))
                        .then(" (" + plainNames(peaking(to)) + ")");
        return peaks.then(". " + (reached == 0 ? "None" : reached) + " of " + runs.size() + " runs "
                + (reached == 1 ? "reaches" : "reach") + " the set pressure of a relief valve. The picture shows "
                + shown
                + " of them.");
    }

    private static String limit(List<NamedSummary> strained) {
        boolean given =
                strained.stream().allMatch(run -> run.summary().system().tank().workingPressureGiven());
        return given ? " the tank's working pressure" : " the working pressure assumed for the tank";
    }

    private Statement hazardPart(List<NamedSummary> hazards) {
        NamedSummary first = hazards.stream()
                .min(Comparator.comparingDouble(run -> run.summary().end()))
                .orElseThrow();
        Statement what = plain(quoted(first) + " ").then(new HazardWords(first.summary()).verb());
        if (hazards.size() == 1) {
            return what;
        }
        String which = hazards.size() == runs.size() ? every() : hazards.size() + " of " + runs.size() + " runs";
        return plain(which + " end in a hazard: first, ").then(what);
    }

    /** Heaters that would not stop, held by a cut-out or by a valve that opens on temperature. */
    private static void heldRunaways(List<NamedSummary> sound, List<Statement> parts) {
        List<NamedSummary> held =
                having(sound, run -> new Incidents(run.summary()).openedHot().isPresent());
        List<NamedSummary> cut = having(
                sound, run -> run.summary().first(Event.Kind.CUT_OUT_TRIPPED).isPresent());
        if (!held.isEmpty()) {
            parts.add(plain(names(held) + (held.size() == 1 ? " runs hot and is" : " run hot and are")
                    + " held by a valve that opens on temperature"));
        }
        if (!cut.isEmpty()) {
            parts.add(plain(names(cut) + (cut.size() == 1 ? " trips its cut-out" : " trip their cut-outs")));
        }
    }

    private List<Statement> reliefParts(List<NamedSummary> sound) {
        List<NamedSummary> bare =
                having(sound, run -> run.summary().system().reliefValves().isEmpty());
        List<NamedSummary> wet = sound.stream()
                .filter(Verdict::isWet)
                .sorted(BY_VOLUME.reversed())
                .toList();
        List<NamedSummary> dry = having(sound, run -> !bare.contains(run) && !wet.contains(run));
        List<Statement> parts = new ArrayList<>();
        if (wet.isEmpty() && !dry.isEmpty()) {
            parts.add(
                    dry.size() == runs.size()
                            ? plain("the relief valve stays shut in " + every() + "; ")
                                    .then(highest())
                            : plain("the relief valve stays shut with " + names(dry)));
        } else if (!wet.isEmpty() && dry.isEmpty()) {
            parts.add(allWet(wet));
        } else if (!wet.isEmpty()) {
            parts.add(plain(
                    (dry.size() > 1 ? names(dry) + " keep" : (runs.size() > 2 ? "only " : "") + names(dry) + " keeps")
                            + " the relief valve shut"));
            parts.add(wetPart(wet));
        }
        if (!bare.isEmpty()) {
            parts.add(plain(names(bare) + (bare.size() == 1 ? " has" : " have") + " no relief valve"));
        }
        return parts;
    }

    private Statement allWet(List<NamedSummary> wet) {
        if (wet.size() == 1) {
            return wetPart(wet);
        }
        String everywhere = wet.size() == runs.size() ? "in " + every() : "with " + names(wet);
        NamedSummary most = wet.get(0);
        NamedSummary least = wet.get(wet.size() - 1);
        Statement discharges = plain(everywhere + " the relief valve discharges ");
        if (alike(wet)
                && relieved(most).value() - relieved(least).value()
                        <= ALIKE * relieved(most).value()) {
            return discharges.then("about ").then(relieved(most));
        }
        return discharges
                .then("water: " + (wet.size() == 2 ? "more" : "most") + " with " + names(equal(most, wet)) + " (")
                .then(amount(most, wet))
                .then(fault(most) + "), " + (wet.size() == 2 ? "less" : "least") + " with " + names(equal(least, wet))
                        + " (")
                .then(amount(least, wet))
                .then(fault(least) + ")");
    }

    private static Statement wetPart(List<NamedSummary> wet) {
        NamedSummary most = wet.get(0);
        if (wet.size() > 2) {
            return plain("the " + wet.size() + " others discharge up to ")
                    .then(amount(most, wet))
                    .then(", with " + names(equal(most, wet)) + fault(most));
        }
        Statement first =
                plain(quoted(most) + " discharges ").then(amount(most, wet)).then(fault(most));
        return wet.size() == 1
                ? first
                : first.then("; " + quoted(wet.get(1)) + " ")
                        .then(amount(wet.get(1), wet))
                        .then(fault(wet.get(1)));
    }

    /** Whether any water was discharged: a valve that is stuck open or whose seat leaks discharges without opening. */
    private static boolean isWet(NamedSummary run) {
        Totals totals = run.summary().totals();
        return totals.openings() > 0 || totals.relieved() >= Incidents.DROP;
    }

    /** Why a valve discharges that need not open for it. */
    private static String fault(NamedSummary run) {
        List<ReliefFault.Condition> conditions = run.summary().system().reliefValves().stream()
                .map(ReliefValve::condition)
                .toList();
        if (conditions.contains(ReliefFault.Condition.STUCK_OPEN)) {
            return ", its valve stuck open";
        }
        boolean leaks = conditions.contains(ReliefFault.Condition.LEAKING_SEAT);
        return leaks && run.summary().totals().openings() == 0 ? ", through a worn seat" : "";
    }

    private String every() {
        return runs.size() == 2 ? "both runs" : "all " + runs.size() + " runs";
    }

    private Statement highest() {
        double most = runs.stream().max(BY_PEAK).orElseThrow().summary().peak().value();
        List<NamedSummary> highest = peaking(most);
        return (highest.size() == runs.size()
                        ? plain("the peaks are equal, at ")
                        : plain((highest.size() == 1
                                        ? "the pressure peaks highest with " + quoted(highest.get(0))
                                        : "the pressure peaks equally high with " + names(highest))
                                + ", at "))
                .then(gauge(most));
    }

    /** The runs whose peak reads like a pressure (Pa, gauge). */
    private List<NamedSummary> peaking(double gauge) {
        return having(runs, run -> Math.abs(run.summary().peak().value() - gauge) < SAME);
    }

    /** The runs with which a valve discharges as much as with one of them, as far as that can be read. */
    private static List<NamedSummary> equal(NamedSummary run, List<NamedSummary> wet) {
        double volume = run.summary().totals().relieved();
        return having(wet, other -> Math.abs(other.summary().totals().relieved() - volume) <= ALIKE * volume);
    }

    /** What a run discharged, and in which time if it is compared with runs that are not as long. */
    private static Statement amount(NamedSummary run, List<NamedSummary> wet) {
        Statement amount = plain("").then(relieved(run));
        return alike(wet)
                ? amount
                : amount.then(" in ").then(Measure.time(run.summary().end()));
    }

    private static boolean alike(List<NamedSummary> some) {
        return some.stream().mapToDouble(run -> run.summary().end()).distinct().count() == 1;
    }

    private static Measure relieved(NamedSummary run) {
        return volume(run.summary().totals().relieved());
    }

    private static List<NamedSummary> having(List<NamedSummary> runs, Predicate<NamedSummary> condition) {
        return runs.stream().filter(condition).toList();
    }

    private static String names(List<NamedSummary> runs) {
        return runs.size() > MAX_NAMES
                ? runs.size() + " runs"
                : String.join(" and ", runs.stream().map(Verdict::quoted).toList());
    }

    private static String plainNames(List<NamedSummary> runs) {
        return names(runs).replaceAll("[“”]", "");
    }

    private static String quoted(NamedSummary run) {
        return "“" + run.name() + "”";
    }
}
