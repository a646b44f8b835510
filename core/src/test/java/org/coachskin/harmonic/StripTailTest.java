package org.coachskin.harmonic;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.coachskin.TestStacks;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Triple;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The closed form of a strip's sums, and how few waves are left beside it. */
class StripTailTest {

    @Test
    void sumsOverABedAreThoseOfTheirTerms() {
        double[] sums = new double[4];
        for (double[] kappa : new double[][] {{0.3, 0}, {40, 0}, {-7, 25}, {3000, 900}}) {
            for (double t : new double[] {0, 0.4, 2.5, 6}) {
                StripTail.bed(kappa[0], kappa[1], t, sums);
                double re = 0;
                double im = 0;
                for (int m = 200_000; m >= 1; m--) {
                    double x = (double) m * m + kappa[0];
                    double size = x * x + kappa[1] * kappa[1];
                    re += StrictMath.cos(m * t) * x / size;
                    im -= StrictMath.cos(m * t) * kappa[1] / size;
                }
                // What is left of the slowest sum, at t = 0, is 1 over the number of terms.
                assertEquals(re, sums[0], t == 0 ? 6e-6 : 1e-9);
                assertEquals(im, sums[1], 1e-9);
            }
        }
    }

    @Test
    void sumsOfPowersAreThoseOfTheirTerms() {
        for (double t : new double[] {0, 0.4, 2.5, 6}) {
            double[] sums = new double[4];
            for (int m = 3000; m >= 1; m--) {
                double cube = Math.pow(m, 3);
                sums[0] += StrictMath.cos(m * t) / cube / m;
                sums[1] += StrictMath.sin(m * t) / cube / m / m;
                sums[2] += StrictMath.cos(m * t) / cube / cube;
                sums[3] += StrictMath.sin(m * t) / cube / cube / m;
            }
            assertEquals(sums[0], StripTail.cosines4(t), 1e-10);
            assertEquals(sums[1], StripTail.sines5(t), 1e-12);
            assertEquals(sums[2], StripTail.cosines6(t), 1e-12);
            assertEquals(sums[3], StripTail.sines7(t), 1e-12);
        }
    }

    @TestFactory
    List<DynamicTest> theRootsLeaveLittleToAddWaveByWave() {
        List<DynamicTest> tests = new ArrayList<>();
        for (Laminate stack :
                List.of(
                        TestStacks.sandwich(2, 0.012, 1, 12e6, 4.2e6),
                        TestStacks.sandwich(3, 0.012, 3, 4e6, 1.5e6),
                        TestStacks.sandwich(1, 0.05, 1, 60e6, 22e6))) {
            for (Theory theory : Theory.values()) {
                for (double crown : new double[] {0, 0.2}) {
                    for (boolean bow : new boolean[] {false, true}) {
                        WaveSystem system =
                                WaveSystem.of(
                                        theory,
                                        stack,
                                        crown,
                                        -crown / 2,
                                        bow ? new Triple(0.02, 0.03, 0) : Triple.ZERO,
                                        false);
                        tests.add(
                                DynamicTest.dynamicTest(
                                        theory + " " + crown + " " + bow,
                                        () -> {
                                            int waves = new Strip(system, 0.9, bow, 0).waves();
                                            assertTrue(waves < 300, () -> waves + " waves");
                                        }));
                    }
                }
            }
        }
        return tests;
    }
}
