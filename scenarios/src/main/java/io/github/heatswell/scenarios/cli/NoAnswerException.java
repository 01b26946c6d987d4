package io.github.heatswell.scenarios.cli;

/** A question that has no answer. */
final class NoAnswerException extends Exception {

    private static final long serialVersionUID = 1L;

    private final String hazards;

    /**
     * Creates the exception.
     *
     * @param complaints the reasons, one per line, each prefixed with its subject
     * @param hazards hazards, reported first: paragraphs for a terminal, possibly none
     */
    NoAnswerException(String complaints, String hazards) {
        super(complaints);
        this.hazards = hazards;
    }

    /** What may hurt somebody, as paragraphs of a terminal; may be empty. */
    String hazards() {
        return hazards;
    }
}
