package io.github.heatswell.study;

/**
 * A sample of a study failed: its values describe no valid system. The study continues, counts the sample and reports
 * the first such message.
 */
public final class SampleFailedException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /**
     * Creates the exception.
     *
     * @param message why this sample has no answer, for the reader of the result
     */
    public SampleFailedException(String message) {
        super(message);
    }

    /**
     * Creates the exception for what something else found.
     *
     * @param message why this sample has no answer, for the reader of the result
     * @param cause what was found
     */
    public SampleFailedException(String message, Throwable cause) {
        super(message, cause);
    }
}
