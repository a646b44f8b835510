package org.coachskin.shell;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.coachskin.mesh.Drawing;
import org.coachskin.mesh.Loop;
import org.coachskin.mesh.Mesher;
import org.coachskin.mesh.Wishes;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Triangles along arcs, on meshes as they come. */
class ElementTest {

    private static Grid disc(int order) {
        return Grids.disc(0.4, 0.4, 0.3, order);
    }

    /** A disc, a lid with a window in a ring, a thumb in the middle of a large panel. */
    static List<Grid> grids() {
        Drawing window =
                Drawing.outline(Loop.rectangle(0, 0, 0.9, 0.6, 0.05))
                        .hole(Loop.rectangle(0.24, 0.14, 0.66, 0.46, 0.06))
                        .follow(Loop.rectangle(0.19, 0.09, 0.71, 0.51, 0.11))
                        .follow(Loop.rectangle(0.03, 0.03, 0.87, 0.57, 0.02))
                        .follow(Loop.circle(0.45, 0.53, 0.01))
                        .wishes(Wishes.edgesUpTo(0.12))
                        .build();
        Drawing thumb =
                Drawing.outline(Loop.rectangle(0, 0, 2, 1))
                        .follow(Loop.circle(0.7, 0.4, 0.01))
                        .wishes(Wishes.edgesUpTo(0.5))
                        .build();
        return List.of(
                disc(2),
                disc(4),
                Drawn.grid(Mesher.mesh(window), 4),
                Drawn.grid(Mesher.mesh(thumb), 4));
    }

    @ParameterizedTest
    @CsvSource({"2, 1e-3", "3, 1e-4", "4, 1e-6", "5, 2e-8", "8, 1e-13"})
    void theAreaOfADiscIsMetFastWithTheOrder(int order, double share) {
        Grid grid = disc(order);
        double area = 0;
        ReferenceTriangle reference = new ReferenceTriangle(new Basis(order), 2);
        for (Element element : grid.elements) {
            for (int q = 0; q < reference.points; q++) {
                area +=
                        reference.weight[q]
                                * Math.abs(det(element, reference.xi[q], reference.eta[q]));
            }
        }
        double exact = Math.PI * 0.09;
        assertEquals(exact, area, share * exact);
    }

    private static double det(Element element, double xi, double eta) {
        double[] m = element.map(xi, eta);
        return m[2] * m[5] - m[3] * m[4];
    }

    @ParameterizedTest
    @MethodSource("grids")
    void noTriangleIsFoldedAnywhere(Grid grid) {
        int n = 12;
        for (Element element : grid.elements) {
            double middle = det(element, 1.0 / 3, 1.0 / 3);
            for (int i = 0; i <= n; i++) {
                for (int j = 0; i + j <= n; j++) {
                    double here = det(element, (double) i / n, (double) j / n);
                    assertTrue(here / middle > 0.05, here + " of " + middle);
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("grids")
    void derivativesOfThePlaceAreThoseOfThePlace(Grid grid) {
        double h = 1e-6;
        for (Element element : grid.elements) {
            double[] m = element.map(0.23, 0.41);
            double[] right = element.map(0.23 + h, 0.41);
            double[] left = element.map(0.23 - h, 0.41);
            double[] up = element.map(0.23, 0.41 + h);
            double[] down = element.map(0.23, 0.41 - h);
            for (int axis = 0; axis < 2; axis++) {
                assertEquals((right[axis] - left[axis]) / (2 * h), m[2 + axis], 1e-8);
                assertEquals((up[axis] - down[axis]) / (2 * h), m[4 + axis], 1e-8);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("grids")
    void trianglesMeetAlongTheirEdgesAndEveryPlaceIsFound(Grid grid) {
        double[][] atThird = {{1.0 / 3, 0}, {2.0 / 3, 1.0 / 3}, {0, 1.0 / 3}};
        for (int t = 0; t < grid.triangles(); t++) {
            for (int side = 0; side < 3; side++) {
                double[] here = grid.elements[t].map(atThird[side][0], atThird[side][1]);
                double[] edge = grid.onEdge(grid.sides[3 * t + side], 1.0 / 3);
                assertEquals(edge[0], here[0], 1e-15);
                assertEquals(edge[1], here[1], 1e-15);
                for (int other : neighbours(grid, grid.sides[3 * t + side])) {
                    double[] there = {Double.NaN, Double.NaN};
                    for (int s = 0; s < 3; s++) {
                        if (grid.sides[3 * other + s] == grid.sides[3 * t + side]) {
                            there = grid.elements[other].map(atThird[s][0], atThird[s][1]);
                        }
                    }
                    assertArrayEquals(
                            new double[] {here[0], here[1]},
                            new double[] {there[0], there[1]},
                            1e-15);
                }
            }
            for (double[] local :
                    new double[][] {
                        {0.3, 0.3},
                        {0.01, 0.98},
                        {0.98, 0.01},
                        {0.01, 0.01},
                        {0.5, 0.499},
                        {0.001, 0.5},
                        {0.5, 0.001}
                    }) {
                double[] place = grid.elements[t].map(local[0], local[1]);
                double[] found = new double[2];
                assertEquals(t, grid.locate(place[0], place[1], found));
                assertArrayEquals(local, found, 1e-9);
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"2, 1e-2", "3, 1e-3", "4, 2e-5", "5, 2e-6", "8, 1e-10"})
    void anArcIsFollowedAllTheWay(int order, double share) {
        Grid grid = disc(order);
        for (int e = 0; e < grid.edges(); e++) {
            for (int i = 0; grid.onRim(e) && i <= 20; i++) {
                double[] place = grid.onEdge(e, i / 20.0);
                double off = Math.hypot(place[0] - 0.4, place[1] - 0.4) - 0.3;
                assertEquals(0, off / 0.3, share);
            }
        }
    }

    private static int[] neighbours(Grid grid, int edge) {
        return grid.onRim(edge)
                ? new int[] {grid.neighbours[2 * edge]}
                : new int[] {grid.neighbours[2 * edge], grid.neighbours[2 * edge + 1]};
    }

    /** A polynomial leaves places by a round rim out; they belong to the nearest triangle. */
    @Test
    void placesOnARoundRimAreFound() {
        for (int order : new int[] {2, 4}) {
            Grid disc = Grids.disc(0.5, 0.5, 0.5, order);
            double[] local = new double[2];
            for (int k = 0; k < 1000; k++) {
                double x = 0.5 + 0.5 * StrictMath.cos(0.00628 * k);
                double y = 0.5 + 0.5 * StrictMath.sin(0.00628 * k);
                int t = disc.locate(x, y, local);
                assertTrue(t >= 0, x + ", " + y);
                double[] there = disc.elements[t].map(local[0], local[1]);
                assertEquals(0, Math.hypot(there[0] - x, there[1] - y), 1e-12);
            }
            assertEquals(-1, disc.locate(0.5 + 0.52, 0.5, local));
        }
    }

    /** As beside a corner where two lines are 1.9 mm apart; it used to be lost in rounding. */
    @Test
    void aTriangleThinnerThanAHairIsFound() {
        double[] x = {2.46990, 2.46992, 2.46991};
        double[] y = {1.41910, 1.41911, 1.41913};
        Element small = new Element(x, y, new Bulge[3]);
        for (int i = 0; i <= 20; i++) {
            for (int j = 0; j <= 20 - i; j++) {
                double[] place = small.map(i / 20.0, j / 20.0);
                double[] local = new double[2];

                assertEquals(
                        Math.max(Math.max(-i, -j), i + j - 20) / 20.0,
                        small.locate(place[0], place[1], local),
                        1e-9);
                assertArrayEquals(new double[] {i / 20.0, j / 20.0}, local, 1e-9);
            }
        }
    }
}
