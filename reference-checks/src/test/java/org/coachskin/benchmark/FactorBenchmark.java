package org.coachskin.benchmark;

import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.coachskin.sparse.Factor;
import org.coachskin.sparse.FactorPlan;
import org.coachskin.sparse.Order;
import org.coachskin.sparse.Pattern;
import org.coachskin.sparse.Solver;
import org.coachskin.sparse.SymmetricMatrix;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** About 20 000 unknowns, as of a square plate of finite elements with five unknowns a node. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class FactorBenchmark {

    private static final int PER_NODE = 5;

    /** Elements along a side, and their order. */
    @Param({"63x1", "31x2", "15x4"})
    public String mesh = "63x1";

    private Pattern pattern = Pattern.of(1).build();
    private double[] place = new double[0];
    private SymmetricMatrix matrix = new SymmetricMatrix(pattern);
    private FactorPlan plan = FactorPlan.of(pattern);
    private Factor factor = plan.factor(identity());
    private Solver solver = factor.solver();
    private double[] vector = new double[0];
    private double[] answer = vector;

    private SymmetricMatrix identity() {
        matrix.add(0, 0, 1);
        return matrix;
    }

    /** Lays the elements out and factors once. */
    @Setup(Level.Trial)
    public void prepare() {
        int across = Integer.parseInt(mesh.substring(0, mesh.indexOf('x')));
        int degree = Integer.parseInt(mesh.substring(mesh.indexOf('x') + 1));
        lay(across, degree);
        matrix = new SymmetricMatrix(pattern);
        double[] element = element(pattern.sizeOf(0));
        for (int e = 0; e < pattern.elements(); e++) {
            matrix.add(e, element);
        }
        plan = FactorPlan.of(pattern, Order.dissection(pattern, place));
        factor = plan.factor(matrix);
        solver = factor.solver();
        vector = new double[pattern.size()];
        vector[0] = 1;
        answer = new double[pattern.size()];
    }

    /** Numeric factorisation alone, in place. */
    @Benchmark
    public Factor factor() {
        factor.refactor(matrix);
        return factor;
    }

    /** One right-hand side. */
    @Benchmark
    public double[] solve() {
        solver.solve(vector, answer);
        return answer;
    }

    /** Order and symbolic factorisation from coordinates. */
    @Benchmark
    public FactorPlan plan() {
        return FactorPlan.of(pattern, Order.dissection(pattern, place));
    }

    /** Order and symbolic factorisation from the graph. */
    @Benchmark
    public FactorPlan planFromGraph() {
        return FactorPlan.of(pattern);
    }

    SymmetricMatrix matrix() {
        return matrix;
    }

    FactorPlan analysed() {
        return plan;
    }

    private void lay(int across, int degree) {
        int wide = across * degree + 1;
        int near = degree + 1;
        Pattern.Builder builder = Pattern.of(wide * wide * PER_NODE);
        for (int e = 0; e < across * across; e++) {
            int[] unknowns = new int[near * near * PER_NODE];
            for (int k = 0; k < unknowns.length; k++) {
                int node = k / PER_NODE;
                int x = e % across * degree + node % near;
                int y = e / across * degree + node / near;
                unknowns[k] = (y * wide + x) * PER_NODE + k % PER_NODE;
            }
            builder.element(unknowns);
        }
        pattern = builder.build();
        place = new double[3 * pattern.size()];
        for (int u = 0; u < pattern.size(); u++) {
            int node = u / PER_NODE;
            place[3 * u] = node % wide;
            place[3 * u + 1] = (double) (node - node % wide) / wide;
        }
    }

    private static double[] element(int size) {
        Random random = new Random(1);
        double[][] rows = new double[size][6];
        for (double[] row : rows) {
            for (int q = 0; q < row.length; q++) {
                row[q] = random.nextGaussian();
            }
        }
        double[] element = new double[size * size];
        for (int i = 0; i < size; i++) {
            for (int j = 0; j < size; j++) {
                double sum = i == j ? 1 : 0;
                for (int q = 0; q < 6; q++) {
                    sum += rows[i][q] * rows[j][q];
                }
                element[i * size + j] = sum;
            }
        }
        return element;
    }
}
