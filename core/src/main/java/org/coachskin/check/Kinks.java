package org.coachskin.check;

import org.coachskin.failure.Face;
import org.coachskin.failure.Mode;
import org.coachskin.failure.SkinKink;
import org.coachskin.laminate.Layer;
import org.coachskin.laminate.SectionState;

/** What the inside skin bears where it turns over the bevel of a strip ({@link SkinKink}). */
final class Kinks {

    /** Slopes up to which {@link SkinKink} is off by no more than this; beyond, by the last. */
    private static final double[] SLOPES = {0.34, 0.51};

    /** How low the foam's pull right under the corner is. */
    private static final double[] PULL = {0.15, 0.2, 0.35};

    /** How far off the stress of the bent skin is. */
    private static final double[] BEND = {0.07, 0.11, 0.25};

    private Kinks() {}

    /**
     * Judges one side of an edge: whether the skin comes off, and whether it breaks as it bends.
     *
     * @param stack on this side
     * @param state what the load does there
     * @param still strain that stands all the time
     */
    static void judge(
            SkinJudge skins,
            StripEdges.Side side,
            Stack stack,
            SectionState state,
            Stack.Strain still) {
        SkinKink kink = SkinKink.ofInside(stack.laminate);
        Stack.Strain strain = stack.strain(state);
        double pull = side.pull(stack.skinForce(Face.INSIDE, strain));
        double stands = side.pull(stack.skinForce(Face.INSIDE, still));
        Stations.Station at = side.station();
        skins.pulledOff(
                place("inside skin, at the bevel, ", at, stack.layered.foamBottom()),
                kink.stress(pull, side.angle()),
                kink.stress(stands, side.angle()),
                stack.foam(Face.INSIDE).tension(),
                error(PULL, side.slope()),
                how(at));
        double bent = kink.curvature(pull, side.angle());
        double bentStill = kink.curvature(stands, side.angle());
        double middle = stack.bottom[0] + kink.middle();
        for (int i = 0; i < stack.firstCore; i++) {
            if (stack.laminate.layers().get(i) instanceof Layer.Laid laid) {
                for (double part : new double[] {1e-6, 1 - 1e-6}) {
                    double z = stack.bottom[i] + part * laid.thickness();
                    skins.ply(
                            event -> Mode.KINK,
                            laid,
                            place(stack.layerWords(i) + ", ", at, z),
                            strain.at(laid, z).plus(side.across(), bent * (middle - z)),
                            still.at(laid, z).plus(side.across(), bentStill * (middle - z)),
                            error(BEND, side.slope()),
                            how(at));
                }
            }
        }
    }

    private static double error(double[] by, double slope) {
        return by[slope <= SLOPES[0] ? 0 : slope <= SLOPES[1] ? 1 : 2];
    }

    private static String how(Stations.Station at) {
        return at.remark().isEmpty() ? "a longer bevel pulls and bends it less" : at.remark();
    }

    private static Place place(String part, Stations.Station at, double z) {
        return new Place(part + at.words(), at.x(), at.y(), z);
    }
}
