package io.github.heatswell.narrative;

import io.github.heatswell.result.RunSummary;
import io.github.heatswell.sizing.SizingTarget;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/** What an owner asks who sees a relief valve drip, or not; a run answers it by its first word, as its headline tells the run. */
enum OwnersQuestion {
    /** It drips while the water heats. */
    EXPANSION("Is it thermal expansion?") {
        @Override
        String answer(ReliefWords.Cause cause, HotWaterSystem house) {
            return switch (cause) {
                case NONE -> DRY;
                case EXPANSION -> "Yes, as described: " + why(house);
                case KEPT_OPEN -> "Yes, as described: heating opens the valve, and then the supply keeps it open.";
                case CREEP -> CREEPS;
                default -> "No: in the house as described, something else makes it run.";
            };
        }
    },
    /** It drips every day, and may be worn, or do its work. */
    WORN_OR_EXPANSION("Is it worn, or is it discharging the water's thermal expansion?") {
        @Override
        String answer(ReliefWords.Cause cause, HotWaterSystem house) {
            return switch (cause) {
                case NONE -> DRY;
                case EXPANSION -> "Thermal expansion, as described: " + why(house);
                case DAMAGE -> "It is worn, as described.";
                default -> "Neither, as described: something else makes it run.";
            };
        }
    },
    /** It drips, and may be worn. */
    WORN("Is it worn") {
        @Override
        String answer(ReliefWords.Cause cause, HotWaterSystem house) {
            return switch (cause) {
                case NONE -> DRY;
                case EXPANSION -> "No, as described: the water expands as it heats, and that opens the valve.";
                case DAMAGE -> "Yes, as described.";
                default -> "No, as described: something else makes it run.";
            };
        }
    },
    /** It drips at night. */
    MAINS("Is it the supply pressure, or thermal expansion?") {
        @Override
        String answer(ReliefWords.Cause cause, HotWaterSystem house) {
            return switch (cause) {
                case NONE -> DRY;
                case SUPPLY -> "The supply, as described: it opens the valve on its own.";
                case EXPANSION -> "Thermal expansion, as described: " + why(house);
                case KEPT_OPEN -> "Both, as described: heating opens the valve, and then the supply keeps it open.";
                case CREEP -> CREEPS;
                default -> "Neither, as described: something else makes it run.";
            };
        }
    },
    /** It drips all the time. */
    UNDAMAGED("Would an undamaged one drip?") {
        @Override
        String answer(ReliefWords.Cause cause, HotWaterSystem house) {
            return switch (cause) {
                case NONE -> "No: in the house as described a sound valve stays shut.";
                case DAMAGE -> "This run does not show it: the valve is described as damaged.";
                default -> "Yes, but not all the time: read below when it opens.";
            };
        }
    },
    /** A new vessel is to keep it dry. */
    NEW_VESSEL("Does the relief valve stay shut after the change?") {
        @Override
        String answer(ReliefWords.Cause cause, HotWaterSystem house) {
            return cause == ReliefWords.Cause.NONE
                    ? "Yes: as described, it stays shut."
                    : "No: as described, it still discharges.";
        }
    },
    /** It is dry. */
    DRY_VALVE("Does the simulation agree?") {
        @Override
        String answer(ReliefWords.Cause cause, HotWaterSystem house) {
            return cause == ReliefWords.Cause.NONE
                    ? "Yes: as described, the valve stays shut."
                    : "No: as described, the house drips.";
        }
    };

    private static final Set<OwnersQuestion> DRIPPING =
            EnumSet.of(EXPANSION, WORN_OR_EXPANSION, WORN, MAINS, UNDAMAGED);

    private static final String DRY =
            "No: the house as described does not drip. Something differs from the description.";

    private static final String CREEPS =
            "Not alone: the seat of the reducing valve leaks and lets the pressure climb as well.";

    private final String words;

    OwnersQuestion(String words) {
        this.words = words;
    }

    /** The answer to it, by what made relief valves discharge. */
    abstract String answer(ReliefWords.Cause cause, HotWaterSystem house);

    /** The answer of a run to a question; empty if the question is another. */
    static Optional<String> of(String question, RunSummary run, boolean known) {
        String asked = plain(question);
        ReliefWords.Cause cause = ReliefWords.of(run).cause();
        return Arrays.stream(values())
                .filter(one -> asked.contains(one.words))
                .findFirst()
                .map(one -> one == NEW_VESSEL && cause == ReliefWords.Cause.NONE && isAboveCap(run)
                        ? "It stays shut, as described, but the pressure climbs above the limit that the rules set here."
                        : one.answer(cause, run.system()))
                .map(said -> known ? said : supposed(said, run.system()));
    }

    private static boolean isAboveCap(RunSummary run) {
        return SizingTarget.cap(run.system())
                .filter(rule -> run.system().site().place().isKnown())
                .filter(rule -> run.peak().value() > rule.limit().orElseThrow())
                .isPresent();
    }

    /** The question as one of these words it, where a person words it a little otherwise. */
    private static String plain(String question) {
        return question.replaceAll("\\s+", " ")
                .replaceAll(
                        "(?i)\\bis (?:it|this|that) (?:just |only )?(?:the |from )?(?:thermal |heat )?expansion\\?",
                        EXPANSION.words);
    }

    /** What to ask of the house once something is changed against the drip that was seen; empty if none was. */
    static Optional<String> afterChange(String question) {
        String asked = plain(question);
        return DRIPPING.stream().anyMatch(one -> asked.contains(one.words))
                ? Optional.of(NEW_VESSEL.words)
                : Optional.empty();
    }

    /** Whether whoever asks sees a valve drip that stayed shut in a run. */
    static boolean isUnlikeSeen(String question, RunSummary run) {
        return ReliefWords.of(run).cause() == ReliefWords.Cause.NONE
                && afterChange(question).isPresent();
    }

    /** The same where a value that decides it is not known: what the run shows holds for the value taken. */
    private static String supposed(String said, HotWaterSystem house) {
        return said.equals(DRY)
                ? "Not with the assumed values: the valve stays shut. But you see it drip, so one of these values is wrong, or"
                        + " something is worn. Check first "
                        + (house.vessels().isEmpty()
                                ? "the supply pressure at night."
                                : "the precharge of the vessel, with its water side drained.")
                : said.replace("as described", "with the assumed values");
    }

    /** Why the growth of the water opens a relief valve. */
    private static String why(HotWaterSystem house) {
        if (house.vessels().stream().anyMatch(one -> one.condition() == ExpansionVessel.Condition.SOUND)) {
            return "the water expands as it heats, and the vessel does not take up enough of it.";
        }
        if (!house.vessels().isEmpty()) {
            return "the water expands as it heats, and the vessel takes up none of it.";
        }
        boolean bypass = house.supply()
                .reducingValve()
                .filter(valve -> valve.bypassOpens().isPresent())
                .isPresent();
        return bypass
                ? "the water expands as it heats, and the bypass of the reducing valve does not give way in time."
                : "the heated water has nowhere else to go.";
    }
}
