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
     * Returns what {@code panel} does under several load cases, one response a case.
     *
     * @param cases loads that act together, case by case; a case may be empty
     * @throws org.coachskin.NoAnswerException when the panel or a load is outside what this solver
     *     can do
     */
    List<Response> cases(Panel panel, List<List<Load>> cases);

    /** Returns what {@code panel} does under {@code loads} acting together. */
    default Response statics(Panel panel, List<Load> loads) {
        return cases(panel, List.of(loads)).get(0);
    }

    /**
     * Returns the lowest natural frequency [Hz].
     *
     * @throws org.coachskin.NoAnswerException when the panel is outside what this solver can do
     */
    double frequency(Panel panel);
}
