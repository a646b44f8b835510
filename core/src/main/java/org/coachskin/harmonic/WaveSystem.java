package org.coachskin.harmonic;

import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.coachskin.laminate.LayeredStiffness;
import org.coachskin.laminate.Stiffness;
import org.coachskin.laminate.Sym2;
import org.coachskin.laminate.Sym3;
import org.coachskin.laminate.Triple;
import org.coachskin.material.Foam;

/**
 * The stiffness of one wave: K(&alpha;, &beta;) X = load, with the fields X = (u<sub>1</sub>..,
 * w<sub>1</sub>.., v<sub>1</sub>..) of {@link Kinematics}; immutable.
 *
 * <p>With v = &beta; v' and the rows of v divided by &beta; the system is linear in &beta;^2,
 *
 * <pre>
 *   P(alpha) + beta^2 R(alpha) = [ S0  0  ] + beta^2 [ S2  C  ]
 *                                [ C^T T0 ]          [ 0   T2 ]
 * </pre>
 *
 * <p>which is what the exact solution along y is made of. Energies are per area, times four.
 */
public final class WaveSystem {

    /** Number of fields along x and deflections: the first block. */
    public final int first;

    /** Number of fields along y: the second block. */
    public final int second;

    /** Number of all fields. */
    public final int size;

    private final Kinematics kinematics;
    private final double curvatureX;
    private final double curvatureY;

    /** Powers of alpha: S0 = s0[0] + alpha s0[1] + alpha^2 s0[2], row by row; likewise below. */
    private final double[][] s0;

    private final double[] s2;
    private final double[][] c;
    private final double[][] t0;
    private final double[] t2;
    private final double[] mass;

    /** Right-hand side of a free bow: first block at alpha^0 and alpha^1, second block. */
    private final double[] bowFirst;

    private final double[] bowAlpha;
    private final double[] bowSecond;

    private final double[] n;
    private final double[] dn;
    private final double[] m;
    private final double[] dm;

    private WaveSystem(Kinematics kinematics, double curvatureX, double curvatureY) {
        this.kinematics = kinematics;
        this.curvatureX = curvatureX;
        this.curvatureY = curvatureY;
        second = kinematics.inPlane;
        first = second + kinematics.deflections;
        size = first + second;
        s0 = new double[3][first * first];
        s2 = new double[first * first];
        c = new double[2][first * second];
        t0 = new double[3][second * second];
        t2 = new double[second * second];
        mass = new double[size * size];
        bowFirst = new double[first];
        bowAlpha = new double[first];
        bowSecond = new double[second];
        n = new double[second];
        dn = new double[second];
        m = new double[kinematics.deflections];
        dm = new double[kinematics.deflections];
    }

    /**
     * Returns the system of a stack.
     *
     * @param curvatureX 1/Rx [1/m]
     * @param curvatureY 1/Ry [1/m]
     * @param exchanged whether x and y change places, for the solution that is exact along x
     */
    public static WaveSystem of(
            Theory theory,
            Laminate laminate,
            double curvatureX,
            double curvatureY,
            boolean exchanged) {
        return of(theory, laminate, curvatureX, curvatureY, Triple.ZERO, exchanged);
    }

    /**
     * Returns the system of a stack that would bow freely.
     *
     * @param bow free curvature of the stack [1/m]
     */
    public static WaveSystem of(
            Theory theory,
            Laminate laminate,
            double curvatureX,
            double curvatureY,
            Triple bow,
            boolean exchanged) {
        WaveSystem system =
                new WaveSystem(
                        Kinematics.of(theory, laminate),
                        exchanged ? curvatureY : curvatureX,
                        exchanged ? curvatureX : curvatureY);
        Triple turned = exchanged ? new Triple(bow.y(), bow.x(), bow.xy()) : bow;
        boolean solidFoam = theory == Theory.FULL_LAYERED && !laminate.isBare();
        double z = -laminate.thickness() / 2;
        for (Layer layer : laminate.layers()) {
            if (solidFoam && layer instanceof Layer.Core core) {
                system.addSolid(core.foam(), z, core.thickness());
            } else {
                Sym3 q = layer.stiffness();
                system.addInPlane(exchanged ? exchanged(q) : q, z, layer.thickness(), turned);
                if (solidFoam) {
                    Sym2 g = layer.shearStiffness();
                    double h = 5.0 / 6 * layer.thickness();
                    system.addShear(
                            exchanged ? g.m22() * h : g.m11() * h,
                            exchanged ? g.m11() * h : g.m22() * h,
                            z + layer.thickness() / 2);
                }
            }
            system.addMass(layer.density(), z, layer.thickness());
            z += layer.thickness();
        }
        if (!solidFoam) {
            system.addShear(theory, laminate, exchanged);
        }
        return system;
    }

    private static Sym3 exchanged(Sym3 q) {
        return new Sym3(q.m22(), q.m12(), q.m11(), q.m26(), q.m16(), q.m66());
    }

    private void addShear(Theory theory, Laminate laminate, boolean exchanged) {
        if (theory == Theory.FIRST_ORDER || laminate.isBare()) {
            Sym2 h = Stiffness.of(laminate).h();
            addShear(exchanged ? h.m22() : h.m11(), exchanged ? h.m11() : h.m22(), 0);
            return;
        }
        LayeredStiffness layered = LayeredStiffness.of(laminate);
        Sym2 hs = layered.hs();
        Sym2 hf = layered.hf();
        addShear(
                exchanged ? hs.m22() : hs.m11(),
                exchanged ? hs.m11() : hs.m22(),
                laminate.thickness());
        addShear(
                exchanged ? hf.m22() : hf.m11(),
                exchanged ? hf.m11() : hf.m22(),
                (layered.foamBottom() + layered.foamTop()) / 2);
    }

    /** Adds a layer in plane stress, by Simpson's rule, exact since N is linear in a layer. */
    private void addInPlane(Sym3 q, double bottom, double t, Triple bow) {
        for (int k = 0; k < 3; k++) {
            // The ends are taken just inside the layer: N may have a kink at its faces.
            double z = bottom + t * (k == 0 ? 1e-9 : k == 1 ? 0.5 : 1 - 1e-9);
            kinematics.displacement(z, n);
            kinematics.deflection(z, m);
            double w = t * (k == 1 ? 4 : 1) / 6;
            addPlane(q.m11() * w, q.m12() * w, q.m22() * w, q.m66() * w);
            addBow(q, w * z, bow);
        }
    }

    /** Adds energy of ex, ey and exy with the N and M at hand. */
    private void addPlane(double q11, double q12, double q22, double q66) {
        for (int i = 0; i < first; i++) {
            double xi = i < second ? -n[i] : 0; // times alpha
            double wi = i < second ? 0 : m[i - second];
            double ai = curvatureX * wi;
            double bi = curvatureY * wi;
            double hi = i < second ? n[i] : 0; // exy, times beta
            for (int j = 0; j < first; j++) {
                double xj = j < second ? -n[j] : 0;
                double wj = j < second ? 0 : m[j - second];
                double aj = curvatureX * wj;
                double bj = curvatureY * wj;
                int at = i * first + j;
                s0[0][at] += ai * (q11 * aj + q12 * bj) + bi * (q12 * aj + q22 * bj);
                s0[1][at] += xi * (q11 * aj + q12 * bj) + xj * (q11 * ai + q12 * bi);
                s0[2][at] += xi * q11 * xj;
                s2[at] += hi * q66 * (j < second ? n[j] : 0);
            }
            for (int j = 0; j < second; j++) {
                int at = i * second + j;
                c[0][at] -= (q12 * ai + q22 * bi) * n[j];
                c[1][at] += -q12 * xi * n[j] + hi * q66 * n[j];
            }
        }
        for (int i = 0; i < second; i++) {
            for (int j = 0; j < second; j++) {
                t0[2][i * second + j] += n[i] * q66 * n[j];
                t2[i * second + j] += n[i] * q22 * n[j];
            }
        }
    }

    private void addBow(Sym3 q, double weight, Triple bow) {
        double sx = (q.m11() * bow.x() + q.m12() * bow.y()) * weight;
        double sy = (q.m12() * bow.x() + q.m22() * bow.y()) * weight;
        for (int i = 0; i < first; i++) {
            if (i < second) {
                bowAlpha[i] -= sx * n[i];
            } else {
                bowFirst[i] += (sx * curvatureX + sy * curvatureY) * m[i - second];
            }
        }
        for (int j = 0; j < second; j++) {
            bowSecond[j] -= sy * n[j];
        }
    }

    /** Adds transverse shear with stiffness hx, hy, of whatever turns at height {@code z}. */
    private void addShear(double hx, double hy, double z) {
        kinematics.rotation(z, dn);
        kinematics.deflection(z, m);
        addShearHere(hx, hy);
    }

    private void addShearHere(double hx, double hy) {
        for (int i = 0; i < first; i++) {
            double ri = i < second ? dn[i] : 0;
            double wi = i < second ? 0 : m[i - second];
            for (int j = 0; j < first; j++) {
                double rj = j < second ? dn[j] : 0;
                double wj = j < second ? 0 : m[j - second];
                int at = i * first + j;
                s0[0][at] += ri * hx * rj;
                s0[1][at] += hx * (ri * wj + wi * rj);
                s0[2][at] += wi * hx * wj;
                s2[at] += wi * hy * wj;
            }
            for (int j = 0; j < second; j++) {
                c[0][i * second + j] += wi * hy * dn[j];
            }
        }
        for (int i = 0; i < second; i++) {
            for (int j = 0; j < second; j++) {
                t0[0][i * second + j] += dn[i] * hy * dn[j];
            }
        }
    }

    /**
     * Adds foam as a solid, by a four-point Gauss rule: exact for displacements up to the third
     * power.
     */
    private void addSolid(Foam foam, double bottom, double t) {
        FoamSolid solid = FoamSolid.of(foam);
        double[] point = {
            -0.8611363115940526, -0.3399810435848563, 0.3399810435848563, 0.8611363115940526
        };
        double[] weight = {
            0.3478548451374538, 0.6521451548625461, 0.6521451548625461, 0.3478548451374538
        };
        for (int k = 0; k < 4; k++) {
            double z = bottom + t / 2 * (1 + point[k]);
            double w = t / 2 * weight[k];
            kinematics.displacement(z, n);
            kinematics.rotation(z, dn);
            kinematics.deflection(z, m);
            kinematics.stretch(z, dm);
            addPlane(solid.c11() * w, solid.c12() * w, solid.c11() * w, solid.c66() * w);
            addShearHere(solid.c44() * w, solid.c44() * w);
            addStretch(solid.c13() * w, solid.c33() * w);
        }
    }

    /** Adds the energy of ez and of ez with ex and ey. */
    private void addStretch(double c13, double c33) {
        for (int i = 0; i < first; i++) {
            double xi = i < second ? -n[i] : 0;
            double ei = i < second ? 0 : (curvatureX + curvatureY) * m[i - second];
            double zi = i < second ? 0 : dm[i - second];
            for (int j = 0; j < first; j++) {
                double xj = j < second ? -n[j] : 0;
                double ej = j < second ? 0 : (curvatureX + curvatureY) * m[j - second];
                double zj = j < second ? 0 : dm[j - second];
                int at = i * first + j;
                s0[0][at] += zi * c33 * zj + c13 * (zi * ej + ei * zj);
                s0[1][at] += c13 * (zi * xj + xi * zj);
            }
            for (int j = 0; j < second; j++) {
                c[0][i * second + j] -= c13 * zi * n[j];
            }
        }
    }

    private void addMass(double density, double bottom, double t) {
        double[] point = {-Math.sqrt(0.6), 0, Math.sqrt(0.6)};
        for (int k = 0; k < 3; k++) {
            double z = bottom + t / 2 * (1 + point[k]);
            double w = density * t / 2 * (k == 1 ? 8.0 / 9 : 5.0 / 9);
            kinematics.displacement(z, n);
            kinematics.deflection(z, m);
            for (int i = 0; i < second; i++) {
                for (int j = 0; j < second; j++) {
                    mass[i * size + j] += w * n[i] * n[j];
                    mass[(first + i) * size + first + j] += w * n[i] * n[j];
                }
            }
            for (int i = second; i < first; i++) {
                for (int j = second; j < first; j++) {
                    mass[i * size + j] += w * m[i - second] * m[j - second];
                }
            }
        }
    }

    /** Returns how the section moves. */
    public Kinematics kinematics() {
        return kinematics;
    }

    /**
     * Writes the block S0, which is the whole system of a load that does not vary along y.
     *
     * @param k overwritten, {@code first} by {@code first} by rows
     */
    public void strip(double alpha, double[] k) {
        for (int i = 0; i < first * first; i++) {
            k[i] = s0[0][i] + alpha * (s0[1][i] + alpha * s0[2][i]);
        }
    }

    /**
     * Writes P and R.
     *
     * @param p overwritten, size by size by rows
     * @param r overwritten, size by size by rows
     */
    public void pencil(double alpha, double[] p, double[] r) {
        for (int i = 0; i < first; i++) {
            for (int j = 0; j < first; j++) {
                int at = i * first + j;
                p[i * size + j] = s0[0][at] + alpha * (s0[1][at] + alpha * s0[2][at]);
                r[i * size + j] = s2[at];
            }
            for (int j = 0; j < second; j++) {
                double value = c[0][i * second + j] + alpha * c[1][i * second + j];
                p[i * size + first + j] = 0;
                r[i * size + first + j] = value;
                p[(first + j) * size + i] = value;
                r[(first + j) * size + i] = 0;
            }
        }
        for (int i = 0; i < second; i++) {
            for (int j = 0; j < second; j++) {
                int at = i * second + j;
                p[(first + i) * size + first + j] =
                        t0[0][at] + alpha * (t0[1][at] + alpha * t0[2][at]);
                r[(first + i) * size + first + j] = t2[at];
            }
        }
    }

    /**
     * Writes K, symmetric and positive definite for waves that are not constant.
     *
     * @param k overwritten, size by size by rows
     */
    public void stiffness(double alpha, double beta, double[] k) {
        double mu = beta * beta;
        for (int i = 0; i < first; i++) {
            for (int j = 0; j < first; j++) {
                int at = i * first + j;
                k[i * size + j] = s0[0][at] + alpha * (s0[1][at] + alpha * s0[2][at]) + mu * s2[at];
            }
            for (int j = 0; j < second; j++) {
                double value = beta * (c[0][i * second + j] + alpha * c[1][i * second + j]);
                k[i * size + first + j] = value;
                k[(first + j) * size + i] = value;
            }
        }
        for (int i = 0; i < second; i++) {
            for (int j = 0; j < second; j++) {
                int at = i * second + j;
                k[(first + i) * size + first + j] =
                        t0[0][at] + alpha * (t0[1][at] + alpha * t0[2][at]) + mu * t2[at];
            }
        }
    }

    /**
     * Writes the mass matrix per area, rotary inertia included.
     *
     * @param target overwritten, size by size by rows
     */
    public void mass(double[] target) {
        System.arraycopy(mass, 0, target, 0, mass.length);
    }

    /**
     * Writes the right-hand side of a unit pressure outward on the outside surface, in the scaling
     * of {@link #pencil}.
     *
     * @param rhs overwritten; length size
     */
    public void pressure(double[] rhs) {
        java.util.Arrays.fill(rhs, 0, size, 0);
        rhs[second] = 1;
    }

    /**
     * Writes the right-hand side of the free bow, in the scaling of {@link #pencil}.
     *
     * @param rhs overwritten; length size
     */
    public void bow(double alpha, double[] rhs) {
        for (int i = 0; i < first; i++) {
            rhs[i] = bowFirst[i] + alpha * bowAlpha[i];
        }
        System.arraycopy(bowSecond, 0, rhs, first, second);
    }
}
