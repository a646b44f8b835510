package org.coachskin.reference;

import org.coachskin.laminate.EngineeringConstants;
import org.coachskin.laminate.Ply;
import org.coachskin.laminate.Sym3;

class TsaiHahnTest extends StackTable {

    TsaiHahnTest() {
        super("tsai-hahn-1980");
        Ply graphite = ply(181, 10.3, 0.28, 7.17, 1);
        material("T300/5208", graphite);
        material("Scotchply 1002", ply(38.6, 8.27, 0.26, 4.14, 1));
        material("AS/3501", ply(138, 8.96, 0.30, 7.1, 1));
        differs(
                "Scotchply 1002 U1",
                (3 * (39.16 + 8.392) + 2 * 2.182 + 4 * 4.14) / 8,
                "(3 Q11 + 3 Q22 + 2 Q12 + 4 Q66)/8 of the four Q printed in the same table: most likely recalled wrongly.");
        put("T300/5208 45 deg Q", graphite.stiffness(StrictMath.toRadians(45)), 1);
        put("T300/5208 30 deg Q", graphite.stiffness(StrictMath.toRadians(30)), 1);
    }

    private void material(String name, Ply ply) {
        Sym3 q = ply.stiffness(0);
        put(name + " Q", q, 1);
        double sum = q.m11() + q.m22();
        put(name + " U1", (3 * sum + 2 * q.m12() + 4 * q.m66()) / 8);
        put(name + " U2", (q.m11() - q.m22()) / 2);
        put(name + " U3", (sum - 2 * q.m12() - 4 * q.m66()) / 8);
        put(name + " U4", (sum + 6 * q.m12() - 4 * q.m66()) / 8);
        put(name + " U5", (sum - 2 * q.m12() + 4 * q.m66()) / 8);
        EngineeringConstants all =
                EngineeringConstants.inPlane(stack(ply, 0, 45, -45, 90, 90, -45, 45, 0));
        put(name + " quasi-isotropic E", all.ex());
        put(name + " quasi-isotropic nu", all.nuxy());
        put(name + " quasi-isotropic G", all.gxy());
    }

    @Override
    String title() {
        return "Stiffness, invariants and quasi-isotropic constants of plies: classical laminate theory";
    }
}
