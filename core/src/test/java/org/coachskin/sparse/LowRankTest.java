package org.coachskin.sparse;

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
import org.ejml.dense.row.NormOps_DDRM;
import org.junit.jupiter.api.Test;

class LowRankTest {

    @Property(tries = 40, seed = "20261125")
    void isWhatAnotherFactorisationGives(
            @ForAll @IntRange(min = 1, max = 6) int rows, @ForAll long start) {
        Random random = new Random(start);
        SymmetricMatrix matrix = Grids.filled(Grids.squares(5, 4, 1, 2), 3, 0.5, random);
        int n = matrix.size();
        Factor factor = FactorPlan.of(matrix.pattern()).factor(matrix);
        LowRank.Builder builder = LowRank.on(factor);
        DMatrixRMaj u = new DMatrixRMaj(n, rows);
        for (int r = 0; r < rows; r++) {
            int[] unknowns = {r, 20 + random.nextInt(20), 40 + random.nextInt(20)};
            double[] factors = {1, random.nextGaussian(), random.nextGaussian()};
            builder.row(unknowns, factors);
            for (int i = 0; i < 3; i++) {
                u.add(unknowns[i], r, factors[i]);
            }
        }
        LowRank low = builder.build();
        double[] stiffness = new double[rows];
        DMatrixRMaj dense = Grids.dense(matrix);
        for (int r = 0; r < rows; r++) {
            stiffness[r] = random.nextInt(3) == 0 ? 0 : Math.pow(10, 4 * random.nextDouble() - 2);
            for (int i = 0; i < n; i++) {
                for (int j = 0; j < n; j++) {
                    dense.add(i, j, stiffness[r] * u.get(i, r) * u.get(j, r));
                }
            }
        }
        double[] b = Grids.vector(n, random);
        double[] x = factor.solve(b);
        double[] force = low.correct(stiffness, x);
        DMatrixRMaj expected = new DMatrixRMaj(n, 1);
        CommonOps_DDRM.solve(dense, new DMatrixRMaj(n, 1, true, b), expected);
        assertEquals(0, Grids.apart(expected.data, x), 1e-9);
        for (int r = 0; r < rows; r++) {
            assertEquals(stiffness[r] * low.along(r, x), force[r], 1e-7 * (1 + stiffness[r]));
        }
    }

    @Property(tries = 20, seed = "20261125")
    void condensesToTheSchurComplement(@ForAll long start) {
        Random random = new Random(start);
        SymmetricMatrix matrix = Grids.filled(Grids.squares(4, 4, 1, 2), 3, 0.5, random);
        int n = matrix.size();
        int k = 5;
        LowRank.Builder builder = LowRank.on(FactorPlan.of(matrix.pattern()).factor(matrix));
        for (int r = 0; r < k; r++) {
            builder.row(new int[] {n - k + r}, new double[] {1});
        }
        DMatrixRMaj dense = Grids.dense(matrix);
        DMatrixRMaj inside = CommonOps_DDRM.extract(dense, 0, n - k, 0, n - k);
        DMatrixRMaj across = CommonOps_DDRM.extract(dense, 0, n - k, n - k, n);
        DMatrixRMaj schur = CommonOps_DDRM.extract(dense, n - k, n, n - k, n);
        DMatrixRMaj moved = new DMatrixRMaj(n - k, k);
        CommonOps_DDRM.solve(inside, across, moved);
        CommonOps_DDRM.multAddTransA(-1, across, moved, schur);
        double size = NormOps_DDRM.normPInf(schur);
        assertEquals(0, Grids.apart(schur.data, builder.build().condensed()), 1e-10 * size);
    }

    /** Held at zero, a combination is zero and takes up what is missing to balance. */
    @Test
    void holdsRigidly() {
        SymmetricMatrix matrix = Grids.membrane(12, 9, true);
        Factor factor = FactorPlan.of(matrix.pattern()).factor(matrix);
        LowRank low =
                LowRank.on(factor)
                        .row(new int[] {50}, new double[] {1})
                        .row(new int[] {3, 4}, new double[] {1, -1})
                        .build();
        double[] b = new double[108];
        Arrays.fill(b, 1);
        double[] x = factor.solve(b);
        double stiff = Double.POSITIVE_INFINITY;
        double[] force = low.correct(new double[] {stiff, stiff}, x);
        assertEquals(0, x[50], 1e-13);
        assertEquals(x[3], x[4], 1e-13);
        double[] held = new double[108];
        matrix.multiply(x, held);
        assertEquals(1 - force[0], held[50], 1e-12);
        assertEquals(1 - force[1], held[3], 1e-12);
        assertEquals(1 + force[1], held[4], 1e-12);
    }

    @Test
    void refusesTheSameRowHeldTwice() {
        SymmetricMatrix matrix = Grids.membrane(5, 5, true);
        LowRank.Builder builder = LowRank.on(FactorPlan.of(matrix.pattern()).factor(matrix));
        builder.row(new int[] {7, 8}, new double[] {1, 2});
        builder.row(new int[] {7, 8}, new double[] {2, 4});
        LowRank low = builder.build();
        double[] stiff = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};
        assertThrows(ArithmeticException.class, () -> low.correct(stiff, new double[25]));
        assertThrows(ArithmeticException.class, low::condensed);
        assertThrows(
                IllegalArgumentException.class,
                () -> builder.row(new int[] {25}, new double[] {1}));
    }

    /** The estimate is a lower bound and near. */
    @Property(tries = 40, seed = "20261125")
    void conditionIsNearTheTrueOne(@ForAll @IntRange(min = 1, max = 50) int n, @ForAll long start) {
        Random random = new Random(start);
        Pattern pattern = Grids.scattered(n, 2 * n, random);
        SymmetricMatrix matrix = Grids.filled(pattern, 2, 0.01, random);
        double estimate =
                Condition.estimate(matrix, FactorPlan.of(pattern).factor(matrix).solver());
        DMatrixRMaj inverse = new DMatrixRMaj(n, n);
        CommonOps_DDRM.invert(Grids.dense(matrix), inverse);
        double exact = NormOps_DDRM.normP1(Grids.dense(matrix)) * NormOps_DDRM.normP1(inverse);
        assertEquals(1, estimate / exact, 0.67);
        assertTrue(estimate <= exact * (1 + 1e-9));
    }
}
