package org.coachskin.cli;

import java.io.FileDescriptor;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * Lets long work end with what it has when the terminal asks the command to stop: the JVM waits for
 * the answer to be printed, at most {@value #SECONDS} seconds, and ends with the exit status for no
 * answer.
 */
final class Interrupt implements AutoCloseable {

    private static final int SECONDS = 60;

    /** Opened once the answer is printed. */
    private static final CountDownLatch PRINTED = new CountDownLatch(1);

    private volatile boolean begun;
    private volatile boolean wanted;
    private final Thread hook = new Thread(this::waitForTheAnswer, "interrupt");

    private Interrupt() {}

    /** Begins to listen. */
    static Interrupt on() {
        Interrupt interrupt = new Interrupt();
        Runtime.getRuntime().addShutdownHook(interrupt.hook);
        return interrupt;
    }

    private void waitForTheAnswer() {
        if (!begun) {
            return;
        }
        wanted = true;
        Main.print(FileDescriptor.err, "Stopping: what is known so far follows.\n");
        boolean told = false;
        try {
            told = PRINTED.await(SECONDS, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        if (told) {
            Runtime.getRuntime().halt(Outcome.NO_ANSWER);
        }
    }

    /** Says that there is something to tell by now; until then the command just ends. */
    void begin() {
        begun = true;
    }

    /** Returns whether it shall stop. */
    boolean isWanted() {
        return wanted;
    }

    /** Says that the answer is printed; called once, by whoever prints. */
    static void printed() {
        PRINTED.countDown();
    }

    /** Listens no longer, unless it is stopping already. */
    @Override
    public void close() {
        if (!wanted) {
            try {
                Runtime.getRuntime().removeShutdownHook(hook);
            } catch (IllegalStateException e) {
                // It has just begun to stop: then the answer is waited for.
                wanted = true;
            }
        }
    }
}
