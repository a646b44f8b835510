package org.coachskin.benchmark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openjdk.jmh.profile.GCProfiler;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;

/**
 * Times the stiffness kernel against the same algorithm in C, in turns, so that a machine that is
 * busy for a while slows both. It is no test by name and runs only when asked for:
 *
 * <pre>
 *   mvn -pl core,reference-checks -am test -Dtest=StiffnessAgainstC -Djacoco.skip -Dsurefire.failIfNoSpecifiedTests=false
 * </pre>
 *
 * <p>The figures are printed and written to {@code target/stiffness-against-c.txt}. It needs gcc.
 */
class StiffnessAgainstC {

    private static final int ROUNDS = 5;

    @TempDir Path folder = Path.of("");

    @Test
    void compare() throws IOException, InterruptedException, RunnerException {
        Path program = compile();
        double[] ours = new double[ROUNDS];
        double[] theirs = new double[ROUNDS];
        double allocated = 0;
        for (int round = 0; round < ROUNDS; round++) {
            RunResult result = java();
            ours[round] = result.getPrimaryResult().getScore();
            Result<?> rate =
                    Objects.requireNonNull(result.getSecondaryResults().get("gc.alloc.rate.norm"));
            allocated = Math.max(allocated, rate.getScore());
            String[] words = run(List.of(program.toString(), "3")).split(" ", 2);
            theirs[round] = Double.parseDouble(words[0]);
            double sum = Double.parseDouble(words[1]);
            assertEquals(sum, new StiffnessBenchmark().sweep(), 1e-12 * sum, "not the same sums");
        }
        String report =
                String.format(
                        Locale.ROOT,
                        "Java %s, one stack of seven layers, median of %d turns%n"
                                + "Java %.1f ns %s%nC    %.1f ns %s%nratio %.2f%n"
                                + "allocated %.4f bytes per stack%n",
                        System.getProperty("java.version"),
                        ROUNDS,
                        median(ours),
                        Arrays.toString(ours),
                        median(theirs),
                        Arrays.toString(theirs),
                        median(ours) / median(theirs),
                        allocated);
        Files.writeString(Path.of("target", "stiffness-against-c.txt"), report);
        System.out.print(report);
    }

    private static RunResult java() throws RunnerException {
        return new Runner(
                        Timing.of(StiffnessBenchmark.class, 128, 3, 1)
                                .addProfiler(GCProfiler.class)
                                .build())
                .runSingle();
    }

    private Path compile() throws IOException, InterruptedException {
        Path source = folder.resolve("stiffness_kernel.c");
        try (InputStream in =
                Objects.requireNonNull(
                        StiffnessAgainstC.class.getResourceAsStream("stiffness_kernel.c"))) {
            Files.copy(in, source);
        }
        Path program = folder.resolve("stiffness_kernel");
        List<String> command =
                new ArrayList<>(List.of("gcc", "-O3", "-march=native", "-o", program.toString()));
        command.addAll(List.of(source.toString(), "-lm"));
        try {
            run(command);
        } catch (IOException e) {
            assumeTrue(false, "gcc is needed: " + e.getMessage());
        }
        return program;
    }

    private static String run(List<String> command) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
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
