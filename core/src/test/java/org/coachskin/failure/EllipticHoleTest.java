package org.coachskin.failure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.coachskin.laminate.Sym3;
import org.coachskin.laminate.Triple;
import org.junit.jupiter.api.Test;

class EllipticHoleTest {

    private static final double ROUNDING = 1e-9;

    private static Sym3 orthotropic(double e1, double e2, double nu, double g) {
        return new Sym3(1 / e1, -nu / e1, 1 / e2, 0, 0, 1 / g).inverse();
    }

    private static Sym3 isotropic() {
        return orthotropic(1, 1, 0.3, 1 / 2.6);
    }

    /** Forces in axes that are turned by {@code angle} against those of {@code n}. */
    private static Triple turned(Triple n, double angle) {
        double c = Math.cos(angle);
        double s = Math.sin(angle);
        return new Triple(
                n.x() * c * c + n.y() * s * s + 2 * n.xy() * c * s,
                n.x() * s * s + n.y() * c * c - 2 * n.xy() * c * s,
                (n.y() - n.x()) * c * s + n.xy() * (c * c - s * s));
    }

    /** The same sheet in axes that are turned by {@code angle}, column by column. */
    private static Sym3 turned(Sym3 q, double angle) {
        Triple[] columns = new Triple[3];
        for (int i = 0; i < 3; i++) {
            Triple strain = new Triple(i == 0 ? 1 : 0, i == 1 ? 1 : 0, i == 2 ? 0.5 : 0);
            Triple back = turned(strain, -angle);
            columns[i] = turned(q.times(new Triple(back.x(), back.y(), 2 * back.xy())), angle);
        }
        return new Sym3(
                columns[0].x(),
                columns[1].x(),
                columns[1].y(),
                columns[2].x(),
                columns[2].y(),
                columns[2].xy());
    }

    private static void same(Triple wanted, Triple is, double within) {
        assertEquals(wanted.x(), is.x(), within);
        assertEquals(wanted.y(), is.y(), within);
        assertEquals(wanted.xy(), is.xy(), within);
    }

    @Test
    void aRoundHoleInAnIsotropicSheetIsThatOfKirsch() {
        EllipticHole hole = new EllipticHole(isotropic(), 2, 2);
        Triple pull = new Triple(1, 0, 0);
        assertEquals(3, hole.hoop(Math.PI / 2, pull), ROUNDING);
        assertEquals(-1, hole.hoop(0, pull), ROUNDING);
        assertEquals(3, hole.largestHoop(pull), ROUNDING);
        assertEquals(2, hole.hoop(0.4, new Triple(1, 1, 0)), ROUNDING);
        assertEquals(4, Math.abs(hole.largestHoop(new Triple(0, 0, 1))), ROUNDING);
        for (double r : new double[] {2, 2.5, 4, 20}) {
            double q = 4 / (r * r);
            assertEquals(1 + q / 2 + 1.5 * q * q, hole.at(0, r, pull).x(), ROUNDING);
            assertEquals(1.5 * q - 1.5 * q * q, hole.at(0, r, pull).y(), ROUNDING);
        }
    }

    @Property(tries = 100, seed = "20261125")
    void anEllipseInAnIsotropicSheetIsThatOfInglis(
            @ForAll @DoubleRange(min = 0.05, max = 20) double halfX) {
        EllipticHole hole = new EllipticHole(isotropic(), halfX, 1);
        Triple pull = new Triple(1, 0, 0);
        assertEquals(1 + 2 / halfX, hole.hoop(Math.PI / 2, pull), ROUNDING * (1 + 2 / halfX));
        assertEquals(-1, hole.hoop(0, pull), 1e-8);
    }

    @Property(tries = 200, seed = "20261125")
    void beyondTheEndsOfAnEllipseIsTheFormulaOfLekhnitskii(
            @ForAll @DoubleRange(min = 0.1, max = 10) double halfX,
            @ForAll @DoubleRange(min = 0.2, max = 20) double e1,
            @ForAll @DoubleRange(min = 0, max = 0.3) double nu,
            @ForAll @DoubleRange(min = 0.05, max = 2) double g) {
        EllipticHole hole = new EllipticHole(orthotropic(e1, 1, nu, g), halfX, 1);
        double n = Math.sqrt(2 * (Math.sqrt(e1) - nu) + e1 / g);
        Triple pull = new Triple(1, 0, 0);
        double ends = 1 + n / halfX;
        assertEquals(ends, hole.hoop(Math.PI / 2, pull), ROUNDING * ends);
        assertEquals(-1 / Math.sqrt(e1), hole.hoop(Math.PI, pull), 1e-8);
    }

    @Property(tries = 300, seed = "20261125")
    void theRimIsFree(
            @ForAll @DoubleRange(min = 0.1, max = 10) double halfX,
            @ForAll @DoubleRange(min = 0.05, max = 20) double e1,
            @ForAll @DoubleRange(min = 0.05, max = 2) double g,
            @ForAll @DoubleRange(min = 0, max = 3) double turned,
            @ForAll @DoubleRange(min = 0, max = 6.3) double at,
            @ForAll @DoubleRange(min = -1, max = 1) double nx,
            @ForAll @DoubleRange(min = -1, max = 1) double ny,
            @ForAll @DoubleRange(min = -1, max = 1) double nxy) {
        Sym3 sheet = turned(orthotropic(e1, 1, 0.2 * Math.min(1, e1), g), turned);
        EllipticHole hole = new EllipticHole(sheet, halfX, 1);
        Triple far = new Triple(nx, ny, nxy);
        Triple n = hole.at(halfX * Math.cos(at), Math.sin(at), far);
        double ox = Math.cos(at);
        double oy = halfX * Math.sin(at);
        double size = Math.hypot(ox, oy) * (1 + Math.abs(hole.largestHoop(far)));
        assertEquals(0, n.x() * ox + n.xy() * oy, ROUNDING * size);
        assertEquals(0, n.xy() * ox + n.y() * oy, ROUNDING * size);
    }

    @Property(tries = 200, seed = "20261125")
    void awayFromTheHoleForcesBalanceAndStrainsFit(
            @ForAll @DoubleRange(min = 0.2, max = 5) double e1,
            @ForAll @DoubleRange(min = 0.1, max = 2) double g,
            @ForAll @DoubleRange(min = 0, max = 3) double turned,
            @ForAll @DoubleRange(min = 1.2, max = 3) double r,
            @ForAll @DoubleRange(min = 0, max = 6.3) double at) {
        Sym3 sheet = turned(orthotropic(e1, 1, 0.2 * Math.min(1, e1), g), turned);
        EllipticHole hole = new EllipticHole(sheet, 1, 0.7);
        Triple far = new Triple(1, -0.4, 0.3);
        double x = r * Math.cos(at);
        double y = r * Math.sin(at);
        double h = 1e-3;
        Triple[][] n = new Triple[3][3];
        Triple[][] strain = new Triple[3][3];
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                n[i][j] = hole.at(x + (i - 1) * h, y + (j - 1) * h, far);
                strain[i][j] = sheet.inverse().times(n[i][j]);
            }
        }
        double byX = n[2][1].x() - n[0][1].x() + n[1][2].xy() - n[1][0].xy();
        double byY = n[2][1].xy() - n[0][1].xy() + n[1][2].y() - n[1][0].y();
        assertEquals(0, byX / (2 * h), 2e-3);
        assertEquals(0, byY / (2 * h), 2e-3);
        double fit =
                strain[1][2].x()
                        - 2 * strain[1][1].x()
                        + strain[1][0].x()
                        + strain[2][1].y()
                        - 2 * strain[1][1].y()
                        + strain[0][1].y()
                        - (strain[2][2].xy()
                                        - strain[2][0].xy()
                                        - strain[0][2].xy()
                                        + strain[0][0].xy())
                                / 4;
        assertEquals(0, fit / (h * h), 0.02);
    }

    @Property(tries = 100, seed = "20261125")
    void farAwayTheHoleIsNotFelt(@ForAll @DoubleRange(min = 0, max = 6.3) double at) {
        EllipticHole hole = new EllipticHole(turned(orthotropic(3, 1, 0.2, 0.3), 0.5), 2, 1);
        Triple far = new Triple(0.7, -0.2, 0.4);
        Triple n = hole.at(1e5 * Math.cos(at), 1e5 * Math.sin(at), far);
        same(far, n, 1e-8);
    }

    @Property(tries = 200, seed = "20261125")
    void axesMayBeTurnedAtWill(
            @ForAll @DoubleRange(min = 0.1, max = 10) double e1,
            @ForAll @DoubleRange(min = 0.1, max = 2) double g,
            @ForAll @DoubleRange(min = -3, max = 3) double turn,
            @ForAll @DoubleRange(min = 1, max = 3) double r,
            @ForAll @DoubleRange(min = 0, max = 6.3) double at) {
        Sym3 sheet = orthotropic(e1, 1, 0.2 * Math.min(1, e1), g);
        Triple far = new Triple(0.7, -0.2, 0.4);
        Triple straight = new EllipticHole(sheet, 1, 1).at(r * Math.cos(at), r * Math.sin(at), far);
        Triple other =
                new EllipticHole(turned(sheet, turn), 1, 1)
                        .at(r * Math.cos(at - turn), r * Math.sin(at - turn), turned(far, turn));
        Triple back = turned(other, -turn);
        same(straight, back, 1e-8);
    }

    /** Through equal roots, where the textbook divides nought by nought, all stays smooth. */
    @Test
    void nearlyEqualRootsAreLikeEqualOnes() {
        Triple far = new Triple(0.7, -0.2, 0.4);
        Triple equal = new EllipticHole(isotropic(), 2, 1).at(1.5, 1.1, far);
        for (double apart = 1e-3; apart > 1e-16; apart /= 10) {
            for (int side = -1; side <= 1; side += 2) {
                Sym3 sheet = orthotropic(1, 1, 0.3, (1 + side * apart) / 2.6);
                Triple near = new EllipticHole(sheet, 2, 1).at(1.5, 1.1, far);
                same(equal, near, 2 * apart + 1e-12);
            }
        }
    }

    @Test
    void thereIsNoStressInTheHole() {
        EllipticHole hole = new EllipticHole(isotropic(), 2, 1);
        Triple far = new Triple(1, 0, 0);
        assertThrows(IllegalArgumentException.class, () -> hole.at(1.5, 0.4, far));
        assertThrows(IllegalArgumentException.class, () -> new EllipticHole(isotropic(), 0, 1));
    }
}
