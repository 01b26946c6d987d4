package io.github.heatswell.diagnosis;

/** A danger that the readings point to: a cause, or a reading above what the plates allow whatever the cause. */
public sealed interface Hazard permits HypothesisFit, Overpressure {

    /**
     * The hazard as a statement.
     *
     * @return a sentence without full stop, in lower case
     */
    String inWords();
}
