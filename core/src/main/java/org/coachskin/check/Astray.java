package org.coachskin.check;

import java.util.List;
import org.coachskin.analysis.CaseResponse;
import org.coachskin.analysis.Field;
import org.coachskin.analysis.Owed;
import org.coachskin.analysis.Response;
import org.coachskin.analysis.SectionForces;
import org.coachskin.laminate.SectionState;
import org.coachskin.panel.Panel;

/**
 * A response gone astray by as much as another one differs from it somewhere near: at a place of
 * the same element, the {@code which}-th of {@link Response#beside}. Two solutions may agree by
 * chance at one place; over an element they do not.
 */
record Astray(Response of, Response other, int which) implements Response {

    /** How many places an element has; a solver with fewer repeats itself. */
    static final int PLACES = 7;

    /** Returns a load case's answer, its loaded state astray. */
    static CaseResponse of(CaseResponse answer, CaseResponse other, int which) {
        return new CaseResponse(
                answer.standing(),
                new Astray(answer.loaded(), other.loaded(), which),
                new Astray(answer.reversed(), other.reversed(), which),
                answer.atRest(),
                answer.held(),
                answer.heldReversed());
    }

    @Override
    public SectionState state(double x, double y) {
        SectionState here = of.state(x, y);
        List<Spot> beside = of.beside(x, y);
        if (which >= beside.size()) {
            return here;
        }
        Spot spot = beside.get(which);
        return here.plus(other.state(spot.x(), spot.y()), 1).plus(of.state(spot.x(), spot.y()), -1);
    }

    @Override
    public double deflection(double x, double y) {
        return of.deflection(x, y);
    }

    @Override
    public SectionForces forces(double x, double y) {
        return of.forces(x, y);
    }

    @Override
    public Owed owed(double x, double y) {
        return of.owed(x, y);
    }

    @Override
    public List<Double> nearby(List<Panel> others, double x, double y) {
        return of.nearby(others, x, y);
    }

    @Override
    public Field movement() {
        return of.movement();
    }

    @Override
    public List<Spot> spots() {
        return of.spots();
    }

    @Override
    public String method() {
        return of.method();
    }
}
