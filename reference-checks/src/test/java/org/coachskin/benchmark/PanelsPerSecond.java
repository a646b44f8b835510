package org.coachskin.benchmark;

import org.junit.jupiter.api.Test;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;

/**
 * Runs {@link PanelBenchmark}. It is no test by name and runs only when asked for; the table of
 * figures is at the end of what it prints:
 *
 * <pre>
 *   mvn -pl core,cli,reference-checks -am test -Dtest=PanelsPerSecond -Djacoco.skip -Dsurefire.failIfNoSpecifiedTests=false
 * </pre>
 */
class PanelsPerSecond {

    @Test
    void run() throws RunnerException {
        new Runner(Timing.of(PanelBenchmark.class, 256, 5, 2).build()).run();
    }
}
