package org.coachskin.check;

import java.util.ArrayList;
import java.util.List;
import org.coachskin.panel.Load;
import org.coachskin.panel.LoadCase;
import org.coachskin.panel.Panel;

/**
 * Where a load case is judged: under and beside each patch, in the middle, at the rim, and on a
 * coarse grid.
 */
final class Stations {

    private static final int GRID = 3;

    /** Places under a patch, as a share of its half side. */
    private static final double[] UNDER = {0.6, 0.8};

    /** Places beside a patch, in panel thicknesses from its edge. */
    private static final double[] BESIDE = {0.125, 1};

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
            for (double share : UNDER) {
                stations.add(new Station("under the " + name, x + side * share * hx, y));
                stations.add(new Station("under the " + name, x, y + side * share * hy));
            }
            stations.add(new Station("at the edge of the " + name, x + side * hx, y));
            stations.add(new Station("at the edge of the " + name, x, y + side * hy));
            for (double share : BESIDE) {
                String words = (share < 0.5 ? "at the edge of the " : "beside the ") + name;
                double off = share * thickness;
                addInside(stations, panel, new Station(words, x + side * (hx + off), y));
                addInside(stations, panel, new Station(words, x, y + side * (hy + off)));
            }
        }
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
