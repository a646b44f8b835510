package org.coachskin.analysis;

import java.util.List;
import org.coachskin.panel.Load;
import org.coachskin.panel.Panel;

/**
 * A solver: what a panel does under load. Implementations are immutable and safe to share between
 * threads.
 */
public interface Analysis {

    /**
     * Returns what {@code panel} does under {@code loads} acting together.
     *
     * @throws org.coachskin.NoAnswerException when the panel or a load is outside what this solver
     *     can do
     */
    Response statics(Panel panel, List<Load> loads);

    /**
     * Returns the lowest natural frequency [Hz].
     *
     * @throws org.coachskin.NoAnswerException when the panel is outside what this solver can do
     */
    double frequency(Panel panel);
}
