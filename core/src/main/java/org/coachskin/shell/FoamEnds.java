package org.coachskin.shell;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import org.coachskin.laminate.Laminate;
import org.coachskin.panel.Height;

/**
 * Where foam ends at bare laminate that goes on, edge by edge of the triangles. The skin on the
 * side where the surface steps further comes down over the end with all its plies and its seal
 * coat, and closes it; the other one runs on.
 */
final class FoamEnds {

    private FoamEnds() {}

    /**
     * A stack where it lies.
     *
     * @param depth of its outside surface under that of the panel [m]
     */
    record Placed(Laminate stack, double depth) {
        /** Depth of the middle of the foam; of the stack where there is none. */
        private double middle() {
            if (stack.isBare()) {
                return depth + stack.thickness() / 2;
            }
            double height = stack.bottom(stack.innermostCore()) + stack.foamThickness() / 2;
            return depth + stack.thickness() / 2 - height;
        }
    }

    /**
     * One edge of a triangle.
     *
     * @param edge its number
     * @param triangle that of both with foam
     * @param skin that comes down
     */
    record Piece(int edge, int triangle, Height skin) {}

    /**
     * Returns the edges of triangles along which foam ends.
     *
     * @param placed the stacks of the triangles
     */
    static List<Piece> of(Grid grid, IntFunction<Placed> placed) {
        List<Piece> pieces = new ArrayList<>();
        for (int e = 0; e < grid.edges(); e++) {
            if (grid.onRim(e)) {
                continue;
            }
            int triangle = grid.neighbours[2 * e];
            Placed foamed = placed.apply(triangle);
            Placed bare = placed.apply(grid.neighbours[2 * e + 1]);
            if (foamed.stack.isBare() == bare.stack.isBare()) {
                continue;
            }
            if (foamed.stack.isBare()) {
                Placed other = foamed;
                foamed = bare;
                bare = other;
                triangle = grid.neighbours[2 * e + 1];
            }
            Height skin = bare.middle() <= foamed.middle() ? Height.INSIDE : Height.OUTSIDE;
            pieces.add(new Piece(e, triangle, skin));
        }
        return pieces;
    }
}
