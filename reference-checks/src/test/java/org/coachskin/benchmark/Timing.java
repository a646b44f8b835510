package org.coachskin.benchmark;

import org.openjdk.jmh.runner.options.ChainedOptionsBuilder;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;

/** How benchmarks are run: in a process and a heap of their own, three turns to warm up. */
public final class Timing {

    private Timing() {}

    /** Takes {@code turns} turns of so many seconds each. */
    public static ChainedOptionsBuilder of(
            Class<?> benchmark, int megabytes, int turns, int seconds) {
        return new OptionsBuilder()
                .include(benchmark.getName())
                .forks(1)
                .jvmArgs("-Xms" + megabytes + "m", "-Xmx" + megabytes + "m")
                .warmupIterations(3)
                .warmupTime(TimeValue.seconds(seconds))
                .measurementIterations(turns)
                .measurementTime(TimeValue.seconds(seconds));
    }
}
