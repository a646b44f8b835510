package org.coachskin.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.coachskin.TestStacks;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.coachskin.panel.Crown;
import org.coachskin.panel.Panel;
import org.coachskin.panel.Region;
import org.coachskin.panel.Zone;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What an even strain, and a panel that moves as a rigid body, leave in every triangle. */
class PatchTest {

    private static Panel uneven() {
        return Panel.flat(
                "uneven",
                0.8,
                0.8,
                Laminate.of(
                        new Layer.Laid(TestStacks.unequal(), StrictMath.toRadians(30)),
                        new Layer.Core(TestStacks.foam(12e6, 4.2e6), 0.01),
                        new Layer.Laid(TestStacks.ply(), 0)));
    }

    /** A case and how much of the largest force may be left: rounding. */
    record Case(String name, Fields fields, boolean curved) {
        @Override
        public String toString() {
            return name;
        }
    }

    static List<Case> cases() {
        return List.of(
                new Case("slanted, 2", new Fields(uneven(), Grids.slanted(0.8), 2), false),
                new Case("slanted, 4", new Fields(uneven(), Grids.slanted(0.8), 4), false),
                new Case("disc, 4", new Fields(uneven(), Grids.disc(0.4, 0.4, 0.4, 4), 4), true),
                new Case("disc, 6", new Fields(uneven(), Grids.disc(0.4, 0.4, 0.4, 6), 6), true));
    }

    /** Field by field: constant, x, y, x^2/2, y^2/2, x y. */
    private static double[] field(double x, double y, double[][] terms) {
        double[] out = new double[Section.FIELDS];
        double[] powers = {1, x, y, x * x / 2, y * y / 2, x * y};
        for (int f = 0; f < Section.FIELDS; f++) {
            for (int k = 0; k < powers.length; k++) {
                out[f] += terms[f][k] * powers[k];
            }
        }
        return out;
    }

    private static void even(Case c, double[][] terms, double[] strain, double share) {
        Fields fields = c.fields;
        double[] x = fields.of((px, py) -> field(px, py, terms));
        double[] left = fields.forces(x);
        double[] body = new double[x.length];
        Section section = fields.model.section(0);
        double energy = 0;
        double[] stress = new double[Section.STRAINS];
        for (int r = 0; r < Section.STRAINS; r++) {
            for (int s = 0; s < Section.STRAINS; s++) {
                stress[r] += section.rigidity[r * Section.STRAINS + s] * strain[s];
            }
            energy += stress[r] * strain[r];
        }
        // Shear forces have no moments to balance them: they take a couple per area.
        double[] couple = {0, 0, 0, stress[9], stress[10], stress[11], stress[12]};
        fields.model.addEven(t -> true, couple, body);
        boolean[] rim = fields.onRim();
        double most = 0;
        for (int i = 0; i < x.length; i++) {
            most = Math.max(most, Math.abs(left[i]));
        }
        for (int i = 0; i < x.length; i++) {
            if (!rim[i]) {
                assertEquals(body[i], left[i], share * most);
            }
        }
        double area = 0;
        for (int t = 0; t < fields.model.grid.triangles(); t++) {
            area += fields.model.area(t);
        }
        assertEquals(energy * area, fields.model.energy(x, x), share * energy * area);
    }

    private static double[] strain(int from, double... values) {
        double[] strain = new double[Section.STRAINS];
        System.arraycopy(values, 0, strain, from, values.length);
        return strain;
    }

    private static double[][] terms() {
        return new double[Section.FIELDS][6];
    }

    @ParameterizedTest
    @MethodSource("cases")
    void anEvenStretchIsExact(Case c) {
        double[][] terms = terms();
        terms[0][1] = 2e-3;
        terms[0][2] = 1e-3;
        terms[1][1] = 3e-3;
        terms[1][2] = -1e-3;
        even(c, terms, strain(0, 2e-3, -1e-3, 4e-3), 1e-9);
    }

    @ParameterizedTest
    @MethodSource("cases")
    void anEvenBendIsExactWhereTheSidesAreStraight(Case c) {
        double[][] terms = terms();
        double[] k = {0.02, -0.03, 0.01};
        terms[2][3] = -k[0];
        terms[2][4] = -k[1];
        terms[2][5] = -k[2] / 2;
        for (int pair = 3; pair <= 5; pair += 2) {
            terms[pair][1] = k[0];
            terms[pair][2] = k[2] / 2;
            terms[pair + 1][1] = k[2] / 2;
            terms[pair + 1][2] = k[1];
        }
        double[] strain = strain(3, k[0], k[1], k[2], k[0], k[1], k[2]);
        if (!c.curved) {
            even(c, terms, strain, 1e-7);
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void anEvenShearOfSkinsAndFoamIsExact(Case c) {
        double[][] terms = terms();
        double[] g = {1e-4, -2e-4, 3e-3, 1e-3};
        for (int i = 0; i < 4; i++) {
            terms[3 + i][0] = g[i];
        }
        even(c, terms, strain(9, g), 1e-9);
    }

    @ParameterizedTest
    @MethodSource("cases")
    void aFreePanelMovesSixWaysWithoutForceAndNoOther(Case c) {
        sixWays(c.fields, Crown.FLAT);
    }

    private static void sixWays(Fields fields, Crown crown) {
        double kx = crown.across();
        double ky = crown.along();
        List<Fields.Given> moves =
                List.of(
                        (x, y) -> new double[] {1, 0, 0, 0, 0, 0, 0},
                        (x, y) -> new double[] {0, 1, 0, 0, 0, 0, 0},
                        (x, y) -> new double[] {-y, x, 0, 0, 0, 0, 0},
                        (x, y) -> new double[] {-kx * x, -ky * y, 1, 0, 0, 0, 0},
                        (x, y) ->
                                new double[] {
                                    (ky * y * y - kx * x * x) / 2, -ky * x * y, x, -1, 0, -1, 0
                                },
                        (x, y) ->
                                new double[] {
                                    -kx * x * y, (kx * x * x - ky * y * y) / 2, y, 0, -1, 0, -1
                                });
        for (Fields.Given move : moves) {
            double[] x = fields.of(move);
            double[] left = fields.forces(x);
            double scale = fields.scale(x);
            for (double force : left) {
                assertEquals(0, force, 1e-13 * scale);
            }
        }
        assertEquals(6, fields.factor().nullPivots().size());
    }

    @Test
    void aFreeCrownedPanelMovesSixWaysToo() {
        Crown crown = new Crown(0.4, -0.2);
        sixWays(new Fields(uneven().withCrown(crown), Grids.slanted(0.8), 4), crown);
    }

    @Test
    void aFreePanelWithALipAndRaisedFoamMovesSixWays() {
        Laminate lip = Laminate.of(new Layer.Laid(TestStacks.ply(), 0));
        Laminate thick = TestStacks.sandwich(2, 0.02, 1, 12e6, 4.2e6);
        Panel panel =
                uneven().withZones(
                                List.of(
                                        new Zone("lip", new Region.Box(-1, 0.4, -1, 2), lip, 0),
                                        new Zone(
                                                "strip",
                                                new Region.Box(0.5, 0.8, 0.2, 0.6),
                                                thick,
                                                -0.003)));
        sixWays(new Fields(panel, Grids.slanted(0.8), 4), Crown.FLAT);
    }

    @Test
    void theMassOfAMovingPanelIsItsMass() {
        Fields fields = new Fields(uneven(), Grids.disc(0.4, 0.4, 0.4, 8), 8);
        double area = 0;
        for (int t = 0; t < fields.model.grid.triangles(); t++) {
            area += fields.model.area(t);
        }
        assertEquals(Math.PI * 0.16, area, 1e-12 * area);
    }
}
