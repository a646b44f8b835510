package org.coachskin.check;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.coachskin.failure.Face;
import org.coachskin.failure.FaceWrinkling;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.coachskin.laminate.LayeredStiffness;
import org.coachskin.laminate.SectionState;
import org.coachskin.laminate.ShearThroughThickness;
import org.coachskin.laminate.Stiffness;
import org.coachskin.laminate.Sym2;
import org.coachskin.laminate.TransverseShear;
import org.coachskin.laminate.Triple;
import org.coachskin.material.Foam;

/** What of a stack is needed at every place, worked out once. */
final class Stack {

    /** Heights in the foam at which its shear is looked at. */
    private static final int HEIGHTS = 9;

    final Laminate laminate;
    final LayeredStiffness layered;
    final Sym2 shear;
    final double[] bottom;
    final int firstCore;
    final int lastCore;
    final Optional<FaceWrinkling> outside;
    final Optional<FaceWrinkling> inside;

    Stack(Laminate laminate) {
        this.laminate = laminate;
        layered = LayeredStiffness.of(laminate);
        shear = Stiffness.of(laminate).h();
        List<Layer> layers = laminate.layers();
        bottom = new double[layers.size()];
        for (int i = 0; i < bottom.length; i++) {
            bottom[i] = laminate.bottom(i);
        }
        firstCore = laminate.innermostCore();
        lastCore = laminate.outermostCore();
        outside = FaceWrinkling.of(laminate, Face.OUTSIDE);
        inside = FaceWrinkling.of(laminate, Face.INSIDE);
    }

    /** In-plane strain that makes stress in a layer, by height [-]. */
    interface Strain {
        Triple at(Layer layer, double z);
    }

    /** Returns what a state strains the layers by, free growth not taken off. */
    Strain strain(SectionState state) {
        return (layer, z) -> state.strainAt(layered, z);
    }

    /** Returns the foam under the skin on one face. */
    Foam foam(Face face) {
        int core = face == Face.OUTSIDE ? lastCore : firstCore;
        return ((Layer.Core) laminate.layers().get(core)).foam();
    }

    /**
     * Forces per width in the skin on one face, from the strain at the middle of each of its
     * layers.
     */
    Triple skinForce(Face face, Strain strain) {
        int from = face == Face.OUTSIDE ? lastCore + 1 : 0;
        int to = face == Face.OUTSIDE ? bottom.length : firstCore;
        Triple n = Triple.ZERO;
        for (int i = from; i < to; i++) {
            Layer layer = laminate.layers().get(i);
            double t = layer.thickness();
            n = n.plus(layer.stiffness().times(strain.at(layer, bottom[i] + t / 2)), t);
        }
        return n;
    }

    /**
     * Shear stress of the foam at {@value #HEIGHTS} heights from its inside face to its outside
     * face; between two skins its mean, from which layered theory does not depart.
     */
    List<TransverseShear> foamShear(SectionState state) {
        double from = layered.foamBottom();
        double c = layered.foamTop() - from;
        if (!laminate.hasNoInsideSkin() && !laminate.hasNoOutsideSkin()) {
            return Collections.nCopies(
                    HEIGHTS,
                    new TransverseShear(
                            layered.hf().m11() * state.foamShearX() / c,
                            layered.hf().m22() * state.foamShearY() / c));
        }
        ShearThroughThickness shear = ShearThroughThickness.of(laminate, state);
        List<TransverseShear> found = new ArrayList<>();
        for (int k = 0; k < HEIGHTS; k++) {
            found.add(shear.at(from + c * k / (HEIGHTS - 1)));
        }
        return found;
    }

    /** Which ply of its skin a layer is, in the order of laying, in words. */
    String layerWords(int layer) {
        boolean bare = firstCore < 0;
        boolean outer = bare || layer > lastCore;
        int ply = 0;
        int step = outer ? 1 : -1;
        for (int i = bare ? 0 : outer ? lastCore + 1 : firstCore - 1;
                i != layer + step;
                i += step) {
            if (laminate.layers().get(i) instanceof Layer.Laid) {
                ply++;
            }
        }
        return (bare ? "" : outer ? "outside skin, " : "inside skin, ") + ordinal(ply) + " ply";
    }

    private static String ordinal(int ply) {
        return switch (ply) {
            case 1 -> "first";
            case 2 -> "second";
            case 3 -> "third";
            case 4 -> "fourth";
            case 5 -> "fifth";
            case 6 -> "sixth";
            case 7 -> "seventh";
            case 8 -> "eighth";
            default -> ply + "th";
        };
    }
}
