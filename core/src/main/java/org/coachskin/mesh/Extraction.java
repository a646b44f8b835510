package org.coachskin.mesh;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Takes the triangles inside out of a triangulation. */
final class Extraction {

    private Extraction() {}

    static Mesh of(Refiner refiner, Mesh.Origin origin) {
        Triangulation tri = refiner.tri;
        int[] number = new int[tri.vertexCount];
        Arrays.fill(number, -1);
        int count = 0;
        int inside = 0;
        for (int t = 0; t < tri.triangleCount; t++) {
            if (tri.inside[t]) {
                inside++;
                for (int h = 3 * t; h < 3 * t + 3; h++) {
                    number[tri.org[h]] = 0;
                }
            }
        }
        double[] x = new double[tri.vertexCount];
        double[] y = new double[tri.vertexCount];
        for (int v = 0; v < tri.vertexCount; v++) {
            if (number[v] == 0) {
                x[count] = tri.x[v];
                y[count] = tri.y[v];
                number[v] = count++;
            }
        }
        int[] corners = new int[3 * inside];
        List<Trace> traces = new ArrayList<>();
        int at = 0;
        for (int t = 0; t < tri.triangleCount; t++) {
            if (!tri.inside[t]) {
                continue;
            }
            for (int h = 3 * t; h < 3 * t + 3; h++) {
                corners[at++] = number[tri.org[h]];
                int twin = tri.twin[h];
                if (tri.seg[h] >= 0 && (h < twin || !tri.inside[twin / 3])) {
                    Segment s = refiner.segments.get(tri.seg[h]);
                    Piece piece = refiner.piece(tri.seg[h]);
                    traces.add(
                            new Trace(
                                    number[s.a()],
                                    number[s.b()],
                                    refiner.arc(s),
                                    piece.curves(),
                                    piece.rim()));
                }
            }
        }
        return new Mesh(Arrays.copyOf(x, count), Arrays.copyOf(y, count), corners, traces, origin);
    }
}
