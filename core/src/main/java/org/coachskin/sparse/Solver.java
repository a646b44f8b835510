package org.coachskin.sparse;

import java.util.ArrayList;
import java.util.List;

/**
 * Forward and back substitution with a {@link Factor}, and the room it needs: solving allocates
 * nothing. One for each thread.
 */
public final class Solver {

    private static final int AT_ONCE = 4;

    private final Factor factor;
    private final FactorPlan plan;
    private final double[] y;
    private final double[] t;

    Solver(Factor factor) {
        this.factor = factor;
        plan = factor.plan();
        y = new double[AT_ONCE * plan.unknownAt.length];
        int most = 0;
        for (int s = 0; s < plan.blocks; s++) {
            most = Math.max(most, plan.rows(s));
        }
        t = new double[AT_ONCE * most];
    }

    /**
     * Writes A<sup>-1</sup> b into {@code x}.
     *
     * @param b n values
     * @param x n values, overwritten; may be {@code b}
     * @throws ArithmeticException when a pivot is null, naming its unknown
     */
    public void solve(double[] b, double[] x) {
        factor.requireRegular();
        solveHeld(b, x);
    }

    /**
     * Writes A<sup>-1</sup> B into {@code x}, four columns at a time.
     *
     * @param b n by count, column after column
     * @param x n by count, overwritten; may be {@code b}
     * @throws ArithmeticException when a pivot is null, naming its unknown
     */
    public void solve(double[] b, double[] x, int count) {
        factor.requireRegular();
        int n = plan.unknownAt.length;
        SymmetricMatrix.check(b, n * count);
        SymmetricMatrix.check(x, n * count);
        for (int c = 0; c < count; c += AT_ONCE) {
            int wide = Math.min(AT_ONCE, count - c);
            gather(b, c * n, wide);
            if (wide == 1) {
                forward();
                backward();
            } else {
                forwardFour();
                backwardFour();
            }
            spread(x, c * n, wide);
        }
    }

    /**
     * Returns loads after forward substitution, which tells what each does along the others.
     *
     * @param loads n values each
     * @throws ArithmeticException when a pivot is null, naming its unknown
     */
    public List<HalfSolved> half(List<double[]> loads) {
        factor.requireRegular();
        int n = plan.unknownAt.length;
        List<HalfSolved> out = new ArrayList<>();
        for (int c = 0; c < loads.size(); c += AT_ONCE) {
            int wide = Math.min(AT_ONCE, loads.size() - c);
            for (int q = 0; q < AT_ONCE; q++) {
                for (int i = 0; i < n; i++) {
                    y[AT_ONCE * i + q] = q < wide ? loads.get(c + q)[plan.unknownAt[i]] : 0;
                }
            }
            forwardFour();
            for (int q = 0; q < wide; q++) {
                out.add(new HalfSolved(factor, y, AT_ONCE, q));
            }
        }
        return out;
    }

    /** Solves with the unknowns of null pivots held at zero. */
    void solveHeld(double[] b, double[] x) {
        factor.requireUsable();
        int n = plan.unknownAt.length;
        SymmetricMatrix.check(b, n);
        SymmetricMatrix.check(x, n);
        gather(b, 0, 1);
        forward();
        backward();
        spread(x, 0, 1);
    }

    private void gather(double[] b, int from, int wide) {
        int n = plan.unknownAt.length;
        int step = wide == 1 ? 1 : AT_ONCE;
        for (int q = 0; q < step; q++) {
            for (int i = 0; i < n; i++) {
                y[i * step + q] = q < wide ? b[from + q * n + plan.unknownAt[i]] : 0;
            }
        }
    }

    private void spread(double[] x, int to, int wide) {
        int n = plan.unknownAt.length;
        int step = wide == 1 ? 1 : AT_ONCE;
        for (int q = 0; q < wide; q++) {
            for (int i = 0; i < n; i++) {
                x[to + q * n + plan.unknownAt[i]] = y[i * step + q];
            }
        }
    }

    private static double inverse(double d) {
        return d == 0 ? 0 : 1 / d;
    }

    private void forward() {
        double[] l = factor.value;
        for (int s = 0; s < plan.blocks; s++) {
            int f = plan.first[s];
            int k = plan.columns(s);
            int r = plan.rows(s);
            int m = k + r;
            int base = plan.valueStart[s];
            if (isZero(f, k)) {
                continue;
            }
            for (int i = 0; i < r; i++) {
                t[i] = 0;
            }
            int p = 0;
            for (; p + 1 < k; p += 2) {
                int at = base + p * m;
                int next = at + m;
                double a = y[f + p];
                y[f + p + 1] -= l[at + p + 1] * a;
                double b = y[f + p + 1];
                for (int i = p + 2; i < k; i++) {
                    y[f + i] -= l[at + i] * a + l[next + i] * b;
                }
                at += k;
                next += k;
                for (int i = 0; i < r; i++) {
                    t[i] += l[at + i] * a + l[next + i] * b;
                }
            }
            if (p < k) {
                int at = base + p * m + k;
                double a = y[f + p];
                for (int i = 0; i < r; i++) {
                    t[i] += l[at + i] * a;
                }
            }
            int[] row = plan.row;
            int to = plan.rowStart[s];
            for (int i = 0; i < r; i++) {
                y[row[to + i]] -= t[i];
            }
        }
    }

    private void backward() {
        double[] l = factor.value;
        for (int s = plan.blocks - 1; s >= 0; s--) {
            int f = plan.first[s];
            int k = plan.columns(s);
            int r = plan.rows(s);
            int m = k + r;
            int base = plan.valueStart[s];
            int from = plan.rowStart[s];
            for (int i = 0; i < r; i++) {
                t[i] = y[plan.row[from + i]];
            }
            int p = k - 1;
            for (; p > 0; p -= 2) {
                int at = base + p * m;
                int before = at - m;
                double a = 0;
                double b = 0;
                double c = 0;
                double d = 0;
                for (int i = p + 1; i < k; i++) {
                    a += l[at + i] * y[f + i];
                    b += l[before + i] * y[f + i];
                }
                int below = at + k;
                int belowBefore = before + k;
                int i = 0;
                for (; i + 1 < r; i += 2) {
                    a += l[below + i] * t[i];
                    b += l[belowBefore + i] * t[i];
                    c += l[below + i + 1] * t[i + 1];
                    d += l[belowBefore + i + 1] * t[i + 1];
                }
                if (i < r) {
                    a += l[below + i] * t[i];
                    b += l[belowBefore + i] * t[i];
                }
                y[f + p] = y[f + p] * inverse(l[at + p]) - (a + c);
                b += l[before + p] * y[f + p];
                y[f + p - 1] = y[f + p - 1] * inverse(l[before + p - 1]) - (b + d);
            }
            if (p == 0) {
                double a = 0;
                for (int i = 1; i < k; i++) {
                    a += l[base + i] * y[f + i];
                }
                for (int i = 0; i < r; i++) {
                    a += l[base + k + i] * t[i];
                }
                y[f] = y[f] * inverse(l[base]) - a;
            }
        }
    }

    private void forwardFour() {
        double[] l = factor.value;
        for (int s = 0; s < plan.blocks; s++) {
            int f = plan.first[s];
            int k = plan.columns(s);
            int r = plan.rows(s);
            int at = plan.valueStart[s];
            if (isZero(4 * f, 4 * k)) {
                continue;
            }
            for (int i = 0; i < 4 * r; i++) {
                t[i] = 0;
            }
            for (int p = 0; p < k; p++, at += k + r) {
                int own = 4 * (f + p);
                double a = y[own];
                double b = y[own + 1];
                double c = y[own + 2];
                double d = y[own + 3];
                for (int i = p + 1; i < k; i++) {
                    double v = l[at + i];
                    int to = 4 * (f + i);
                    y[to] -= v * a;
                    y[to + 1] -= v * b;
                    y[to + 2] -= v * c;
                    y[to + 3] -= v * d;
                }
                for (int i = 0; i < r; i++) {
                    double v = l[at + k + i];
                    t[4 * i] += v * a;
                    t[4 * i + 1] += v * b;
                    t[4 * i + 2] += v * c;
                    t[4 * i + 3] += v * d;
                }
            }
            int from = plan.rowStart[s];
            for (int i = 0; i < r; i++) {
                int to = 4 * plan.row[from + i];
                for (int q = 0; q < 4; q++) {
                    y[to + q] -= t[4 * i + q];
                }
            }
        }
    }

    /** Returns whether nothing has come to a block: a force at one place does not reach most. */
    private boolean isZero(int from, int count) {
        for (int i = from; i < from + count; i++) {
            if (y[i] != 0) {
                return false;
            }
        }
        return true;
    }

    private void backwardFour() {
        double[] l = factor.value;
        for (int s = plan.blocks - 1; s >= 0; s--) {
            int f = plan.first[s];
            int k = plan.columns(s);
            int r = plan.rows(s);
            int from = plan.rowStart[s];
            for (int i = 0; i < r; i++) {
                System.arraycopy(y, 4 * plan.row[from + i], t, 4 * i, 4);
            }
            for (int p = k - 1; p >= 0; p--) {
                int at = plan.valueStart[s] + p * (k + r);
                double a = 0;
                double b = 0;
                double c = 0;
                double d = 0;
                for (int i = p + 1; i < k; i++) {
                    double v = l[at + i];
                    int of = 4 * (f + i);
                    a += v * y[of];
                    b += v * y[of + 1];
                    c += v * y[of + 2];
                    d += v * y[of + 3];
                }
                for (int i = 0; i < r; i++) {
                    double v = l[at + k + i];
                    a += v * t[4 * i];
                    b += v * t[4 * i + 1];
                    c += v * t[4 * i + 2];
                    d += v * t[4 * i + 3];
                }
                double inverse = inverse(l[at + p]);
                int own = 4 * (f + p);
                y[own] = y[own] * inverse - a;
                y[own + 1] = y[own + 1] * inverse - b;
                y[own + 2] = y[own + 2] * inverse - c;
                y[own + 3] = y[own + 3] * inverse - d;
            }
        }
    }
}
