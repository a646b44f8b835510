package org.coachskin.shell;

import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.coachskin.check.Job;
import org.coachskin.check.PanelCheck;
import org.coachskin.check.Verdict;
import org.coachskin.cli.file.PanelFile;
import org.coachskin.sparse.Factor;
import org.coachskin.sparse.FactorPlan;
import org.coachskin.sparse.SymmetricMatrix;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** The steps of the shell's work at about 20 000 unknowns, and a whole verdict that asks it. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class ShellBenchmark {

    private static final double EDGE = 0.08;

    private final ShellSteps steps = new ShellSteps(EDGE);
    private final Job lid =
            PanelFile.read(Path.of("..", "examples", "panels", "luggage-lid-hinged.yaml"))
                    .asDrawn();

    /** Returns the triangles. */
    @Benchmark
    public Object mesh() {
        return steps.mesh();
    }

    /** Returns order and pattern of the factor. */
    @Benchmark
    public FactorPlan plan() {
        return steps.plan();
    }

    /** Returns the stiffness. */
    @Benchmark
    public SymmetricMatrix assembly() {
        return steps.assemble();
    }

    /** Returns the factor. */
    @Benchmark
    public Factor factor() {
        return steps.factor();
    }

    /** Returns the answer to one load. */
    @Benchmark
    public double[] solve() {
        return steps.solve();
    }

    /** Returns the answer once the rubber has let go where it must. */
    @Benchmark
    public double[] contact() {
        return steps.contact();
    }

    /** Returns the verdict on the luggage lid on hinges, latch and seal; nothing is kept. */
    @Benchmark
    public Verdict check() {
        return new PanelCheck().check(lid);
    }
}
