package org.coachskin.reference;

import org.coachskin.failure.Face;
import org.coachskin.failure.FaceWrinkling;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.coachskin.laminate.Ply;

class WrinklingTest extends FailureTable {

    private static final double E_FACE = 70e9;
    private static final double E_FOAM = 100e6;
    private static final double G_FOAM = 40e6;
    private static final double FACE = 1e-3;

    WrinklingTest() {
        super("wrinkling");
        put("coefficient by linear decay", coefficient(0));
        put("coefficient by differential equation for nu 0.3", coefficient(0.3));
    }

    /** Wrinkling stress of a face on thick foam over the cube root of the three moduli. */
    private static double coefficient(double nu) {
        double g = E_FACE / (2 * (1 + nu));
        Ply ply = StackTable.ply(E_FACE, E_FACE, nu, g, FACE);
        Layer face = new Layer.Laid(ply, 0);
        Laminate thick = Laminate.of(face, StackTable.foam(E_FOAM, G_FOAM, 100 * FACE), face);
        double force = FaceWrinkling.of(thick, Face.OUTSIDE).orElseThrow().critical(0, -1);
        return force / FACE / StrictMath.cbrt(E_FACE * E_FOAM * G_FOAM);
    }

    @Override
    String title() {
        return "Wrinkling of a face on thick foam: foam that decays as it likes";
    }

    @Override
    String remark() {
        return "Neither row is a target. Ours lets the foam move through its thickness only and decay exponentially, which"
                + " solves its equilibrium: 3 (1/48)^(1/3) = 0.8255 for a face that is a strip. A decay that is linear"
                + " is an assumed shape of the same movement, so 0.91 lies above ours as it must. With the plane-strain"
                + " modulus of a face of nu 0.3 ours is 0.852, the likely origin of 0.85; the isotropic half-space"
                + " bonded to the face gives 0.806 in plane strain by our derivation: 2.4 % below ours without that modulus.";
    }
}
