package org.coachskin.reference;

import org.coachskin.laminate.Compliance;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.LayerStress;
import org.coachskin.laminate.Ply;
import org.coachskin.laminate.PlyStress;
import org.coachskin.laminate.SectionState;
import org.coachskin.laminate.Stiffness;
import org.coachskin.laminate.Sym3;
import org.coachskin.laminate.ThermalResultants;
import org.coachskin.laminate.ThermalState;
import org.coachskin.laminate.Triple;

class KawTest extends StackTable {

    private static final Ply GRAPHITE =
            ply(181e9, 10.3e9, 0.28, 7.17e9, 7.17e9, 7.17e9, 5e-3, 0.02e-6, 22.5e-6);

    KawTest() {
        super("kaw-2006");
        angleLamina();
        threePlies();
        cooled();
    }

    private void angleLamina() {
        double angle = StrictMath.toRadians(60);
        Sym3 own = GRAPHITE.stiffness(0).inverse();
        Sym3 turned = GRAPHITE.stiffness(angle).inverse();
        put("60 deg S", own, 1);
        put("60 deg Sbar", turned, 1);
        put("60 deg Qbar", GRAPHITE.stiffness(angle), 1);
        Triple strain = turned.times(new Triple(2e6, -3e6, 4e6));
        put("60 deg eps_x", strain.x());
        put("60 deg eps_y", strain.y());
        put("60 deg gamma_xy", strain.xy());
        PlyStress stress = PlyStress.of(GRAPHITE, angle, strain);
        put("60 deg sigma_1", stress.s1());
        put("60 deg sigma_2", stress.s2());
        put("60 deg tau_12", stress.t12());
        Triple along = own.times(new Triple(stress.s1(), stress.s2(), stress.t12()));
        put("60 deg eps_1", along.x());
        put("60 deg eps_2", along.y());
        put("60 deg gamma_12", along.xy());
    }

    private void threePlies() {
        Laminate laminate = stack(GRAPHITE, 0, 30, -45);
        Stiffness s = Stiffness.of(laminate);
        put("[0/30/-45] A", s.a(), 1);
        put("[0/30/-45] B", s.b(), 1);
        put("[0/30/-45] D", s.d(), 1);
        Triple n = new Triple(1000, 1000, 0);
        Triple e = Compliance.of(s).membrane(n, Triple.ZERO);
        Triple k = Compliance.of(s).curvature(n, Triple.ZERO);
        put("[0/30/-45] eps0_x", e.x());
        put("[0/30/-45] eps0_y", e.y());
        put("[0/30/-45] gamma0_xy", e.xy());
        put("[0/30/-45] kappa_x", k.x());
        put("[0/30/-45] kappa_y", k.y());
        put("[0/30/-45] kappa_xy", k.xy());
        // z points down in the book, so its top of the first ply is the lowest face here.
        Triple stress =
                LayerStress.of(laminate, new SectionState(e, k, k, 0, 0, 0, 0)).get(0).panelInner();
        put("[0/30/-45] 0 deg top sx", stress.x());
        put("[0/30/-45] 0 deg top sy", stress.y());
        put("[0/30/-45] 0 deg top txy", stress.xy());
    }

    private void cooled() {
        Laminate laminate = stack(GRAPHITE, 0, 90);
        ThermalResultants load = ThermalResultants.of(laminate, -75, -75);
        put("[0/90] cooled NT_x", load.n().x());
        put("[0/90] cooled NT_y", load.n().y());
        put("[0/90] cooled MT_x", load.m().x());
        put("[0/90] cooled MT_y", load.m().y());
        ThermalState free = ThermalState.of(laminate, -75, -75);
        put("[0/90] cooled eps0_x", free.membrane().x());
        put("[0/90] cooled kappa_x", free.curvature().x());
        put("[0/90] cooled kappa_y", free.curvature().y());
        Triple stress = LayerStress.of(laminate, free).get(0).panelInner();
        put("[0/90] cooled 0 deg top residual sx", stress.x());
        put("[0/90] cooled 0 deg top residual sy", stress.y());
    }

    @Override
    String title() {
        return "A turned ply, an unsymmetric laminate under load and one that cools: classical laminate theory";
    }
}
