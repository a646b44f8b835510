package org.coachskin.bench;

import java.util.ArrayList;
import java.util.List;
import org.coachskin.panel.Edge;
import org.coachskin.panel.Height;
import org.coachskin.panel.Panel;
import org.coachskin.panel.Region;
import org.coachskin.panel.Shape;
import org.coachskin.panel.TurnedEdge;

/** How large what covers a part of a panel is cut. */
public final class Pieces {

    /**
     * How much larger than the panel its cloth is cut on every side, to be trimmed when it has
     * cured [m] [common practice, no source].
     */
    public static final double TRIM = 0.025;

    private Pieces() {}

    /** Returns the cloth of a skin all over a panel: to trim, and to turn round edges. */
    public static Piece skin(Panel panel, Height skin) {
        double x = panel.width() + 2 * TRIM;
        double y = panel.length() + 2 * TRIM;
        for (TurnedEdge turned : panel.turned()) {
            if (turned instanceof TurnedEdge.Along along && along.skin() == skin) {
                double over = TurnedEdge.reach(panel.laminate());
                x += along.edge().alongX() ? 0 : over;
                y += along.edge().alongX() ? over : 0;
            }
        }
        return new Piece(1, x, y);
    }

    /**
     * Returns the cloth that covers a part of a panel, without anything to trim: one piece round an
     * opening, which is cut out of it, a disc round a round one; along edges one for each of them,
     * those that run from left to right the whole way, the others between them.
     */
    public static List<Piece> cloth(Panel panel, Region region) {
        if (region instanceof Region.Around ring) {
            return List.of(around(panel, ring, 0));
        }
        if (region instanceof Region.AlongEdges band) {
            return strips(panel, band);
        }
        Region.Box box = (Region.Box) region;
        return List.of(new Piece(1, box.x2() - box.x1(), box.y2() - box.y1()));
    }

    /**
     * Returns the size over all of what lies round an opening.
     *
     * @param bevel that comes on top of its width [m]
     */
    public static Piece around(Panel panel, Region.Around ring, double bevel) {
        double out = 2 * (ring.width() + bevel);
        if (panel.opening(ring.opening()).shape() instanceof Shape.Circle circle) {
            return Piece.disc(circle.diameter() + out);
        }
        Piece opening = opening(panel, ring);
        return new Piece(1, opening.one() + out, opening.other() + out);
    }

    private static List<Piece> strips(Panel panel, Region.AlongEdges band) {
        int alongX = (int) band.edges().stream().filter(Edge::alongX).count();
        int alongY = band.edges().size() - alongX;
        List<Piece> pieces = new ArrayList<>();
        if (alongX > 0) {
            pieces.add(new Piece(alongX, band.width(), panel.width()));
        }
        if (alongY > 0) {
            double between = panel.length() - alongX * band.width();
            pieces.add(new Piece(alongY, band.width(), between));
        }
        return pieces;
    }

    /**
     * Returns the straight boards that make up a part of a panel; none for a ring that is not
     * straight.
     *
     * @param bevel that comes on top of its width [m]
     */
    public static List<Piece> boards(Panel panel, Region region, double bevel) {
        Region whole = wider(panel, region, bevel);
        if (!(whole instanceof Region.Around ring)) {
            return cloth(panel, whole);
        }
        if (!(panel.opening(ring.opening()).shape() instanceof Shape.Rectangle)) {
            return List.of();
        }
        Piece opening = opening(panel, ring);
        return List.of(
                new Piece(2, ring.width(), opening.other() + 2 * ring.width()),
                new Piece(2, ring.width(), opening.one()));
    }

    /** Returns a part of a panel that reaches further, where it can [m]. */
    static Region wider(Panel panel, Region region, double by) {
        if (region instanceof Region.Around ring) {
            return new Region.Around(ring.opening(), ring.width() + by);
        }
        if (region instanceof Region.AlongEdges band) {
            return new Region.AlongEdges(band.edges(), band.width() + by);
        }
        Region.Box box = (Region.Box) region;
        return new Region.Box(
                Math.max(0, box.x1() - by),
                Math.min(panel.width(), box.x2() + by),
                Math.max(0, box.y1() - by),
                Math.min(panel.length(), box.y2() + by));
    }

    private static Piece opening(Panel panel, Region.Around ring) {
        Shape shape = panel.opening(ring.opening()).shape();
        if (shape instanceof Shape.Circle circle) {
            return new Piece(1, circle.diameter(), circle.diameter());
        }
        if (shape instanceof Shape.Rectangle r) {
            return new Piece(1, r.x(), r.y());
        }
        List<Shape.Point> corners = ((Shape.Polygon) shape).corners();
        return new Piece(
                1,
                corners.stream().mapToDouble(Shape.Point::x).max().orElse(0)
                        - corners.stream().mapToDouble(Shape.Point::x).min().orElse(0),
                corners.stream().mapToDouble(Shape.Point::y).max().orElse(0)
                        - corners.stream().mapToDouble(Shape.Point::y).min().orElse(0));
    }
}
