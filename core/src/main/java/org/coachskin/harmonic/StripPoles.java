package org.coachskin.harmonic;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The roots -&kappa; of a strip's matrix in &mu; = &alpha;^2, without those at nought.
 *
 * <p>With u = u'/&alpha; and the rows of u times &alpha; the matrix is linear in &mu;: a root of it
 * is an eigenvalue.
 */
final class StripPoles {

    /**
     * A root below this share of the longest wave's &mu; counts as nought: three roots there are
     * one, split by rounding.
     */
    private static final double NOUGHT = 1e-2;

    /** A root this many times the shortest wave of the thickness moves nothing. */
    private static final double FAR = 1e12;

    private record Root(double re, double im) {
        double size() {
            return Math.hypot(re, im);
        }
    }

    private final List<Root> roots;

    private StripPoles(List<Root> roots) {
        this.roots = roots;
    }

    /**
     * Finds the roots.
     *
     * @param longest wave number of the longest wave [1/m]
     */
    static StripPoles of(WaveSystem system, double longest) {
        int k = system.first;
        double[] constant = new double[k * k];
        double[] linear = new double[k * k];
        double shift = longest * longest;
        system.stripInSquares(longest, constant, linear);
        double[] both = new double[k * k];
        double[] scale = new double[k];
        for (int i = 0; i < k; i++) {
            scale[i] = 1 / Math.sqrt(constant[i * k + i] + linear[i * k + i]);
        }
        for (int i = 0; i < k; i++) {
            for (int j = 0; j < k; j++) {
                double factor = scale[i] * scale[j];
                linear[i * k + j] *= factor;
                both[i * k + j] = constant[i * k + j] * factor + linear[i * k + j];
            }
        }
        Elimination.solve(both, k, linear, k);
        // Eigenvalues 1/(1 + kappa/shift).
        Eigenpairs eigen = Eigenpairs.of(linear, k);
        List<Root> roots = new ArrayList<>();
        for (int i = 0; i < k; i++) {
            double size = eigen.re[i] * eigen.re[i] + eigen.im[i] * eigen.im[i];
            double re = eigen.re[i] / size - 1;
            double im = -eigen.im[i] / size;
            double share = Math.hypot(re, im);
            if (share > NOUGHT && share < FAR) {
                roots.add(new Root(re * shift, im * shift));
            }
        }
        // A pair stays together, the one above zero first.
        roots.sort(Comparator.comparingDouble(Root::size).thenComparingDouble(r -> -r.im()));
        return new StripPoles(List.copyOf(roots));
    }

    int count() {
        return roots.size();
    }

    double re(int p) {
        return roots.get(p).re();
    }

    /** Imaginary part; of a pair the one above zero stands first. */
    double im(int p) {
        return roots.get(p).im();
    }

    double size(int p) {
        return roots.get(p).size();
    }
}
