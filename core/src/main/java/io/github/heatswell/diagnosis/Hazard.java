package io.github.heatswell.diagnosis;

/** A danger that the readings point to: a cause, or a reading beyond what a plate or a setting allows. */
public sealed interface Hazard permits HypothesisFit, BeyondLimit {

    /**
     * The hazard as a statement.
     *
     * @return a sentence without full stop, in lower case
     */
    String inWords();
}
