package org.coachskin.series;

import java.util.List;
import org.coachskin.TestStacks;
import org.coachskin.harmonic.Theory;
import org.coachskin.laminate.*;
import org.coachskin.panel.*;
import org.junit.jupiter.api.Test;

class SeriesTrialTest {
    @Test
    void trial() {
        Laminate l = TestStacks.sandwich(2, 0.012, 1, 12e6, 4.2e6);
        for (Theory th : Theory.values()) {
            for (Crown c : List.of(Crown.FLAT, new Crown(0.25, 0.1))) {
                Panel p = Panel.flat("p", 0.9, 0.9, l).withCrown(c);
                var patch =
                        new SeriesAnalysis.PatchLoad(
                                -250 / (0.1 * 0.08), 0.4, 0.5, 0.41, 0.49, Triple.ZERO);
                var rx =
                        new SeriesResponse(
                                th,
                                p,
                                List.of(
                                        new SeriesResponse.Part(
                                                patch, new PanelSeries(th, p, Triple.ZERO))),
                                SeriesResponse.Along.X);
                var ry =
                        new SeriesResponse(
                                th,
                                p,
                                List.of(
                                        new SeriesResponse.Part(
                                                patch, new PanelSeries(th, p, Triple.ZERO))),
                                SeriesResponse.Along.Y);
                for (double[] at :
                        new double[][] {{0.45, 0.45}, {0.3, 0.2}, {0.47, 0.43}, {0.52, 0.52}}) {
                    long t0 = System.nanoTime();
                    double[] fx = rx.fields(at[0], at[1]);
                    long t1 = System.nanoTime();
                    double[] fy = ry.fields(at[0], at[1]);
                    double worst = 0;
                    int wi = -1;
                    for (int i = 0; i < fx.length; i++) {
                        double d = Math.abs(fx[i] - fy[i]) / Math.max(Math.abs(fx[i]), 1e-12);
                        if (d > worst && Math.abs(fx[i]) > 1e-7) {
                            worst = d;
                            wi = i;
                        }
                    }
                    System.out.println(
                            th
                                    + " "
                                    + c.across()
                                    + " "
                                    + at[0]
                                    + ","
                                    + at[1]
                                    + " w="
                                    + rx.deflection(at[0], at[1]) * 1e3
                                    + " worst "
                                    + worst
                                    + " at "
                                    + wi
                                    + " "
                                    + (t1 - t0) / 1e6
                                    + " ms");
                }
            }
        }
    }
}
