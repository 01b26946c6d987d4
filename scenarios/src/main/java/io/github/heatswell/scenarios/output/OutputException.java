package io.github.heatswell.scenarios.output;

import io.github.heatswell.scenarios.wording.Printable;
import java.io.IOException;

/**
 * Results could not be written. The message is a plain sentence that names the place and what to do about it.
 */
public final class OutputException extends IOException {

    private static final long serialVersionUID = 1L;

    /**
     * Creates the exception.
     *
     * @param message what could not be written, and why; it becomes one line, whatever names are in it
     * @param cause what the file system said, or null
     */
    OutputException(String message, Throwable cause) {
        super(Printable.line(message), cause);
    }
}
