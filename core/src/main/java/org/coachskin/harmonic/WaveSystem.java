package org.coachskin.harmonic;

import java.util.Arrays;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.coachskin.laminate.Sym2;
import org.coachskin.laminate.Sym3;
import org.coachskin.laminate.Triple;

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
 * <p>which is what the exact solution along y is made of. Its unknowns Z hold the shear strain
 * &gamma; = &phi; + grad w in the place of each rotation: a thin sheet is then as well conditioned
 * as a thick one, while in &phi; its bending is a small difference of large shear terms. Energies
 * are per area, times four.
 */
public final class WaveSystem {

    /** Number of fields along x and deflections: the first block. */
    public final int first;

    /** Number of fields along y: the second block. */
    public final int second;

    /** Number of all fields. */
    public final int size;

    private final Kinematics kinematics;
    private final double thickness;
    private final Pencil plane;
    private final Pencil shear;
    private final Pencil turned;
    private final double[] mass;
    private final double[] bowFirst;
    private final double[] bowAlpha;
    private final double[] bowSecond;

    private WaveSystem(Kinematics kinematics, double thickness, WaveAssembly sum) {
        this.kinematics = kinematics;
        this.thickness = thickness;
        second = kinematics.inPlane;
        first = second + kinematics.deflections;
        size = first + second;
        plane = sum.plane;
        shear = sum.shear;
        turned = sum.turned;
        mass = sum.mass;
        bowFirst = sum.bowFirst;
        bowAlpha = sum.bowAlpha;
        bowSecond = sum.bowSecond;
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
        Kinematics kinematics = Kinematics.of(theory, laminate);
        WaveAssembly sum =
                new WaveAssembly(
                        kinematics,
                        exchanged ? curvatureY : curvatureX,
                        exchanged ? curvatureX : curvatureY);
        Triple turned = exchanged ? new Triple(bow.y(), bow.x(), bow.xy()) : bow;
        boolean solidFoam = theory == Theory.FULL_LAYERED && !laminate.isBare();
        double z = -laminate.thickness() / 2;
        for (Layer layer : laminate.layers()) {
            if (solidFoam && layer instanceof Layer.Core core) {
                sum.addSolid(core.foam(), z, core.thickness(), turned);
            } else {
                Sym3 q = layer.stiffness();
                sum.addInPlane(exchanged ? exchanged(q) : q, z, layer.thickness(), turned);
                if (solidFoam) {
                    Sym2 g = layer.shearStiffness();
                    double h = 5.0 / 6 * layer.thickness();
                    sum.addShear(
                            exchanged ? g.m22() * h : g.m11() * h,
                            exchanged ? g.m11() * h : g.m22() * h,
                            z + layer.thickness() / 2);
                }
            }
            sum.addMass(layer.density(), z, layer.thickness());
            z += layer.thickness();
        }
        if (!solidFoam) {
            sum.addShear(theory, laminate, exchanged);
        }
        return new WaveSystem(kinematics, laminate.thickness(), sum);
    }

    /**
     * Returns the first-order system of a stack with a transverse shear stiffness given from
     * outside: a shear factor of one's own, or none that counts.
     *
     * @param h transverse shear stiffness [N/m]
     * @param curvatureX 1/Rx [1/m]
     * @param curvatureY 1/Ry [1/m]
     */
    public static WaveSystem firstOrder(
            Laminate laminate, Sym2 h, double curvatureX, double curvatureY) {
        Kinematics kinematics = Kinematics.of(Theory.FIRST_ORDER, laminate);
        WaveAssembly sum = new WaveAssembly(kinematics, curvatureX, curvatureY);
        double z = -laminate.thickness() / 2;
        for (Layer layer : laminate.layers()) {
            sum.addInPlane(layer.stiffness(), z, layer.thickness(), Triple.ZERO);
            sum.addMass(layer.density(), z, layer.thickness());
            z += layer.thickness();
        }
        sum.addShear(h.m11(), h.m22(), 0);
        return new WaveSystem(kinematics, laminate.thickness(), sum);
    }

    private static Sym3 exchanged(Sym3 q) {
        return new Sym3(q.m22(), q.m12(), q.m11(), q.m26(), q.m16(), q.m66());
    }

    /** Returns the thickness of the stack [m]. */
    public double thickness() {
        return thickness;
    }

    /** Returns whether a pressure raises the same waves in another system, to the last bit. */
    public boolean isAlike(WaveSystem other) {
        return thickness == other.thickness
                && first == other.first
                && second == other.second
                && plane.isAlike(other.plane)
                && turned.isAlike(other.turned);
    }

    /** Returns how the section moves. */
    public Kinematics kinematics() {
        return kinematics;
    }

    /**
     * Writes P and R for the unknowns Z.
     *
     * @param p overwritten, size by size by rows
     * @param r overwritten, size by size by rows
     */
    public void pencil(double alpha, double[] p, double[] r) {
        Arrays.fill(p, 0, size * size, 0);
        Arrays.fill(r, 0, size * size, 0);
        plane.addTo(alpha, p, r);
        for (int i = 0; i < second; i++) {
            for (int k = 0; k < first - second; k++) {
                double share = kinematics.turnsWith(i, k);
                subtract(p, size, second + k, i, share * alpha);
                subtract(p, size, second + k, first + i, share);
                subtract(r, size, second + k, i, share * alpha);
                subtract(r, size, second + k, first + i, share);
            }
        }
        turned.addTo(alpha, p, r);
    }

    /**
     * Writes the first block of P, which is the whole system of a load that does not vary along y.
     *
     * @param s overwritten, first by first by rows
     */
    public void strip(double alpha, double[] s) {
        for (int i = 0; i < first * first; i++) {
            s[i] = plane.strip(alpha, i);
        }
        for (int i = 0; i < second; i++) {
            for (int k = 0; k < first - second; k++) {
                subtract(s, first, second + k, i, kinematics.turnsWith(i, k) * alpha);
            }
        }
        for (int i = 0; i < first * first; i++) {
            s[i] += turned.strip(alpha, i);
        }
    }

    /**
     * Writes the first block for the fields X as constant + (alpha/unit)^2 linear, with fields
     * along x times alpha/unit in place of the fields and their rows likewise.
     *
     * @param unit a wave number [1/m]
     * @param constant overwritten, first by first by rows
     * @param linear overwritten, first by first by rows
     */
    void stripInSquares(double unit, double[] constant, double[] linear) {
        for (int i = 0; i < first; i++) {
            for (int j = 0; j < first; j++) {
                int at = i * first + j;
                double zero = plane.ff[0][at] + shear.ff[0][at];
                double one = (plane.ff[1][at] + shear.ff[1][at]) * unit;
                double two = (plane.ff[2][at] + shear.ff[2][at]) * unit * unit;
                boolean isRow = i < second;
                boolean mixed = isRow != (j < second);
                constant[at] = mixed ? isRow ? 0 : one : zero;
                linear[at] = mixed ? isRow ? one : 0 : two;
            }
        }
    }

    /** Takes a multiple of another column from a column. */
    private static void subtract(double[] a, int width, int column, int other, double factor) {
        if (factor == 0) {
            return;
        }
        for (int i = 0; i < width; i++) {
            a[i * width + column] -= factor * a[i * width + other];
        }
    }

    /**
     * Turns unknowns Z into fields X: shear strains into rotations.
     *
     * @param z unknowns by rows, any number of columns; fields along y are divided by beta
     * @param rows how many of them, the first block alone or all
     */
    public void toFields(double alpha, double[] z, int rows) {
        int columns = z.length / rows;
        for (int i = 0; i < second; i++) {
            for (int k = 0; k < first - second; k++) {
                double share = kinematics.turnsWith(i, k);
                for (int j = 0; share != 0 && j < columns; j++) {
                    double w = share * z[(second + k) * columns + j];
                    z[i * columns + j] -= alpha * w;
                    if (rows > first) {
                        z[(first + i) * columns + j] -= w;
                    }
                }
            }
        }
    }

    /**
     * Writes K, symmetric and positive definite for waves that are not constant.
     *
     * @param k overwritten, size by size by rows
     */
    public void stiffness(double alpha, double beta, double[] k) {
        Arrays.fill(k, 0, size * size, 0);
        plane.addTo(alpha, beta, k);
        shear.addTo(alpha, beta, k);
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
        Arrays.fill(rhs, 0, size, 0);
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
