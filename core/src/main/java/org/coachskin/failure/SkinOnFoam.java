package org.coachskin.failure;

import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.EigenDecomposition_F64;

/**
 * A skin bonded to foam under an even pressure on a disc, in rings about its middle.
 *
 * <p>D &nabla;^4 w + p = q, where the foam returns p = bed(k) w to a wave ({@link FoamBed}). Of the
 * rings' own waves, found once, every part of this is a plain product; so with
 *
 * <pre>
 *   pass(k) = bed / (D k^4 + bed)
 * </pre>
 *
 * <p>the foam meets pass times the load, which on a wide patch is a few per cent more inside the
 * edge than in the middle. Where it has been crushed by y, the skin is let down by pass times y and
 * the foam relieved of D k^4 pass times y.
 */
final class SkinOnFoam {

    /** Enough for one per cent in the force of any dent, mostly for a tenth of that (tests). */
    static final int RINGS = 100;

    private static final Waves USUAL = Waves.of(RINGS);

    private final int rings;
    private final double edge;
    private final double[] root;
    private final double[] pressure;
    private final double[][] relief;
    private final double[][] letDown;

    private SkinOnFoam(FoamBed bed, double d, double radius, double reach, Waves waves) {
        rings = waves.k.length;
        double step = reach / rings;
        edge = radius / step;
        root = new double[rings];
        double[] load = new double[rings];
        for (int i = 0; i < rings; i++) {
            double inner = i * step;
            double outer = inner + step;
            double covered = Math.min(Math.max(radius, inner), outer);
            root[i] = Math.sqrt(Math.PI * (outer * outer - inner * inner));
            load[i] = (covered * covered - inner * inner) / (radius * radius) / root[i];
        }
        double[] pass = new double[rings];
        double[] relieves = new double[rings];
        for (int n = 0; n < rings; n++) {
            double k = waves.k[n] / step;
            double foam = bed.stiffness(k);
            double plate = d * k * k * k * k;
            pass[n] = foam / (plate + foam);
            relieves[n] = plate * pass[n];
        }
        letDown = waves.matrix(pass);
        relief = waves.matrix(relieves);
        pressure = new double[rings];
        for (int i = 0; i < rings; i++) {
            for (int j = 0; j < rings; j++) {
                pressure[i] += letDown[i][j] * load[j];
            }
        }
    }

    static SkinOnFoam of(FoamBed bed, double d, double radius) {
        return of(bed, d, radius, USUAL, 1);
    }

    /** With another grid, to see what the usual one is worth. */
    static SkinOnFoam of(FoamBed bed, double d, double radius, int rings, double further) {
        return of(bed, d, radius, Waves.of(rings), further);
    }

    private static SkinOnFoam of(
            FoamBed bed, double d, double radius, Waves waves, double further) {
        return new SkinOnFoam(bed, d, radius, radius + further * around(bed, d), waves);
    }

    /**
     * How far from the edge of a patch nothing of it is left [m]: the skin dies out over the first
     * length, the foam by itself over the second.
     */
    static double around(FoamBed bed, double d) {
        return 6 * StrictMath.pow(d / bed.springs(), 0.25) + 3 * bed.reach();
    }

    /** Number of rings. */
    int rings() {
        return rings;
    }

    /** The edge of the patch, in rings from the middle. */
    double edge() {
        return edge;
    }

    /** Pressure on the foam under one newton, times the {@link #root} of the ring [1/m]. */
    double pressure(int ring) {
        return pressure[ring];
    }

    /** Largest pressure on the foam under one newton [1/m^2]. */
    double largestPressure() {
        double largest = 0;
        for (int i = 0; i < rings; i++) {
            largest = Math.max(largest, pressure[i] / root[i]);
        }
        return largest;
    }

    /** Largest pressure on the foam over that in the middle [-]. */
    double overMiddle() {
        return largestPressure() / (pressure[0] / root[0]);
    }

    /** Square root of the area of a ring [m]; fields times it make the matrices symmetric. */
    double root(int ring) {
        return root[ring];
    }

    /** By how much the foam of one ring is relieved when another is crushed [Pa/m]. */
    double relief(int ring, int crushed) {
        return relief[ring][crushed];
    }

    /** By how much the skin over one ring is let down when another is crushed [-]. */
    double letDown(int ring, int crushed) {
        return letDown[ring][crushed];
    }

    /**
     * Waves of the rings: square roots of the eigenvalues of minus their Laplacian, whose far rim
     * is held, in steps of one, and the eigenvectors, one a column.
     */
    private static final class Waves {

        private final double[] k;
        private final double[][] vectors;

        private Waves(double[] k, double[][] vectors) {
            this.k = k;
            this.vectors = vectors;
        }

        static Waves of(int rings) {
            DMatrixRMaj laplacian = new DMatrixRMaj(rings, rings);
            for (int i = 0; i < rings; i++) {
                // Ring i has the area pi (2i + 1) and a neighbour across the circle 2 pi (i + 1).
                double inward = 2.0 * i;
                double outward = i + 1 < rings ? 2.0 * (i + 1) : 4.0 * (i + 1);
                laplacian.set(i, i, (inward + outward) / (2 * i + 1));
                if (i + 1 < rings) {
                    double link = -2.0 * (i + 1) / Math.sqrt((2.0 * i + 1) * (2.0 * i + 3));
                    laplacian.set(i, i + 1, link);
                    laplacian.set(i + 1, i, link);
                }
            }
            EigenDecomposition_F64<DMatrixRMaj> eigen =
                    DecompositionFactory_DDRM.eig(rings, true, true);
            if (!eigen.decompose(laplacian)) {
                throw new IllegalStateException("no waves of " + rings + " rings");
            }
            double[] k = new double[rings];
            double[][] vectors = new double[rings][rings];
            for (int n = 0; n < rings; n++) {
                k[n] = Math.sqrt(eigen.getEigenvalue(n).getReal());
                DMatrixRMaj vector = eigen.getEigenVector(n);
                for (int i = 0; i < rings; i++) {
                    vectors[i][n] = vector.get(i);
                }
            }
            return new Waves(k, vectors);
        }

        /** The operator that multiplies each wave by its value. */
        double[][] matrix(double[] values) {
            int rings = k.length;
            double[][] matrix = new double[rings][rings];
            double[] row = new double[rings];
            for (int i = 0; i < rings; i++) {
                for (int n = 0; n < rings; n++) {
                    row[n] = vectors[i][n] * values[n];
                }
                for (int j = 0; j <= i; j++) {
                    double sum = 0;
                    double[] other = vectors[j];
                    for (int n = 0; n < rings; n++) {
                        sum += row[n] * other[n];
                    }
                    matrix[i][j] = sum;
                    matrix[j][i] = sum;
                }
            }
            return matrix;
        }
    }
}
