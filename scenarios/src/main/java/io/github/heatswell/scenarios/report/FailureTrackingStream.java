package io.github.heatswell.scenarios.report;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;

/** A stream that remembers that writing failed, since not every writer on top of it passes the failure on. */
final class FailureTrackingStream extends FilterOutputStream {

    private IOException failure;

    FailureTrackingStream(OutputStream out) {
        super(out);
    }

    @Override
    public void write(int b) throws IOException {
        attempt(() -> out.write(b));
    }

    @Override
    public void write(byte[] bytes, int offset, int length) throws IOException {
        attempt(() -> out.write(bytes, offset, length));
    }

    @Override
    public void flush() throws IOException {
        attempt(out::flush);
    }

    /** Writes what is held back, and fails if anything failed before. */
    void complete() throws IOException {
        flush();
        if (failure != null) {
            throw failure;
        }
    }

    /** Something that writes. */
    @FunctionalInterface
    private interface Writing {
        void run() throws IOException;
    }

    private void attempt(Writing writing) throws IOException {
        try {
            writing.run();
        } catch (IOException e) {
            if (failure == null) {
                failure = e;
            }
            throw e;
        }
    }
}
