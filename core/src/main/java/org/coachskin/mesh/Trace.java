package org.coachskin.mesh;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What an edge of the mesh stands for.
 *
 * @param start vertex
 * @param end vertex
 * @param arc its shape from start to end, or null if straight
 * @param curves numbers of the drawing's curves, rising
 * @param rim whether it bounds the panel
 */
record Trace(int start, int end, Curve.@Nullable Arc arc, List<Integer> curves, boolean rim) {

    Trace {
        curves = List.copyOf(curves);
    }

    Trace reversed() {
        Curve.Arc back = arc == null ? null : arc.part(1, 0);
        return new Trace(end, start, back, curves, rim);
    }
}
