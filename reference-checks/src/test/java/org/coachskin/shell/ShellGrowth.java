package org.coachskin.shell;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;

/**
 * How the work grows from 2 000 to 100 000 unknowns: the least of some turns of each step, all
 * sizes in one run, and the exponent of a line through them (both logarithmic). With {@code
 * -Dcoachskin.export=FOLDER} the matrix of the middle size is written there. It is no test by name
 * and runs only when asked for:
 *
 * <pre>
 *   mvn -pl core,cli,reference-checks -am test -Dtest=ShellGrowth -Djacoco.skip -Dsurefire.failIfNoSpecifiedTests=false
 * </pre>
 */
class ShellGrowth {

    private static final double[] EDGES = {0.3, 0.12, 0.075, 0.05, 0.033};
    private static final int TURNS = 5;

    /** One step of the work. */
    private record Step(String name, Consumer<ShellSteps> work) {}

    private static final List<Step> STEPS =
            List.of(
                    new Step("mesh", ShellSteps::mesh),
                    new Step("plan", ShellSteps::plan),
                    new Step("assembly", ShellSteps::assemble),
                    new Step("factor", ShellSteps::factor),
                    new Step("solve", ShellSteps::solve),
                    new Step("contact", ShellSteps::contact));

    @Test
    void run() throws IOException {
        print(System.out);
    }

    private static void print(PrintStream out) throws IOException {
        List<ShellSteps> sizes = new ArrayList<>();
        for (double edge : EDGES) {
            sizes.add(new ShellSteps(edge));
        }
        String folder = System.getProperty("coachskin.export");
        if (folder != null) {
            sizes.get(EDGES.length / 2).export(Files.createDirectories(Path.of(folder)));
        }
        out.printf("%-10s", "unknowns");
        sizes.forEach(size -> out.printf("%10d", size.unknowns()));
        out.printf("%10s%n", "exponent");
        double[] whole = new double[EDGES.length];
        // Warm, and smallest first so that the largest meets a compiled code.
        for (Step step : STEPS) {
            double[] least = new double[EDGES.length];
            for (int i = 0; i < EDGES.length; i++) {
                least[i] = least(step, sizes.get(i), i == 0 ? 10 * TURNS : TURNS);
                whole[i] += least[i];
            }
            line(out, step.name(), least, sizes);
        }
        line(out, "all", whole, sizes);
    }

    /** Returns the least time of some turns [ms]. */
    private static double least(Step step, ShellSteps size, int turns) {
        double least = Double.POSITIVE_INFINITY;
        for (int turn = 0; turn < turns; turn++) {
            long start = System.nanoTime();
            step.work().accept(size);
            least = Math.min(least, (System.nanoTime() - start) / 1e6);
        }
        return least;
    }

    private static void line(PrintStream out, String name, double[] ms, List<ShellSteps> sizes) {
        out.printf("%-10s", name);
        SimpleRegression powers = new SimpleRegression();
        for (int i = 0; i < ms.length; i++) {
            out.printf(Locale.ROOT, "%10.1f", ms[i]);
            powers.addData(Math.log(sizes.get(i).unknowns()), Math.log(ms[i]));
        }
        out.printf(Locale.ROOT, "%10.2f%n", powers.getSlope());
    }
}
