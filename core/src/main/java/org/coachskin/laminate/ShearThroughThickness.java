package org.coachskin.laminate;

import java.util.List;
import java.util.function.DoubleFunction;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;

/**
 * How the transverse shear stress runs through the thickness, from equilibrium and not from the
 * shear strain: d&tau;/dz = -div &sigma;, zero at both free surfaces, continuous from layer to
 * layer, a parabola within each.
 *
 * <p>The gradient of the in-plane stress follows from the shear forces, with each of Qx and Qy
 * taken as bending into a cylinder (as for the shear stiffness, {@link StiffnessKernel}):
 *
 * <ul>
 *   <li>first-order theory: N' = 0 and M' = Q;
 *   <li>layered theory: N' = 0, Mfoam' = Qfoam and Mskin' = Qskin. As the stress is zero at the
 *       surfaces, partial integration then gives exactly Qfoam for the stress summed over the foam,
 *       and Qskin for that over both skins.
 * </ul>
 *
 * <p>Where in-plane forces and twisting moments vary too, as beside a patch, the sums stay right
 * and the distribution within the foam and within the skins is an estimate.
 */
public final class ShearThroughThickness {

    private final int count;
    private final double[] bottom;

    /** Per layer, xz then yz: at its bottom, slope there and half of the second derivative. */
    private final double[] coefficients;

    private ShearThroughThickness(
            Laminate laminate, DoubleFunction<Triple> alongX, DoubleFunction<Triple> alongY) {
        List<Layer> layers = laminate.layers();
        count = layers.size();
        bottom = new double[count + 1];
        coefficients = new double[6 * count];
        bottom[0] = -laminate.thickness() / 2;
        double xz = 0;
        double yz = 0;
        for (int i = 0; i < count; i++) {
            double t = layers.get(i).thickness();
            bottom[i + 1] = bottom[i] + t;
            Sym3 q = layers.get(i).stiffness();
            TransverseShear low = slope(q, bottom[i], alongX, alongY);
            TransverseShear high = slope(q, bottom[i + 1], alongX, alongY);
            int k = 6 * i;
            coefficients[k] = xz;
            coefficients[k + 1] = low.xz();
            coefficients[k + 2] = (high.xz() - low.xz()) / (2 * t);
            coefficients[k + 3] = yz;
            coefficients[k + 4] = low.yz();
            coefficients[k + 5] = (high.yz() - low.yz()) / (2 * t);
            xz += t * (low.xz() + high.xz()) / 2;
            yz += t * (low.yz() + high.yz()) / 2;
        }
    }

    private static TransverseShear slope(
            Sym3 q, double z, DoubleFunction<Triple> alongX, DoubleFunction<Triple> alongY) {
        Triple x = q.times(alongX.apply(z));
        Triple y = q.times(alongY.apply(z));
        return new TransverseShear(-x.x() - y.xy(), -x.xy() - y.y());
    }

    /**
     * Returns the stress under shear forces in first-order theory.
     *
     * @param qx shear force per width on the faces across x [N/m]
     * @param qy shear force per width on the faces across y [N/m]
     */
    public static ShearThroughThickness of(Laminate laminate, double qx, double qy) {
        KernelRun run = new KernelRun(laminate);
        return new ShearThroughThickness(
                laminate, z -> run.strainByQx(z).times(qx), z -> run.strainByQy(z).times(qy));
    }

    /** Returns the stress under the shear strains of {@code state} in layered theory. */
    public static ShearThroughThickness of(Laminate laminate, SectionState state) {
        LayeredStiffness s = LayeredStiffness.of(laminate);
        TransverseShear skin = s.hs().times(state.skinShearX(), state.skinShearY());
        TransverseShear foam = s.hf().times(state.foamShearX(), state.foamShearY());
        SectionState alongX = gradient(s, 0, foam.xz(), skin.xz());
        SectionState alongY = gradient(s, 1, foam.yz(), skin.yz());
        return new ShearThroughThickness(
                laminate, z -> alongX.strainAt(s, z), z -> alongY.strainAt(s, z));
    }

    /** Returns how strain and curvatures grow along {@code axis} (x is 0, y is 1). */
    private static SectionState gradient(LayeredStiffness s, int axis, double foam, double skin) {
        // Pairs along and in shear: membrane, skin curvature and, where there is foam, its own.
        int n = s.isBare() ? 4 : 6;
        DMatrixRMaj matrix = new DMatrixRMaj(n, n);
        DMatrixRMaj load = new DMatrixRMaj(n, 1);
        put(matrix, 0, 0, s.a(), axis);
        put(matrix, 0, 2, s.bg(), axis);
        put(matrix, 2, 2, s.dgg(), axis);
        load.set(2, 0, skin);
        if (!s.isBare()) {
            put(matrix, 0, 4, s.bf(), axis);
            put(matrix, 2, 4, s.dfg(), axis);
            put(matrix, 4, 4, s.dff(), axis);
            load.set(4, 0, foam);
        }
        LinearSolverDense<DMatrixRMaj> solver = LinearSolverFactory_DDRM.symmPosDef(n);
        if (!solver.setA(matrix)) {
            throw new ArithmeticException("the stiffness of the stack is not positive definite");
        }
        DMatrixRMaj x = new DMatrixRMaj(n, 1);
        solver.solve(load, x);
        return new SectionState(
                triple(x, 0, axis),
                triple(x, 2, axis),
                triple(x, s.isBare() ? 2 : 4, axis),
                0,
                0,
                0,
                0);
    }

    private static void put(DMatrixRMaj matrix, int row, int column, Sym3 block, int axis) {
        double along = axis == 0 ? block.m11() : block.m22();
        double mixed = axis == 0 ? block.m16() : block.m26();
        for (int turn = 0; turn < 2; turn++) {
            int i = turn == 0 ? row : column;
            int j = turn == 0 ? column : row;
            matrix.set(i, j, along);
            matrix.set(i, j + 1, mixed);
            matrix.set(i + 1, j, mixed);
            matrix.set(i + 1, j + 1, block.m66());
        }
    }

    private static Triple triple(DMatrixRMaj x, int start, int axis) {
        double along = x.get(start, 0);
        return new Triple(axis == 0 ? along : 0, axis == 0 ? 0 : along, x.get(start + 1, 0));
    }

    /**
     * Returns the stress at height {@code z}.
     *
     * @param z from mid-height of the stack [m]
     * @throws IllegalArgumentException when {@code z} lies outside the stack
     */
    public TransverseShear at(double z) {
        double slack = 1e-9 * bottom[count];
        if (!(z >= bottom[0] - slack && z <= bottom[count] + slack)) {
            throw new IllegalArgumentException(
                    "z is " + z + " m; the stack reaches " + bottom[count] + " m either way");
        }
        int layer = 0;
        while (layer < count - 1 && z > bottom[layer + 1]) {
            layer++;
        }
        return inLayer(layer, z - bottom[layer]);
    }

    private TransverseShear inLayer(int layer, double s) {
        int k = 6 * layer;
        return new TransverseShear(
                coefficients[k] + s * (coefficients[k + 1] + s * coefficients[k + 2]),
                coefficients[k + 3] + s * (coefficients[k + 4] + s * coefficients[k + 5]));
    }
}
