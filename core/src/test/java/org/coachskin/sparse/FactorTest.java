package org.coachskin.sparse;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
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

class FactorTest {

    @Property(tries = 100, seed = "20261125")
    void solvesAsDenseDoes(@ForAll @IntRange(min = 1, max = 120) int n, @ForAll long start) {
        Random random = new Random(start);
        Pattern pattern = Grids.scattered(n, random.nextInt(3 * n), random);
        compare(pattern, random);
    }

    @Property(tries = 12, seed = "20261125")
    void solvesGridsOfEveryOrder(
            @ForAll @IntRange(min = 1, max = 4) int degree,
            @ForAll @IntRange(min = 1, max = 3) int perNode,
            @ForAll long start) {
        compare(Grids.squares(8 / degree, 12 / degree, degree, perNode), new Random(start));
    }

    /** Condition numbers here are below 1e4, so the answers agree to 1e-10. */
    private static void compare(Pattern pattern, Random random) {
        int n = pattern.size();
        SymmetricMatrix matrix = Grids.filled(pattern, 3, 0.5, random);
        double[] b = Grids.vector(n, random);
        DMatrixRMaj x = new DMatrixRMaj(n, 1);
        assertTrue(CommonOps_DDRM.solve(Grids.dense(matrix), new DMatrixRMaj(n, 1, true, b), x));
        int[] shuffled = Order.natural(n).toArray();
        for (int i = n - 1; i > 0; i--) {
            int j = random.nextInt(i + 1);
            int t = shuffled[i];
            shuffled[i] = shuffled[j];
            shuffled[j] = t;
        }
        for (Order order :
                new Order[] {Order.dissection(pattern), Order.natural(n), Order.of(shuffled)}) {
            Factor factor = FactorPlan.of(pattern, order).factor(matrix);
            assertTrue(factor.positiveDefinite());
            assertEquals(0, Grids.apart(x.data, factor.solve(b)), 1e-10);
        }
    }

    @Property(tries = 60, seed = "20261125")
    void countsWhatLiesBelowZero(@ForAll @IntRange(min = 1, max = 60) int n, @ForAll long start) {
        Random random = new Random(start);
        Pattern pattern = Grids.scattered(n, 2 * n, random);
        SymmetricMatrix matrix = Grids.filled(pattern, 2, 0, random);
        for (int i = 0; i < n; i++) {
            matrix.add(i, i, 4 * random.nextGaussian());
        }
        Factor factor = FactorPlan.of(pattern).factor(matrix);
        EigenDecomposition_F64<DMatrixRMaj> dense = DecompositionFactory_DDRM.eig(n, false, true);
        assertTrue(dense.decompose(Grids.dense(matrix)));
        int below = 0;
        for (int i = 0; i < n; i++) {
            below += dense.getEigenvalue(i).real < 0 ? 1 : 0;
        }
        assertEquals(below, factor.negativePivots());
        assertEquals(below == 0, factor.positiveDefinite());
        assertEquals(below > 0, factor.firstNegative() >= 0);
    }

    @Test
    void solvesManyAtOnce() {
        Random random = new Random(3);
        SymmetricMatrix matrix = Grids.filled(Grids.squares(9, 7, 2, 3), 5, 1, random);
        int n = matrix.size();
        Solver solver = FactorPlan.of(matrix.pattern()).factor(matrix).solver();
        for (int count : new int[] {1, 2, 4, 7}) {
            double[] b = Grids.vector(n * count, random);
            double[] x = new double[n * count];
            solver.solve(b, x, count);
            for (int c = 0; c < count; c++) {
                double[] alone = Arrays.copyOfRange(b, c * n, (c + 1) * n);
                solver.solve(alone, alone);
                assertArrayEquals(alone, Arrays.copyOfRange(x, c * n, (c + 1) * n), 1e-11);
            }
        }
    }

    /** The same bits from a new plan, a new factor and one that held another matrix before. */
    @Test
    void givesTheSameBits() {
        Pattern pattern = Grids.squares(20, 20, 1, 5);
        SymmetricMatrix matrix = Grids.filled(pattern, 6, 0.1, new Random(4));
        Factor first = FactorPlan.of(pattern).factor(matrix);
        FactorPlan plan = FactorPlan.of(pattern);
        Factor second = plan.factor(Grids.filled(pattern, 4, 2, new Random(5)));
        second.refactor(matrix);
        assertArrayEquals(first.value, second.value, 0.0);
        assertEquals(first.plan().order(), plan.order());
    }

    @Test
    void factorsAndSolvesWithoutAllocating() {
        ThreadMXBean counter = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        SymmetricMatrix matrix = Grids.filled(Grids.squares(12, 12, 2, 5), 5, 1, new Random(9));
        Factor factor = FactorPlan.of(matrix.pattern()).factor(matrix);
        Solver solver = factor.solver();
        double[] x = Grids.vector(matrix.size(), new Random(10));
        long id = Thread.currentThread().getId();
        long[] allocated = new long[3];
        for (int i = 0; i < 3; i++) {
            allocated[i] = counter.getThreadAllocatedBytes(id);
            factor.refactor(matrix);
            solver.solve(x, x);
        }
        // Less than one small object for each of some hundred blocks.
        assertTrue(factor.plan().blocks() > 150);
        long bytes = allocated[2] - allocated[1];
        assertTrue(bytes < 1000, bytes + " bytes");
    }

    @Test
    void isGoodAtTwentyThousandUnknowns() {
        SymmetricMatrix matrix = Grids.filled(Grids.squares(31, 31, 2, 5), 12, 1e-3, new Random(6));
        double[] b = Grids.vector(matrix.size(), new Random(7));
        Factor factor = FactorPlan.of(matrix.pattern()).factor(matrix);
        double[] x = new double[b.length];
        Residual plain = Residual.solve(matrix, factor.solver(), b, x, 0);
        Residual refined = Residual.solve(matrix, factor.solver(), b, x, 3);
        assertTrue(plain.backward() < 1e-14, plain.toString());
        assertTrue(refined.backward() <= plain.backward(), refined.toString());
        assertEquals(refined.largest(), Residual.of(matrix, b, x).largest(), 0.0);
    }

    @Test
    void refusesWhatIsNoNumber() {
        Pattern pattern = Grids.squares(2, 2, 1, 1);
        SymmetricMatrix matrix = Grids.filled(pattern, 2, 1, new Random(8));
        Factor factor = FactorPlan.of(pattern).factor(matrix);
        matrix.add(4, 4, Double.NaN);
        assertThrows(ArithmeticException.class, () -> factor.refactor(matrix));
        assertThrows(IllegalStateException.class, () -> factor.solve(new double[9]));
        SymmetricMatrix other = new SymmetricMatrix(Grids.squares(2, 2, 1, 1));
        assertThrows(IllegalArgumentException.class, () -> factor.refactor(other));
        assertFalse(factor.plan().order().equals(Order.natural(8)));
    }
}
