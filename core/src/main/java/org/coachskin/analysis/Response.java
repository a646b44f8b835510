package org.coachskin.analysis;

import java.util.List;
import org.coachskin.laminate.SectionState;
import org.coachskin.panel.Panel;

/** What a panel does under load. Places are x from the left edge and y from the front edge [m]. */
public interface Response {

    /** Returns in words which theory and solver answered. */
    String method();

    /**
     * Returns the deflection [m], positive inward, of the mean surface of the panel in the solver's
     * theory.
     */
    double deflection(double x, double y);

    /**
     * Returns the state of the section: strains, curvatures and shear strains of skins and foam.
     */
    SectionState state(double x, double y);

    /** Returns the resultants per width. */
    SectionForces forces(double x, double y);

    /** Returns what the deflection at a place is owed to. */
    Owed owed(double x, double y);

    /**
     * Returns the deflection at a place, under the same loads, of panels that differ from this one
     * a little in their stacks [m]. A solver may answer to first order in the difference.
     */
    List<Double> nearby(List<Panel> others, double x, double y);

    /** Returns the deflection [m] all over the panel, closely enough to be drawn. */
    Field movement();

    /**
     * Returns places that together show the whole field, every feature of the panel included; empty
     * for a solver that leaves the choice to who asks.
     */
    default List<Spot> spots() {
        return List.of();
    }

    /**
     * Returns places over which the numerical error varies as it does at a place: all of the same
     * element, for a solver that has elements.
     */
    default List<Spot> beside(double x, double y) {
        return List.of(new Spot(x, y));
    }

    /**
     * A place.
     *
     * @param x from the left edge [m]
     * @param y from the front edge [m]
     */
    record Spot(double x, double y) {}
}
