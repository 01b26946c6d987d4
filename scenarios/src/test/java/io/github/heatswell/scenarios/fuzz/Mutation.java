package io.github.heatswell.scenarios.fuzz;

import io.github.heatswell.scenarios.generated.Chance;

/** One thing that goes wrong with a text. */
@FunctionalInterface
interface Mutation {

    /** The text with it. */
    String of(String text, Chance chance);
}
