package io.github.heatswell.scenarios.report;

import io.github.heatswell.scenarios.wording.Printable;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

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

    /** Says that a file or a folder cannot be written, and why; a sentence that says so already is kept. */
    static OutputException cannotWrite(Path path, Exception failure) {
        if (failure instanceof OutputException sentence) {
            return sentence;
        }
        Throwable root = failure;
        while (root.getCause() != null && root.getCause() instanceof IOException) {
            root = root.getCause();
        }
        return new OutputException("cannot write " + path + ": " + reason(root), failure);
    }

    private static String reason(Throwable failure) {
        if (failure instanceof AccessDeniedException) {
            return "there is no permission";
        }
        if (failure instanceof NoSuchFileException) {
            return "there is no such folder, or none can be made there";
        }
        String said = failure instanceof FileSystemException system ? system.getReason() : failure.getMessage();
        if (said == null || said.isBlank()) {
            return "the file system refused it (" + failure.getClass().getSimpleName() + ")";
        }
        return said.contains("No space left") ? "the disk is full" : said;
    }
}
