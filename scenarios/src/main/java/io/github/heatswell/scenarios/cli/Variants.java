package io.github.heatswell.scenarios.cli;

import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.file.InvalidScenarioException;
import io.github.heatswell.scenarios.variation.Combinations;
import io.github.heatswell.scenarios.variation.Combinations.Variant;
import io.github.heatswell.scenarios.variation.Variation;
import io.github.heatswell.units.UnitSystem;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The scenarios of a command line in all combinations of the values behind {@code --vary}.
 *
 * @param fields the varied fields
 * @param all the scenarios with the values
 */
record Variants(List<String> fields, List<Variant> all) {

    private static final int MIN = 2;
    private static final String SAMPLE_FIELD = "run.sample";

    Variants {
        fields = List.copyOf(fields);
        all = List.copyOf(all);
    }

    /**
     * Makes them.
     *
     * @param batch the scenarios, read without any change
     * @param request the command line
     * @param most how many there may be without {@code --vary}
     * @return the variants, or empty if anything is wrong
     */
    static Optional<Variants> of(Batch batch, Request request, int most) {
        List<Variation> variations = request.option(Specs.VARY, List.of());
        try {
            Combinations combinations = Combinations.of(variations);
            refuseOverlap(combinations.fields(), request);
            refuseCount(batch, combinations, variations.isEmpty() ? most : Combinations.MAX_RUNS);
            return made(batch, combinations, request);
        } catch (IllegalArgumentException e) {
            request.console().complain("heatswell: " + e.getMessage());
            return Optional.empty();
        }
    }

    /** The units to compare them in: those of the first. */
    UnitSystem units() {
        return all.get(0).scenario().units();
    }

    private static void refuseOverlap(List<String> fields, Request request) {
        for (Change change : request.changes()) {
            if (fields.contains(change.field())) {
                throw new IllegalArgumentException(
                        change.field() + ": stands in both --set and --vary; use one of them");
            }
        }
        if (fields.contains(SAMPLE_FIELD) && request.arguments().hasMatchedOption(Specs.SAMPLE)) {
            throw new IllegalArgumentException(
                    SAMPLE_FIELD + ": cannot be varied together with --sample, which sets" + " it");
        }
    }

    private static void refuseCount(Batch batch, Combinations combinations, int most) {
        long count = (long) batch.size() * combinations.count();
        if (combinations.fields().isEmpty() && (count < MIN || count > most)) {
            throw new IllegalArgumentException(
                    "compare takes " + MIN + " to " + most + " scenarios, not " + count + hint(count));
        }
        if (count > most) {
            throw new IllegalArgumentException("compare makes up to " + most + " runs, not " + count + ": "
                    + batch.size() + (batch.size() == 1 ? " scenario" : " scenarios") + " in " + combinations.count()
                    + " combinations");
        }
    }

    private static String hint(long count) {
        return count == 1 ? "; or give one with --vary" : "";
    }

    private static Optional<Variants> made(Batch batch, Combinations combinations, Request request) {
        List<Change> set = request.changes();
        Duration sample = request.option(Specs.SAMPLE, null);
        List<Variant> all = new ArrayList<>();
        boolean sound = true;
        for (int i = 0; i < batch.size(); i++) {
            try {
                for (Variant variant : combinations.of(batch.name(i), batch.scenario(i), set, batch.size() == 1)) {
                    all.add(sample == null ? variant : resampled(variant, sample));
                }
            } catch (InvalidScenarioException e) {
                request.console().complain(ErrorMessages.faults(e));
                sound = false;
            }
        }
        return sound ? Optional.of(new Variants(combinations.fields(), all)) : Optional.empty();
    }

    private static Variant resampled(Variant variant, Duration sample) {
        try {
            return new Variant(
                    variant.name(),
                    variant.of(),
                    variant.values(),
                    variant.scenario().sampledEvery(sample));
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(variant.name() + ": --" + e.getMessage(), e);
        }
    }
}
