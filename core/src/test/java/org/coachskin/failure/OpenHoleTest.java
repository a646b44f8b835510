package org.coachskin.failure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.function.DoubleUnaryOperator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class OpenHoleTest {

    private static final OpenHole HOLE = OpenHole.STANDARD;

    private static double mean(DoubleUnaryOperator f) {
        return HOLE.samples().stream()
                .mapToDouble(s -> s.weight() * f.applyAsDouble(s.distance()))
                .sum();
    }

    @Test
    void theDistancesAreThoseOfTheTable() {
        assertEquals(0.001016, HOLE.point(), 1e-12);
        assertEquals(0.00381, HOLE.mean(), 1e-12);
    }

    @Test
    void theMeanOfACubicIsWhole() {
        double a = HOLE.mean();
        assertEquals(1, mean(x -> 1), 1e-12);
        assertEquals(a / 2, mean(x -> x), 1e-15);
        assertEquals(a * a * a / 4, mean(x -> x * x * x), 1e-15);
    }

    @Property(tries = 50, seed = "20261125")
    void theMeanTowardASharpCornerIsNearlySo(
            @ForAll @DoubleRange(min = 0, max = 0.5) double power) {
        double whole = Math.pow(HOLE.mean(), -power) / (1 - power);
        assertEquals(whole, mean(x -> Math.pow(x, -power)), 0.01 * whole);
    }

    /** The closed forms of the two criteria for a round hole whose factor is 3. */
    @Property(tries = 50, seed = "20261125")
    void theMeanBesideARoundHoleIsTheClosedForm(
            @ForAll @DoubleRange(min = 2, max = 100) double millimetres) {
        double radius = millimetres / 1000;
        double x = radius / (radius + HOLE.mean());
        double whole = (2 - x * x - x * x * x * x) / (2 * (1 - x));
        double ours =
                mean(
                        d -> {
                            double q = Math.pow(radius / (radius + d), 2);
                            return 1 + q / 2 + 1.5 * q * q;
                        });
        assertEquals(whole, ours, 0.003 * whole);
    }
}
