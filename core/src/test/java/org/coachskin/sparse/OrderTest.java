package org.coachskin.sparse;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class OrderTest {

    /** Many pieces, single unknowns, full graphs: each unknown comes once, always the same way. */
    @Property(tries = 40, seed = "20261125")
    void namesEachUnknownOnce(@ForAll @IntRange(min = 1, max = 400) int n, @ForAll long start) {
        Random random = new Random(start);
        Pattern pattern = Grids.scattered(n, random.nextInt(2 * n + 1), random);
        double[] place = Grids.vector(3 * n, random);
        for (Order order :
                new Order[] {Order.dissection(pattern), Order.dissection(pattern, place)}) {
            assertEquals(order, Order.of(order.toArray()));
        }
        assertEquals(Order.dissection(pattern), Order.dissection(pattern));
    }

    /** A grid of n nodes fills in as n log n by dissection and as n^1.5 row by row. */
    @Test
    void fillGrowsAsNLogN() {
        double[] perUnknown = new double[3];
        for (int i = 0; i < 3; i++) {
            int side = 31 << i;
            Pattern pattern = Grids.squares(side, side, 1, 1);
            perUnknown[i] = FactorPlan.of(pattern).entries() / (double) pattern.size();
        }
        double first = perUnknown[1] - perUnknown[0];
        double second = perUnknown[2] - perUnknown[1];
        assertTrue(second < 1.35 * first, first + " " + second);
        Pattern pattern = Grids.squares(124, 124, 1, 1);
        FactorPlan natural = FactorPlan.of(pattern, Order.natural(pattern.size()));
        assertTrue(natural.entries() > 3 * FactorPlan.of(pattern).entries());
    }

    /**
     * Regular dissection of a square grid of side s leaves about 31/4 s^2 log2 s entries (George,
     * 1973; from memory).
     */
    @Test
    void staysBelowTheBoundOfRegularDissection() {
        int side = 127;
        double n = (side + 1.0) * (side + 1.0);
        double bound = 7.75 * n * Math.log(n) / Math.log(4);
        Pattern pattern = Grids.squares(side, side, 1, 1);
        double[] place = Grids.places(side, side, 1, 1);
        assertTrue(FactorPlan.of(pattern, Order.dissection(pattern, place)).entries() < bound);
        assertTrue(FactorPlan.of(pattern).entries() < bound);
    }

    @Test
    void coordinatesAndGraphComeOutAlike() {
        Pattern pattern = Grids.squares(40, 25, 2, 5);
        double known =
                FactorPlan.of(pattern, Order.dissection(pattern, Grids.places(40, 25, 2, 5)))
                        .work();
        double guessed = FactorPlan.of(pattern).work();
        assertEquals(1, guessed / known, 0.25);
    }

    @Test
    void refusesWhatIsNoOrder() {
        assertThrows(IllegalArgumentException.class, () -> Order.of(0, 0));
        assertThrows(IllegalArgumentException.class, () -> Order.of(0, 2));
        Pattern pattern = Pattern.of(2).build();
        assertThrows(
                IllegalArgumentException.class, () -> Order.dissection(pattern, new double[5]));
        assertThrows(
                IllegalArgumentException.class,
                () -> Order.dissection(pattern, new double[] {0, 0, 0, 0, 0, Double.NaN}));
        assertThrows(
                IllegalArgumentException.class, () -> FactorPlan.of(pattern, Order.natural(3)));
    }
}
