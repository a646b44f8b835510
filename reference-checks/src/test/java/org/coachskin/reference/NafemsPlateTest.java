package org.coachskin.reference;

import java.util.List;
import org.coachskin.harmonic.Theory;
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
        Layer whole = new Layer.Laid(StackTable.ply(1e7, 4e6, 0.3, 1.875e6, face), 0);
        Ply foam = StackTable.ply(1e-3, 1e-3, 0, 1e-3, 3e4, 1.2e4, core, 0, 0);
        WaveSystem own =
                WaveSystem.of(
                        Theory.FIRST_ORDER,
                        Laminate.of(whole, new Layer.Laid(foam, 0), whole),
                        0,
                        0,
                        false);
        put("uz C", 100 * pressed(own, a, a, a, a, a / 2, a / 2)[6]);
        differs(
                "uz C",
                solid(a),
                "3-D elasticity gives ours; with G times the thickness of the core it would be 0.1256, so the print fits neither.");
    }

    /** Deflection of the middle by 3-D elasticity, wave by wave [in]. */
    private static double solid(double a) {
        Elasticity3d.Solid face =
                Elasticity3d.Solid.of(
                        0.028, 1e7, 4e6, 4e6, 0.3, 0.3, 0.3, 1.875e6, 1.875e6, 1.875e6);
        Elasticity3d.Solid core = Elasticity3d.Solid.of(0.75, 1, 1, 1e7, 0, 0, 0, 1, 3e4, 1.2e4);
        Elasticity3d plate = new Elasticity3d(List.of(face, core, face));
        double sum = 0;
        for (int m = 1; m < 40; m += 2) {
            for (int n = 1; n < 40; n += 2) {
                double w = plate.wave(m * Math.PI / a, n * Math.PI / a).last(Elasticity3d.W);
                double sign = (m + n) / 2 % 2 == 1 ? 1 : -1;
                sum += sign * 16 / (Math.PI * Math.PI * m * n) * w;
            }
        }
        return 100 * sum;
    }

    @Override
    String title() {
        return "Sandwich plate under even pressure: stress at mid-face, first-order theory with S = G t";
    }

    @Override
    String remark() {
        return "The print's stresses are those of membrane faces on a core whose shear stiffness is G times its thickness, so they are worked out that way here; with G d^2/t they are 0.3 to 0.5 per cent away. The deflection is that of our own first-order theory, with the shear stiffness from equilibrium.";
    }
}
