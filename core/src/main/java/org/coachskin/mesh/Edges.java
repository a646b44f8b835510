package org.coachskin.mesh;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The edges of a mesh, numbered as the triangles first come upon them. */
final class Edges {

    private final int[] sides;
    private final int[] start;
    private final int[] end;
    private final int[] left;
    private final int[] right;
    private final @Nullable Trace[] traces;

    Edges(int[] corners, List<Trace> given) {
        sides = new int[corners.length];
        int[] a = new int[corners.length];
        int[] b = new int[corners.length];
        int[] l = new int[corners.length];
        int[] r = new int[corners.length];
        Arrays.fill(r, -1);
        Map<Long, Integer> numbers = new HashMap<>();
        int count = 0;
        for (int h = 0; h < corners.length; h++) {
            int from = corners[h];
            int to = corners[Triangulation.next(h)];
            Integer known = numbers.get(key(from, to));
            if (known == null) {
                a[count] = from;
                b[count] = to;
                l[count] = h / 3;
                numbers.put(key(from, to), count);
                sides[h] = count++;
            } else {
                if (r[known] >= 0 || a[known] != to) {
                    throw new IllegalStateException("three triangles at one edge");
                }
                r[known] = h / 3;
                sides[h] = known;
            }
        }
        start = Arrays.copyOf(a, count);
        end = Arrays.copyOf(b, count);
        left = Arrays.copyOf(l, count);
        right = Arrays.copyOf(r, count);
        traces = new Trace[count];
        for (Trace trace : given) {
            Integer edge = numbers.get(key(trace.start(), trace.end()));
            if (edge == null) {
                throw new IllegalStateException("a line without an edge");
            }
            traces[edge] = trace.start() == start[edge] ? trace : trace.reversed();
        }
    }

    private static long key(int a, int b) {
        return (long) Math.min(a, b) << 32 | Math.max(a, b);
    }

    int count() {
        return start.length;
    }

    int side(int triangle, int side) {
        return sides[3 * triangle + side];
    }

    int start(int edge) {
        return start[edge];
    }

    int end(int edge) {
        return end[edge];
    }

    int left(int edge) {
        return left[edge];
    }

    int right(int edge) {
        return right[edge];
    }

    @Nullable Trace trace(int edge) {
        return traces[edge];
    }
}
