package org.coachskin.benchmark;

import java.util.concurrent.TimeUnit;
import org.coachskin.laminate.StiffnessKernel;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** A sweep of 64 sandwich stacks of seven layers; the time is that of one stack. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class StiffnessBenchmark {

    static final int STACKS = 64;
    private static final int LAYERS = 7;

    private final double[][] thickness = new double[STACKS][LAYERS];
    private final double[][] plane = new double[STACKS][6 * LAYERS];
    private final double[][] shear = new double[STACKS][3 * LAYERS];
    private final double[] out = new double[StiffnessKernel.LENGTH];

    /** Fills the stacks with the same numbers as the C program beside this class. */
    public StiffnessBenchmark() {
        for (int k = 0; k < STACKS; k++) {
            for (int i = 0; i < LAYERS; i++) {
                boolean foam = i == 3;
                double scale = foam ? 12e6 : 14e9 * (1 + 0.01 * ((7 * k + 3 * i) % 11));
                thickness[k][i] = foam ? 0.010 + 0.0005 * k : 0.0004 + 0.00001 * ((k + i) % 5);
                double[] q = {1, 0.2, 0.9, foam ? 0 : 0.05, foam ? 0 : 0.03, 0.3};
                double[] g = {0.25, foam ? 0 : 0.01, 0.2};
                for (int j = 0; j < 6; j++) {
                    plane[k][6 * i + j] = q[j] * scale;
                }
                for (int j = 0; j < 3; j++) {
                    shear[k][3 * i + j] = g[j] * scale;
                }
            }
        }
    }

    /** Returns the sum of D11 and H11 over the stacks. */
    @Benchmark
    @OperationsPerInvocation(STACKS)
    public double sweep() {
        double sum = 0;
        for (int k = 0; k < STACKS; k++) {
            StiffnessKernel.stiffness(LAYERS, thickness[k], plane[k], shear[k], out);
            sum += out[StiffnessKernel.D] + out[StiffnessKernel.H];
        }
        return sum;
    }
}
