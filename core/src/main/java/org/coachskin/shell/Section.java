package org.coachskin.shell;

import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.LayeredStiffness;
import org.coachskin.laminate.Stiffness;
import org.coachskin.laminate.Sym2;
import org.coachskin.laminate.Sym3;
import org.coachskin.panel.Crown;

/**
 * What one stack resists, as a symmetric matrix over the seven fields u, v, w, &phi;x, &phi;y,
 * &psi;x, &psi;y, each with its value, its x- and its y-derivative: row 3 * field + 0, 1 or 2.
 * Energy per area is half of g^T C g.
 */
final class Section {

    /** Number of fields. */
    static final int FIELDS = 7;

    /** Values and derivatives of all fields. */
    static final int GRADIENTS = 3 * FIELDS;

    /**
     * Strains: membrane, curvature of skins and of foam (3 each), shear of skins and of foam (2
     * each).
     */
    static final int STRAINS = 13;

    private static final int W = 2;

    /** Strains from gradients; STRAINS x GRADIENTS, by rows. */
    final double[] strain = new double[STRAINS * GRADIENTS];

    /** Stiffness against strains; STRAINS x STRAINS. */
    final double[] rigidity = new double[STRAINS * STRAINS];

    /** Stiffness against gradients; GRADIENTS x GRADIENTS. */
    final double[] stiffness;

    /**
     * The part of the stiffness that is shear of the foam; in first-order theory shear of the whole
     * section.
     */
    final double[] foamShear;

    /** Mass against gradients; GRADIENTS x GRADIENTS. */
    final double[] mass = new double[GRADIENTS * GRADIENTS];

    /** The stack. */
    final Laminate laminate;

    /** Depth of its outside surface under that of the panel [m]. */
    final double depth;

    /** Height of the reference surface over mid-height of the stack [m]. */
    final double reference;

    /** Layered stiffness about the reference surface. */
    final LayeredStiffness layered;

    /** Whether skins and foam turn together. */
    final boolean together;

    Section(Laminate laminate, double depth, Crown crown, boolean firstOrder) {
        this.laminate = laminate;
        this.depth = depth;
        reference = laminate.thickness() / 2 + depth;
        layered = LayeredStiffness.of(laminate, reference);
        together = firstOrder || laminate.isBare();
        strains(crown);
        if (firstOrder) {
            Stiffness s = Stiffness.of(laminate, reference);
            put(0, 0, s.a());
            put(0, 3, s.b());
            put(3, 3, s.d());
            put(9, s.h());
        } else {
            put(0, 0, layered.a());
            put(0, 3, layered.bg());
            put(3, 3, layered.dgg());
            put(9, layered.hs());
            if (!laminate.isBare()) {
                put(0, 6, layered.bf());
                put(3, 6, layered.dfg());
                put(6, 6, layered.dff());
                put(11, layered.hf());
            }
        }
        stiffness = onGradients(0, STRAINS);
        foamShear = firstOrder ? onGradients(9, 11) : onGradients(11, STRAINS);
        inertia();
    }

    private void strains(Crown crown) {
        set(0, 0, 1, 1);
        set(0, W, 0, crown.across());
        set(1, 1, 2, 1);
        set(1, W, 0, crown.along());
        set(2, 0, 2, 1);
        set(2, 1, 1, 1);
        for (int pair = 0; pair < 2; pair++) {
            int field = 3 + 2 * pair;
            int row = 3 + 3 * pair;
            set(row, field, 1, 1);
            set(row + 1, field + 1, 2, 1);
            set(row + 2, field, 2, 1);
            set(row + 2, field + 1, 1, 1);
            int shear = 9 + 2 * pair;
            set(shear, field, 0, 1);
            set(shear, W, 1, 1);
            set(shear + 1, field + 1, 0, 1);
            set(shear + 1, W, 2, 1);
        }
    }

    private void set(int row, int field, int derivative, double value) {
        strain[row * GRADIENTS + 3 * field + derivative] = value;
    }

    private void put(int row, int column, Sym3 m) {
        double[][] full = {
            {m.m11(), m.m12(), m.m16()}, {m.m12(), m.m22(), m.m26()}, {m.m16(), m.m26(), m.m66()}
        };
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                rigidity[(row + i) * STRAINS + column + j] = full[i][j];
                rigidity[(column + j) * STRAINS + row + i] = full[i][j];
            }
        }
    }

    private void put(int row, Sym2 m) {
        rigidity[row * STRAINS + row] = m.m11();
        rigidity[row * STRAINS + row + 1] = m.m12();
        rigidity[(row + 1) * STRAINS + row] = m.m12();
        rigidity[(row + 1) * STRAINS + row + 1] = m.m22();
    }

    /** Writes the strains of gradients, STRAINS values from {@code at} on. */
    void strains(double[] gradients, double[] out, int at) {
        for (int r = 0; r < STRAINS; r++) {
            double sum = 0;
            for (int g = 0; g < GRADIENTS; g++) {
                sum += strain[r * GRADIENTS + g] * gradients[g];
            }
            out[at + r] = sum;
        }
    }

    /** Returns what the strains of some rows resist, against gradients. */
    private double[] onGradients(int from, int to) {
        double[] half = new double[STRAINS * GRADIENTS];
        for (int r = from; r < to; r++) {
            for (int s = from; s < to; s++) {
                double d = rigidity[r * STRAINS + s];
                for (int g = 0; d != 0 && g < GRADIENTS; g++) {
                    half[r * GRADIENTS + g] += d * strain[s * GRADIENTS + g];
                }
            }
        }
        double[] c = new double[GRADIENTS * GRADIENTS];
        for (int r = from; r < to; r++) {
            for (int g = 0; g < GRADIENTS; g++) {
                double s = strain[r * GRADIENTS + g];
                for (int h = 0; s != 0 && h < GRADIENTS; h++) {
                    c[g * GRADIENTS + h] += s * half[r * GRADIENTS + h];
                }
            }
        }
        return c;
    }

    private void inertia() {
        double bottom = -laminate.thickness() / 2;
        double[] weights = new double[6];
        for (var layer : laminate.layers()) {
            double t = layer.thickness();
            for (int point = 0; point < 3; point++) {
                double z = bottom + t * point / 2;
                double m = layer.density() * t * (point == 1 ? 4 : 1) / 6;
                double f = together ? 0 : layered.f(z);
                double g = together ? z - reference : layered.g(z);
                double[] terms = {1, g, f, g * g, g * f, f * f};
                for (int k = 0; k < 6; k++) {
                    weights[k] += m * terms[k];
                }
            }
            bottom += t;
        }
        for (int axis = 0; axis < 2; axis++) {
            int[] fields = {axis, 3 + axis, 5 + axis};
            double[][] m = {
                {weights[0], weights[1], weights[2]},
                {weights[1], weights[3], weights[4]},
                {weights[2], weights[4], weights[5]}
            };
            for (int i = 0; i < 3; i++) {
                for (int j = 0; j < 3; j++) {
                    mass[3 * fields[i] * GRADIENTS + 3 * fields[j]] = m[i][j];
                }
            }
        }
        mass[3 * W * GRADIENTS + 3 * W] = weights[0];
    }

    /**
     * Returns the share of skin and foam rotation in the in-plane displacement at height z from
     * mid-height.
     */
    double[] turn(double z) {
        return together
                ? new double[] {z - reference, 0}
                : new double[] {layered.g(z), layered.f(z)};
    }
}
