package org.coachskin.local;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

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

    @Test
    void aRimThatIsNearIsFelt() {
        Laminate stack = sandwich(2, 0.025, 12e6, 4.2e6, 0.43);
        Patch patch = new Patch.Rectangle(0.06, 0.06);
        double far = Double.POSITIVE_INFINITY;
        LocalEffect left =
                LocalEffect.of(
                        stack, patch, FORCE, new LocalEffect.Site(0.03, far, far, far, 0, 0));
        LocalEffect right =
                LocalEffect.of(
                        stack, patch, FORCE, new LocalEffect.Site(far, 0.03, far, far, 0, 0));
        LocalEffect free = LocalEffect.of(stack, patch, FORCE);
        double top = stack.thickness() / 2;
        double middle = free.at(0, 0).strain(top).x();
        // A rim bends nothing across itself.
        assertEquals(0, left.at(-0.03, 0).strain(top).x(), 1e-6 * Math.abs(middle));
        double there = left.at(-0.02, 0.01).strain(top).x();
        assertEquals(there, right.at(0.02, 0.01).strain(top).x(), 1e-4 * Math.abs(middle));
        double without = free.at(-0.02, 0.01).strain(top).x();
        assertTrue(Math.abs(there - without) > 0.05 * Math.abs(without), there + " " + without);
    }

    @Test
    void aSlightCrownChangesLittle() {
        Laminate stack = sandwich(2, 0.012, 12e6, 4.2e6, 0.43);
        Patch patch = new Patch.Rectangle(0.03, 0.03);
        double far = Double.POSITIVE_INFINITY;
        LocalEffect crowned =
                LocalEffect.of(
                        stack, patch, FORCE, new LocalEffect.Site(far, far, far, far, 1e-3, 1e-3));
        LocalEffect flat = LocalEffect.of(stack, patch, FORCE);
        assertEquals(flat.dent(), crowned.dent(), 1e-3 * flat.dent());
        double top = stack.thickness() / 2;
        double strain = flat.at(0, 0).strain(top).x();
        assertEquals(strain, crowned.at(0, 0).strain(top).x(), 1e-3 * Math.abs(strain));
    }

    /** Half the thickness less the height of the foam is not nought here but 2e-18 m. */
    @Test
    void aSkinThatIsNotThereHasNoThickness() {
        List<Layer> layers = new ArrayList<>();
        layers.add(new Layer.Laid(TestStacks.ply(), 0));
        layers.add(new Layer.Core(TestStacks.foam(12e6, 4.2e6, 0.43), 0.025));
        Patch patch = new Patch.Rectangle(0.03, 0.03);
        double dent = LocalEffect.of(new Laminate(layers), patch, FORCE).dent();
        layers.set(1, new Layer.Core(TestStacks.foam(12e6, 4.2e6, 0.43), 0.02501));
        double other = LocalEffect.of(new Laminate(layers), patch, FORCE).dent();
        assertEquals(other, dent, 1e-2 * Math.abs(other));
    }

    @Test
    void theOtherSideOfAPatchIsItsImage() {
        Laminate stack = sandwich(2, 0.012, 12e6, 4.2e6, 0.43);
        LocalEffect effect = LocalEffect.of(stack, new Patch.Rectangle(0.05, 0.03), FORCE);
        double top = stack.thickness() / 2;
        LocalEffect.Here there = effect.at(-0.021, 0.012);
        LocalEffect.Here image = effect.at(0.021, 0.012).image(true, false);
        assertTrue(Math.abs(there.strain(top).xy()) > 1e-6, there.strain(top).toString());
        assertEquals(there.strain(top).xy(), image.strain(top).xy(), 1e-9);
        assertEquals(there.strain(top).x(), image.strain(top).x(), 1e-9);
        assertTrue(Math.abs(there.foam(0.8).x()) > 1e3, there.foam(0.8).toString());
        assertEquals(there.foam(0.8).x(), image.foam(0.8).x(), 1);
        assertEquals(there.foam(0.8).y(), image.foam(0.8).y(), 1);
    }
}
