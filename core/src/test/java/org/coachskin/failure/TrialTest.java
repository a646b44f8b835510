package org.coachskin.failure;

import org.coachskin.TestStacks;
import org.coachskin.laminate.*;
import org.junit.jupiter.api.Test;

class TrialTest {
    @Test
    void trial() {
        for (int plies = 1; plies < 4; plies++) {
            Laminate l = TestStacks.sandwich(plies, 0.012, plies, 12e6, 4.2e6);
            Patch p = new Patch.Disc(0.015);
            long t = System.nanoTime();
            FirstCrush f = FirstCrush.of(l, p).orElseThrow();
            long t1 = System.nanoTime();
            LastingDent d = LastingDent.of(l, p).orElseThrow();
            System.out.println(
                    "C "
                            + plies
                            + " p "
                            + f.pressure(100) / 1e6
                            + " start "
                            + f.force()
                            + " mark "
                            + d.force(1e-4)
                            + " half "
                            + d.force(5e-4)
                            + " depth at 2x "
                            + d.depth(2 * f.force())
                            + " ms "
                            + (t1 - t) / 1e6
                            + " "
                            + (System.nanoTime() - t1) / 1e6);
            FaceWrinkling w = FaceWrinkling.of(l, Face.OUTSIDE).orElseThrow();
            double tt = plies * 0.414e-3;
            System.out.println(
                    "W "
                            + w.critical(0, -1) / tt / Math.cbrt(14.5e9 * 12e6 * 4.2e6)
                            + " half wave "
                            + w.halfWave(0)
                            + " at 45 "
                            + w.critical(Math.PI / 4, -1) / tt / 1e6);
        }
    }
}
