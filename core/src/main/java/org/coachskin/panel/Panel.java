package org.coachskin.panel;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.coachskin.Require;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Patch;

/**
 * A panel: its outline, how it is curved, its stack, what holds it, what is cut out of it and where
 * it is laid otherwise.
 *
 * @param name how it is called
 * @param width left to right, along x, of the outline's bounding rectangle [m]
 * @param length front to rear, along y [m]
 * @param crown how it is curved
 * @param laminate the stack, inside to outside
 * @param support what holds it
 * @param outline a rectangle as wide and long as the panel, or a polygon whose corners are measured
 *     from left and front
 * @param openings holes
 * @param zones places with a stack of their own; where they overlap the last one wins
 * @param turned edges of the foam that a skin is turned round
 */
public record Panel(
        String name,
        double width,
        double length,
        Crown crown,
        Laminate laminate,
        Support support,
        Shape outline,
        List<Opening> openings,
        List<Zone> zones,
        List<TurnedEdge> turned) {

    /** Steps from the middle of a patch to its rim in which it is looked for the panel. */
    private static final int GRID = 6;

    /** Copies the lists; checks that both sides are above zero and the outline is as large. */
    public Panel {
        Require.positive("width of " + name, width, "m");
        Require.positive("length of " + name, length, "m");
        openings = List.copyOf(openings);
        zones = List.copyOf(zones);
        turned = List.copyOf(turned);
        if (outline instanceof Shape.Rectangle r && (r.x() != width || r.y() != length)) {
            throw new IllegalArgumentException(
                    "the outline of " + name + " is not as wide and long as the panel");
        }
        if (outline instanceof Shape.Circle) {
            throw new IllegalArgumentException(
                    "an outline is a rectangle or a polygon: " + name + " is a circle");
        }
    }

    /** Creates a panel no edge of which has a skin turned round it. */
    public Panel(
            String name,
            double width,
            double length,
            Crown crown,
            Laminate laminate,
            Support support,
            Shape outline,
            List<Opening> openings,
            List<Zone> zones) {
        this(name, width, length, crown, laminate, support, outline, openings, zones, List.of());
    }

    /** Creates a rectangular panel of one stack, with sharp corners. */
    public Panel(
            String name,
            double width,
            double length,
            Crown crown,
            Laminate laminate,
            Support support) {
        this(
                name,
                width,
                length,
                crown,
                laminate,
                support,
                new Shape.Rectangle(width, length, 0),
                List.of(),
                List.of());
    }

    /** Returns a flat panel carried along its whole rim. */
    public static Panel flat(String name, double width, double length, Laminate laminate) {
        return new Panel(name, width, length, Crown.FLAT, laminate, new Support.WholeRim());
    }

    /** Returns this panel with another stack. */
    public Panel withLaminate(Laminate other) {
        return new Panel(
                name, width, length, crown, other, support, outline, openings, zones, turned);
    }

    /** Returns this panel with every one of its stacks changed. */
    public Panel withStacks(UnaryOperator<Laminate> change) {
        return withLaminate(change.apply(laminate))
                .withZones(
                        zones.stream()
                                .map(zone -> zone.withLaminate(change.apply(zone.laminate())))
                                .toList());
    }

    /** Returns this panel with another crown. */
    public Panel withCrown(Crown other) {
        return new Panel(
                name, width, length, other, laminate, support, outline, openings, zones, turned);
    }

    /** Returns this panel held otherwise. */
    public Panel withSupport(Support other) {
        return new Panel(
                name, width, length, crown, laminate, other, outline, openings, zones, turned);
    }

    /** Returns this panel with these openings. */
    public Panel withOpenings(List<Opening> other) {
        return new Panel(
                name, width, length, crown, laminate, support, outline, other, zones, turned);
    }

    /** Returns this panel with these zones. */
    public Panel withZones(List<Zone> other) {
        return new Panel(
                name, width, length, crown, laminate, support, outline, openings, other, turned);
    }

    /** Returns this panel with skins turned round these edges. */
    public Panel withTurned(List<TurnedEdge> other) {
        return new Panel(
                name, width, length, crown, laminate, support, outline, openings, zones, other);
    }

    /**
     * Returns the opening of that name.
     *
     * @throws IllegalArgumentException when there is none
     */
    public Opening opening(String called) {
        return openings.stream()
                .filter(o -> o.name().equals(called))
                .findFirst()
                .orElseThrow(
                        () ->
                                new IllegalArgumentException(
                                        name + " has no opening called " + called));
    }

    /** Returns the zone that decides at a place; empty where the panel's own stack does. */
    public Optional<Zone> zoneAt(double x, double y) {
        for (int i = zones.size() - 1; i >= 0; i--) {
            if (zones.get(i).region().holds(this, x, y)) {
                return Optional.of(zones.get(i));
            }
        }
        return Optional.empty();
    }

    /** Returns the stack at a place, inside to outside. */
    public Laminate laminateAt(double x, double y) {
        return zoneAt(x, y).map(Zone::laminate).orElse(laminate);
    }

    /**
     * Returns the places where plate theory has no limit, where the nearer one looks the larger
     * stress and shear grow: sharp corners of openings, corners of the outline that point inward,
     * corners of zones, and the ends of what holds a part of an edge. Pads are not among them.
     */
    public List<Shape.Point> sharpPlaces() {
        return SharpPlaces.of(this);
    }

    /** Returns whether a place lies on the panel and in no opening. */
    public boolean hasMaterialAt(double x, double y) {
        return Places.offset(outline, x - centreX(), y - centreY()) <= 0
                && openings.stream().allMatch(opening -> opening.distance(x, y) >= 0);
    }

    /** Returns how far inside the outline a place lies [m]; below 0 outside of it. */
    public double toRim(double x, double y) {
        return -Places.offset(outline, x - centreX(), y - centreY());
    }

    /** Returns whether all of a patch round a place lies on the panel, to within a millionth. */
    public boolean covers(Patch patch, double x, double y) {
        double most = 1 - 1e-6;
        boolean covered = true;
        for (int i = -GRID; covered && i <= GRID; i++) {
            for (int j = -GRID; covered && j <= GRID; j++) {
                double s = most * i / GRID;
                double t = most * j / GRID;
                boolean within = patch instanceof Patch.Rectangle || s * s + t * t <= 1;
                covered = !within || hasMaterialAt(x + s * patch.halfX(), y + t * patch.halfY());
            }
        }
        return covered;
    }

    /** A polygon's corners are measured from left and front, a rectangle's from its centre. */
    private double centreX() {
        return outline instanceof Shape.Polygon ? 0 : width / 2;
    }

    private double centreY() {
        return outline instanceof Shape.Polygon ? 0 : length / 2;
    }

    /** Returns whether its whole rim is carried. */
    public boolean rimCarried() {
        return support instanceof Support.WholeRim;
    }

    /**
     * Returns whether it is a rectangle of one stack with sharp corners, no opening and no edge
     * that a skin is turned round.
     */
    public boolean isPlain() {
        return outline instanceof Shape.Rectangle r
                && r.cornerRadius() == 0
                && openings.isEmpty()
                && zones.isEmpty()
                && turned.isEmpty();
    }

    /** Returns the area of material [m^2]; a shallow crown adds nothing to it. */
    public double area() {
        double area = outline.area();
        for (Opening opening : openings) {
            area -= opening.shape().area();
        }
        return area;
    }
}
