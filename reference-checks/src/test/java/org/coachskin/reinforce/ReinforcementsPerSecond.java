package org.coachskin.reinforce;

import java.util.Collection;
import org.coachskin.benchmark.Timing;
import org.junit.jupiter.api.Test;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;

/**
 * Runs {@link ReinforceBenchmark}. It is no test by name and runs only when asked for; the rates
 * are at the end of what it prints:
 *
 * <pre>
 *   mvn -pl core,cli,reference-checks -am test -Dtest=ReinforcementsPerSecond -Djacoco.skip -Dsurefire.failIfNoSpecifiedTests=false
 * </pre>
 */
class ReinforcementsPerSecond {

    @Test
    void run() throws RunnerException {
        Collection<RunResult> results =
                new Runner(Timing.of(ReinforceBenchmark.class, 768, 3, 4).build()).run();
        int count = new ReinforceBenchmark().count();
        double all = time(results, "allForecast");
        double full = time(results, "oneInFull");
        double search = time(results, "search");
        System.out.printf(
                "%d offers: %.0f a second told, %.0f a second in the whole search; %.2f of a verdict each%n",
                count, 1000 * count / all, 1000 * count / search, search / count / full);
    }

    private static double time(Collection<RunResult> results, String name) {
        return results.stream()
                .filter(result -> result.getParams().getBenchmark().endsWith("." + name))
                .mapToDouble(result -> result.getPrimaryResult().getScore())
                .findFirst()
                .orElseThrow();
    }
}
