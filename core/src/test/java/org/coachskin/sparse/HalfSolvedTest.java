package org.coachskin.sparse;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class HalfSolvedTest {

    @Property(tries = 40, seed = "20261125")
    void saysWhatALoadDoesAlongAnother(
            @ForAll @IntRange(min = 1, max = 9) int count, @ForAll long start) {
        Random random = new Random(start);
        SymmetricMatrix matrix = Grids.filled(Grids.squares(6, 5, 1, 2), 3, 0.5, random);
        Factor factor = FactorPlan.of(matrix.pattern()).factor(matrix);
        List<double[]> loads = new ArrayList<>();
        for (int c = 0; c < count; c++) {
            double[] load = new double[matrix.size()];
            for (int k = 0; k < 3; k++) {
                load[random.nextInt(load.length)] = random.nextGaussian();
            }
            loads.add(load);
        }
        List<HalfSolved> halves = factor.solver().half(loads);
        for (int i = 0; i < count; i++) {
            double[] x = factor.solve(loads.get(i));
            for (int j = 0; j < count; j++) {
                double whole = Vectors.dot(x, loads.get(j));
                double size = Vectors.norm(x) * Vectors.norm(loads.get(j));
                assertEquals(whole, halves.get(i).along(halves.get(j)), 1e-13 * size);
            }
        }
    }

    @Test
    void loadsOfUnlikeMatricesAreNotCompared() {
        HalfSolved one = half(Grids.squares(3, 3, 1, 2));
        HalfSolved other = half(Grids.squares(4, 3, 1, 2));
        assertThrows(IllegalArgumentException.class, () -> one.along(other));
    }

    private static HalfSolved half(Pattern pattern) {
        SymmetricMatrix matrix = Grids.filled(pattern, 3, 0.5, new Random(1));
        double[] load = new double[matrix.size()];
        load[0] = 1;
        return FactorPlan.of(pattern).factor(matrix).solver().half(List.of(load)).get(0);
    }
}
