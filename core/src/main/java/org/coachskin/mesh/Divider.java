package org.coachskin.mesh;

import java.util.ArrayList;
import java.util.List;

/** Divides pieces as long as the wish allows, and arcs so often that chords stand for them. */
final class Divider {

    /** An arc between two vertices turns by this at most. */
    static final double MOST_SWEEP = Math.PI / 4;

    private static final int SAMPLES = 16;
    private static final int MOST_PARTS = 20_000;

    private final Arrangement arrangement;
    private final SizeField sizes;
    private final List<Point> vertices;
    private List<Segment> segments = new ArrayList<>();

    private Divider(Arrangement arrangement, SizeField sizes) {
        this.arrangement = arrangement;
        this.sizes = sizes;
        this.vertices = new ArrayList<>(arrangement.vertices());
    }

    /**
     * All pieces divided.
     *
     * @param vertices those of the arrangement first
     * @param segments no arc has a vertex or a part of another between itself and its chord
     */
    record Divided(List<Point> vertices, List<Segment> segments) {}

    static Divided divide(Arrangement arrangement, SizeField sizes) {
        Divider divider = new Divider(arrangement, sizes);
        for (int i = 0; i < arrangement.pieces().size(); i++) {
            divider.divide(i);
        }
        divider.clearChords();
        return new Divided(List.copyOf(divider.vertices), List.copyOf(divider.segments));
    }

    private void divide(int root) {
        Piece piece = arrangement.pieces().get(root);
        double[] sum = needed(piece.curve());
        double total = sum[SAMPLES];
        int parts = (int) Math.max(1, Math.min(MOST_PARTS, Math.ceil(total * (1 - 1e-9))));
        if (piece.curve() instanceof Curve.Arc arc) {
            parts =
                    Math.max(
                            parts,
                            (int) Math.ceil(Math.abs(arc.sweep()) / MOST_SWEEP * (1 - 1e-9)));
        }
        double[] t = places(sum, parts);
        while (parts < MOST_PARTS && tooLong(piece.curve(), t)) {
            parts++;
            t = places(sum, parts);
        }
        int from = piece.a();
        for (int k = 1; k <= parts; k++) {
            int to = piece.b();
            if (k < parts) {
                to = vertices.size();
                vertices.add(piece.curve().at(t[k]));
            }
            segments.add(new Segment(from, to, root, t[k - 1], t[k]));
            from = to;
        }
    }

    /** Edges needed from the start of the curve to each of its samples. */
    private double[] needed(Curve curve) {
        double[] sum = new double[SAMPLES + 1];
        for (int k = 1; k <= SAMPLES; k++) {
            Point p = curve.at((k - 0.5) / SAMPLES);
            sum[k] = sum[k - 1] + curve.length() / SAMPLES / sizes.at(p.x(), p.y());
        }
        return sum;
    }

    private static double[] places(double[] sum, int parts) {
        double[] t = new double[parts + 1];
        int k = 1;
        for (int i = 1; i < parts; i++) {
            double wanted = sum[SAMPLES] * i / parts;
            while (sum[k] < wanted) {
                k++;
            }
            t[i] = (k - 1 + (wanted - sum[k - 1]) / (sum[k] - sum[k - 1])) / SAMPLES;
        }
        t[parts] = 1;
        return t;
    }

    private boolean tooLong(Curve curve, double[] t) {
        for (int i = 1; i < t.length; i++) {
            if (curve instanceof Curve.Arc arc
                    && (t[i] - t[i - 1]) * Math.abs(arc.sweep()) > MOST_SWEEP * (1 + 1e-9)) {
                return true;
            }
            Point p = curve.at(t[i - 1]);
            Point q = curve.at(t[i]);
            double wish = sizes.at((p.x() + q.x()) / 2, (p.y() + q.y()) / 2);
            if (p.distance(q) > wish) {
                return true;
            }
        }
        return false;
    }

    /** Halves arcs until nothing lies between any of them and its chord. */
    private void clearChords() {
        boolean changed = true;
        while (changed && segments.size() < MOST_PARTS / 4) {
            changed = false;
            List<Segment> next = new ArrayList<>();
            for (Segment segment : segments) {
                if (curve(segment) instanceof Curve.Arc && inTheWay(segment)) {
                    double mid = (segment.t0() + segment.t1()) / 2;
                    int m = vertices.size();
                    vertices.add(arrangement.pieces().get(segment.root()).curve().at(mid));
                    next.add(new Segment(segment.a(), m, segment.root(), segment.t0(), mid));
                    next.add(new Segment(m, segment.b(), segment.root(), mid, segment.t1()));
                    changed = true;
                } else {
                    next.add(segment);
                }
            }
            segments = next;
        }
    }

    private Curve curve(Segment segment) {
        return arrangement.pieces().get(segment.root()).curve();
    }

    private boolean inTheWay(Segment arc) {
        Point a = vertices.get(arc.a());
        Point b = vertices.get(arc.b());
        double mx = (a.x() + b.x()) / 2;
        double my = (a.y() + b.y()) / 2;
        double reach = a.distance(b) / 2;
        Box box = Box.around(mx, my, reach);
        Curve.Arc part = ((Curve.Arc) curve(arc)).part(arc.t0(), arc.t1());
        for (Segment other : segments) {
            if (other.equals(arc)) {
                continue;
            }
            Point p = vertices.get(other.a());
            Point q = vertices.get(other.b());
            Box chord =
                    new Box(
                            Math.min(p.x(), q.x()),
                            Math.min(p.y(), q.y()),
                            Math.max(p.x(), q.x()),
                            Math.max(p.y(), q.y()));
            if (box.distance(chord) > 0) {
                continue;
            }
            boolean strange = other.a() != arc.a() && other.a() != arc.b();
            if ((strange && between(part, a, b, p))
                    || crosses(a, b, p, q)
                    || (sharesEnd(arc, other) && cutsLens(part, a, b, p, q))) {
                return true;
            }
        }
        return false;
    }

    private static boolean sharesEnd(Segment s, Segment o) {
        return s.a() == o.a() || s.a() == o.b() || s.b() == o.a() || s.b() == o.b();
    }

    /** Whether a chord from one of the arc's ends runs through the space beside the arc's chord. */
    private static boolean cutsLens(Curve.Arc arc, Point a, Point b, Point p, Point q) {
        for (int k = 1; k < 8; k++) {
            double s = k / 8.0;
            Point at = new Point(p.x() + s * (q.x() - p.x()), p.y() + s * (q.y() - p.y()));
            if (between(arc, a, b, at)) {
                return true;
            }
        }
        return false;
    }

    private static boolean between(Curve.Arc arc, Point a, Point b, Point p) {
        double dx = p.x() - arc.centreX();
        double dy = p.y() - arc.centreY();
        boolean inCircle = dx * dx + dy * dy <= arc.radius() * arc.radius() * (1 + 1e-9);
        double turn = Predicates.turn(a.x(), a.y(), b.x(), b.y(), p.x(), p.y());
        return inCircle && (arc.sweep() > 0 ? turn <= 0 : turn >= 0);
    }

    private static boolean crosses(Point a, Point b, Point p, Point q) {
        double p1 = Predicates.turn(a.x(), a.y(), b.x(), b.y(), p.x(), p.y());
        double q1 = Predicates.turn(a.x(), a.y(), b.x(), b.y(), q.x(), q.y());
        double a1 = Predicates.turn(p.x(), p.y(), q.x(), q.y(), a.x(), a.y());
        double b1 = Predicates.turn(p.x(), p.y(), q.x(), q.y(), b.x(), b.y());
        return p1 * q1 < 0 && a1 * b1 < 0;
    }
}
