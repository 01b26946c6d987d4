package io.github.heatswell.scenarios;

import java.io.IOException;

/** The test that started a Java machine. When it is killed, the machine is to end as well. */
public final class Parent {

    private Parent() {}

    /**
     * Ends this machine at once when its standard input ends, as it does when the process at the other end of the pipe is gone.
     * For programs that read no input themselves.
     */
    public static void outlivedByNone() {
        Thread watch = new Thread(() -> {
            try {
                while (System.in.read() >= 0) {
                    // what comes in does not matter
                }
            } catch (IOException e) {
                // nobody is at the other end either
            }
            Runtime.getRuntime().halt(1);
        });
        watch.setDaemon(true);
        watch.start();
    }
}
