package org.coachskin.sparse;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class NullPivotTest {

    /** A free membrane moves as a whole. */
    @Test
    void namesOneUnknownOfAFreeMembrane() {
        SymmetricMatrix matrix = Grids.membrane(40, 30, false);
        Factor factor = FactorPlan.of(matrix.pattern()).factor(matrix);
        assertEquals(1, factor.nullPivots().size());
        assertFalse(factor.positiveDefinite());
        assertEquals(0, factor.negativePivots());
        double[] vector = factor.nullVectors(matrix).get(0);
        double[] even = new double[1200];
        Arrays.fill(even, Math.signum(vector[0]) / Math.sqrt(1200));
        assertArrayEquals(even, vector, 1e-12);
        ArithmeticException told =
                assertThrows(ArithmeticException.class, () -> factor.solve(new double[1200]));
        assertTrue(
                String.valueOf(told.getMessage())
                        .contains("unknown " + factor.nullPivots().get(0)));
    }

    /**
     * A lattice of bars in its plane, crossed in every cell but perhaps the lowest row's, free to
     * move.
     */
    @Property(tries = 20, seed = "20261125")
    void findsEveryMechanismOfALattice(
            @ForAll @IntRange(min = 2, max = 7) int wide,
            @ForAll @IntRange(min = 3, max = 7) int high,
            @ForAll boolean rowWithoutDiagonals) {
        SymmetricMatrix matrix = lattice(wide, high, rowWithoutDiagonals);
        Factor factor = FactorPlan.of(matrix.pattern()).factor(matrix);
        // Three as a rigid body, and the one row that shears.
        int mechanisms = rowWithoutDiagonals ? 4 : 3;
        assertEquals(mechanisms, factor.nullPivots().size());
        List<double[]> vectors = factor.nullVectors(matrix);
        for (int i = 0; i < mechanisms; i++) {
            double[] image = new double[matrix.size()];
            matrix.multiply(vectors.get(i), image);
            assertEquals(0, Vectors.largest(image), 1e-12);
            for (int j = 0; j <= i; j++) {
                double dot = Vectors.dot(vectors.get(i), vectors.get(j));
                assertEquals(i == j ? 1 : 0, dot, 1e-12);
            }
        }
    }

    /** Held where null pivots are named, the same matrix is positive definite. */
    @Property(tries = 20, seed = "20261125")
    void holdingTheNamedUnknownsIsEnough(@ForAll @IntRange(min = 2, max = 7) int wide) {
        SymmetricMatrix matrix = lattice(wide, 3, true);
        Factor factor = FactorPlan.of(matrix.pattern()).factor(matrix);
        for (int u : factor.nullPivots()) {
            matrix.add(u, u, 1);
        }
        factor.refactor(matrix);
        assertTrue(factor.positiveDefinite());
        assertTrue(factor.nullVectors(matrix).isEmpty());
    }

    /** 11 505 unknowns, all floating: rounding hides none, and invents none once held. */
    @Test
    void tellsRoundingFromStiffness() {
        Pattern pattern = Grids.squares(29, 19, 2, 5);
        SymmetricMatrix matrix = new SymmetricMatrix(pattern);
        Random random = new Random(1);
        for (int e = 0; e < pattern.elements(); e++) {
            matrix.add(e, floating(pattern.sizeOf(e), random));
        }
        Factor factor = FactorPlan.of(pattern).factor(matrix);
        assertEquals(5, factor.nullPivots().size());
        assertEquals(0, factor.negativePivots());
        for (int d = 0; d < 5; d++) {
            matrix.add(d, d, 1e-3);
        }
        factor.refactor(matrix);
        assertTrue(factor.positiveDefinite());
    }

    /**
     * Beam elements in a row, of unlike stiffness: free they shift and turn, held they are soft.
     */
    @Property(tries = 20, seed = "20261125")
    void tellsAFreeStripFromASoftOne(
            @ForAll @IntRange(min = 2, max = 200) int elements, @ForAll long start) {
        SymmetricMatrix matrix = strip(elements, new Random(start));
        Pattern pattern = matrix.pattern();
        for (Order order : List.of(Order.dissection(pattern), Order.natural(pattern.size()))) {
            SymmetricMatrix held = new SymmetricMatrix(pattern);
            held.setSum(1, matrix, 0, matrix);
            Factor factor = FactorPlan.of(pattern, order).factor(held);
            assertEquals(2, factor.nullPivots().size());
            held.add(0, 0, 1000);
            held.add(1, 1, 1000);
            factor.refactor(held);
            assertTrue(factor.positiveDefinite());
        }
    }

    /** The share is the caller's to choose. */
    @Test
    void takesAnotherShare() {
        SymmetricMatrix matrix = new SymmetricMatrix(Pattern.of(2).element(0, 1).build());
        matrix.add(0, new double[] {1, -1, -1, 1});
        matrix.add(1, 1, 1e-10);
        FactorPlan plan = FactorPlan.of(matrix.pattern(), Order.natural(2));
        assertEquals(List.of(1), plan.factor(matrix).nullPivots());
        assertTrue(plan.factor(matrix, 1e-12).positiveDefinite());
        assertThrows(IllegalArgumentException.class, () -> plan.factor(matrix, 1));
    }

    @Test
    void anUnknownWithoutStiffnessIsNull() {
        SymmetricMatrix matrix = new SymmetricMatrix(Pattern.of(3).element(0, 2).build());
        matrix.add(0, new double[] {2, -1, -1, 2});
        Factor factor = FactorPlan.of(matrix.pattern()).factor(matrix);
        assertEquals(List.of(1), factor.nullPivots());
        assertArrayEquals(new double[] {0, 1, 0}, factor.nullVectors(matrix).get(0), 0.0);
    }

    /** Random, but blind to all nodes moving alike in any of five unknowns. */
    private static double[] floating(int k, Random random) {
        double[][] g = new double[k][40];
        for (int q = 0; q < 40; q++) {
            for (int d = 0; d < 5; d++) {
                double mean = 0;
                for (int i = d; i < k; i += 5) {
                    g[i][q] = random.nextGaussian();
                    mean += 5 * g[i][q] / k;
                }
                for (int i = d; i < k; i += 5) {
                    g[i][q] -= mean;
                }
            }
        }
        double[] matrix = new double[k * k];
        for (int i = 0; i < k; i++) {
            for (int j = 0; j < k; j++) {
                for (int q = 0; q < 40; q++) {
                    matrix[i * k + j] += g[i][q] * g[j][q];
                }
            }
        }
        return matrix;
    }

    private static SymmetricMatrix strip(int elements, Random random) {
        Pattern.Builder builder = Pattern.of(2 * elements + 2);
        for (int e = 0; e < elements; e++) {
            builder.element(2 * e, 2 * e + 1, 2 * e + 2, 2 * e + 3);
        }
        SymmetricMatrix matrix = new SymmetricMatrix(builder.build());
        for (int e = 0; e < elements; e++) {
            double[] own = {12, 6, -12, 6, 6, 4, -6, 2, -12, -6, 12, -6, 6, 2, -6, 4};
            double stiffness = 1 + random.nextDouble();
            for (int i = 0; i < 16; i++) {
                own[i] *= stiffness;
            }
            matrix.add(e, own);
        }
        return matrix;
    }

    private static SymmetricMatrix lattice(int wide, int high, boolean rowWithoutDiagonals) {
        Pattern.Builder builder = Pattern.of(2 * wide * high);
        ArrayList<int[]> bars = new ArrayList<>();
        for (int y = 0; y < high; y++) {
            for (int x = 0; x < wide; x++) {
                int node = y * wide + x;
                if (x + 1 < wide) {
                    bars.add(new int[] {node, node + 1, 1, 0});
                }
                if (y + 1 < high) {
                    bars.add(new int[] {node, node + wide, 0, 1});
                }
                if (x + 1 < wide && y + 1 < high && !(rowWithoutDiagonals && y == 0)) {
                    bars.add(new int[] {node, node + wide + 1, 1, 1});
                    bars.add(new int[] {node + 1, node + wide, -1, 1});
                }
            }
        }
        for (int[] bar : bars) {
            builder.element(2 * bar[0], 2 * bar[0] + 1, 2 * bar[1], 2 * bar[1] + 1);
        }
        SymmetricMatrix matrix = new SymmetricMatrix(builder.build());
        for (int e = 0; e < bars.size(); e++) {
            double[] along = {-bars.get(e)[2], -bars.get(e)[3], bars.get(e)[2], bars.get(e)[3]};
            double[] own = new double[16];
            for (int i = 0; i < 16; i++) {
                own[i] = along[i / 4] * along[i % 4];
            }
            matrix.add(e, own);
        }
        return matrix;
    }
}
