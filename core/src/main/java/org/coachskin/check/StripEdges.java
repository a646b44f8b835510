package org.coachskin.check;

import java.util.ArrayList;
import java.util.List;
import org.coachskin.analysis.Response;
import org.coachskin.failure.Face;
import org.coachskin.failure.SkinKink;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.coachskin.laminate.SectionState;
import org.coachskin.laminate.Triple;
import org.coachskin.panel.Bevel;
import org.coachskin.panel.Bevels;
import org.coachskin.panel.Panel;

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

    private final Reading reading;
    private final Surroundings around;
    private final List<Side> sides = new ArrayList<>();

    private StripEdges(Panel panel) {
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
        Bevels.of(panel, STEP).forEach(edges::add);
        return List.copyOf(edges.sides);
    }

    /** Adds both sides of a place; at a sharp corner there is no length that is read. */
    private void add(Bevel bevel) {
        Laminate in = bevel.zone().laminate();
        Laminate out = bevel.beyond();
        if (bevel.length() == 0 || in.hasNoInsideSkin() || out.hasNoInsideSkin()) {
            return;
        }
        boolean thicker = bevel.step() > 0;
        add(bevel, -OFF, !thicker, out);
        add(bevel, OFF, thicker, in);
    }

    private void add(Bevel bevel, double off, boolean thin, Laminate beyond) {
        double x = bevel.x(off);
        double y = bevel.y(off);
        List<Stations.Station> read = new ArrayList<>();
        reading.besideSharpPlaces(new Stations.Station(around.words(x, y), x, y), read);
        double slope = bevel.zone().slope();
        read.forEach(
                at -> sides.add(new Side(at, bevel.angle(), slope, thin, bevel.length(), beyond)));
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
