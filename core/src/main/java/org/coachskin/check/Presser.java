package org.coachskin.check;

import java.util.List;
import org.coachskin.analysis.CaseResponse;
import org.coachskin.laminate.Laminate;
import org.coachskin.local.LocalEffect;

/** What presses or pulls a face of a panel, by what it does there beyond the layered theory. */
interface Presser {

    /** Returns whether it is felt at a place that has a stack. */
    boolean reaches(Laminate there, double x, double y);

    /**
     * Returns where it is felt of a station: right there for what has a finite peak, which a mean
     * would hide, or wherever the station is read for what has none.
     */
    List<Stations.Sample> felt(Stations.Station at);

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
