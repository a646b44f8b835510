package org.coachskin.check;

import org.coachskin.analysis.CaseResponse;
import org.coachskin.laminate.Laminate;
import org.coachskin.local.LocalEffect;

/** What presses or pulls a face of a panel, by what it does there beyond the layered theory. */
interface Presser {

    /** Returns whether it is felt at a place that has a stack. */
    boolean reaches(Laminate there, double x, double y);

    /** Returns what it does at a place. */
    LocalEffect.Here at(double x, double y);

    /** Returns the error of the theory there. */
    MethodError error();

    /** Returns how many times it does that under an answer. */
    Times times(CaseResponse answer);

    /**
     * How many times something acts.
     *
     * @param loaded under the load
     * @param reversed under the load the other way round
     * @param still all the time
     */
    record Times(double loaded, double reversed, double still) {}
}
