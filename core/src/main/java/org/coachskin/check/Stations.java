package org.coachskin.check;

import java.util.ArrayList;
import java.util.List;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.coachskin.panel.Load;
import org.coachskin.panel.LoadCase;
import org.coachskin.panel.Panel;

/**
 * Where a load case is judged: under and beside each patch, in the middle, at the rim, and on a
 * coarse grid.
 */
final class Stations {

    private static final int GRID = 3;

    /** Places under a patch, in bending lengths of the outside skin from its edge. */
    private static final double[] UNDER = {1, 1.5};

    /** Bending length of a skin on foam over its thickness and the root of their moduli. */
    private static final double LENGTH = 0.7;

    /** Where there is no skin to bend on foam, as a share of the half side. */
    private static final double SHARE = 0.3;

    /** The place by a corner of a patch, where a skin is sheared most, as a share of it. */
    private static final double CORNER = 0.9;

    /** Where foam beside a patch is sheared most, in bending lengths from the edge. */
    private static final double SHEARED = 0.5;

    /** And where both skins are bent the other way, in panel thicknesses. */
    private static final double BESIDE = 1;

    /** A crown bends its inside skin most this far out. */
    private static final double RING = 2;

    private Stations() {}

    /**
     * One place to judge.
     *
     * @param words where, as a maker says it
     * @param x from the left edge [m]
     * @param y from the front edge [m]
     */
    record Station(String words, double x, double y) {}

    static List<Station> of(Panel panel, LoadCase load) {
        double a = panel.width();
        double b = panel.length();
        List<Station> stations = new ArrayList<>();
        boolean alone = true;
        for (Load part : load.loads()) {
            if (part instanceof Load.Press press) {
                boolean middle =
                        Math.abs(press.x() - a / 2) < 1e-9 && Math.abs(press.y() - b / 2) < 1e-9;
                addPatch(stations, panel, load.name(), press, middle);
                alone = alone && middle;
            } else if (part instanceof Load.StripPressure strip) {
                alone = false;
                stations.add(
                        new Station(
                                "in the strip behind the front edge",
                                a / 2,
                                (strip.from() + strip.to()) / 2));
            }
        }
        stations.add(new Station("in the middle", a / 2, b / 2));
        stations.add(new Station("at the left edge", 0, b / 2));
        stations.add(new Station("at the front edge", a / 2, 0));
        if (!alone) {
            stations.add(new Station("at the right edge", a, b / 2));
            stations.add(new Station("at the rear edge", a / 2, b));
        }
        // A panel loaded in its middle does the same in all four quarters.
        double part = alone ? 0.5 : 1;
        for (int i = 0; i < GRID; i++) {
            for (int j = 0; j < GRID; j++) {
                double x = a * part * (i + 0.5) / GRID;
                double y = b * part * (j + 0.5) / GRID;
                stations.add(
                        new Station(
                                Math.round(1000 * x)
                                        + " mm from left, "
                                        + Math.round(1000 * y)
                                        + " mm from front",
                                x,
                                y));
            }
        }
        return stations;
    }

    private static void addPatch(
            List<Station> stations, Panel panel, String name, Load.Press press, boolean symmetric) {
        double hx = Patches.halfX(press.patch());
        double hy = Patches.halfY(press.patch());
        double thickness = panel.laminate().thickness();
        double x = press.x();
        double y = press.y();
        stations.add(new Station("under the " + name, x, y));
        for (int side = symmetric ? 1 : -1; side <= 1; side += 2) {
            // Skin stress peaks within the patch, foam shear just outside it.
            for (double lengths : UNDER) {
                double inX = hx - lengths * bendingLength(panel, hx);
                double inY = hy - lengths * bendingLength(panel, hy);
                if (inX > 0) {
                    stations.add(new Station("under the " + name, x + side * inX, y));
                }
                if (inY > 0) {
                    stations.add(new Station("under the " + name, x, y + side * inY));
                }
            }
            stations.add(new Station("at the edge of the " + name, x + side * hx, y));
            stations.add(new Station("at the edge of the " + name, x, y + side * hy));
            String edge = "at the edge of the " + name;
            double outX = hx + SHEARED * bendingLength(panel, hx);
            double outY = hy + SHEARED * bendingLength(panel, hy);
            addInside(stations, panel, new Station(edge, x + side * outX, y));
            addInside(stations, panel, new Station(edge, x, y + side * outY));
            String beside = "beside the " + name;
            double away = BESIDE * thickness;
            addInside(stations, panel, new Station(beside, x + side * (hx + away), y));
            addInside(stations, panel, new Station(beside, x, y + side * (hy + away)));
            if (!panel.crown().isFlat()) {
                double ring = RING * thickness;
                addInside(stations, panel, new Station(beside, x + side * (hx + ring), y));
                addInside(stations, panel, new Station(beside, x, y + side * (hy + ring)));
            }
            for (int other = symmetric ? 1 : -1; other <= 1; other += 2) {
                stations.add(
                        new Station(
                                "at the corner of the " + name,
                                x + side * CORNER * hx,
                                y + other * CORNER * hy));
            }
        }
    }

    /**
     * How far inside the edge of a patch the outside skin is bent most: t (E skin / E foam)^(1/3),
     * as for a plate on a half-space.
     */
    private static double bendingLength(Panel panel, double half) {
        Laminate laminate = panel.laminate();
        int core = laminate.outermostCore();
        List<Layer> layers = laminate.layers();
        if (laminate.isBare() || laminate.hasNoOutsideSkin()) {
            return SHARE * half;
        }
        double t = 0;
        double stretch = 0;
        for (Layer layer : layers.subList(core + 1, layers.size())) {
            t += layer.thickness();
            stretch += layer.thickness() * layer.stiffness().m11();
        }
        double foam = ((Layer.Core) layers.get(core)).foam().eThrough();
        return LENGTH * t * StrictMath.cbrt(stretch / t / foam);
    }

    private static void addInside(List<Station> stations, Panel panel, Station station) {
        if (station.x() > 0
                && station.x() < panel.width()
                && station.y() > 0
                && station.y() < panel.length()) {
            stations.add(station);
        }
    }
}
