package org.coachskin.mesh;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.PriorityQueue;
import org.jspecify.annotations.Nullable;

/** Adds vertices until no triangle is too sharp or too large and every arc is well inside. */
final class Refiner {

    /** Vertices of the box come before those of the arrangement. */
    static final int BOX = 4;

    private static final int MOST_VERTICES = 20_000;

    /** Triangles with too long an edge come before those that are only too sharp. */
    private static final double TOO_LONG = 1e6;

    /** Off-centres aim at a little more than the angle asked for. */
    private static final double OVER = 1.05;

    /** Sharpest corner of a curved triangle, rad, where the drawing itself is not sharper. */
    private static final double CURVED = Math.PI / 12;

    /** Arcs that turn less are not divided for the sake of a corner, rad. */
    private static final double STRAIGHT = Math.PI / 24;

    /** Nor those that turn less than this for the sake of a corner at all, rad. */
    private static final double FLAT = 1e-4;

    final Triangulation tri;
    final List<Segment> segments = new ArrayList<>();
    private final List<Boolean> alive = new ArrayList<>();
    private final Arrangement arrangement;
    private final SizeField sizes;
    private final Shapes shapes;
    private final Corners corners;
    private final Constrain constrain;
    private final double sinSharpest;
    private final double offCentre;
    private int[] rootOf = new int[1024];
    private final Deque<int[]> segmentQueue = new ArrayDeque<>();
    private final PriorityQueue<Entry> queue = new PriorityQueue<>();
    private int serial;

    private record Entry(double key, int serial, int t, int a, int b, int c)
            implements Comparable<Entry> {
        @Override
        public int compareTo(Entry other) {
            int byKey = Double.compare(other.key, key);
            return byKey != 0 ? byKey : Integer.compare(serial, other.serial);
        }
    }

    Refiner(Arrangement arrangement, SizeField sizes, double smallestAngle, List<Point> free) {
        this.arrangement = arrangement;
        this.sizes = sizes;
        this.corners = new Corners(arrangement);
        this.sinSharpest = StrictMath.sin(smallestAngle);
        this.offCentre = 0.5 / StrictMath.tan(OVER * smallestAngle / 2);
        Divider.Divided divided = Divider.divide(arrangement, sizes);
        Box box = new Box(0, 0, 0, 0);
        for (int i = 0; i < divided.vertices().size(); i++) {
            Point p = divided.vertices().get(i);
            Box dot = Box.around(p.x(), p.y(), 0);
            box = i == 0 ? dot : box.with(dot);
        }
        this.tri = new Triangulation(box);
        this.shapes = new Shapes(tri);
        this.constrain = new Constrain(tri);
        int last = 0;
        int given = arrangement.vertices().size();
        for (Point p : divided.vertices()) {
            int v = tri.insert(p.x(), p.y(), tri.locate(p.x(), p.y(), last));
            setRoot(v, v - BOX < given ? -2 : -1);
            last = tri.from(v) / 3;
        }
        for (Point p : free) {
            int v = tri.insert(p.x(), p.y(), tri.locate(p.x(), p.y(), last));
            setRoot(v, -1);
            last = tri.from(v) / 3;
        }
        for (Segment s : divided.segments()) {
            int id = add(new Segment(s.a() + BOX, s.b() + BOX, s.root(), s.t0(), s.t1()));
            for (int v : new int[] {s.a() + BOX, s.b() + BOX}) {
                if (rootOf[v] == -1) {
                    setRoot(v, s.root());
                }
            }
            constrain.recover(s.a() + BOX, s.b() + BOX, id);
        }
        boolean[] rim = new boolean[segments.size()];
        for (int i = 0; i < rim.length; i++) {
            rim[i] = piece(i).rim();
        }
        constrain.flood(rim);
    }

    private int add(Segment segment) {
        segments.add(segment);
        alive.add(true);
        return segments.size() - 1;
    }

    private void setRoot(int v, int root) {
        if (v >= rootOf.length) {
            rootOf = java.util.Arrays.copyOf(rootOf, 2 * v);
        }
        rootOf[v] = root;
    }

    Piece piece(int segment) {
        return arrangement.pieces().get(segments.get(segment).root());
    }

    void refine() {
        tri.touchedCount = 0;
        for (int i = 0; i < segments.size(); i++) {
            segmentQueue.add(new int[] {i, 0});
        }
        for (int t = 0; t < tri.triangleCount; t++) {
            judge(t);
        }
        while (!segmentQueue.isEmpty() || !queue.isEmpty()) {
            if (!segmentQueue.isEmpty()) {
                int[] next = segmentQueue.poll();
                if (alive.get(next[0]) && (next[1] == 1 || encroached(next[0]))) {
                    split(next[0]);
                }
            } else {
                Entry entry = queue.remove();
                int h = 3 * entry.t;
                if (tri.org[h] == entry.a
                        && tri.org[h + 1] == entry.b
                        && tri.org[h + 2] == entry.c) {
                    mend(entry.t, entry.key >= TOO_LONG);
                }
            }
            if (tri.vertexCount > MOST_VERTICES) {
                int v = tri.vertexCount - 1;
                throw new TooManyException(new Point(tri.x[v], tri.y[v]));
            }
        }
    }

    private void judgeTouched() {
        for (int i = 0; i < tri.touchedCount; i++) {
            int t = tri.touched[i];
            if (tri.inside[t]) {
                for (int h = 3 * t; h < 3 * t + 3; h++) {
                    if (tri.seg[h] >= 0 && seenWide(h)) {
                        segmentQueue.add(new int[] {tri.seg[h], 0});
                    }
                }
            }
        }
        for (int i = 0; i < tri.touchedCount; i++) {
            judge(tri.touched[i]);
        }
        tri.touchedCount = 0;
    }

    private boolean encroached(int segment) {
        Segment s = segments.get(segment);
        int h = tri.edge(s.a(), s.b());
        int g = tri.twin[h];
        return (tri.inside[h / 3] && seenWide(h)) || (tri.inside[g / 3] && seenWide(g));
    }

    /** Whether the apex sees an edge under more than a right angle. */
    private boolean seenWide(int h) {
        int p = tri.apex(h);
        return shapes.seenWide(h, tri.x[p], tri.y[p]);
    }

    /** Queues a triangle that has to be mended. */
    private void judge(int t) {
        if (!tri.inside[t]) {
            return;
        }
        double shortest = Double.MAX_VALUE;
        int shortEdge = -1;
        double excess = 0;
        double product = 1;
        for (int h = 3 * t; h < 3 * t + 3; h++) {
            int a = tri.org[h];
            int b = tri.dest(h);
            double square = shapes.square(a, b);
            product *= square;
            if (square < shortest) {
                shortest = square;
                shortEdge = h;
            }
            double wish = sizes.at((tri.x[a] + tri.x[b]) / 2, (tri.y[a] + tri.y[b]) / 2);
            excess = Math.max(excess, square / (wish * wish));
        }
        double area = tri.turn(tri.org[3 * t], tri.org[3 * t + 1], tri.org[3 * t + 2]);
        // The sharpest corner lies opposite the shortest side; twice the area is the product of
        // the other two sides and its sine.
        double sine = Math.sqrt(shortest) * area / Math.sqrt(product);
        if (excess > 1 + 1e-9) {
            queue(TOO_LONG * excess, t);
        } else if (sine < sinSharpest && !excused(shortEdge)) {
            queue(1 / sine, t);
        } else {
            judgeCurved(t);
        }
    }

    private void queue(double key, int t) {
        queue.add(
                new Entry(
                        key, serial++, t, tri.org[3 * t], tri.org[3 * t + 1], tri.org[3 * t + 2]));
    }

    /** Divides an arc that bulges into a triangle so far that a corner becomes too sharp. */
    private void judgeCurved(int t) {
        for (int h = 3 * t; h < 3 * t + 3; h++) {
            if (tri.seg[h] < 0) {
                continue;
            }
            double turn = bulge(h);
            double atStart = shapes.cornerAngle(h) + turn + bulge(Triangulation.prev(h));
            double atEnd =
                    shapes.cornerAngle(Triangulation.next(h)) + turn + bulge(Triangulation.next(h));
            double sharpest = Math.min(atStart, atEnd);
            boolean flat = Math.abs(turn) * 2 < STRAIGHT;
            if (flat && (sharpest > -turn || -turn < FLAT)) {
                continue;
            }
            if (turn < 0 && sharpest < CURVED) {
                segmentQueue.add(new int[] {tri.seg[h], 1});
            } else if (turn > 0 && Math.max(atStart, atEnd) > Math.PI - CURVED) {
                segmentQueue.add(new int[] {tri.seg[h], 1});
            }
        }
    }

    /** How far an edge turns from its chord at its ends, rad; positive where it bulges outward. */
    private double bulge(int h) {
        if (tri.seg[h] < 0) {
            return 0;
        }
        Segment s = segments.get(tri.seg[h]);
        if (!(piece(tri.seg[h]).curve() instanceof Curve.Arc arc)) {
            return 0;
        }
        double sweep = arc.sweep() * (s.t1() - s.t0());
        return s.a() == tri.org[h] ? sweep / 2 : -sweep / 2;
    }

    /** Whether a sharp triangle owes its sharpness to the drawing. */
    private boolean excused(int shortEdge) {
        int opposite = Triangulation.prev(shortEdge);
        if (tri.seg[opposite] >= 0 && tri.seg[Triangulation.prev(opposite)] >= 0) {
            return true;
        }
        int p = tri.org[shortEdge];
        int q = tri.dest(shortEdge);
        if (rootOf[p] < 0 || rootOf[q] < 0 || rootOf[p] == rootOf[q]) {
            return false;
        }
        Piece first = arrangement.pieces().get(rootOf[p]);
        for (int v : new int[] {first.a(), first.b()}) {
            if (corners.sharp(v, rootOf[p], rootOf[q])) {
                double dp = shapes.square(v + BOX, p);
                double dq = shapes.square(v + BOX, q);
                if (Math.abs(dp - dq) < 1e-3 * (dp + dq)) {
                    return true;
                }
            }
        }
        return false;
    }

    private void mend(int t, boolean tooLong) {
        int h = 3 * t;
        for (int k = 3 * t + 1; k < 3 * t + 3; k++) {
            if (shapes.square(tri.org[k], tri.dest(k)) < shapes.square(tri.org[h], tri.dest(h))) {
                h = k;
            }
        }
        Point p = shapes.candidate(h, offCentre);
        Walk walk = new Walk(tri, t, p);
        List<Integer> inTheWay =
                walk.blockedBy() >= 0
                        ? List.of(walk.blockedBy())
                        : encroachedBy(p, walk.triangle());
        if (inTheWay.isEmpty()) {
            int v = tri.insert(p.x(), p.y(), walk.triangle());
            setRoot(v, -1);
            judgeTouched();
            return;
        }
        double shortest = shapes.square(tri.org[h], tri.dest(h));
        for (int s : inTheWay) {
            Segment segment = segments.get(s);
            boolean sharp = sharpEnd(segment, segment.a()) || sharpEnd(segment, segment.b());
            if (!tooLong && sharp && shapes.square(segment.a(), segment.b()) / 4 < shortest) {
                return;
            }
        }
        inTheWay.forEach(s -> segmentQueue.add(new int[] {s, 1}));
        queue(tooLong ? TOO_LONG : 0, t);
    }

    private boolean sharpEnd(Segment s, int vertex) {
        return corners.sharp(vertex - BOX, s.root());
    }

    /** Segments that a new vertex would see under more than a right angle. */
    private List<Integer> encroachedBy(Point p, int start) {
        List<Integer> found = new ArrayList<>();
        List<Integer> cavity = new ArrayList<>();
        cavity.add(start);
        for (int i = 0; i < cavity.size(); i++) {
            int t = cavity.get(i);
            for (int h = 3 * t; h < 3 * t + 3; h++) {
                if (tri.seg[h] >= 0) {
                    if (shapes.seenWide(h, p.x(), p.y()) && !found.contains(tri.seg[h])) {
                        found.add(tri.seg[h]);
                    }
                } else if (!cavity.contains(tri.twin[h] / 3)
                        && shapes.inCircle(tri.twin[h] / 3, p)) {
                    cavity.add(tri.twin[h] / 3);
                }
            }
        }
        return found;
    }

    private void split(int segment) {
        Segment s = segments.get(segment);
        Curve curve = piece(segment).curve();
        double mid = middle(s, curve);
        Point p = curve.at(mid);
        alive.set(segment, false);
        int first = segments.size();
        int h = tri.edge(s.a(), s.b());
        int m;
        if (tri.canSplit(h, p.x(), p.y())) {
            m = tri.addVertex(p.x(), p.y());
            tri.splitEdge(h, m, first, first + 1);
            tri.legalize();
        } else {
            m = splitBeside(h, p, s, first);
        }
        add(new Segment(s.a(), m, s.root(), s.t0(), mid));
        add(new Segment(m, s.b(), s.root(), mid, s.t1()));
        setRoot(m, s.root());
        segmentQueue.add(new int[] {first, 0});
        segmentQueue.add(new int[] {first + 1, 0});
        judgeTouched();
    }

    /** Splits an arc whose middle lies beyond the triangle beside its chord. */
    private int splitBeside(int h, Point p, Segment s, int first) {
        int m = tri.insert(p.x(), p.y(), tri.locate(p.x(), p.y(), h / 3));
        constrain.recover(s.a(), m, first);
        constrain.recover(m, s.b(), first + 1);
        int chord = tri.edge(s.a(), s.b());
        if (tri.apex(chord) != m) {
            chord = tri.twin[chord];
        }
        if (tri.apex(chord) != m) {
            throw constrain.clash(m);
        }
        tri.inside[chord / 3] = tri.inside[tri.twin[chord] / 3];
        tri.mark(chord, -1);
        tri.push(chord);
        tri.legalize();
        return m;
    }

    /** Halves, or at a sharp corner cuts where the other lines of the corner are cut too. */
    private double middle(Segment s, Curve curve) {
        boolean atStart = sharpEnd(s, s.a());
        boolean atEnd = sharpEnd(s, s.b());
        if (atStart == atEnd) {
            return (s.t0() + s.t1()) / 2;
        }
        double chord = Math.sqrt(shapes.square(s.a(), s.b()));
        double shell = Math.scalb(1.0, Math.getExponent(chord * 2 / 3));
        double step =
                curve instanceof Curve.Arc arc
                        ? 2 * StrictMath.asin(shell / (2 * arc.radius())) / Math.abs(arc.sweep())
                        : (s.t1() - s.t0()) * shell / chord;
        return atStart ? s.t0() + step : s.t1() - step;
    }

    /** Returns the curve of a segment as an arc from its start to its end, or null if straight. */
    Curve.@Nullable Arc arc(Segment s) {
        Curve curve = arrangement.pieces().get(s.root()).curve();
        return curve instanceof Curve.Arc arc ? arc.part(s.t0(), s.t1()) : null;
    }
}
