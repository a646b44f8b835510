package org.coachskin.mesh;

import java.math.BigDecimal;

/** Questions about points whose answer is never spoilt by rounding. */
final class Predicates {

    private static final double EPS = Math.ulp(1.0) / 2;
    private static final double TURN_BOUND = (3 + 16 * EPS) * EPS;
    private static final double CIRCLE_BOUND = (10 + 96 * EPS) * EPS;

    private Predicates() {}

    /**
     * Returns a number with the sign of the turn a, b, c: positive to the left, zero only where the
     * three lie on a line exactly.
     *
     * <p>Error bound: J. R. Shewchuk, Adaptive precision floating-point arithmetic and fast robust
     * geometric predicates, Discrete Comput. Geom. 18 (1997) 305-363; from memory.
     */
    static double turn(double ax, double ay, double bx, double by, double cx, double cy) {
        double left = (ax - cx) * (by - cy);
        double right = (ay - cy) * (bx - cx);
        double det = left - right;
        double bound = TURN_BOUND * (Math.abs(left) + Math.abs(right));
        return Math.abs(det) > bound ? det : exactTurn(ax, ay, bx, by, cx, cy);
    }

    private static double exactTurn(
            double ax, double ay, double bx, double by, double cx, double cy) {
        BigDecimal x = new BigDecimal(cx);
        BigDecimal y = new BigDecimal(cy);
        BigDecimal left = new BigDecimal(ax).subtract(x).multiply(new BigDecimal(by).subtract(y));
        BigDecimal right = new BigDecimal(ay).subtract(y).multiply(new BigDecimal(bx).subtract(x));
        return left.compareTo(right);
    }

    /**
     * Returns whether d lies inside the circle through a, b and c (in the order of a left turn)
     * beyond doubt; false where rounding leaves it open, which costs a triangulation nothing.
     */
    static boolean surelyInCircle(
            double ax,
            double ay,
            double bx,
            double by,
            double cx,
            double cy,
            double dx,
            double dy) {
        double adx = ax - dx;
        double ady = ay - dy;
        double bdx = bx - dx;
        double bdy = by - dy;
        double cdx = cx - dx;
        double cdy = cy - dy;
        double a2 = adx * adx + ady * ady;
        double b2 = bdx * bdx + bdy * bdy;
        double c2 = cdx * cdx + cdy * cdy;
        double bc = bdx * cdy;
        double cb = cdx * bdy;
        double ca = cdx * ady;
        double ac = adx * cdy;
        double ab = adx * bdy;
        double ba = bdx * ady;
        double det = a2 * (bc - cb) + b2 * (ca - ac) + c2 * (ab - ba);
        double size =
                a2 * (Math.abs(bc) + Math.abs(cb))
                        + b2 * (Math.abs(ca) + Math.abs(ac))
                        + c2 * (Math.abs(ab) + Math.abs(ba));
        return det > CIRCLE_BOUND * size;
    }
}
