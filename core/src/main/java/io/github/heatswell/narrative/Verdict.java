package io.github.heatswell.narrative;

import io.github.heatswell.result.RunResult;
import io.github.heatswell.units.QuantityFormat;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;

/** The answer several runs give when they are held against each other: hazards first, then who stops the dripping. */
public final class Verdict {

    private static final int MAX_NAMES = 2;

    private final List<NamedRun> runs;
    private final QuantityFormat amounts;

    public Verdict(List<NamedRun> runs, QuantityFormat amounts) {
        this.runs = runs;
        this.amounts = amounts;
    }

    public String sentence() {
        List<NamedRun> hazards = pick(run -> run.result().hazard().isPresent());
        List<NamedRun> sound = pick(run -> run.result().hazard().isEmpty());
        List<String> parts = new ArrayList<>();
        if (!hazards.isEmpty()) {
            parts.add(hazardPart(hazards));
        }
        heldRunaways(sound, parts);
        List<NamedRun> strained =
                having(sound, run -> new PeakWords(run.result().summary(), amounts).exceedsWorkingPressure());
        if (!strained.isEmpty()) {
            parts.add(names(strained) + (strained.size() == 1 ? " exceeds" : " exceed") + limit(strained));
        }
        if (!sound.isEmpty()) {
            parts.addAll(reliefParts(sound));
        }
        return String.join("; ", parts);
    }

    private static String limit(List<NamedRun> strained) {
        boolean given =
                strained.stream().allMatch(run -> run.result().system().tank().workingPressureGiven());
        return given ? " the tank's working pressure" : " the working pressure assumed for the tank";
    }

    private String hazardPart(List<NamedRun> hazards) {
        if (hazards.size() == 1) {
            RunResult result = hazards.get(0).result();
            return quoted(hazards.get(0)) + " "
                    + HazardWords.verb(result.summary(), result.hazard().orElseThrow(), amounts);
        }
        NamedRun first = hazards.stream()
                .min(Comparator.comparingDouble(run -> run.result().end()))
                .orElseThrow();
        RunResult result = first.result();
        String which = hazards.size() == runs.size() ? every() : hazards.size() + " of " + runs.size() + " runs";
        return which + " end in a hazard: first, " + quoted(first) + " "
                + HazardWords.verb(result.summary(), result.hazard().orElseThrow(), amounts);
    }

    /** Heaters that would not stop, held by a cut-out or by a valve that opens by temperature. */
    private void heldRunaways(List<NamedRun> sound, List<String> parts) {
        List<NamedRun> held =
                having(sound, run -> circumstances(run).openedHot().isPresent());
        List<NamedRun> cut = having(sound, run -> circumstances(run).cutOut().isPresent());
        if (!held.isEmpty()) {
            parts.add(names(held) + (held.size() == 1 ? " runs hot and is" : " run hot and are")
                    + " held by a valve that opens by temperature");
        }
        if (!cut.isEmpty()) {
            parts.add(names(cut) + (cut.size() == 1 ? " trips its cut-out" : " trip their cut-outs"));
        }
    }

    private Circumstances circumstances(NamedRun run) {
        return new Circumstances(run.result().summary(), amounts);
    }

    private List<String> reliefParts(List<NamedRun> sound) {
        List<NamedRun> bare =
                having(sound, run -> run.result().system().reliefValves().isEmpty());
        List<NamedRun> wet = having(sound, run -> new Openings(run.result().summary()).count() > 0);
        List<NamedRun> dry = having(sound, run -> !bare.contains(run) && !wet.contains(run));
        List<String> parts = new ArrayList<>();
        if (wet.isEmpty() && !dry.isEmpty()) {
            parts.add(
                    dry.size() == runs.size()
                            ? "the relief valve stays shut in " + every() + "; " + highest()
                            : "the relief valve stays shut with " + names(dry));
        } else if (!wet.isEmpty() && dry.isEmpty()) {
            parts.add(allWet(wet));
        } else if (!wet.isEmpty()) {
            parts.add((dry.size() == 1 ? "only " + names(dry) + " keeps" : names(dry) + " keep")
                    + " the relief valve shut");
            parts.add(wetPart(wet));
        }
        if (!bare.isEmpty()) {
            parts.add(names(bare) + (bare.size() == 1 ? " has" : " have") + " no relief valve");
        }
        return parts;
    }

    private String allWet(List<NamedRun> wet) {
        if (wet.size() == 1) {
            return wetPart(wet);
        }
        String everywhere = wet.size() == runs.size() ? "in " + every() : "with " + names(wet);
        if (wet.stream().map(this::volume).distinct().count() == 1) {
            return "the relief valve opens " + everywhere + " and discharges about " + volume(wet.get(0)) + " each";
        }
        NamedRun least =
                wet.stream().min(Comparator.comparingDouble(this::relieved)).orElseThrow();
        NamedRun most =
                wet.stream().max(Comparator.comparingDouble(this::relieved)).orElseThrow();
        return "the relief valve opens " + everywhere + ", least with " + quoted(least) + " (" + volume(least)
                + "), most with " + quoted(most) + " (" + volume(most) + ")";
    }

    private String wetPart(List<NamedRun> wet) {
        String first = quoted(wet.get(0)) + " discharges " + volume(wet.get(0));
        if (wet.size() == 1) {
            return first;
        }
        if (wet.size() == 2) {
            return first + ", " + quoted(wet.get(1)) + " " + volume(wet.get(1));
        }
        NamedRun most =
                wet.stream().max(Comparator.comparingDouble(this::relieved)).orElseThrow();
        return "the " + wet.size() + " others discharge up to " + volume(most) + ", with " + quoted(most);
    }

    private String every() {
        return runs.size() == 2 ? "both runs" : "all " + runs.size() + " runs";
    }

    private String highest() {
        NamedRun highest = runs.stream()
                .max(Comparator.comparingDouble(run -> run.result().peak().value()))
                .orElseThrow();
        RunResult result = highest.result();
        return "pressure peaks highest with " + quoted(highest) + ", at "
                + amounts.pressure(result.peak().value());
    }

    private double relieved(NamedRun run) {
        return run.result().totals().relieved();
    }

    private String volume(NamedRun run) {
        return amounts.volume(relieved(run));
    }

    private List<NamedRun> pick(Predicate<NamedRun> condition) {
        return having(runs, condition);
    }

    private static List<NamedRun> having(List<NamedRun> runs, Predicate<NamedRun> condition) {
        return runs.stream().filter(condition).toList();
    }

    private static String names(List<NamedRun> runs) {
        if (runs.size() > MAX_NAMES) {
            return runs.size() + " runs";
        }
        return String.join(" and ", runs.stream().map(Verdict::quoted).toList());
    }

    private static String quoted(NamedRun run) {
        return "“" + run.name() + "”";
    }
}
