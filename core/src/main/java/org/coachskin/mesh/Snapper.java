package org.coachskin.mesh;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import org.coachskin.NoAnswerException;
import org.coachskin.Problem;

/**
 * Makes pieces that meet only in vertices out of curves that cross, touch, or all but lie on one
 * another. The rim stays as drawn; any other line is bent by about the distance within which lines
 * are laid together, through every vertex that lies so near to it.
 */
final class Snapper {

    private static final double EXACT = 1e-9;
    private static final int ROUNDS = 12;
    private static final int SAMPLES = 32;

    private final Drawing drawing;
    private final List<Curve> curves;
    private final int rims;
    private final double together;
    private final List<Point> vertices = new ArrayList<>();
    private List<Piece> pieces = new ArrayList<>();

    private Snapper(Drawing drawing) {
        this.drawing = drawing;
        this.curves = drawing.curves();
        this.rims = drawing.rimCurves();
        this.together = drawing.wishes().together();
    }

    static Arrangement arrange(Drawing drawing) {
        Snapper snapper = new Snapper(drawing);
        snapper.placeVertices();
        snapper.cutAtVertices();
        snapper.settle();
        snapper.cutOff();
        return snapper.result();
    }

    private void placeVertices() {
        for (int i = 0; i < rims; i++) {
            addRimVertex(curves.get(i).start());
        }
        for (int j = rims; j < curves.size(); j++) {
            for (int i = 0; i < rims; i++) {
                meet(i, j);
            }
        }
        for (int j = rims; j < curves.size(); j++) {
            Curve curve = curves.get(j);
            if (!closed(curve)) {
                vertex(curve.start(), j);
                vertex(curve.end(), j);
            }
        }
        for (int j = rims; j < curves.size(); j++) {
            for (int i = rims; i < j; i++) {
                meet(i, j);
            }
        }
        for (int j = rims; j < curves.size(); j++) {
            if (closed(curves.get(j)) && nearVertices(curves.get(j), together).isEmpty()) {
                vertex(curves.get(j).start(), j);
            }
        }
    }

    private void addRimVertex(Point p) {
        for (Point v : vertices) {
            if (v.distance(p) <= EXACT) {
                return;
            }
        }
        vertices.add(p);
    }

    /** Places vertices where two curves meet, or part after having run along one another. */
    private void meet(int earlier, int later) {
        Curve a = curves.get(earlier);
        Curve b = curves.get(later);
        if (!Box.near(a, b, together)) {
            return;
        }
        List<double[]> stretches = new Stretches(a, b, together).found();
        for (double[] stretch : stretches) {
            for (double t : stretch) {
                if (t > 0 && t < 1) {
                    Point p = b.at(t);
                    Point q = a.at(a.nearest(p.x(), p.y()));
                    vertex(q, later);
                }
            }
        }
        for (Point p : Crossings.of(a, b)) {
            double t = b.nearest(p.x(), p.y());
            if (stretches.stream().noneMatch(s -> s[0] <= t && t <= s[1])) {
                vertex(p, later);
            }
        }
    }

    /**
     * Returns the vertex at or near p; where there is none, makes one on an earlier curve or at p.
     */
    private int vertex(Point p, int curve) {
        int near = nearestVertex(p);
        if (near >= 0) {
            return near;
        }
        Point best = p;
        double least = together;
        for (int i = 0; i < curve; i++) {
            if (i == rims && least < together) {
                break;
            }
            Curve other = curves.get(i);
            Point q = other.at(other.nearest(p.x(), p.y()));
            if (q.distance(p) < least) {
                least = q.distance(p);
                best = q;
            }
        }
        near = nearestVertex(best);
        if (near >= 0) {
            return near;
        }
        vertices.add(best);
        return vertices.size() - 1;
    }

    private int nearestVertex(Point p) {
        int best = -1;
        double least = together;
        for (int v = 0; v < vertices.size(); v++) {
            double d = vertices.get(v).distance(p);
            if (d <= least) {
                least = d;
                best = v;
            }
        }
        return best;
    }

    private record On(double t, int vertex) {}

    /** Vertices within a distance of the curve, in its order, those beside its ends left out. */
    private List<On> nearVertices(Curve curve, double distance) {
        List<On> found = new ArrayList<>();
        boolean closed = closed(curve);
        for (int v = 0; v < vertices.size(); v++) {
            Point p = vertices.get(v);
            if (!Box.near(curve, p, distance)) {
                continue;
            }
            double t = curve.nearest(p.x(), p.y());
            if ((closed || (t > 0 && t < 1)) && curve.at(t).distance(p) <= distance) {
                found.add(new On(t, v));
            }
        }
        found.sort(Comparator.comparingDouble(On::t).thenComparingInt(On::vertex));
        return found;
    }

    private void cutAtVertices() {
        for (int i = 0; i < curves.size(); i++) {
            Curve curve = curves.get(i);
            boolean rim = i < rims;
            List<On> on = nearVertices(curve, rim ? EXACT : together);
            if (closed(curve)) {
                cutClosed(curve, on, i, rim);
            } else {
                int a = rim ? exactVertex(curve.start()) : vertex(curve.start(), i);
                int b = rim ? exactVertex(curve.end()) : vertex(curve.end(), i);
                cut(new Piece(a, b, curve, List.of(i), rim), on, pieces);
            }
        }
    }

    private int exactVertex(Point p) {
        int best = 0;
        for (int v = 1; v < vertices.size(); v++) {
            if (vertices.get(v).distance(p) < vertices.get(best).distance(p)) {
                best = v;
            }
        }
        return best;
    }

    private void cutClosed(Curve curve, List<On> on, int number, boolean rim) {
        Curve.Arc arc = (Curve.Arc) curve;
        for (int k = 0; k < on.size(); k++) {
            On from = on.get(k);
            On to = on.get((k + 1) % on.size());
            double end = k + 1 < on.size() ? to.t : 1 + to.t;
            Curve part =
                    new Curve.Arc(
                            arc.centreX(),
                            arc.centreY(),
                            arc.radius(),
                            arc.startAngle() + from.t * arc.sweep(),
                            on.size() == 1 ? arc.sweep() : (end - from.t) * arc.sweep());
            addFitted(from.vertex, to.vertex, part, List.of(number), rim, pieces);
        }
    }

    private void cut(Piece piece, List<On> on, List<Piece> into) {
        int a = piece.a();
        double from = 0;
        for (On next : on) {
            if (next.vertex != piece.a() && next.vertex != piece.b()) {
                addFitted(
                        a,
                        next.vertex,
                        piece.curve().part(from, next.t),
                        piece.curves(),
                        piece.rim(),
                        into);
                a = next.vertex;
                from = next.t;
            }
        }
        addFitted(a, piece.b(), piece.curve().part(from, 1), piece.curves(), piece.rim(), into);
    }

    private void addFitted(
            int a, int b, Curve part, List<Integer> numbers, boolean rim, List<Piece> into) {
        if ((a == b && !closed(part)) || (!rim && off(part))) {
            return;
        }
        Curve fitted = Fit.through(part, vertices.get(a), vertices.get(b));
        into.add(new Piece(a, b, fitted, numbers, rim));
    }

    /**
     * Whether a part lies further off the panel than lines are laid together. It goes before it is
     * bent, which could bring it so near the rim as to be laid there.
     */
    private boolean off(Curve part) {
        Point mid = part.at(0.5);
        return !drawing.contains(mid.x(), mid.y())
                && curves.subList(0, rims).stream()
                        .allMatch(rim -> rim.distance(mid.x(), mid.y()) > together);
    }

    /** Repeats until bent pieces run through no vertex and across no other piece. */
    private void settle() {
        for (int round = 0; round < ROUNDS; round++) {
            merge();
            boolean crossed = crossAgain();
            boolean cut = false;
            List<Piece> next = new ArrayList<>();
            for (Piece piece : pieces) {
                List<On> on =
                        new ArrayList<>(
                                nearVertices(piece.curve(), piece.rim() ? EXACT : together));
                on.removeIf(o -> o.vertex == piece.a() || o.vertex == piece.b());
                if (on.isEmpty()) {
                    next.add(piece);
                } else if (piece.a() == piece.b()) {
                    Curve.Arc arc = (Curve.Arc) piece.curve();
                    cut(
                            new Piece(piece.a(), piece.a(), arc, piece.curves(), piece.rim()),
                            on,
                            next);
                    cut = true;
                } else {
                    cut(piece, on, next);
                    cut = true;
                }
            }
            pieces = next;
            if (!cut && !crossed) {
                return;
            }
        }
        Point p = vertices.get(vertices.size() - 1);
        throw new NoAnswerException(
                new Problem(
                        Place.of(drawing, p),
                        "",
                        "lines lie so close together here that they cannot be told apart",
                        "draw them on one another, or leave one out"));
    }

    private boolean crossAgain() {
        boolean found = false;
        for (int j = 0; j < pieces.size(); j++) {
            for (int i = 0; i < j; i++) {
                Piece p = pieces.get(i);
                Piece q = pieces.get(j);
                if ((p.rim() && q.rim()) || !Box.near(p.curve(), q.curve(), 0)) {
                    continue;
                }
                for (Point at : Crossings.of(p.curve(), q.curve())) {
                    int count = vertices.size();
                    found |= vertex(at, rims) == count;
                }
            }
        }
        return found;
    }

    /** Lays pieces together that run between the same vertices. */
    private void merge() {
        List<Piece> merged = new ArrayList<>();
        for (Piece piece : pieces) {
            int twin = -1;
            for (int k = 0; k < merged.size() && twin < 0; k++) {
                if (merged.get(k).alongside(piece, 1.5 * together)) {
                    twin = k;
                }
            }
            if (twin < 0) {
                merged.add(piece);
            } else {
                Piece first = merged.get(twin);
                TreeSet<Integer> numbers = new TreeSet<>(first.curves());
                numbers.addAll(piece.curves());
                merged.set(
                        twin,
                        new Piece(
                                first.a(),
                                first.b(),
                                first.curve(),
                                List.copyOf(numbers),
                                first.rim()));
            }
        }
        pieces = merged;
    }

    /** Leaves out what lies off the panel. */
    private void cutOff() {
        pieces.removeIf(
                piece -> {
                    Point mid = piece.curve().at(0.5);
                    return !piece.rim() && !drawing.contains(mid.x(), mid.y());
                });
    }

    private Arrangement result() {
        int[] number = new int[vertices.size()];
        java.util.Arrays.fill(number, -1);
        List<Point> kept = new ArrayList<>();
        List<Piece> renumbered = new ArrayList<>();
        double shift = 0;
        for (Piece piece : pieces) {
            for (int v : new int[] {piece.a(), piece.b()}) {
                if (number[v] < 0) {
                    number[v] = kept.size();
                    kept.add(vertices.get(v));
                }
            }
            renumbered.add(
                    new Piece(
                            number[piece.a()],
                            number[piece.b()],
                            piece.curve(),
                            piece.curves(),
                            piece.rim()));
            shift = Math.max(shift, shift(piece));
        }
        return new Arrangement(kept, renumbered, shift);
    }

    private double shift(Piece piece) {
        double most = 0;
        for (int number : piece.curves()) {
            for (int k = 0; k <= SAMPLES; k++) {
                Point p = piece.curve().at((double) k / SAMPLES);
                most = Math.max(most, curves.get(number).distance(p.x(), p.y()));
            }
        }
        return most;
    }

    static boolean closed(Curve curve) {
        return curve instanceof Curve.Arc arc && arc.whole();
    }
}
