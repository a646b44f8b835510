package org.coachskin.reference;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.DecompositionSolver;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;

/** Lowest frequencies of two dense matrices, for second methods. */
final class Vibration {

    /** Added to every squared frequency, as what moves freely has no stiffness. */
    private static final double LIFT = 1;

    private Vibration() {}

    /** Returns the lowest circular frequencies. */
    static double[] omegas(double[][] stiff, double[][] mass, int count) {
        RealMatrix m = even(new Array2DRowRealMatrix(mass));
        RealMatrix k = even(new Array2DRowRealMatrix(stiff)).add(m.scalarMultiply(LIFT));
        DecompositionSolver half =
                new LUDecomposition(new CholeskyDecomposition(k).getL(), 0).getSolver();
        // Of mass over stiffness the largest are wanted, and those keep their digits.
        RealMatrix over = half.solve(half.solve(m).transpose());
        double[] falling = new EigenDecomposition(even(over)).getRealEigenvalues();
        double[] out = new double[count];
        for (int i = 0; i < count; i++) {
            out[i] = Math.sqrt(Math.max(0, 1 / falling[i] - LIFT));
        }
        return out;
    }

    /** Takes rounding out of what is symmetric. */
    private static RealMatrix even(RealMatrix m) {
        return m.add(m.transpose()).scalarMultiply(0.5);
    }
}
