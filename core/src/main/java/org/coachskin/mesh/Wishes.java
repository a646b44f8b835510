package org.coachskin.mesh;

import org.coachskin.Require;

/**
 * What is wished of a mesh.
 *
 * @param edge longest edge anywhere, m
 * @param growth how much longer an edge may be than the one before it on the way from a line with a
 *     finer wish, above 1; the wish grows by (growth - 1) m a metre
 * @param smallestAngle sharpest corner of a triangle, rad, at most 30 degrees; sharper ones are
 *     left only where lines of the drawing meet at less than twice this
 * @param together lines nearer to one another than this are laid on one another, the later drawn on
 *     the earlier and never the rim, m
 * @param thinnest narrowest strip of panel that may be left between two rims, m
 */
public record Wishes(
        double edge, double growth, double smallestAngle, double together, double thinnest) {

    private static final double DEGREE = Math.PI / 180;

    /** Checks that the wishes can be met. */
    public Wishes {
        Require.positive("longest edge", edge, "m");
        Require.within("growth", growth, 1.05, 10, "");
        Require.within("smallest angle", smallestAngle, 0, 30 * DEGREE * (1 + 1e-12), "rad");
        Require.positive("distance of lines laid together", together, "m");
        Require.within("thinnest strip", thinnest, 2 * together, Double.MAX_VALUE, "m");
    }

    /**
     * Returns the usual wishes: growth 1.5, 25 degrees, lines laid together within 1 mm, strips of
     * 3 mm and more.
     */
    public static Wishes edgesUpTo(double edge) {
        return new Wishes(edge, 1.5, 25 * DEGREE, 1e-3, 3e-3);
    }
}
