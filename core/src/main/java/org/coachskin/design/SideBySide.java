package org.coachskin.design;

import java.util.List;
import java.util.function.Supplier;

/** Work whose parts have nothing to do with one another, on all processors. */
final class SideBySide {

    private SideBySide() {}

    /**
     * Returns what the parts return, in their order.
     *
     * @throws RuntimeException that of the first part, in their order, that throws one
     */
    static <T> List<T> run(List<Supplier<T>> parts) {
        List<Supplier<T>> done = parts.parallelStream().map(SideBySide::done).toList();
        return done.stream().map(Supplier::get).toList();
    }

    private static <T> Supplier<T> done(Supplier<T> part) {
        try {
            T value = part.get();
            return () -> value;
        } catch (RuntimeException e) {
            return () -> {
                throw e;
            };
        }
    }
}
