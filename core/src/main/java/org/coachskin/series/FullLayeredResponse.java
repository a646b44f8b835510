package org.coachskin.series;

import org.coachskin.analysis.SectionForces;
import org.coachskin.harmonic.SectionFields;
import org.coachskin.panel.Panel;

/**
 * What a panel does in full layered theory. Places are x from the left edge and y from the front
 * edge [m]; deflections are positive inward. Whoever wants several figures of one place asks {@link
 * #at} once.
 *
 * <p>Along an edge the rim pushes back with the shear force that {@link #forces} gives there; the
 * rotations along it are held, so no twisting moment adds to it and no force stands in the corners.
 */
public final class FullLayeredResponse {

    private final SeriesSum sum;

    FullLayeredResponse(SeriesSum sum) {
        this.sum = sum;
    }

    /** Returns in words which theory and solver answered. */
    public String method() {
        return sum.method();
    }

    /** Returns everything about one place. */
    public FullLayeredSection at(double x, double y) {
        Panel panel = sum.panel();
        return new FullLayeredSection(
                panel.laminate(),
                new SectionFields(
                        sum.kinematics(),
                        panel.crown().across(),
                        panel.crown().along(),
                        sum.fields(x, y)),
                sum.bow());
    }

    /** Returns the mean deflection of both surfaces [m]. */
    public double deflection(double x, double y) {
        return at(x, y).deflection();
    }

    /** Returns the deflection of the outside surface [m]. */
    public double outsideDeflection(double x, double y) {
        return at(x, y).outsideDeflection();
    }

    /** Returns the deflection of the inside surface [m]. */
    public double insideDeflection(double x, double y) {
        return at(x, y).insideDeflection();
    }

    /** Returns the shortening of the foam [m], negative where it is drawn out. */
    public double dent(double x, double y) {
        return at(x, y).dent();
    }

    /** Returns the resultants per width of the whole section, about mid-height of the stack. */
    public SectionForces forces(double x, double y) {
        return at(x, y).forces();
    }
}
