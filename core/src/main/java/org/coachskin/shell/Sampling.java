package org.coachskin.shell;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.coachskin.analysis.Field;
import org.coachskin.panel.Panel;
import org.coachskin.panel.Zone;

/** A figure read at a lattice in every triangle, neighbours sharing what lies between them. */
final class Sampling {

    /** Parts of a side. */
    private static final int PARTS = 4;

    private final Grid grid;
    private final Reading reading;
    private final List<Field.Node> nodes = new ArrayList<>();
    private final List<Field.Triangle> triangles = new ArrayList<>();

    /** Numbers of the nodes at vertices and on edges. */
    private final Map<Integer, Integer> atVertex = new HashMap<>();

    private final Map<Integer, Integer> onEdge = new HashMap<>();

    private Sampling(Grid grid, Reading reading) {
        this.grid = grid;
        this.reading = reading;
    }

    /** A figure at reference coordinates of a triangle. */
    interface Reading {
        double at(int triangle, double[] local);
    }

    static Field of(Panel panel, Grid grid, Reading reading) {
        Sampling sampling = new Sampling(grid, reading);
        List<Zone> zones = panel.zones();
        for (int t = 0; t < grid.triangles(); t++) {
            double[] c = grid.centre(t);
            int zone = panel.zoneAt(c[0], c[1]).map(zones::lastIndexOf).orElse(Field.Triangle.NONE);
            sampling.add(t, zone);
        }
        return new Field(sampling.nodes, sampling.triangles);
    }

    private void add(int t, int zone) {
        int[][] number = new int[PARTS + 1][PARTS + 1];
        for (int j = 0; j <= PARTS; j++) {
            for (int i = 0; i <= PARTS - j; i++) {
                number[i][j] = node(t, i, j);
            }
        }
        double[] m = grid.elements[t].map(1.0 / 3, 1.0 / 3);
        boolean anticlockwise = m[2] * m[5] - m[3] * m[4] > 0;
        for (int j = 0; j < PARTS; j++) {
            for (int i = 0; i < PARTS - j; i++) {
                add(number[i][j], number[i + 1][j], number[i][j + 1], zone, anticlockwise);
                if (i + j < PARTS - 1) {
                    add(
                            number[i + 1][j],
                            number[i + 1][j + 1],
                            number[i][j + 1],
                            zone,
                            anticlockwise);
                }
            }
        }
    }

    private void add(int a, int b, int c, int zone, boolean anticlockwise) {
        triangles.add(new Field.Triangle(a, anticlockwise ? b : c, anticlockwise ? c : b, zone));
    }

    /** Returns the number of the node {@code i} parts along xi and {@code j} along eta. */
    private int node(int t, int i, int j) {
        int k = PARTS - i - j;
        if (i == PARTS || j == PARTS || k == PARTS) {
            int corner = i == PARTS ? 1 : j == PARTS ? 2 : 0;
            return atVertex.computeIfAbsent(grid.corners[3 * t + corner], v -> read(t, i, j));
        }
        if (i == 0 || j == 0 || k == 0) {
            int side = j == 0 ? 0 : k == 0 ? 1 : 2;
            int along = side == 0 ? i : j;
            return onEdge.computeIfAbsent(
                    PARTS * grid.sides[3 * t + side] + along, e -> read(t, i, j));
        }
        return read(t, i, j);
    }

    private int read(int t, int i, int j) {
        double[] local = {(double) i / PARTS, (double) j / PARTS};
        double[] place = grid.elements[t].map(local[0], local[1]);
        nodes.add(new Field.Node(place[0], place[1], reading.at(t, local)));
        return nodes.size() - 1;
    }
}
