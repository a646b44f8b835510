package org.coachskin.reference;

import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.coachskin.laminate.LayeredStiffness;
import org.coachskin.laminate.Stiffness;

class AllenBeamTest extends StackTable {

    private static final double SPAN = 300;

    AllenBeamTest() {
        super("allen-1969");
        // N, mm. Allen's faces do not shear and his core does not bend.
        Layer face = face(20000, 1e15, 2);
        LayeredStiffness beam = LayeredStiffness.of(Laminate.of(face, foam(1e-6, 20, 20), face));
        put("deflection with bending faces", deflection(beam));
        double faces = 2 * 20000 * 8 / 12.0;
        double whole = beam.dff().m11() + 2 * beam.dfg().m11() + beam.dgg().m11();
        put("share of the faces in the bending stiffness", faces / whole);
        Stiffness thin = Stiffness.of(Laminate.of(face, foam(1e-6, 20, 20), face));
        put(
                "deflection by the thin-face formula",
                SPAN * SPAN * SPAN / 48 / thin.d().m11() + SPAN / 4 / thin.h().m11());
        differs(
                "deflection by the thin-face formula",
                SPAN * SPAN * SPAN / 48 / (20000 * 2 * 22 * 22 / 2.0 + 2 * faces / 2)
                        + SPAN / 4 / (20 * 22 * 22 / 20.0),
                "with G d^2/c for the shear stiffness; equilibrium in faces of a tenth of the core gives 0.6 % more.");
        Layer skin = face(14e3, 3e3, 0.6);
        double h = Stiffness.of(Laminate.of(skin, foam(5, 1.5, 25.4), skin)).h().m11();
        put("shear stiffness over G d^2/c", h / (1.5 * 26 * 26 / 25.4));
    }

    private static Layer face(double e, double g, double t) {
        return new Layer.Laid(ply(e, e, 0, e / 2, g, g, t, 0, 0), 0);
    }

    /** Layered theory in a sine series under 1 N at midspan. */
    private static double deflection(LayeredStiffness s) {
        double sum = 0;
        for (int n = 4001; n >= 1; n -= 2) {
            double a = n * Math.PI / SPAN;
            double hs = s.hs().m11();
            double hf = s.hf().m11();
            // Rotations phi, psi per unit of a w, from the moment balance of skins and of foam.
            double pp = s.dgg().m11() * a * a + hs;
            double pf = s.dfg().m11() * a * a;
            double ff = s.dff().m11() * a * a + hf;
            double det = pp * ff - pf * pf;
            // Shear strains 1 + phi and 1 + psi, written so that nothing cancels where hs is huge.
            double gs = (s.dgg().m11() * a * a * ff - pf * pf + pf * hf) / det;
            double gf = (s.dff().m11() * a * a * pp - pf * pf + pf * hs) / det;
            sum += 2 / SPAN / (a * a * (hs * gs + hf * gf));
        }
        return sum;
    }

    @Override
    String title() {
        return "A sandwich beam with thick faces, and the shear stiffness of thin ones: layered theory and equilibrium";
    }
}
