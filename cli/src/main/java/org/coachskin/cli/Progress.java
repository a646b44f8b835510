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
 * How far long work has come, on one line of the terminal that is wiped at the end. Work of less
 * than a second shows nothing, nor does any where nobody looks: in a pipe, in a file.
 *
 * <p>Steps may be taken by several threads.
 */
final class Progress implements AutoCloseable {

    /** Set by the launcher where standard error is a terminal. */
    private static final String ON_A_TERMINAL = "coachskin.terminal";

    private static final Duration SHOWN_FROM = Duration.ofSeconds(1);

    /** The last column stays free, so that no terminal breaks the line. */
    private static final int WIDTH = Page.WIDTH - 2;

    private final Consumer<String> terminal;
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
        return new Progress(
                task, steps, Boolean.getBoolean(ON_A_TERMINAL) ? terminal : null, SHOWN_FROM);
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
                                .setConsumer(new DelegatingProgressBarConsumer(this::draw, WIDTH))
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

    /** Ends the work and wipes the line. */
    @Override
    public void close() {
        if (bar != null) {
            bar.close();
        }
        if (shown) {
            terminal.accept("\r" + " ".repeat(WIDTH) + "\r");
        }
    }
}
