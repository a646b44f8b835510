package org.coachskin.failure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.coachskin.TestStacks;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The closed forms against plane elements of a bevelled strip, and against their integrals. */
class SkinKinkTest {

    private static final double FOAM = 0.012;
    private static final double RISE = 0.015;
    private static final double SKIN = 0.9e-3;
    private static final double[] GLASS = {14e9, 0.15};
    private static final double[] CORE = {20e6, 0.3};
    private static final double SHEAR = CORE[0] / (2 * (1 + CORE[1]));

    private static final SkinKink KINK =
            SkinKink.ofInside(
                    Laminate.of(
                            skin(), new Layer.Core(TestStacks.foam(CORE[0], SHEAR), FOAM), skin()));

    private static Layer skin() {
        return new Layer.Laid(TestStacks.isotropic(GLASS[0], GLASS[1], SKIN), 0);
    }

    private static PlaneStrip strip(double run) {
        return new PlaneStrip(FOAM, RISE, run, SKIN, GLASS, CORE, 0.3e-3);
    }

    /** The force in the inside skin on the thin side when it is one on the thick side. */
    private static double thinSide() {
        return (FOAM + RISE + SKIN) / (FOAM + SKIN);
    }

    @ParameterizedTest
    @CsvSource({"0.03, 0.11", "0.045, 0.05", "0.09, 0.07"})
    void skinBendsAsPlaneElementsSay(double run, double share) {
        double force = thinSide();
        double bend = KINK.curvature(force * RISE / run, 0) * SKIN / 2;
        double stress = force / SKIN + GLASS[0] / (1 - GLASS[1] * GLASS[1]) * bend;
        double wanted = strip(run).skinStress();
        assertEquals(wanted, stress, share * wanted);
    }

    /** Right under a corner the foam's stress has no limit; that 0.15 mm off it stands for it. */
    @ParameterizedTest
    @CsvSource({"0.03, 0.2", "0.045, 0.15", "0.09, 0.1"})
    void foamPullsAsPlaneElementsSay(double run, double share) {
        double wanted = strip(run).pull();
        assertEquals(wanted, KINK.stress(thinSide() * RISE / run, 0), share * wanted);
    }

    @ParameterizedTest
    @CsvSource({"0.03, 0.12", "0.045, 0.07", "0.09, 0.07"})
    void bevelGivesAsPlaneElementsSay(double run, double share) {
        PlaneStrip strip = strip(run);
        double force = thinSide();
        double thick = FOAM + RISE + SKIN;
        double give = KINK.give(RISE / run, FOAM + SKIN, thick, FOAM) * force * force / thick;
        double wanted = strip.turn() - strip.plainTurn(GLASS);
        assertEquals(wanted, give, share * wanted);
    }

    @Test
    void closedFormsAreTheirIntegrals() {
        double d = GLASS[0] * SKIN * SKIN * SKIN / (12 * (1 - GLASS[1] * GLASS[1]));
        double foam = Math.sqrt(CORE[0] * SHEAR);
        double step = 0.1;
        double stress = 0;
        double moment = 0;
        for (double k = step / 2; k < 2e5; k += step) {
            double both = d * k * k * k + foam;
            stress += foam / both * step / Math.PI;
            moment += d * k / both * step / Math.PI;
        }
        assertEquals(stress, KINK.stress(1, 0), 1e-4 * stress);
        assertEquals(moment, KINK.curvature(1, 0) * d, 2e-3 * moment);
    }

    @Test
    void noInsideSkinIsRefused() {
        Laminate oneSkin = TestStacks.sandwich(2, FOAM, 0, CORE[0], SHEAR);
        assertThrows(IllegalArgumentException.class, () -> SkinKink.ofInside(oneSkin));
    }
}
