package org.coachskin.sparse;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.EigenDecomposition_F64;
import org.junit.jupiter.api.Test;

class EigenpairsTest {

    /** Condition below 1e4 and residuals of 1e-10: values to rounding. */
    private static final double RELATIVE = 1e-11;

    private static Eigenpairs of(SymmetricMatrix a, SymmetricMatrix b, int count) {
        return Eigenpairs.lowest(a, b, FactorPlan.of(a.pattern()).factor(a), count);
    }

    /**
     * The closed form for a rectangle of springs, and for a square, where nearly all come twice.
     */
    @Test
    void matchesTheClosedFormOfAMembrane() {
        for (int[] grid : new int[][] {{60, 37}, {40, 40}}) {
            SymmetricMatrix a = Grids.membrane(grid[0], grid[1], true);
            SymmetricMatrix unit = diagonal(a.pattern(), 2);
            Eigenpairs found = of(a, unit, 20);
            double[] exact = new double[grid[0] * grid[1]];
            for (int m = 1; m <= grid[0]; m++) {
                for (int n = 1; n <= grid[1]; n++) {
                    exact[(m - 1) * grid[1] + n - 1] =
                            Grids.membraneValue(grid[0], grid[1], m, n) / 2;
                }
            }
            Arrays.sort(exact);
            assertEquals(20, found.count());
            for (int i = 0; i < 20; i++) {
                assertEquals(exact[i], found.value(i), RELATIVE * exact[i]);
                assertTrue(found.residual(i) < 1e-8, "residual " + found.residual(i));
            }
            double between = 0.5 * (exact[19] + exact[20]);
            if (exact[20] > exact[19] * 1.001) {
                FactorPlan plan = FactorPlan.of(a.pattern());
                assertEquals(20, Eigenpairs.countBelow(plan, a, unit, between));
            }
        }
    }

    @Property(tries = 30, seed = "20261125")
    void matchesDenseWithBOfEitherSign(
            @ForAll @IntRange(min = 1, max = 70) int n, @ForAll long start) {
        Random random = new Random(start);
        Pattern pattern = Grids.scattered(n, 2 * n, random);
        SymmetricMatrix a = Grids.filled(pattern, 2, 0.5, random);
        SymmetricMatrix b = Grids.filled(pattern, 1, 0, random);
        for (int i = 0; i < n; i++) {
            b.add(i, i, 3 * random.nextGaussian());
        }
        compare(a, b);
    }

    /** Most unknowns have no mass. */
    @Property(tries = 30, seed = "20261125")
    void matchesDenseWithFewMasses(@ForAll @IntRange(min = 1, max = 70) int n, @ForAll long start) {
        Random random = new Random(start);
        Pattern pattern = Grids.scattered(n, 2 * n, random);
        SymmetricMatrix b = new SymmetricMatrix(pattern);
        for (int i = 0; i < n; i++) {
            b.add(i, i, random.nextInt(4) == 0 ? 1 + random.nextDouble() : 0);
        }
        compare(Grids.filled(pattern, 2, 0.5, random), b);
    }

    private static void compare(SymmetricMatrix a, SymmetricMatrix b) {
        int n = a.size();
        double[] largest = inverses(a, b);
        Eigenpairs found = of(a, b, 6);
        int positive = 0;
        while (positive < Math.min(6, n) && largest[positive] > 1e-9 * Math.abs(largest[0])) {
            positive++;
        }
        assertEquals(positive, found.count());
        double[] ax = new double[n];
        double[] bx = new double[n];
        for (int i = 0; i < positive; i++) {
            assertEquals(largest[i], 1 / found.value(i), 1e-10 * spread(largest));
            double[] x = found.vector(i);
            a.multiply(x, ax);
            b.multiply(x, bx);
            assertEquals(1, Vectors.dot(x, bx), 1e-12 * Vectors.norm(x) * Vectors.norm(bx));
            assertEquals(0, found.residual(i), 1e-6);
        }
    }

    private static double spread(double[] values) {
        return Math.max(Math.abs(values[0]), Math.abs(values[values.length - 1]));
    }

    /** Eigenvalues of L^-1 B L^-T with A = L L^T, largest first. */
    private static double[] inverses(SymmetricMatrix a, SymmetricMatrix b) {
        int n = a.size();
        EigenDecomposition_F64<DMatrixRMaj> root = DecompositionFactory_DDRM.eig(n, true, true);
        assertTrue(root.decompose(Grids.dense(a)));
        DMatrixRMaj half = new DMatrixRMaj(n, n);
        for (int j = 0; j < n; j++) {
            DMatrixRMaj v = root.getEigenVector(j);
            double scale = 1 / Math.sqrt(root.getEigenvalue(j).real);
            for (int i = 0; i < n; i++) {
                half.set(i, j, scale * v.get(i, 0));
            }
        }
        DMatrixRMaj left = new DMatrixRMaj(n, n);
        DMatrixRMaj whole = new DMatrixRMaj(n, n);
        CommonOps_DDRM.multTransA(half, Grids.dense(b), left);
        CommonOps_DDRM.mult(left, half, whole);
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < i; j++) {
                whole.set(i, j, whole.get(j, i));
            }
        }
        EigenDecomposition_F64<DMatrixRMaj> found = DecompositionFactory_DDRM.eig(n, false, true);
        assertTrue(found.decompose(whole));
        double[] values = new double[n];
        for (int i = 0; i < n; i++) {
            values[i] = -found.getEigenvalue(i).real;
        }
        Arrays.sort(values);
        for (int i = 0; i < n; i++) {
            values[i] = -values[i];
        }
        return values;
    }

    /**
     * A column of springs pressed lengthways: bending T T against T, so the values are those of T.
     */
    @Test
    void matchesAPressedColumn() {
        int n = 300;
        Pattern.Builder builder = Pattern.of(n);
        for (int i = 1; i + 1 < n; i++) {
            builder.element(i - 1, i, i + 1);
        }
        Pattern pattern = builder.build();
        SymmetricMatrix bending = new SymmetricMatrix(pattern);
        SymmetricMatrix pressed = new SymmetricMatrix(pattern);
        for (int i = 0; i < n; i++) {
            pressed.add(i, i, 2);
            bending.add(i, i, i == 0 || i == n - 1 ? 5 : 6);
            if (i > 0) {
                pressed.add(i, i - 1, -1);
                bending.add(i, i - 1, -4);
            }
            if (i > 1) {
                bending.add(i, i - 2, 1);
            }
        }
        Eigenpairs found = of(bending, pressed, 5);
        for (int k = 1; k <= 5; k++) {
            double s = Math.sin(k * Math.PI / (2.0 * (n + 1)));
            // The condition of the bending matrix is 1e8.
            assertEquals(4 * s * s, found.value(k - 1), 1e-8 * 4 * s * s);
        }
    }

    /** A free row of masses: shifted by one, the lowest is the rigid motion at zero. */
    @Test
    void findsRigidMotionByAShift() {
        SymmetricMatrix free = Grids.membrane(50, 1, false);
        SymmetricMatrix mass = diagonal(free.pattern(), 1);
        SymmetricMatrix shifted = new SymmetricMatrix(free.pattern());
        shifted.setSum(1, free, 0.1, mass);
        Eigenpairs found = of(shifted, mass, 3);
        for (int k = 0; k < 3; k++) {
            double s = Math.sin(k * Math.PI / 100);
            assertEquals(4 * s * s, found.value(k) - 0.1, 1e-12);
        }
    }

    @Test
    void givesTheSameBits() {
        SymmetricMatrix a = Grids.membrane(30, 30, true);
        Eigenpairs one = of(a, diagonal(a.pattern(), 1), 6);
        Eigenpairs two = of(a, diagonal(a.pattern(), 1), 6);
        for (int i = 0; i < 6; i++) {
            assertEquals(one.value(i), two.value(i), 0.0);
            assertArrayEquals(one.vector(i), two.vector(i), 0.0);
        }
    }

    @Test
    void refusesWhatIsNotPositiveDefinite() {
        SymmetricMatrix free = Grids.membrane(5, 5, false);
        SymmetricMatrix mass = diagonal(free.pattern(), 1);
        assertThrows(ArithmeticException.class, () -> of(free, mass, 1));
        free.add(3, 3, -9);
        assertThrows(ArithmeticException.class, () -> of(free, mass, 1));
        SymmetricMatrix held = Grids.membrane(5, 5, true);
        SymmetricMatrix unit = diagonal(held.pattern(), 1);
        assertThrows(IllegalArgumentException.class, () -> of(held, unit, 0));
        assertEquals(0, of(held, diagonal(held.pattern(), -1), 3).count());
        assertEquals(0, of(held, diagonal(held.pattern(), 0), 3).count());
    }

    private static SymmetricMatrix diagonal(Pattern pattern, double value) {
        SymmetricMatrix matrix = new SymmetricMatrix(pattern);
        for (int i = 0; i < pattern.size(); i++) {
            matrix.add(i, i, value);
        }
        return matrix;
    }
}
