package org.coachskin.cli.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.coachskin.laminate.Patch;
import org.coachskin.panel.Edge;
import org.coachskin.panel.Opening;
import org.coachskin.panel.Shape;

/**
 * The ground plan of a panel, to tell what lies on it and what does not.
 *
 * @param width left to right [m]
 * @param length front to rear [m]
 * @param outline its outline
 * @param openings what is cut out
 */
record Ground(double width, double length, Shape outline, List<Opening> openings) {

    /** What is nearer than this lies on it [m]. */
    static final double ROUNDING = 1e-6;

    /** Points to a rim, and to each way of a patch, that are tried. */
    private static final int POINTS = 96;

    private static final int GRID = 8;

    static Ground rectangle(double width, double length) {
        return new Ground(width, length, new Shape.Rectangle(width, length, 0), List.of());
    }

    Ground withOpenings(List<Opening> others) {
        return new Ground(width, length, outline, List.copyOf(others));
    }

    double length(Edge edge) {
        return edge.alongX() ? width : length;
    }

    /** Size of the panel at right angles to an edge [m]. */
    double depth(Edge edge) {
        return edge.alongX() ? length : width;
    }

    /**
     * Returns how far a place lies inward of the rim, openings aside [m]; negative off the panel.
     */
    double inward(double x, double y) {
        boolean centred = !(outline instanceof Shape.Polygon);
        return -new Opening("", outline, centred ? width / 2 : 0, centred ? length / 2 : 0)
                .distance(x, y);
    }

    /** Returns what a patch would miss, in words; empty where it lies on the panel. */
    Optional<String> missed(Patch patch, double x, double y) {
        for (int i = -GRID; i <= GRID; i++) {
            for (int j = -GRID; j <= GRID; j++) {
                double s = (double) i / GRID;
                double t = (double) j / GRID;
                boolean covered = patch instanceof Patch.Rectangle || s * s + t * t <= 1;
                if (covered) {
                    Optional<String> off = missed(x + s * patch.halfX(), y + t * patch.halfY());
                    if (off.isPresent()) {
                        return off;
                    }
                }
            }
        }
        return Optional.empty();
    }

    /** Returns what a place misses, in words; empty where it lies on the panel. */
    Optional<String> missed(double x, double y) {
        if (inward(x, y) < -ROUNDING) {
            return Optional.of("off the panel");
        }
        return openings.stream()
                .filter(opening -> opening.distance(x, y) < -ROUNDING)
                .findFirst()
                .map(opening -> "over the opening \"" + opening.name() + "\"");
    }

    /** Returns the room between an opening and the rim [m]. */
    double room(Opening opening) {
        return rim(opening).stream()
                .mapToDouble(p -> inward(p.x(), p.y()))
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }

    /** Returns the gap between two openings [m]; negative where they overlap. */
    static double gap(Opening a, Opening b) {
        double first = rim(a).stream().mapToDouble(p -> b.distance(p.x(), p.y())).min().orElse(0);
        double other = rim(b).stream().mapToDouble(p -> a.distance(p.x(), p.y())).min().orElse(0);
        return Math.min(first, other);
    }

    /** Returns places along the rim of an opening, from left and front. */
    static List<Shape.Point> rim(Opening opening) {
        List<Shape.Point> points = new ArrayList<>();
        List<Shape.Point> corners = corners(opening.shape());
        for (int i = 0; i < corners.size(); i++) {
            Shape.Point p = corners.get(i);
            Shape.Point q = corners.get((i + 1) % corners.size());
            for (int k = 0; k < POINTS; k++) {
                double t = (double) k / POINTS;
                points.add(
                        new Shape.Point(
                                opening.x() + p.x() + t * (q.x() - p.x()),
                                opening.y() + p.y() + t * (q.y() - p.y())));
            }
        }
        return points;
    }

    /** Corners of a shape; round ones by short chords. */
    private static List<Shape.Point> corners(Shape shape) {
        if (shape instanceof Shape.Polygon polygon) {
            return polygon.corners();
        }
        Shape.Rectangle r =
                shape instanceof Shape.Circle circle
                        ? new Shape.Rectangle(
                                circle.diameter(), circle.diameter(), circle.diameter() / 2)
                        : (Shape.Rectangle) shape;
        double hx = r.x() / 2 - r.cornerRadius();
        double hy = r.y() / 2 - r.cornerRadius();
        int arc = r.cornerRadius() > 0 ? 12 : 0;
        List<Shape.Point> corners = new ArrayList<>();
        for (int quarter = 0; quarter < 4; quarter++) {
            int sx = quarter == 0 || quarter == 3 ? 1 : -1;
            int sy = quarter < 2 ? 1 : -1;
            for (int k = 0; k <= arc; k++) {
                double angle = Math.PI / 2 * (quarter + (arc == 0 ? 0 : (double) k / arc));
                corners.add(
                        new Shape.Point(
                                sx * hx + r.cornerRadius() * StrictMath.cos(angle),
                                sy * hy + r.cornerRadius() * StrictMath.sin(angle)));
            }
        }
        return corners;
    }
}
