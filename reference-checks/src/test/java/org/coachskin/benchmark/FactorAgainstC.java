package org.coachskin.benchmark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.InputStream;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.coachskin.sparse.MatrixMarket;
import org.coachskin.sparse.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openjdk.jmh.profile.GCProfiler;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;

/**
 * Times the numeric factorisation of {@link FactorBenchmark} against the supernodal one of CHOLMOD,
 * in C with each BLAS that is installed: same matrix, same order, one thread, in turns, by
 * processor time, since a busy machine would spoil any other. It is no test by name and runs only
 * when asked for:
 *
 * <pre>
 *   mvn -pl core,cli,reference-checks test -Dtest=FactorAgainstC#compare -Djacoco.skip -Dsurefire.failIfNoSpecifiedTests=false
 * </pre>
 *
 * <p>The figures are printed and written to {@code target/factor-against-c.txt}. It needs gcc and
 * Debian's libsuitesparse-dev, with libblas3 and libopenblas0-pthread. Our side alone, with orders,
 * solutions and what is allocated, is {@code -Dtest=FactorAgainstC#alone}.
 */
class FactorAgainstC {

    private static final int ROUNDS = 3;
    private static final int TURNS = 7;
    private static final List<String> BLAS = List.of("openblas-pthread", "blas");
    private static final Path LIBRARIES = Path.of("/usr/lib", triplet());

    @TempDir Path folder = Path.of("");

    @Test
    void compare() throws IOException, InterruptedException {
        Path program = compile();
        StringBuilder report =
                new StringBuilder(
                        "Java "
                                + System.getProperty("java.version")
                                + ", processor time in ms, median of "
                                + ROUNDS
                                + " rounds (least)\n");
        for (String mesh : List.of("63x1", "31x2", "15x4")) {
            compare(mesh, program, report);
        }
        Files.writeString(Path.of("target", "factor-against-c.txt"), report);
        System.out.print(report);
    }

    @Test
    void alone() throws RunnerException {
        new Runner(
                        new OptionsBuilder()
                                .include(FactorBenchmark.class.getName())
                                .forks(1)
                                .warmupIterations(2)
                                .warmupTime(TimeValue.seconds(2))
                                .measurementIterations(3)
                                .measurementTime(TimeValue.seconds(1))
                                .addProfiler(GCProfiler.class)
                                .result("target/factor-benchmark.csv")
                                .build())
                .run();
    }

    private void compare(String mesh, Path program, StringBuilder report)
            throws IOException, InterruptedException {
        FactorBenchmark ours = new FactorBenchmark();
        ours.mesh = mesh;
        ours.prepare();
        Path matrix = folder.resolve(mesh + ".mtx");
        try (BufferedWriter out = Files.newBufferedWriter(matrix)) {
            MatrixMarket.write(ours.matrix(), out);
        }
        Path order = write(ours.analysed().order());
        double[][] factor = new double[1 + 2 * BLAS.size()][ROUNDS];
        double[][] solve = new double[1 + 2 * BLAS.size()][ROUNDS];
        String[] entries = new String[1 + 2 * BLAS.size()];
        entries[0] = Long.toString(ours.analysed().entries());
        java(ours::factor, 4 * TURNS);
        java(ours::solve, 4 * TURNS);
        for (int round = 0; round < ROUNDS; round++) {
            factor[0][round] = java(ours::factor, TURNS);
            solve[0][round] = java(ours::solve, TURNS);
            for (int k = 1; k < factor.length; k++) {
                String blas = BLAS.get((k - 1) / 2);
                if (Files.isDirectory(LIBRARIES.resolve(blas))) {
                    String how = k % 2 == 1 ? "given" : "metis";
                    String[] words = c(program, blas, matrix, order, how);
                    factor[k][round] = Double.parseDouble(words[0]);
                    solve[k][round] = Double.parseDouble(words[2]);
                    entries[k] = words[4];
                }
            }
        }
        report.append(mesh + ", " + ours.matrix().size() + " unknowns\n");
        for (int k = 0; k < factor.length; k++) {
            String name =
                    k == 0
                            ? "Java"
                            : BLAS.get((k - 1) / 2) + (k % 2 == 1 ? ", our order" : ", METIS");
            report.append(
                    String.format(
                            Locale.ROOT,
                            "  %-28s factor %6.1f (%6.1f) ratio %.2f, solve %5.2f, entries %s%n",
                            name,
                            median(factor[k]),
                            Arrays.stream(factor[k]).min().orElseThrow(),
                            median(factor[0]) / median(factor[k]),
                            median(solve[k]),
                            entries[k]));
        }
    }

    private Path write(Order order) throws IOException {
        StringBuilder text = new StringBuilder();
        for (int u : order.toArray()) {
            text.append(u).append('\n');
        }
        return Files.writeString(folder.resolve("order.txt"), text);
    }

    private static double java(Runnable work, int turns) {
        ThreadMXBean clock = ManagementFactory.getThreadMXBean();
        double[] time = new double[turns];
        for (int i = 0; i < turns; i++) {
            long start = clock.getCurrentThreadCpuTime();
            work.run();
            time[i] = (clock.getCurrentThreadCpuTime() - start) / 1e6;
        }
        return median(time);
    }

    private static String[] c(Path program, String blas, Path matrix, Path order, String how)
            throws IOException, InterruptedException {
        ProcessBuilder builder =
                new ProcessBuilder(
                        program.toString(),
                        matrix.toString(),
                        order.toString(),
                        Integer.toString(TURNS),
                        how);
        builder.environment().put("LD_LIBRARY_PATH", LIBRARIES.resolve(blas).toString());
        builder.environment().put("OPENBLAS_NUM_THREADS", "1");
        builder.environment().put("OMP_NUM_THREADS", "1");
        String[] words = run(builder).split(" ");
        assertEquals(LIBRARIES.resolve(blas).resolve("libblas.so.3").toString(), words[5]);
        return words;
    }

    private Path compile() throws IOException, InterruptedException {
        Path source = folder.resolve("supernodal_cholesky.c");
        try (InputStream in =
                Objects.requireNonNull(
                        FactorAgainstC.class.getResourceAsStream("supernodal_cholesky.c"))) {
            Files.copy(in, source);
        }
        assumeTrue(
                Files.exists(Path.of("/usr/include/suitesparse/cholmod.h")),
                "libsuitesparse-dev is needed");
        Path program = folder.resolve("supernodal_cholesky");
        List<String> command =
                new ArrayList<>(List.of("gcc", "-O3", "-march=native", "-o", program.toString()));
        command.addAll(List.of(source.toString(), "-lcholmod", "-lblas", "-lm"));
        run(new ProcessBuilder(command));
        return program;
    }

    private static String triplet() {
        return System.getProperty("os.arch", "").equals("aarch64")
                ? "aarch64-linux-gnu"
                : "x86_64-linux-gnu";
    }

    private static String run(ProcessBuilder builder) throws IOException, InterruptedException {
        Process process = builder.redirectErrorStream(true).start();
        String text = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(0, process.waitFor(), text);
        return text.strip();
    }

    private static double median(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }
}
