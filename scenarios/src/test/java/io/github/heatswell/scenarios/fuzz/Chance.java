package io.github.heatswell.scenarios.fuzz;

import java.util.List;
import java.util.SplittableRandom;

/** Draws that are the same for the same seed and case on every machine. */
final class Chance {

    private final SplittableRandom random;

    Chance(long seed, int number) {
        random = new SplittableRandom(seed * 1_000_003 + number);
    }

    /** A whole number from 0 to below the bound. */
    int below(int bound) {
        return random.nextInt(bound);
    }

    boolean oneIn(int number) {
        return random.nextInt(number) == 0;
    }

    <T> T of(List<T> choices) {
        return choices.get(random.nextInt(choices.size()));
    }
}
