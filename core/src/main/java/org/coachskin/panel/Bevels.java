package org.coachskin.panel;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;

/** The bevels of a panel, piece by piece of the rims of its zones. */
public final class Bevels {

    /** Pieces are this long where what they weigh is summed [m]. */
    private static final double WEIGHED = 0.005;

    /** And this long where their room is looked at [m]. */
    private static final double SEEN = 0.01;

    private static final double ROUNDING = 1e-5;

    /** Both sides are looked at so far from the rim [m]. */
    private static final double OFF = 5e-4;

    /** Steps of the foam below this are none [m]. */
    private static final double LEAST = 5e-4;

    /** Pieces of a sharp corner of a rectangle. */
    private static final int CORNER = 6;

    private final Panel panel;
    private final double piece;
    private final List<Bevel> bevels = new ArrayList<>();

    private Bevels(Panel panel, double piece) {
        this.panel = panel;
        this.piece = piece;
    }

    /**
     * Returns all bevels: where a zone ends inside the panel and the foam gets another thickness,
     * not where it ends at the rim or at an opening, or where one side has no foam.
     *
     * @param piece length of a piece of a straight side, at most [m]
     */
    public static List<Bevel> of(Panel panel, double piece) {
        Bevels found = new Bevels(panel, piece);
        for (Zone zone : panel.zones()) {
            Region region = zone.region();
            if (region instanceof Region.Around ring) {
                found.addRing(zone, ring);
            } else if (region instanceof Region.Box box) {
                found.addBox(zone, box);
            } else if (region instanceof Region.AlongEdges band) {
                band.edges().forEach(edge -> found.addBand(zone, edge, band.width()));
            }
        }
        return List.copyOf(found.bevels);
    }

    /**
     * Adds what bevels have more than the flat, foam and inside skin, layer by layer [m^2]; a
     * volume of foam as so much more of the layer it is a piece of.
     */
    public static void addAreas(Panel panel, Map<Layer, Double> areas) {
        weigh(
                panel,
                new Bevel.Weighed() {
                    @Override
                    public void foam(Layer layer, double area) {
                        areas.merge(layer, area, Double::sum);
                    }

                    @Override
                    public void skin(double x, double y, double area) {
                        panel.laminateAt(x, y)
                                .insideSkin()
                                .forEach(layer -> areas.merge(layer, area, Double::sum));
                    }
                });
    }

    /**
     * Returns how much more inside skin there is on bevels than on the flat [m^2], by the zones
     * that hold the place, their numbers upward.
     */
    public static Map<List<Integer>, Double> longer(Panel panel) {
        Map<List<Integer>, Double> longer = new LinkedHashMap<>();
        weigh(
                panel,
                new Bevel.Weighed() {
                    @Override
                    public void foam(Layer layer, double area) {
                        // Only skins are asked for.
                    }

                    @Override
                    public void skin(double x, double y, double area) {
                        List<Integer> zones =
                                IntStream.range(0, panel.zones().size())
                                        .filter(
                                                i ->
                                                        panel.zones()
                                                                .get(i)
                                                                .region()
                                                                .holds(panel, x, y))
                                        .boxed()
                                        .toList();
                        longer.merge(zones, area, Double::sum);
                    }
                });
        return longer;
    }

    private static void weigh(Panel panel, Bevel.Weighed weighed) {
        of(panel, WEIGHED).forEach(bevel -> bevel.weigh(panel, weighed));
    }

    /**
     * A bevel that is cut off.
     *
     * @param bevel which piece
     * @param room how far it runs [m]
     * @param before what is in its way: {@code the rim}, {@code the vent}, {@code the lip}
     */
    public record Cut(Bevel bevel, double room, String before) {
        /** Returns what is missing [m]. */
        public double missing() {
            return bevel.reach() - room;
        }
    }

    /**
     * Returns the piece of a zone's bevel that has the least room before rim, opening or a part
     * without foam; empty where all of it finds its room to within 0.01 mm, or the foam of the zone
     * is the thinner one.
     */
    public static Optional<Cut> cut(Panel panel, Zone zone) {
        Optional<Cut> least = Optional.empty();
        for (Bevel bevel : of(panel, SEEN)) {
            if (bevel.zone().equals(zone) && bevel.step() > 0) {
                Bevel.Room room = bevel.room(panel);
                Cut cut = new Cut(bevel, room.length(), room.before());
                boolean less = least.isEmpty() || cut.room() < least.get().room();
                if (!cut.before().isEmpty() && cut.missing() > ROUNDING && less) {
                    least = Optional.of(cut);
                }
            }
        }
        return least;
    }

    private void addRing(Zone zone, Region.Around ring) {
        Opening opening = panel.opening(ring.opening());
        for (RimPlace rim : RimPlace.round(opening.shape(), piece)) {
            add(
                    zone,
                    opening.x() + rim.x() + ring.width() * rim.outX(),
                    opening.y() + rim.y() + ring.width() * rim.outY(),
                    StrictMath.atan2(rim.outY(), rim.outX()),
                    rim.along() + rim.turn() * ring.width(),
                    rim.turn());
        }
    }

    private void addBox(Zone zone, Region.Box box) {
        addLine(zone, box.x1(), box.y1(), box.x2(), box.y1(), -Math.PI / 2);
        addLine(zone, box.x1(), box.y2(), box.x2(), box.y2(), Math.PI / 2);
        addLine(zone, box.x1(), box.y1(), box.x1(), box.y2(), Math.PI);
        addLine(zone, box.x2(), box.y1(), box.x2(), box.y2(), 0);
        double turn = Math.PI / 2 / CORNER;
        for (int k = 0; k < 4 * CORNER; k++) {
            int quarter = k / CORNER;
            double x = quarter == 0 || quarter == 3 ? box.x2() : box.x1();
            double y = quarter < 2 ? box.y2() : box.y1();
            add(zone, x, y, (k + 0.5) * turn, 0, turn);
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
     * Adds pieces of a line.
     *
     * @param angle of the way out of the zone
     */
    private void addLine(Zone zone, double x1, double y1, double x2, double y2, double angle) {
        double length = Math.hypot(x2 - x1, y2 - y1);
        int steps = (int) Math.ceil(length / piece - 1e-9);
        for (int k = 0; k < steps; k++) {
            double s = (k + 0.5) / steps;
            add(zone, x1 + s * (x2 - x1), y1 + s * (y2 - y1), angle, length / steps, 0);
        }
    }

    /** Adds a piece, if this is where the zone ends and the foam gets another thickness. */
    private void add(Zone zone, double x, double y, double angle, double length, double turn) {
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
        Laminate beyond = panel.laminateAt(x + dx, y + dy);
        Bevel bevel = new Bevel(zone, x, y, angle, length, turn, beyond);
        if (!zone.laminate().isBare() && !beyond.isBare() && Math.abs(bevel.step()) >= LEAST) {
            bevels.add(bevel);
        }
    }
}
