package org.coachskin.benchmark;

import org.junit.jupiter.api.Test;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;

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
        new Runner(
                        new OptionsBuilder()
                                .include(PanelBenchmark.class.getName())
                                .forks(1)
                                .jvmArgs("-Xms256m", "-Xmx256m")
                                .warmupIterations(3)
                                .warmupTime(TimeValue.seconds(2))
                                .measurementIterations(5)
                                .measurementTime(TimeValue.seconds(2))
                                .build())
                .run();
    }
}
