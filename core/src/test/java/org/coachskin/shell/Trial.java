package org.coachskin.shell;

import java.util.*;
import org.coachskin.TestStacks;
import org.coachskin.analysis.Response;
import org.coachskin.laminate.Patch;
import org.coachskin.panel.*;

class Trial {
    static double[] lines(double... v) {
        TreeSet<Double> s = new TreeSet<>();
        for (double d : v) s.add(d);
        return s.stream().mapToDouble(d -> d).toArray();
    }
    void run() {
        Panel lid = Panel.flat("lid", 0.9, 0.6, TestStacks.sandwich(2, 0.012, 1, 12e6, 4.2e6));
        List<Fitting> f = List.of(Fitting.Pad.hinge("l", 0.15, 0.02), Fitting.Pad.hinge("r", 0.75, 0.02),
            Fitting.Pad.latch("latch", 0.45, 0.58), Fitting.RubberSeal.allRound());
        lid = lid.withSupport(new Support.Fittings(f));
        double[] xs = lines(0, 0.07, 0.13, 0.17, 0.25, 0.33, 0.4, 0.43, 0.47, 0.5, 0.57, 0.65, 0.73, 0.77, 0.83, 0.9);
        double[] ys = lines(0, 0.04, 0.1, 0.17, 0.26, 0.34, 0.42, 0.5, 0.56, 0.6);
        List<Load> palm = List.of(new Load.Press(250, new Patch.Rectangle(0.1, 0.08), 0.45, 0.3));
        for (int order = 3; order <= 5; order++) {
            long t0 = System.nanoTime();
            Grid g = Drawn.grid(Drawn.mesh(lid, List.of((Load.Press) palm.get(0))));
            long t3 = System.nanoTime();
            ShellPanel s = new ShellPanel(lid, g, order, false);
            long t1 = System.nanoTime();
            ShellResponse rest = s.solve(List.of());
            ShellResponse r = s.solve(palm);
            long t2 = System.nanoTime();
            System.out.println(order + " mesh " + g.triangles() + " " + (t3-t0)/1e6 + " n=" + s.model.unknowns.count + " " + (t1 - t3) / 1e6 + " " + (t2 - t1) / 1e6
              + " w=" + 1e3*(r.deflection(0.45, 0.3) - rest.deflection(0.45,0.3)) + " mm; rest " + 1e3*rest.deflection(0.45, 0.3)
              + " corner " + 1e3*r.deflection(0, 0.6) + " suction " + 1e3*s.solve(List.of(new Load.Pressure(-600))).deflection(0, 0.6) + " " +  1e3*s.solve(List.of(new Load.Pressure(-600))).deflection(0.45, 0.3));
        }
        for (int order = 3; order <= 5; order++) {
            long t0 = System.nanoTime();
            ShellPanel s = new ShellPanel(lid, Grids.lattice(xs, ys), order, false);
            long t1 = System.nanoTime();
            ShellResponse rest = s.solve(List.of());
            ShellResponse r = s.solve(palm);
            long t2 = System.nanoTime();
            System.out.println(order + " n=" + s.model.unknowns.count + " " + (t1 - t0) / 1e6 + " " + (t2 - t1) / 1e6
              + " w=" + 1e3*(r.deflection(0.45, 0.3) - rest.deflection(0.45,0.3)) + " mm; rest " + 1e3*rest.deflection(0.45, 0.3)
              + " corner " + 1e3*r.deflection(0, 0.6) + " suction " + 1e3*s.solve(List.of(new Load.Pressure(-600))).deflection(0, 0.6) + " " +  1e3*s.solve(List.of(new Load.Pressure(-600))).deflection(0.45, 0.3));
        }
    }
}
