package org.coachskin.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.coachskin.analysis.Response;
import org.coachskin.failure.Face;
import org.coachskin.failure.SkinKink;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.coachskin.laminate.SectionState;
import org.coachskin.laminate.Triple;
import org.coachskin.panel.Edge;
import org.coachskin.panel.Opening;
import org.coachskin.panel.Panel;
import org.coachskin.panel.Region;
import org.coachskin.panel.Zone;

/**
 * Edges of foam strips and of all zones whose foam is thicker or thinner than what lies beside
 * them: places on both sides of each, where the inside skin turns over the bevel ({@link
 * SkinKink}). They are read by the rule for sharp places ({@link Reading}).
 */
final class StripEdges {

    /** Two places are about so far apart [m]. */
    private static final double STEP = 0.02;

    /** A side is read so far from the edge [m]. */
    private static final double OFF = 5e-4;

    /** Steps of the foam below this are none [m]. */
    private static final double LEAST = 5e-4;

    private final Panel panel;
    private final Reading reading;
    private final Surroundings around;
    private final List<Side> sides = new ArrayList<>();

    private StripEdges(Panel panel) {
        this.panel = panel;
        around = new Surroundings(panel);
        reading = new Reading(panel, around);
    }

    /**
     * One side of a place on an edge.
     *
     * @param station where and how it is read
     * @param angle of the way across the edge, from x toward y [rad]
     * @param slope of the bevel [-]
     * @param thin whether the foam is the thinner on this side: there a skin in tension is pulled
     *     off, on the other side one in compression
     * @param length of the edge that it stands for [m]
     * @param beyond the stack on the other side
     */
    record Side(
            Stations.Station station,
            double angle,
            double slope,
            boolean thin,
            double length,
            Laminate beyond) {

        /** Returns the unit stretch across the edge. */
        Triple across() {
            double c = StrictMath.cos(angle);
            double s = StrictMath.sin(angle);
            return new Triple(c * c, s * s, 2 * c * s);
        }

        /**
         * Returns with what force per width the skin pulls off the foam here, pushes negative
         * [N/m].
         *
         * @param n forces per width in it [N/m]
         */
        double pull(Triple n) {
            return (thin ? slope : -slope) * crossing(n);
        }

        /**
         * Returns the work of the bevel's give under the skin's forces here [N m].
         *
         * @param stack on this side, the thin one
         * @param n forces per width in its inside skin [N/m]
         */
        double give(Stack stack, Triple n) {
            double force = crossing(n);
            SkinKink kink = SkinKink.ofInside(stack.laminate);
            double per =
                    kink.give(
                            slope,
                            between(stack.laminate),
                            between(beyond),
                            stack.laminate.foamThickness());
            return per * force * force * length;
        }

        private double crossing(Triple n) {
            double c = StrictMath.cos(angle);
            double s = StrictMath.sin(angle);
            return n.x() * c * c + n.y() * s * s + 2 * n.xy() * c * s;
        }
    }

    /** Returns all sides of all such edges; none on a panel without zones. */
    static List<Side> of(Panel panel) {
        StripEdges edges = new StripEdges(panel);
        for (Zone zone : panel.zones()) {
            Region region = zone.region();
            if (region instanceof Region.Around ring) {
                edges.addRing(zone, ring);
            } else if (region instanceof Region.Box box) {
                edges.addLine(zone, box.x1(), box.y1(), box.x2(), box.y1(), -Math.PI / 2);
                edges.addLine(zone, box.x1(), box.y2(), box.x2(), box.y2(), Math.PI / 2);
                edges.addLine(zone, box.x1(), box.y1(), box.x1(), box.y2(), Math.PI);
                edges.addLine(zone, box.x2(), box.y1(), box.x2(), box.y2(), 0);
            } else if (region instanceof Region.AlongEdges band) {
                band.edges().forEach(edge -> edges.addBand(zone, edge, band.width()));
            }
        }
        return List.copyOf(edges.sides);
    }

    private void addRing(Zone zone, Region.Around ring) {
        for (Opening opening : panel.openings()) {
            if (opening.name().equals(ring.opening())) {
                for (OpeningRims.RimPlace rim : OpeningRims.round(opening.shape())) {
                    add(
                            zone,
                            opening.x() + rim.x() + ring.width() * rim.outX(),
                            opening.y() + rim.y() + ring.width() * rim.outY(),
                            StrictMath.atan2(rim.outY(), rim.outX()),
                            rim.along() + rim.turn() * ring.width());
                }
            }
        }
    }

    private void addBand(Zone zone, Edge edge, double width) {
        double at = edge.position(panel);
        double end = edge.length(panel);
        switch (edge) {
            case FRONT -> addLine(zone, 0, width, end, width, Math.PI / 2);
            case REAR -> addLine(zone, 0, at - width, end, at - width, -Math.PI / 2);
            case LEFT -> addLine(zone, width, 0, width, end, 0);
            case RIGHT -> addLine(zone, at - width, 0, at - width, end, Math.PI);
        }
    }

    /**
     * Adds places on a line.
     *
     * @param angle of the way out of the zone
     */
    private void addLine(Zone zone, double x1, double y1, double x2, double y2, double angle) {
        double length = Math.hypot(x2 - x1, y2 - y1);
        int steps = (int) Math.ceil(length / STEP - 1e-9);
        for (int k = 0; k < steps; k++) {
            double s = (k + 0.5) / steps;
            add(zone, x1 + s * (x2 - x1), y1 + s * (y2 - y1), angle, length / steps);
        }
    }

    /** Adds both sides of a place, if this is where the zone ends and the foam gets another. */
    private void add(Zone zone, double x, double y, double angle, double length) {
        double dx = OFF * StrictMath.cos(angle);
        double dy = OFF * StrictMath.sin(angle);
        if (!panel.hasMaterialAt(x - dx, y - dy) || !panel.hasMaterialAt(x + dx, y + dy)) {
            return;
        }
        Optional<Zone> outside = panel.zoneAt(x + dx, y + dy);
        if (!panel.zoneAt(x - dx, y - dy).equals(Optional.of(zone))
                || outside.equals(Optional.of(zone))) {
            return;
        }
        Laminate in = zone.laminate();
        Laminate out = panel.laminateAt(x + dx, y + dy);
        double step = in.foamThickness() - out.foamThickness();
        if (hasNoKink(in) || hasNoKink(out) || Math.abs(step) < LEAST) {
            return;
        }
        add(x - dx, y - dy, angle, zone.slope(), step < 0, length, out);
        add(x + dx, y + dy, angle, zone.slope(), step > 0, length, in);
    }

    private static boolean hasNoKink(Laminate laminate) {
        return laminate.isBare() || laminate.hasNoInsideSkin();
    }

    private void add(
            double x,
            double y,
            double angle,
            double slope,
            boolean thin,
            double length,
            Laminate beyond) {
        List<Stations.Station> read = new ArrayList<>();
        reading.besideSharpPlaces(new Stations.Station(around.words(x, y), x, y), read);
        read.forEach(at -> sides.add(new Side(at, angle, slope, thin, length, beyond)));
    }

    /** Returns the work of the bevels' give under what a response does to them [N m]. */
    static double give(Stacks stacks, Response response) {
        double work = 0;
        for (Side side : stacks.edges) {
            if (side.thin()) {
                Stack stack = stacks.at(side.station().x(), side.station().y());
                SectionState state = side.station().state(response);
                work += side.give(stack, stack.skinForce(Face.INSIDE, stack.strain(state)));
            }
        }
        return work;
    }

    /** Returns the distance of the middles of both skins [m]. */
    private static double between(Laminate laminate) {
        double skins = 0;
        for (Layer layer : laminate.insideSkin()) {
            skins += layer.thickness();
        }
        for (Layer layer : laminate.outsideSkin()) {
            skins += layer.thickness();
        }
        return laminate.foamThickness() + skins / 2;
    }
}
