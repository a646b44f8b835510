package org.coachskin.reference;

import org.coachskin.harmonic.WaveSystem;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.coachskin.laminate.Ply;
import org.coachskin.laminate.Sym2;
import org.coachskin.laminate.Sym3;

class NafemsPlateTest extends PlateTable {

    NafemsPlateTest() {
        super("nafems-r0031-3");
        double face = 0.028;
        double core = 0.75;
        double a = 10;
        // Faces that only stretch: a hundredth as thick and a hundred times as stiff.
        double thin = face / 100;
        Ply skin = StackTable.ply(1e9, 4e8, 0.3, 1.875e8, thin);
        Ply soft = StackTable.ply(1e-3, 1e-3, 0, 1e-3, core + face - thin);
        Laminate laminate =
                Laminate.of(
                        new Layer.Laid(skin, 0), new Layer.Laid(soft, 0), new Layer.Laid(skin, 0));
        Sym2 h = new Sym2(3e4 * core, 0, 1.2e4 * core);
        WaveSystem system = WaveSystem.firstOrder(laminate, h, 0, 0);
        double z = -(core + face) / 2; // the face in tension under a load outward is that below
        double[] middle = pressed(system, a, a, a, a, a / 2, a / 2);
        double[] quarter = pressed(system, a, a, a, a, a / 4, a / 4);
        Sym3 q = StackTable.ply(1e7, 4e6, 0.3, 1.875e6, face).stiffness(0);
        double ex = -100 * z * middle[4];
        double ey = -100 * z * middle[14];
        put("sigma11 C", Math.abs(q.m11() * ex + q.m12() * ey));
        put("sigma22 C", Math.abs(q.m12() * ex + q.m22() * ey));
        put("sigma12 E", -Math.abs(q.m66() * 100 * z * (quarter[5] + quarter[13])));
        put("uz C", 100 * middle[6]);
    }

    @Override
    String title() {
        return "Sandwich plate under even pressure: stress at mid-face, first-order theory with S = G t";
    }

    @Override
    String remark() {
        return "The stresses are those of membrane faces with core shear stiffness G times its thickness; with G d^2/t they are 0.3 to 0.5 per cent away. The disputed deflection fits neither: with G times thickness it is 0.1256, with G d^2/t it is 0.1222.";
    }
}
