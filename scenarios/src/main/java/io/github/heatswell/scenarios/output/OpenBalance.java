package io.github.heatswell.scenarios.output;

import io.github.heatswell.result.Audit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;

/** Says that the balance of a run does not close, so that nobody relies on it. */
final class OpenBalance {

    /** The word in front of the sentence. */
    static final String WORD = "NOT RELIABLE";

    private static final double PERCENT = 100;
    private static final MathContext TWO_DIGITS = new MathContext(2);

    private OpenBalance() {}

    /** The sentence on one run; empty if its balance closes. */
    static Optional<String> of(Audit audit) {
        if (audit.closes()) {
            return Optional.empty();
        }
        boolean water = audit.massFraction() > Audit.BOUND || audit.energyFraction() <= Audit.BOUND;
        double share = water ? audit.massFraction() : audit.energyFraction();
        return Optional.of("The balance of this run does not close: "
                + new BigDecimal(PERCENT * share).round(TWO_DIGITS).toPlainString() + " % of the "
                + (water ? "water" : "heat")
                + " is unaccounted for. Do not rely on its figures; please report the scenario.");
    }

    /** The sentence on an answer that takes many runs; empty if all balances close. */
    static Optional<String> among(long open, long runs) {
        if (open == 0) {
            return Optional.empty();
        }
        return Optional.of("The balance of " + open + " of the " + runs + " runs behind this answer does not close."
                + " Do not rely on its figures; please report the scenario.");
    }
}
