package org.coachskin.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The witness on a true cylinder against the plane ring under a pressure that varies as sin n
 * &theta;: stress function sum of r^p sin n &theta;, p = n, -n, n + 2, 2 - n (J. H. Michell, from
 * memory; each term satisfies the biharmonic equation, as is easily checked).
 */
class CylinderWitnessTest {

    @ParameterizedTest
    @CsvSource({"2, 0.4", "5, 0.4", "40, 0.05", "3, 0.01"})
    void hoopStressOfARing(int n, double thickness) {
        Elasticity3d.Solid glass =
                Elasticity3d.Solid.of(
                        thickness / 2, 1, 1, 1, 0.3, 0.3, 0.3, 1 / 2.6, 1 / 2.6, 1 / 2.6);
        Elasticity3d.Wave wave = new Elasticity3d(List.of(glass, glass), 0, 1).wave(0, n);
        double[] powers = {n, -n, n + 2.0, 2.0 - n};
        double inner = 1 - thickness / 2;
        double outer = 1 + thickness / 2;
        double[][] rows = new double[4][4];
        for (int i = 0; i < 4; i++) {
            double p = powers[i];
            rows[0][i] = (p - n * n) * Math.pow(outer, p - 2);
            rows[1][i] = (p - n * n) * Math.pow(inner, p - 2);
            rows[2][i] = (p - 1) * Math.pow(outer, p - 2);
            rows[3][i] = (p - 1) * Math.pow(inner, p - 2);
        }
        // A unit pull per area at mid-height.
        double[] sides = {1 / outer, 0, 0, 0};
        double[] share =
                new LUDecomposition(new Array2DRowRealMatrix(rows))
                        .getSolver()
                        .solve(new ArrayRealVector(sides))
                        .toArray();
        double atInner = 0;
        double atOuter = 0;
        for (int i = 0; i < 4; i++) {
            double p = powers[i];
            atInner += share[i] * p * (p - 1) * Math.pow(inner, p - 2);
            atOuter += share[i] * p * (p - 1) * Math.pow(outer, p - 2);
        }
        assertEquals(atInner, wave.first(Elasticity3d.SY), 1e-6 * Math.abs(atInner));
        assertEquals(atOuter, wave.last(Elasticity3d.SY), 1e-6 * Math.abs(atOuter));
    }
}
