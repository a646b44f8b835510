package org.coachskin.laminate;

import java.util.List;

/**
 * Transverse shear of a stack from equilibrium: how the stress runs through the thickness, and the
 * stiffness with equal energy.
 *
 * <p>Membrane forces are free (N = 0) while the moments vary. Each shear force is taken to come
 * from cylindrical bending of its own: Q<sub>x</sub> = M<sub>x,x</sub> and Q<sub>y</sub> =
 * M<sub>y,y</sub>, all other derivatives of the moments zero (Rohwer, "Improved transverse shear
 * stiffness for layered finite elements", DFVLR-FB 88-32, 1988; from memory). Then &tau;(z) = F(z)
 * Q with
 *
 * <pre>
 *   F = - integral from the inside surface to z of  Qbar (z - A^-1 B) D*^-1,   D* = D - B A^-1 B
 *   H = inverse of the integral of  F^T S F,  S the transverse shear compliance
 * </pre>
 *
 * <p>One isotropic layer gives 5/6 G t, a thin-skinned sandwich G d^2/c, without any factor put in.
 */
final class ShearByEquilibrium {

    /** Three-point Gauss rule on -1 to 1: exact for the quartic integrand. */
    private static final double[] POINT = {-Math.sqrt(0.6), 0, Math.sqrt(0.6)};

    private static final double[] WEIGHT = {5.0 / 9, 8.0 / 9, 5.0 / 9};

    private final List<Layer> layers;
    private final double bottom;

    /**
     * Stress gradient columns: strain = (P + z R) per unit Qx (row 0) and Qy (row 1); P and R of x,
     * y, xy.
     */
    private final Triple[] constant = new Triple[2];

    private final Triple[] linear = new Triple[2];

    /** F at the inside surface of each layer: xx, yx (tau_yz from Qx), xy, yy. */
    private final double[][] start;

    private final Sym3[] stiffness;

    private ShearByEquilibrium(Laminate laminate, Sym3 a, Sym3 b, Sym3 d) {
        layers = laminate.layers();
        bottom = -laminate.thickness() / 2;
        Sym3 inverseA = a.inverse();
        // A^-1 B column by column; B is symmetric, so B e_j is its j-th column.
        Triple[] unit = {new Triple(1, 0, 0), new Triple(0, 1, 0), new Triple(0, 0, 1)};
        Triple[] shift = new Triple[3];
        Triple[] reduced = new Triple[3];
        for (int j = 0; j < 3; j++) {
            shift[j] = inverseA.times(b.times(unit[j]));
            reduced[j] = d.times(unit[j]).plus(b.times(shift[j]), -1);
        }
        Sym3 dStar =
                new Sym3(
                        reduced[0].x(),
                        reduced[1].x(),
                        reduced[1].y(),
                        reduced[2].x(),
                        reduced[2].y(),
                        reduced[2].xy());
        Sym3 bending = dStar.inverse();
        for (int q = 0; q < 2; q++) {
            Triple curvature = bending.times(unit[q]);
            linear[q] = curvature;
            constant[q] =
                    shift[0].times(-curvature.x())
                            .plus(shift[1], -curvature.y())
                            .plus(shift[2], -curvature.xy());
        }
        int n = layers.size();
        stiffness = new Sym3[n];
        start = new double[n + 1][4];
        double z = bottom;
        for (int i = 0; i < n; i++) {
            stiffness[i] = layers.get(i).stiffness();
            double t = layers.get(i).thickness();
            fill(i, z, z + t, start[i + 1]);
            z += t;
        }
    }

    static ShearByEquilibrium of(Laminate laminate) {
        Sym3[] abd = Stiffness.membraneAndBending(laminate, 0);
        return new ShearByEquilibrium(laminate, abd[0], abd[1], abd[2]);
    }

    /** Writes F at {@code z} inside layer {@code i}, whose inside surface is at {@code from}. */
    private void fill(int i, double from, double z, double[] f) {
        double t = z - from;
        double middle = (z + from) / 2;
        Triple x = stiffness[i].times(constant[0].plus(linear[0], middle));
        Triple y = stiffness[i].times(constant[1].plus(linear[1], middle));
        f[0] = start[i][0] - t * x.x();
        f[1] = start[i][1] - t * x.xy();
        f[2] = start[i][2] - t * y.xy();
        f[3] = start[i][3] - t * y.y();
    }

    /** Returns the 2 x 2 transverse shear stiffness of the whole stack [N/m]. */
    Sym2 stiffness() {
        double[] energy = new double[3];
        double z = bottom;
        for (int i = 0; i < layers.size(); i++) {
            addEnergy(i, z, energy);
            z += layers.get(i).thickness();
        }
        return new Sym2(energy[0], energy[1], energy[2]).inverse();
    }

    private void addEnergy(int i, double from, double[] energy) {
        double half = layers.get(i).thickness() / 2;
        Sym2 s = layers.get(i).shearStiffness().inverse();
        double[] f = new double[4];
        for (int k = 0; k < 3; k++) {
            fill(i, from, from + half * (1 + POINT[k]), f);
            double w = half * WEIGHT[k];
            double sx = s.m11() * f[0] + s.m12() * f[1];
            double sy = s.m12() * f[0] + s.m22() * f[1];
            energy[0] += w * (f[0] * sx + f[1] * sy);
            energy[1] += w * (f[2] * sx + f[3] * sy);
            energy[2] +=
                    w
                            * (f[2] * (s.m11() * f[2] + s.m12() * f[3])
                                    + f[3] * (s.m12() * f[2] + s.m22() * f[3]));
        }
    }

    /**
     * Returns the shear stiffness of layers {@code first} to {@code last} by themselves [N/m]: the
     * square of the shear force they carry over twice their energy, direction by direction.
     */
    Sym2 stiffness(int first, int last) {
        double carriedX = 0;
        double carriedY = 0;
        double[] energy = new double[3];
        double z = bottom;
        double[] f = new double[4];
        for (int i = 0; i <= last; i++) {
            double t = layers.get(i).thickness();
            if (i >= first) {
                addEnergy(i, z, energy);
                for (int k = 0; k < 3; k++) {
                    fill(i, z, z + t / 2 * (1 + POINT[k]), f);
                    carriedX += t / 2 * WEIGHT[k] * f[0];
                    carriedY += t / 2 * WEIGHT[k] * f[3];
                }
            }
            z += t;
        }
        return new Sym2(carriedX * carriedX / energy[0], 0, carriedY * carriedY / energy[2]);
    }

    /**
     * Writes tau_xz and tau_yz at height {@code z} from mid-height for the shear forces qx and qy
     * [N/m].
     */
    void stress(double z, double qx, double qy, double[] tau) {
        double from = bottom;
        int i = 0;
        while (i < layers.size() - 1 && z > from + layers.get(i).thickness()) {
            from += layers.get(i).thickness();
            i++;
        }
        double[] f = new double[4];
        fill(i, from, z, f);
        tau[0] = f[0] * qx + f[2] * qy;
        tau[1] = f[1] * qx + f[3] * qy;
    }
}
