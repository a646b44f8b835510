package org.coachskin.series;

import java.util.ArrayList;
import java.util.List;
import org.coachskin.analysis.SectionForces;
import org.coachskin.harmonic.FoamSolid;
import org.coachskin.harmonic.SectionFields;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.coachskin.laminate.LayerStress;
import org.coachskin.laminate.Stiffness;
import org.coachskin.laminate.Sym2;
import org.coachskin.laminate.Triple;

/**
 * What the section does at one place in full layered theory. Heights are z from mid-height of the
 * stack [m], outward positive; deflections are positive inward; strains and stresses are in panel
 * axes, tension positive.
 *
 * <p>Stress is that of the loads. Where heat is among them, what it leaves in a free stack is not
 * in it, while strains hold the free bow.
 */
public final class FullLayeredSection {

    /** How near to its faces a layer is read, as a share of its thickness. */
    private static final double WITHIN = 1e-9;

    /** Four-point Gauss rule on -1 to 1, exact for what a foam's stress times a height is. */
    private static final double[] POINT = {
        -0.8611363115940526, -0.3399810435848563, 0.3399810435848563, 0.8611363115940526
    };

    private static final double[] WEIGHT = {
        0.3478548451374538, 0.6521451548625461, 0.6521451548625461, 0.3478548451374538
    };

    private final Laminate laminate;
    private final SectionFields fields;
    private final Triple bow;

    FullLayeredSection(Laminate laminate, SectionFields fields, Triple bow) {
        this.laminate = laminate;
        this.fields = fields;
        this.bow = bow;
    }

    /** Returns the mean deflection of both surfaces [m]. */
    public double deflection() {
        return (outsideDeflection() + insideDeflection()) / 2;
    }

    /** Returns the deflection of the outside surface [m]. */
    public double outsideDeflection() {
        return -fields.outward(laminate.thickness() / 2);
    }

    /** Returns the deflection of the inside surface [m]. */
    public double insideDeflection() {
        return -fields.outward(-laminate.thickness() / 2);
    }

    /** Returns the shortening of the foam [m], negative where it is drawn out. */
    public double dent() {
        return outsideDeflection() - insideDeflection();
    }

    /**
     * Returns the deflection at one height [m].
     *
     * @throws IllegalArgumentException when {@code z} lies outside the stack
     */
    public double deflection(double z) {
        return -fields.outward(inStack(z));
    }

    /**
     * Returns the strain in the plane at one height [-].
     *
     * @throws IllegalArgumentException when {@code z} lies outside the stack
     */
    public Triple strain(double z) {
        return fields.strain(inStack(z));
    }

    /**
     * Returns strain and stress at both faces of every layer that is not foam, inside to outside.
     */
    public List<LayerStress> skins() {
        List<LayerStress> all = new ArrayList<>();
        for (int i = 0; i < laminate.layers().size(); i++) {
            Layer layer = laminate.layers().get(i);
            if (layer.inSkin()) {
                double low = laminate.bottom(i);
                double high = low + layer.thickness();
                all.add(
                        LayerStress.of(
                                i,
                                layer,
                                fields.strain(low),
                                fields.strain(high),
                                bow.times(low),
                                bow.times(high)));
            }
        }
        return List.copyOf(all);
    }

    /**
     * Returns the stress of the foam at one height. Where two foams touch, that of the inner one.
     *
     * <p>It is that of the strain there, and so meets the pressure and the free surface within the
     * error of a cubic displacement, not exactly.
     *
     * @throws IllegalArgumentException when there is no foam at {@code z}
     */
    public FoamStress foam(double z) {
        double slack = WITHIN * laminate.thickness();
        for (int i = 0; i < laminate.layers().size(); i++) {
            double low = laminate.bottom(i);
            double high = low + laminate.layers().get(i).thickness();
            if (laminate.layers().get(i) instanceof Layer.Core core
                    && z >= low - slack
                    && z <= high + slack) {
                double inset = WITHIN * core.thickness();
                return foam(core, Math.min(Math.max(z, low + inset), high - inset));
            }
        }
        throw new IllegalArgumentException("there is no foam at a height of " + z + " m");
    }

    private FoamStress foam(Layer.Core core, double z) {
        FoamSolid c = FoamSolid.of(core.foam());
        Triple e = fields.strain(z).plus(bow, -z);
        double stretch = fields.stretch(z);
        return new FoamStress(
                c.c11() * e.x() + c.c12() * e.y() + c.c13() * stretch,
                c.c12() * e.x() + c.c11() * e.y() + c.c13() * stretch,
                c.c13() * (e.x() + e.y()) + c.c33() * stretch,
                c.c66() * e.xy(),
                c.c44() * fields.shearX(z),
                c.c44() * fields.shearY(z));
    }

    /** Returns the resultants per width of the whole section, about mid-height of the stack. */
    public SectionForces forces() {
        return forces(0, laminate.layers().size(), 0);
    }

    /**
     * Returns the resultants per width of the outside skin alone, about its own mid-height: zero
     * where it has no ply.
     */
    public SectionForces outsideSkin() {
        int from = laminate.outermostCore() + 1;
        return forces(from, laminate.layers().size());
    }

    /**
     * Returns the resultants per width of the inside skin alone, about its own mid-height: zero
     * where it has no ply; the whole stack where there is no foam.
     */
    public SectionForces insideSkin() {
        int core = laminate.innermostCore();
        return forces(0, core < 0 ? laminate.layers().size() : core);
    }

    private SectionForces forces(int from, int to) {
        return forces(from, to, (laminate.bottom(from) + laminate.bottom(to)) / 2);
    }

    /** Adds up layers as the energy of the theory does, so that equilibrium holds to rounding. */
    private SectionForces forces(int from, int to, double reference) {
        Triple n = Triple.ZERO;
        Triple m = Triple.ZERO;
        double qx = 0;
        double qy = 0;
        for (int i = from; i < to; i++) {
            Layer layer = laminate.layers().get(i);
            double t = layer.thickness();
            double middle = laminate.bottom(i) + t / 2;
            if (layer instanceof Layer.Core core) {
                for (int k = 0; k < POINT.length; k++) {
                    double z = middle + t / 2 * POINT[k];
                    double w = t / 2 * WEIGHT[k];
                    FoamStress s = foam(core, z);
                    Triple plane = new Triple(s.x(), s.y(), s.xy());
                    n = n.plus(plane, w);
                    m = m.plus(plane, w * (z - reference));
                    qx += w * s.xz();
                    qy += w * s.yz();
                }
                continue;
            }
            for (int k = -1; k <= 1; k++) {
                double z = middle + k * t / 2 * (1 - 2 * WITHIN);
                double w = t * (k == 0 ? 4 : 1) / 6;
                Triple stress = layer.stiffness().times(fields.strain(z).plus(bow, -z));
                n = n.plus(stress, w);
                m = m.plus(stress, w * (z - reference));
            }
            Sym2 g = layer.shearStiffness();
            qx += 5.0 / 6 * t * g.m11() * fields.shearX(middle);
            qy += 5.0 / 6 * t * g.m22() * fields.shearY(middle);
        }
        if (laminate.isBare()) {
            Sym2 h = Stiffness.of(laminate).h();
            qx = h.m11() * fields.shearX(0);
            qy = h.m22() * fields.shearY(0);
        }
        return new SectionForces(n, m, qx, qy);
    }

    private double inStack(double z) {
        double half = laminate.thickness() / 2;
        if (!(Math.abs(z) <= half * (1 + WITHIN))) {
            throw new IllegalArgumentException(
                    "z is " + z + " m; the stack reaches " + half + " m either way");
        }
        return z;
    }
}
