package org.coachskin.check;

import java.util.function.DoubleFunction;
import org.coachskin.failure.PlyCriterion;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.coachskin.laminate.PlyStress;
import org.coachskin.laminate.Triple;

/** The plies of one place judged anew, from strains alone. */
final class PlyReserve {

    private PlyReserve() {}

    /**
     * Returns the least reserve of all plies by the standard limits.
     *
     * @param in how far in from both faces of a ply it is judged, as share of its thickness
     * @param strain at a height over the middle
     */
    static double least(Laminate laminate, double in, DoubleFunction<Triple> strain) {
        PlyCriterion criterion = Limits.STANDARD.criterion();
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < laminate.layers().size(); i++) {
            if (laminate.layers().get(i) instanceof Layer.Laid laid) {
                for (double part : new double[] {in, 1 - in}) {
                    double z = laminate.bottom(i) + part * laid.thickness();
                    PlyStress stress = PlyStress.of(laid.ply(), laid.angle(), strain.apply(z));
                    least = Math.min(least, criterion.reserve(stress, PlyStress.ZERO, laid.ply()));
                }
            }
        }
        return least;
    }
}
