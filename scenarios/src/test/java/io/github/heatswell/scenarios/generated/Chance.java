package io.github.heatswell.scenarios.generated;

import java.util.List;
import java.util.SplittableRandom;

/** Draws that are the same for the same seed on every machine. */
public final class Chance {

    private final SplittableRandom random;

    Chance(long seed) {
        random = new SplittableRandom(seed);
    }

    /** For one of many cases under one seed. */
    public Chance(long seed, int number) {
        this(seed * 1_000_003 + number);
    }

    /** A number from 0 to below 1. */
    double share() {
        return random.nextDouble();
    }

    /** A number between two others. */
    double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    /** A number between two others above 0, as likely to be small as large. */
    double evenlyOnLogarithms(double low, double high) {
        return low * Math.pow(high / low, random.nextDouble());
    }

    /** A whole number from the first to the last. */
    int whole(int first, int last) {
        return random.nextInt(first, last + 1);
    }

    /** A whole number from 0 to below the bound. */
    public int below(int bound) {
        return random.nextInt(bound);
    }

    public boolean oneIn(int number) {
        return random.nextInt(number) == 0;
    }

    boolean with(double probability) {
        return random.nextDouble() < probability;
    }

    public <T> T of(List<? extends T> choices) {
        return choices.get(random.nextInt(choices.size()));
    }
}
