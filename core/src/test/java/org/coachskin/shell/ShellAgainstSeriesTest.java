package org.coachskin.shell;

import java.util.List;
import org.coachskin.TestStacks;
import org.coachskin.analysis.Response;
import org.coachskin.laminate.Patch;
import org.coachskin.panel.Load;
import org.coachskin.panel.Panel;
import org.coachskin.series.SeriesAnalysis;
import org.junit.jupiter.api.Test;

/** Two solvers that share no code beyond the stack's stiffness. */
class ShellAgainstSeriesTest {

    @Test
    void aPalmInTheMiddleOfALid() {
        Panel lid = Panel.flat("lid", 0.9, 0.7, TestStacks.sandwich(2, 0.012, 1, 12e6, 4.2e6));
        List<Load> palm = List.of(new Load.Press(250, new Patch.Rectangle(0.1, 0.08), 0.45, 0.35));
        double[] xs = {0, 0.1, 0.2, 0.3, 0.37, 0.4, 0.45, 0.5, 0.53, 0.6, 0.7, 0.8, 0.9};
        double[] ys = {0, 0.1, 0.2, 0.27, 0.31, 0.35, 0.39, 0.43, 0.5, 0.6, 0.7};
        Response series = new SeriesAnalysis().statics(lid, palm);
        for (int order = 2; order <= 5; order++) {
            long start = System.nanoTime();
            ShellPanel shell = new ShellPanel(lid, Grids.lattice(xs, ys), order, false);
            ShellResponse response = shell.solve(palm);
            System.out.println(
                    order
                            + " "
                            + shell.model.unknowns.count
                            + " "
                            + (System.nanoTime() - start) / 1e6);
            for (double[] p : new double[][] {{0.45, 0.35}, {0.52, 0.36}, {0.25, 0.2}}) {
                System.out.println(
                        response.deflection(p[0], p[1]) / series.deflection(p[0], p[1]) - 1);
                System.out.println("   " + response.state(p[0], p[1]));
                System.out.println("   " + series.state(p[0], p[1]));
                System.out.println("   " + response.forces(p[0], p[1]));
                System.out.println("   " + series.forces(p[0], p[1]));
            }
        }
    }
}
