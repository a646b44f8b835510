package org.coachskin.local;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.coachskin.TestStacks;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.coachskin.laminate.Patch;
import org.junit.jupiter.api.Test;

class LocalEffectTest {

    private static final double FORCE = 250;

    private static Laminate sandwich(int plies, double foam, double e, double g, double nu) {
        List<Layer> layers = new ArrayList<>();
        for (int i = 0; i < plies; i++) {
            layers.add(new Layer.Laid(TestStacks.ply(), 0));
        }
        layers.add(new Layer.Core(TestStacks.foam(e, g, nu), foam));
        for (int i = 0; i < plies; i++) {
            layers.add(new Layer.Laid(TestStacks.ply(), 0));
        }
        return new Laminate(layers);
    }

    /** A neighbour that is all but the same stack must give all but the same answer. */
    private static void assertLikeItsNeighbour(
            int plies, double foam, double e, double g, double nu, Patch patch) {
        double half = Math.sqrt(patch.area()) / 2;
        Laminate stack = sandwich(plies, foam, e, g, nu);
        Laminate neighbour = sandwich(plies, foam * 1.0001, e, g, nu);
        double side = patch.halfX() == patch.halfY() ? half : patch.halfX();
        LocalEffect effect = LocalEffect.of(stack, patch, FORCE);
        LocalEffect other = LocalEffect.of(neighbour, patch, FORCE);
        double[] offsets = {0, side, side + stack.thickness()};
        double largest = Math.abs(other.at(0, 0).strain(neighbour.thickness() / 2).x());
        for (double dx : offsets) {
            assertEquals(
                    other.at(dx, 0).strain(neighbour.thickness() / 2).x(),
                    effect.at(dx, 0).strain(stack.thickness() / 2).x(),
                    2e-3 * largest,
                    "offset " + dx);
        }
        assertEquals(other.dent(), effect.dent(), 1e-3 * other.dent());
    }

    @Test
    void stackWhoseEigenvaluesGoRoundInACircleIsAnsweredLikeItsNeighbour() {
        assertLikeItsNeighbour(1, 0.020, 7e6, 2.8e6, 0.3, new Patch.Disc(0.02));
        assertLikeItsNeighbour(
                3, 0.010, 4e6, 1.5e6, 4e6 / 2 / 1.5e6 - 1, new Patch.Rectangle(0.1, 0.08));
    }
}
