package org.coachskin.panel;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;

/**
 * A piece of a zone's rim where its foam is thicker or thinner than beside it, and the bevel
 * beyond: outside the zone the foam slopes to what lies there, and the inside skin over it.
 *
 * @param zone whose rim it is
 * @param x of the middle of the piece, from the left edge [m]
 * @param y from the front edge [m]
 * @param angle of the way out of the zone, from x toward y [rad]
 * @param length of rim that it stands for [m]
 * @param turn by which the rim turns along that [rad]; all there is at a sharp corner, round which
 *     the bevel goes as a part of a cone
 * @param beyond the stack just outside
 */
public record Bevel(
        Zone zone, double x, double y, double angle, double length, double turn, Laminate beyond) {

    /** Stacks are looked at so many times over a bevel. */
    private static final int CELLS = 24;

    /** So far within its zone it is seen where that ends beside the piece [m]. */
    private static final double BESIDE = 5e-4;

    private static final int HALVINGS = 24;

    /** What is nearer than this is there [m]. */
    private static final double ROUNDING = 1e-6;

    /** Where a cell is integrated, exactly up to the third power. */
    private static final double GAUSS = 0.5 / Math.sqrt(3);

    /** Returns by how much the foam of the zone is thicker than that beyond [m]. */
    public double step() {
        return zone.laminate().foamThickness() - beyond.foamThickness();
    }

    /** Returns how far it slopes where there is room [m]. */
    public double reach() {
        return Math.abs(step()) / zone.slope();
    }

    /**
     * How far a bevel runs.
     *
     * @param length on the panel [m]
     * @param before what is in its way: {@code the rim}, {@code the vent}, {@code the lip}; empty
     *     where it runs out, another zone or another side of its own ends it, or it is cut from the
     *     side as its zone is
     */
    public record Room(double length, String before) {}

    /**
     * Returns how far it runs on a panel: not over rim and openings, nor over a part without foam
     * or with the other foam of a zone that wins there. In a corner that points inward the bevels
     * of both sides meet halfway.
     */
    public Room room(Panel panel) {
        double reach = reach();
        double free = 0;
        for (int i = 1; i <= CELLS; i++) {
            double to = reach * i / CELLS;
            if (stops(panel, to)) {
                for (int k = 0; k < HALVINGS; k++) {
                    double middle = (free + to) / 2;
                    if (stops(panel, middle)) {
                        to = middle;
                    } else {
                        free = middle;
                    }
                }
                return new Room(Math.max(0, free - ROUNDING), before(panel, to - ROUNDING));
            }
            free = to;
        }
        return new Room(reach, "");
    }

    private boolean stops(Panel panel, double distance) {
        double d = distance - ROUNDING;
        double px = x(d);
        double py = y(d);
        return !panel.hasMaterialAt(px, py)
                || Places.distance(panel, zone.region(), px, py) < d - ROUNDING
                || panel.laminateAt(px, py).isBare()
                || yields(panel, px, py);
    }

    /**
     * Returns whether the zone itself ends at a rim, an opening or a part without foam so near
     * beside the piece that this cuts its bevel from the side, as it cuts the zone.
     */
    private boolean endsBeside(Panel panel) {
        for (int i = -CELLS; i <= CELLS; i++) {
            double t = reach() * i / CELLS;
            double px = x(-BESIDE) - t * StrictMath.sin(angle);
            double py = y(-BESIDE) + t * StrictMath.cos(angle);
            if (!panel.hasMaterialAt(px, py) || panel.laminateAt(px, py).isBare()) {
                return true;
            }
        }
        return false;
    }

    /** Returns whether a zone named later has other foam there. */
    private boolean yields(Panel panel, double px, double py) {
        List<Zone> zones = panel.zones();
        for (int i = zones.size() - 1; i >= 0 && !zones.get(i).equals(zone); i--) {
            if (zones.get(i).region().holds(panel, px, py)) {
                return !foam(zones.get(i).laminate()).equals(foam(beyond));
            }
        }
        return false;
    }

    private String before(Panel panel, double distance) {
        if (endsBeside(panel)) {
            return "";
        }
        double px = x(distance);
        double py = y(distance);
        if (panel.toRim(px, py) < 0) {
            return "the rim";
        }
        for (Opening opening : panel.openings()) {
            if (opening.distance(px, py) < 0) {
                return "the " + opening.name();
            }
        }
        return panel.laminateAt(px, py).isBare()
                ? "the " + panel.zoneAt(px, py).map(Zone::name).orElse("panel")
                : "";
    }

    /** Returns x of the place so far beyond the rim [m]. */
    public double x(double distance) {
        return x + distance * StrictMath.cos(angle);
    }

    /** Returns y of the place so far beyond the rim [m]. */
    public double y(double distance) {
        return y + distance * StrictMath.sin(angle);
    }

    /** What bevels have more than the flat, piece by piece. */
    interface Weighed {
        /**
         * Foam; taken away where that of the zone is the thinner, the bevel being cut into the
         * other.
         *
         * @param layer it is a piece of
         * @param area of so much more of that layer [m^2]
         */
        void foam(Layer layer, double area);

        /**
         * Inside skin, as it is longer on the slope.
         *
         * @param placeX where, from the left edge [m]
         * @param placeY from the front edge [m]
         * @param area of so much more of the skin there [m^2]
         */
        void skin(double placeX, double placeY, double area);
    }

    /** Weighs what the bevel has more than the flat. */
    void weigh(Panel panel, Weighed weighed) {
        double reach = reach();
        double room = room(panel).length();
        double longer = Math.hypot(1, zone.slope()) - 1;
        for (int i = 0; i < CELLS && reach * i / CELLS < room; i++) {
            double from = reach * i / CELLS;
            double to = Math.min(room, reach * (i + 1) / CELLS);
            double middle = (from + to) / 2;
            Laminate there = panel.laminateAt(x(middle), y(middle));
            double rise = beyond.foamThickness() - there.foamThickness();
            DoubleUnaryOperator more = d -> rise + step() * (1 - d / reach);
            if (there.isBare() || more.applyAsDouble(middle) * step() <= 0) {
                continue;
            }
            double volume = integral(from, to, d -> (length + turn * d) * more.applyAsDouble(d));
            double area = integral(from, to, d -> length + turn * d);
            Layer foam = foam(step() > 0 ? zone.laminate() : there);
            weighed.foam(foam, volume / foam.thickness());
            weighed.skin(x(middle), y(middle), area * longer);
        }
    }

    private static Layer foam(Laminate laminate) {
        return laminate.layers().get(laminate.innermostCore());
    }

    private static double integral(double from, double to, DoubleUnaryOperator of) {
        double off = GAUSS * (to - from);
        double middle = (from + to) / 2;
        return (to - from) / 2 * (of.applyAsDouble(middle - off) + of.applyAsDouble(middle + off));
    }
}
