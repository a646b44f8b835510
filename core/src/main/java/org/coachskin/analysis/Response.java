package org.coachskin.analysis;

import org.coachskin.laminate.SectionState;

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
}
