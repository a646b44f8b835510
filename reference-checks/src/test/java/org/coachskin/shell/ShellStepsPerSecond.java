package org.coachskin.shell;

import org.coachskin.benchmark.Timing;
import org.junit.jupiter.api.Test;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;

/**
 * Runs {@link ShellBenchmark}. It is no test by name and runs only when asked for; the table of
 * figures is at the end of what it prints:
 *
 * <pre>
 *   mvn -pl core,cli,reference-checks -am test -Dtest=ShellStepsPerSecond -Djacoco.skip -Dsurefire.failIfNoSpecifiedTests=false
 * </pre>
 */
class ShellStepsPerSecond {

    @Test
    void run() throws RunnerException {
        new Runner(Timing.of(ShellBenchmark.class, 512, 5, 2).build()).run();
    }
}
