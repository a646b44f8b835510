package org.coachskin.shell;

import org.junit.jupiter.api.Test;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;

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
        new Runner(
                        new OptionsBuilder()
                                .include(ShellBenchmark.class.getName())
                                .forks(1)
                                .jvmArgs("-Xms512m", "-Xmx512m")
                                .warmupIterations(3)
                                .warmupTime(TimeValue.seconds(2))
                                .measurementIterations(5)
                                .measurementTime(TimeValue.seconds(2))
                                .build())
                .run();
    }
}
