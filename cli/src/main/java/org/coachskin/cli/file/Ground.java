package org.coachskin.cli.file;

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

    /** Points each way of a patch that are tried. */
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
        return opening.rim().stream()
                .mapToDouble(p -> inward(p.x(), p.y()))
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }

    /** Returns the gap between two openings [m]; negative where they overlap. */
    static double gap(Opening a, Opening b) {
        double first = a.rim().stream().mapToDouble(p -> b.distance(p.x(), p.y())).min().orElse(0);
        double other = b.rim().stream().mapToDouble(p -> a.distance(p.x(), p.y())).min().orElse(0);
        return Math.min(first, other);
    }
}
