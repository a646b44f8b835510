package org.coachskin.mesh;

import java.util.List;
import org.coachskin.NoAnswerException;
import org.coachskin.Problem;
import org.jspecify.annotations.Nullable;

/** Refuses drawings that leave no panel, or one that falls apart. */
final class DrawingCheck {

    /** Rims so near to one another touch, m. */
    private static final double TOUCH = 1e-6;

    /** Corners of a rim sharper than this are slivers, rad. */
    private static final double SLIVER = Math.PI / 36;

    private final Drawing drawing;

    private DrawingCheck(Drawing drawing) {
        this.drawing = drawing;
    }

    static void check(Drawing drawing) {
        DrawingCheck check = new DrawingCheck(drawing);
        check.loop("the outline", drawing.outline());
        List<Loop> holes = drawing.holes();
        for (int i = 0; i < holes.size(); i++) {
            check.loop(name(i), holes.get(i));
            check.holeInPanel(i);
            for (int j = 0; j < i; j++) {
                check.apart(j, i);
            }
        }
    }

    private static String name(int hole) {
        return "hole " + (hole + 1);
    }

    private NoAnswerException refusal(Point p, String what, String fix) {
        return new NoAnswerException(new Problem(Place.of(drawing, p), "", what, fix));
    }

    /** A loop must not cross itself, pinch, or have a corner like a needle. */
    private void loop(String name, Loop loop) {
        List<Curve> curves = loop.curves();
        double thinnest = drawing.wishes().thinnest();
        double whole = curves.stream().mapToDouble(Curve::length).sum();
        int n = curves.size();
        double before = 0;
        for (int j = 0; j < n; j++) {
            Curve b = curves.get(j);
            Curve next = curves.get((j + 1) % n);
            double corner =
                    Math.PI
                            - Math.abs(
                                    StrictMath.IEEEremainder(
                                            next.heading(0) - b.heading(1), 2 * Math.PI));
            if (corner < SLIVER) {
                throw refusal(
                        b.end(),
                        name + " has a corner sharper than 5 degrees here",
                        "blunt the corner");
            }
            double start = 0;
            for (int i = 0; i < j; i++) {
                Curve a = curves.get(i);
                pinch(name, a, start, b, before, whole, thinnest);
                start += a.length();
            }
            before += b.length();
        }
    }

    private void pinch(
            String name,
            Curve a,
            double startA,
            Curve b,
            double startB,
            double whole,
            double thinnest) {
        if (!Box.near(a, b, thinnest)) {
            return;
        }
        for (Point p : Crossings.of(a, b)) {
            double sa = startA + a.nearest(p.x(), p.y()) * a.length();
            double sb = startB + b.nearest(p.x(), p.y()) * b.length();
            double between = Math.min(sb - sa, whole - (sb - sa));
            if (between > TOUCH) {
                throw refusal(p, name + " crosses itself here", "draw it without a crossing");
            }
        }
        Crossings.Pair pair = Crossings.nearest(a, b);
        double sa = startA + a.nearest(pair.first().x(), pair.first().y()) * a.length();
        double sb = startB + b.nearest(pair.second().x(), pair.second().y()) * b.length();
        double between = Math.min(sb - sa, whole - (sb - sa));
        if (pair.distance() < thinnest && between > 3 * thinnest) {
            throw refusal(
                    pair.first(),
                    name
                            + " comes within "
                            + Place.mm(pair.distance())
                            + " of itself here; less than "
                            + Place.mm(thinnest)
                            + " is too thin",
                    "widen it, or draw it closed");
        }
    }

    private void holeInPanel(int i) {
        Loop hole = drawing.holes().get(i);
        Loop outline = drawing.outline();
        int crossings = crossings(hole, outline);
        Crossings.Pair pair = nearest(hole, outline);
        if (crossings > 2) {
            throw refusal(
                    pair.first(),
                    name(i) + " cuts the panel in two; it meets the outline here",
                    "draw two panels, or a smaller hole");
        }
        if (crossings > 0 && pair.distance() < TOUCH) {
            throw refusal(
                    pair.first(),
                    name(i) + " touches or runs over the edge of the panel here",
                    "draw it as a notch of the outline, or move it inward");
        }
        Point p = hole.curves().get(0).at(0.5);
        if (!outline.contains(p.x(), p.y())) {
            Point q = outline.curves().get(0).at(0.5);
            boolean around = hole.contains(q.x(), q.y());
            throw refusal(
                    p,
                    around
                            ? name(i) + " is larger than the panel; nothing is left"
                            : name(i) + " lies off the panel",
                    "check its place and size");
        }
        thin(pair, name(i) + " and the edge of the panel");
    }

    private void apart(int j, int i) {
        Loop a = drawing.holes().get(j);
        Loop b = drawing.holes().get(i);
        Crossings.Pair pair = nearest(a, b);
        Point p = a.curves().get(0).at(0.5);
        Point q = b.curves().get(0).at(0.5);
        boolean within = a.contains(q.x(), q.y()) || b.contains(p.x(), p.y());
        if (pair.distance() < TOUCH || within) {
            throw refusal(
                    pair.first(),
                    name(j) + " and " + name(i) + " overlap or touch here",
                    "draw them as one hole, or move them apart");
        }
        thin(pair, name(j) + " and " + name(i));
    }

    private void thin(Crossings.Pair pair, String between) {
        double thinnest = drawing.wishes().thinnest();
        if (pair.distance() < thinnest) {
            throw refusal(
                    pair.first(),
                    "only "
                            + Place.mm(pair.distance())
                            + " of panel is left between "
                            + between
                            + "; less than "
                            + Place.mm(thinnest)
                            + " is too thin",
                    "move them apart, or cut through");
        }
    }

    private static int crossings(Loop a, Loop b) {
        java.util.List<Point> found = new java.util.ArrayList<>();
        for (Curve p : a.curves()) {
            for (Curve q : b.curves()) {
                for (Point at : Crossings.of(p, q)) {
                    if (found.stream().noneMatch(o -> o.distance(at) < TOUCH)) {
                        found.add(at);
                    }
                }
            }
        }
        return found.size();
    }

    private static Crossings.Pair nearest(Loop a, Loop b) {
        Crossings.@Nullable Pair best = null;
        for (Curve p : a.curves()) {
            for (Curve q : b.curves()) {
                Crossings.Pair pair = Crossings.nearest(p, q);
                if (best == null || pair.distance() < best.distance()) {
                    best = pair;
                }
            }
        }
        if (best == null) {
            throw new IllegalStateException("a loop without curves");
        }
        return best;
    }
}
