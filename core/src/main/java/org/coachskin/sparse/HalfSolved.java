package org.coachskin.sparse;

import java.util.Arrays;

/**
 * A load after forward substitution: enough to tell what it does along other loads, b<sup>T</sup>
 * A<sup>-1</sup> c, at a small part of the cost of solving, for a load on few unknowns reaches only
 * the blocks on its way to the root of the elimination tree. Immutable.
 */
public final class HalfSolved {

    private final FactorPlan plan;

    /** Blocks that are reached, ascending, and where the values of each begin. */
    private final int[] blocks;

    private final int[] starts;

    /** L^-1 b, and over D. */
    private final double[] value;

    private final double[] overD;

    /**
     * @param y forward substituted loads, place by place
     * @param step how many loads stand side by side in {@code y}
     * @param which of them
     */
    HalfSolved(Factor factor, double[] y, int step, int which) {
        plan = factor.plan();
        int[] reached = new int[plan.blocks];
        int[] at = new int[plan.blocks + 1];
        int count = 0;
        for (int s = 0; s < plan.blocks; s++) {
            if (isReached(plan, s, y, step, which)) {
                at[count + 1] = at[count] + plan.columns(s);
                reached[count++] = s;
            }
        }
        blocks = Arrays.copyOf(reached, count);
        starts = Arrays.copyOf(at, count + 1);
        value = new double[at[count]];
        overD = new double[at[count]];
        for (int i = 0; i < count; i++) {
            int s = blocks[i];
            int k = plan.columns(s);
            int rows = k + plan.rows(s);
            for (int p = 0; p < k; p++) {
                double v = y[(plan.first[s] + p) * step + which];
                double d = factor.value[plan.valueStart[s] + p * rows + p];
                value[starts[i] + p] = v;
                overD[starts[i] + p] = d == 0 ? 0 : v / d;
            }
        }
    }

    private static boolean isReached(FactorPlan plan, int s, double[] y, int step, int which) {
        boolean found = false;
        for (int i = plan.first[s]; !found && i < plan.first[s + 1]; i++) {
            found = y[i * step + which] != 0;
        }
        return found;
    }

    /**
     * Returns b<sup>T</sup> A<sup>-1</sup> c.
     *
     * @param other c, solved by the same factor
     * @throws IllegalArgumentException when it was solved by another plan
     */
    public double along(HalfSolved other) {
        if (other.plan != plan) {
            throw new IllegalArgumentException("the loads were solved by different plans");
        }
        double sum = 0;
        int i = 0;
        int j = 0;
        while (i < blocks.length && j < other.blocks.length) {
            int c = Integer.compare(blocks[i], other.blocks[j]);
            if (c == 0) {
                int mine = starts[i];
                int theirs = other.starts[j];
                for (int p = mine; p < starts[i + 1]; p++) {
                    sum += value[p] * other.overD[theirs++];
                }
            }
            i += c <= 0 ? 1 : 0;
            j += c >= 0 ? 1 : 0;
        }
        return sum;
    }
}
