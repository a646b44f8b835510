package org.coachskin.harmonic;

import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.LayeredStiffness;
import org.coachskin.laminate.Stiffness;
import org.coachskin.laminate.Sym2;
import org.coachskin.laminate.Sym3;
import org.coachskin.laminate.Triple;
import org.coachskin.material.Foam;

/** Adds up the energy of a stack, layer by layer, to the matrices of {@link WaveSystem}. */
final class WaveAssembly {

    /**
     * Share by which stiffness along x is raised. Without it an isotropic stack has equal roots and
     * no full set of eigenvectors; with it they are 1e-6 apart, which costs nobody a digit that
     * counts.
     */
    private static final double APART = 1e-12;

    private final Kinematics kinematics;
    private final double curvatureX;
    private final double curvatureY;
    private final int first;
    private final int second;
    private final int size;

    /** Energy of strains in the plane and through the thickness. */
    final Pencil plane;

    /** Energy of transverse shear. */
    final Pencil shear;

    /** The same with shear strains in the place of rotations, in the columns. */
    final Pencil turned;

    final double[] mass;

    /** Right-hand side of a free bow: first block at alpha^0 and alpha^1, second block. */
    final double[] bowFirst;

    final double[] bowAlpha;
    final double[] bowSecond;

    private final double[] n;
    private final double[] dn;
    private final double[] m;
    private final double[] dm;
    private final double[] rest;

    WaveAssembly(Kinematics kinematics, double curvatureX, double curvatureY) {
        this.kinematics = kinematics;
        this.curvatureX = curvatureX;
        this.curvatureY = curvatureY;
        second = kinematics.inPlane;
        first = second + kinematics.deflections;
        size = first + second;
        plane = new Pencil(first, second);
        shear = new Pencil(first, second);
        turned = new Pencil(first, second);
        mass = new double[size * size];
        bowFirst = new double[first];
        bowAlpha = new double[first];
        bowSecond = new double[second];
        n = new double[second];
        dn = new double[second];
        m = new double[kinematics.deflections];
        dm = new double[kinematics.deflections];
        rest = new double[kinematics.deflections];
    }

    /** Adds the transverse shear of a stack whose foam is no solid. */
    void addShear(Theory theory, Laminate laminate, boolean exchanged) {
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
    void addInPlane(Sym3 q, double bottom, double t, Triple bow) {
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
    private void addPlane(double alongX, double q12, double q22, double q66) {
        double q11 = alongX * (1 + APART);
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
                plane.ff[0][at] += ai * (q11 * aj + q12 * bj) + bi * (q12 * aj + q22 * bj);
                plane.ff[1][at] += xi * (q11 * aj + q12 * bj) + xj * (q11 * ai + q12 * bi);
                plane.ff[2][at] += xi * q11 * xj;
                plane.ffR[at] += hi * q66 * (j < second ? n[j] : 0);
            }
            for (int j = 0; j < second; j++) {
                int at = i * second + j;
                int turnedAt = j * first + i;
                double crown = -(q12 * ai + q22 * bi) * n[j];
                double wave = -q12 * xi * n[j] + hi * q66 * n[j];
                plane.fs[0][at] += crown;
                plane.fs[1][at] += wave;
                plane.sf[0][turnedAt] += crown;
                plane.sf[1][turnedAt] += wave;
            }
        }
        for (int i = 0; i < second; i++) {
            for (int j = 0; j < second; j++) {
                plane.ss[1][i * second + j] += n[i] * q66 * n[j];
                plane.ssR[i * second + j] += n[i] * q22 * n[j];
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
    void addShear(double hx, double hy, double z) {
        kinematics.rotation(z, dn);
        kinematics.deflection(z, m);
        addShearHere(hx, hy);
    }

    private void addShearHere(double hx, double hy) {
        addShear(shear, m, hx, hy);
        kinematics.slopeLeft(dn, m, rest);
        addShear(turned, rest, hx, hy);
    }

    /** Adds shear whose strain holds the slopes of deflections by {@code slope}. */
    private void addShear(Pencil to, double[] slope, double hx, double hy) {
        for (int i = 0; i < first; i++) {
            double ri = i < second ? dn[i] : 0;
            double wi = i < second ? 0 : m[i - second];
            for (int j = 0; j < first; j++) {
                double rj = j < second ? dn[j] : 0;
                double wj = j < second ? 0 : slope[j - second];
                int at = i * first + j;
                to.ff[0][at] += ri * hx * rj;
                to.ff[1][at] += hx * (ri * wj + wi * rj);
                to.ff[2][at] += wi * hx * wj;
                to.ffR[at] += wi * hy * wj;
            }
            for (int j = 0; j < second; j++) {
                to.fs[0][i * second + j] += wi * hy * dn[j];
                double wj = i < second ? 0 : slope[i - second];
                to.sf[0][j * first + i] += dn[j] * hy * wj;
            }
        }
        for (int i = 0; i < second; i++) {
            for (int j = 0; j < second; j++) {
                to.ss[0][i * second + j] += dn[i] * hy * dn[j];
            }
        }
    }

    /**
     * Adds foam as a solid, by a four-point Gauss rule: exact for displacements up to the third
     * power. What the bow stretches is the plane; the free foam takes no thickness from it.
     */
    void addSolid(Foam foam, double bottom, double t, Triple bow) {
        FoamSolid solid = FoamSolid.of(foam);
        Sym3 inPlane = new Sym3(solid.c11(), solid.c12(), solid.c11(), 0, 0, solid.c66());
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
            addBow(inPlane, w * z, bow);
            for (int i = second; i < first; i++) {
                bowFirst[i] += solid.c13() * w * z * (bow.x() + bow.y()) * dm[i - second];
            }
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
                plane.ff[0][at] += zi * c33 * zj + c13 * (zi * ej + ei * zj);
                plane.ff[1][at] += c13 * (zi * xj + xi * zj);
            }
            for (int j = 0; j < second; j++) {
                plane.fs[0][i * second + j] -= c13 * zi * n[j];
                plane.sf[0][j * first + i] -= c13 * zi * n[j];
            }
        }
    }

    void addMass(double density, double bottom, double t) {
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
}
