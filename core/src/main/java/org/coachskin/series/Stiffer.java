package org.coachskin.series;

import java.util.List;
import java.util.function.Supplier;
import org.coachskin.harmonic.Theory;
import org.coachskin.panel.Load;
import org.coachskin.panel.Panel;
import org.jspecify.annotations.Nullable;

/**
 * The same cases on a panel whose foam shears less by {@link #LESS}, worked out together when the
 * first of them is asked for. Safe to share between threads.
 */
final class Stiffer {

    /** Share of the shear of the foam that is taken away. */
    static final double LESS = 1 - 1 / 1.05;

    private final Theory theory;
    private final Panel panel;
    private final List<List<Load>> cases;
    private @Nullable List<SeriesSum> sums;

    Stiffer(Theory theory, Panel panel, List<List<Load>> cases) {
        this.theory = theory;
        this.panel = panel;
        this.cases = cases;
    }

    /** Returns the sum of one case, when it is wanted. */
    Supplier<SeriesSum> of(int index) {
        return () -> all().get(index);
    }

    private synchronized List<SeriesSum> all() {
        List<SeriesSum> known = sums;
        if (known == null) {
            Panel other = panel.withStacks(stack -> stack.withFoamShearTimes(1 / (1 - LESS)));
            known = SeriesSum.ofCases(theory, other, cases);
            sums = known;
        }
        return known;
    }
}
