package org.coachskin.failure;

import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.coachskin.material.Foam;

/**
 * The foam under a skin as an elastic bed: the pressure per deflection that it returns to a wave.
 *
 * <p>The skin holds the foam's surface in its plane, so the foam moves through the thickness only
 * and its deflection obeys E w,zz = G k^2 w. A wave of number k on foam of thickness c whose far
 * side does not move meets
 *
 * <pre>
 *   k sqrt(E G) coth(k c sqrt(G/E))
 * </pre>
 *
 * <p>(two-parameter layer of Vlasov and Leontiev, <i>Beams, plates and shells on elastic
 * foundations</i>, 1960; from memory). As the half-space it is k sqrt(E G), which gives the
 * wrinkling coefficient 0.825; the isotropic half-space bonded to the skin gives 0.81 to 0.86 with
 * Poisson's ratio. A long wave meets E/c.
 *
 * <p><b>Limits.</b> One foam; E through the thickness and G independent.
 */
final class FoamBed {

    private final double e;
    private final double g;
    private final double thickness;

    private FoamBed(double e, double g, double thickness) {
        this.e = e;
        this.g = g;
        this.thickness = thickness;
    }

    static FoamBed of(Laminate laminate) {
        // Several foams: as springs one behind the other, with the shear modulus of their mean.
        double through = 0;
        double shear = 0;
        double thickness = 0;
        for (Layer layer : laminate.layers()) {
            if (layer instanceof Layer.Core core) {
                Foam foam = core.foam();
                through += core.thickness() / foam.eThrough();
                shear += core.thickness() * foam.g();
                thickness += core.thickness();
            }
        }
        return new FoamBed(thickness / through, shear / thickness, thickness);
    }

    /** Stiffness to a wave, with the far side at rest [Pa/m]. */
    double stiffness(double k) {
        double phase = k * thickness * Math.sqrt(g / e);
        return phase < 1e-6 ? e / thickness : k * Math.sqrt(e * g) / StrictMath.tanh(phase);
    }

    /** What a wave on one side pushes on the other side at rest [Pa/m]. */
    double across(double k) {
        double phase = k * thickness * Math.sqrt(g / e);
        return phase < 1e-6 ? e / thickness : k * Math.sqrt(e * g) / StrictMath.sinh(phase);
    }

    /** Stiffness of the half-space over the wave number [Pa]. */
    double halfSpace() {
        return Math.sqrt(e * g);
    }

    /** Length over which a push on the foam by itself dies out beside it, to 1/e [m]. */
    double reach() {
        return 2 * thickness / Math.PI * Math.sqrt(g / e);
    }

    /** Stiffness as springs, to a uniform push [Pa/m]. */
    double springs() {
        return e / thickness;
    }
}
