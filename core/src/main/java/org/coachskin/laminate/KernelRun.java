package org.coachskin.laminate;

import java.util.List;

/** The kernel applied to a stack of layers, and its answer as records. */
final class KernelRun {

    private final int count;
    private final double[] thickness;
    private final double[] plane;
    private final double[] shear;
    private final double[] out = new double[StiffnessKernel.LENGTH];

    KernelRun(Laminate laminate) {
        List<Layer> layers = laminate.layers();
        count = layers.size();
        thickness = new double[count];
        plane = new double[6 * count];
        shear = new double[3 * count];
        for (int i = 0; i < count; i++) {
            Layer layer = layers.get(i);
            thickness[i] = layer.thickness();
            layer.stiffness().copyTo(plane, 6 * i);
            layer.shearStiffness().copyTo(shear, 3 * i);
        }
        StiffnessKernel.stiffness(count, thickness, plane, shear, out);
    }

    /** Returns A, B, D about mid-height and H. */
    Stiffness stiffness() {
        return new Stiffness(
                Sym3.from(out, StiffnessKernel.A),
                Sym3.from(out, StiffnessKernel.B),
                Sym3.from(out, StiffnessKernel.D),
                Sym2.from(out, StiffnessKernel.H),
                0);
    }

    /** Returns how the strain at height {@code z} grows along x by a unit of Qx [1/N]. */
    Triple strainByQx(double z) {
        int k = StiffnessKernel.STRAIN_X;
        return new Triple(out[k] + z * out[k + 2], 0, out[k + 1] + z * out[k + 3]);
    }

    /** Returns how the strain at height {@code z} grows along y by a unit of Qy [1/N]. */
    Triple strainByQy(double z) {
        int k = StiffnessKernel.STRAIN_Y;
        return new Triple(0, out[k] + z * out[k + 2], out[k + 1] + z * out[k + 3]);
    }

    /**
     * Returns the shear stiffness of the layers {@code from} to {@code to - 1} against the shear
     * force they carry themselves [N/m]: P S^-1 P^T, with S their compliance and P their share.
     */
    Sym2 shearOfGroup(int from, int to) {
        StiffnessKernel.shearCompliance(count, from, to, thickness, plane, shear, out);
        Sym2 s = Sym2.from(out, StiffnessKernel.COMPLIANCE).inverse();
        double xx = out[StiffnessKernel.SHARE];
        double yx = out[StiffnessKernel.SHARE + 1];
        double xy = out[StiffnessKernel.SHARE + 2];
        double yy = out[StiffnessKernel.SHARE + 3];
        double a1 = s.m11() * xx + s.m12() * xy;
        double a2 = s.m12() * xx + s.m22() * xy;
        double b1 = s.m11() * yx + s.m12() * yy;
        double b2 = s.m12() * yx + s.m22() * yy;
        return new Sym2(xx * a1 + xy * a2, xx * b1 + xy * b2, yx * b1 + yy * b2);
    }
}
