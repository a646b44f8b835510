package org.coachskin.cli;

import java.io.FileDescriptor;
import java.time.Duration;
import java.util.function.Consumer;
import me.tongfei.progressbar.DelegatingProgressBarConsumer;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarStyle;
import org.jspecify.annotations.Nullable;

/**
 * How far long work has come, on one line of the terminal that is wiped at the end, also where
 * somebody stops the command. Work of less than a second shows nothing, nor does any where nobody
 * looks: in a pipe, in a file.
 *
 * <p>Steps may be taken by several threads.
 */
final class Progress implements AutoCloseable {

    /** Set by the launcher where standard error is a terminal. */
    private static final String ON_A_TERMINAL = "coachskin.terminal";

    private static final Duration SHOWN_FROM = Duration.ofSeconds(1);

    /** What is wiped: not the last column, so that no terminal breaks the line. */
    private static final int WIDTH = Page.WIDTH - 2;

    /** Room behind the line for the {@code ^C} of a terminal. */
    private static final int STOPPED = 2;

    private final Consumer<String> terminal;
    private final Thread stopped = new Thread(this::wipe, "progress");
    private final long start = System.nanoTime();
    private final Duration shownFrom;
    private final @Nullable ProgressBar bar;
    private volatile boolean shown;

    /**
     * Begins work.
     *
     * @param task what is done, in two or three words
     * @param steps how many there are; below zero where nobody knows
     */
    static Progress of(String task, int steps) {
        Consumer<String> terminal = text -> Main.print(FileDescriptor.err, text);
        boolean seen = Boolean.getBoolean(ON_A_TERMINAL);
        Progress progress = new Progress(task, steps, seen ? terminal : null, SHOWN_FROM);
        if (seen) {
            try {
                Runtime.getRuntime().addShutdownHook(progress.stopped);
            } catch (IllegalStateException e) {
                // It is being stopped already; what is begun now ends by itself.
            }
        }
        return progress;
    }

    Progress(String task, int steps, @Nullable Consumer<String> terminal, Duration shownFrom) {
        this.terminal = terminal == null ? text -> {} : terminal;
        this.shownFrom = shownFrom;
        bar =
                terminal == null
                        ? null
                        : new ProgressBarBuilder()
                                .setTaskName(task)
                                .setInitialMax(steps)
                                .setStyle(ProgressBarStyle.ASCII)
                                .setUpdateIntervalMillis(250)
                                .continuousUpdate()
                                .setConsumer(
                                        new DelegatingProgressBarConsumer(
                                                this::draw, WIDTH - STOPPED))
                                .build();
    }

    private void draw(String line) {
        if (System.nanoTime() - start >= shownFrom.toNanos()) {
            terminal.accept("\r" + line.stripTrailing());
            shown = true;
        }
    }

    /** Takes one step. */
    void step() {
        if (bar != null) {
            bar.step();
        }
    }

    /** Has taken so many steps in all. */
    void at(int steps) {
        if (bar != null) {
            bar.stepTo(steps);
        }
    }

    private void wipe() {
        if (shown) {
            terminal.accept("\r" + " ".repeat(WIDTH) + "\r");
        }
    }

    /** Ends the work and wipes the line. */
    @Override
    public void close() {
        if (bar != null) {
            bar.close();
        }
        wipe();
        try {
            Runtime.getRuntime().removeShutdownHook(stopped);
        } catch (IllegalStateException e) {
            // It is being stopped: the line is wiped twice.
        }
    }
}
