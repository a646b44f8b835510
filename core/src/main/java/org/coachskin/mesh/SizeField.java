package org.coachskin.mesh;

import java.util.ArrayList;
import java.util.List;

/** How long an edge may be at a place: grows with the distance from what wishes it short. */
final class SizeField {

    /** Something near which edges shall be no longer than given. */
    private sealed interface Origin {
        Box box();

        double distance(double x, double y);
    }

    private record Along(Curve curve, Box box) implements Origin {
        @Override
        public double distance(double x, double y) {
            return curve.distance(x, y);
        }
    }

    private record Within(List<Point> corners, Box box) implements Origin {
        @Override
        public double distance(double x, double y) {
            double least = Double.MAX_VALUE;
            boolean inside = true;
            for (int i = 0; i < 3; i++) {
                Point a = corners.get(i);
                Point b = corners.get((i + 1) % 3);
                inside &= Predicates.turn(a.x(), a.y(), b.x(), b.y(), x, y) >= 0;
                Curve side = new Curve.Line(a.x(), a.y(), b.x(), b.y());
                least = Math.min(least, side.distance(x, y));
            }
            return inside ? 0 : least;
        }
    }

    private record Wish(Origin origin, double edge) {}

    private final double edge;
    private final double slope;
    private final List<Wish> wishes;

    private SizeField(double edge, double slope, List<Wish> wishes) {
        this.edge = edge;
        this.slope = slope;
        this.wishes = List.copyOf(wishes);
    }

    static SizeField of(Drawing drawing) {
        List<Wish> wishes = new ArrayList<>();
        List<Curve> curves = drawing.curves();
        for (int i = 0; i < curves.size(); i++) {
            if (drawing.edge(i) < drawing.wishes().edge()) {
                Curve curve = curves.get(i);
                wishes.add(new Wish(new Along(curve, Box.of(curve)), drawing.edge(i)));
            }
        }
        return new SizeField(drawing.wishes().edge(), drawing.wishes().growth() - 1, wishes);
    }

    /** Returns a field with one more wish, in a triangle with corners counter-clockwise. */
    SizeField within(Point a, Point b, Point c, double longest) {
        List<Wish> more = new ArrayList<>(wishes);
        Box box =
                new Box(
                        Math.min(a.x(), Math.min(b.x(), c.x())),
                        Math.min(a.y(), Math.min(b.y(), c.y())),
                        Math.max(a.x(), Math.max(b.x(), c.x())),
                        Math.max(a.y(), Math.max(b.y(), c.y())));
        more.add(new Wish(new Within(List.of(a, b, c), box), longest));
        return new SizeField(edge, slope, more);
    }

    /** Returns the longest edge wished at a place, m. */
    double at(double x, double y) {
        double least = edge;
        for (Wish wish : wishes) {
            if (wish.edge + slope * wish.origin.box().distance(x, y) < least) {
                least = Math.min(least, wish.edge + slope * wish.origin.distance(x, y));
            }
        }
        return least;
    }
}
