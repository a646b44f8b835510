package org.coachskin.mesh;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Where a curve touches an earlier one, or crosses it at so flat an angle, that the two are laid
 * together for a stretch; without this, lines that touch would leave a corner of no angle at all.
 */
final class Stretches {

    /** Curves part where the gap is this part of the distance within which they are together. */
    private static final double PARTED = 0.9;

    /** Flat crossings are those along which curves stay together for so many distances. */
    private static final double FLAT = 8;

    /** A curve that ends on another at less than this touches it; the sine of 20 degrees. */
    private static final double TOUCHES = 0.34;

    /** Where on the later curve the gap opens, on which side; side 0: one of the curves ends. */
    private record Bound(double t, int side) {}

    private final Curve earlier;
    private final Curve later;
    private final double gap;
    private final double flat;
    private final List<double[]> found = new ArrayList<>();

    Stretches(Curve earlier, Curve later, double together) {
        this.earlier = earlier;
        this.later = later;
        this.gap = PARTED * together;
        this.flat = FLAT * together;
        if (earlier instanceof Curve.Arc || later instanceof Curve.Arc) {
            find();
        }
    }

    /** Returns stretches of the later curve, from t to t. */
    List<double[]> found() {
        return List.copyOf(found);
    }

    private void find() {
        List<Bound> bounds = new ArrayList<>();
        for (int side = -1; side <= 1; side += 2) {
            Curve moved = Crossings.beside(earlier, side * gap);
            if (moved != null) {
                for (Point p : Crossings.of(moved, later)) {
                    bounds.add(new Bound(later.nearest(p.x(), p.y()), side));
                }
            }
        }
        if (!Snapper.closed(earlier)) {
            for (Point p : List.of(earlier.start(), earlier.end())) {
                if (later.distance(p.x(), p.y()) < gap) {
                    bounds.add(new Bound(later.nearest(p.x(), p.y()), 0));
                }
            }
        }
        boolean closed = Snapper.closed(later);
        if (!closed) {
            bounds.add(new Bound(0, 0));
            bounds.add(new Bound(1, 0));
        }
        bounds.sort(Comparator.comparingDouble(Bound::t).thenComparingInt(Bound::side));
        for (int i = 0; i + 1 < bounds.size(); i++) {
            keepIfTogether(bounds.get(i), bounds.get(i + 1), 0);
        }
        if (closed && !bounds.isEmpty()) {
            keepIfTogether(bounds.get(bounds.size() - 1), bounds.get(0), 1);
        }
    }

    private void keepIfTogether(Bound from, Bound to, int turn) {
        double length = to.t + turn - from.t;
        double mid = (from.t + to.t + turn) / 2;
        Point p = later.at(mid > 1 ? mid - 1 : mid);
        if (length <= 0 || earlier.distance(p.x(), p.y()) >= gap) {
            return;
        }
        boolean sameSide = from.side == to.side && from.side != 0;
        if (sameSide || touches(from) || touches(to) || length * later.length() > flat) {
            if (turn == 0) {
                found.add(new double[] {from.t, to.t});
            } else {
                found.add(new double[] {from.t, 1});
                found.add(new double[] {0, to.t});
            }
        }
    }

    /** Whether one curve ends here on the other and hardly at an angle. */
    private boolean touches(Bound bound) {
        Point p = later.at(bound.t);
        double here = earlier.heading(earlier.nearest(p.x(), p.y()));
        return bound.side == 0 && Math.abs(StrictMath.sin(later.heading(bound.t) - here)) < TOUCHES;
    }
}
