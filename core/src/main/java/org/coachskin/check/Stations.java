package org.coachskin.check;

import java.util.ArrayList;
import java.util.List;
import org.coachskin.analysis.Response;
import org.coachskin.panel.Load;
import org.coachskin.panel.LoadCase;
import org.coachskin.panel.Panel;

/**
 * Where a load case is judged: under and beside each patch, and where the solver says; for a solver
 * that leaves the choice, in the middle, at the rim, and on a coarse grid.
 */
final class Stations {

    private static final int GRID = 3;

    /** Places under a patch, as a share of its half side. */
    private static final double[] UNDER = {0.6, 0.8};

    /** Places beside a patch, in panel thicknesses from its edge. */
    private static final double[] BESIDE = {0.125, 1};

    private final Panel panel;
    private final LoadCase load;
    private final List<Station> stations = new ArrayList<>();

    private Stations(Panel panel, LoadCase load) {
        this.panel = panel;
        this.load = load;
    }

    /**
     * One place to judge.
     *
     * @param words where, as a maker says it
     * @param x from the left edge [m]
     * @param y from the front edge [m]
     */
    record Station(String words, double x, double y) {}

    static List<Station> of(Panel panel, LoadCase load, List<Response.Spot> spots) {
        Stations found = new Stations(panel, load);
        boolean middle = found.addPatches(spots.isEmpty());
        if (spots.isEmpty()) {
            found.addOverall(middle);
        }
        Surroundings around = new Surroundings(panel);
        for (Response.Spot spot : spots) {
            found.stations.add(
                    new Station(around.words(spot.x(), spot.y()), spot.x(), spot.y()));
        }
        return found.stations;
    }

    /**
     * Adds places at every patch.
     *
     * @param mirrored whether a panel loaded in its middle does the same on all sides of it
     * @return whether nothing presses but in the middle
     */
    private boolean addPatches(boolean mirrored) {
        boolean alone = true;
        for (Load part : load.loads()) {
            if (part instanceof Load.Press press) {
                boolean middle =
                        Math.abs(press.x() - panel.width() / 2) < 1e-9
                                && Math.abs(press.y() - panel.length() / 2) < 1e-9;
                addPatch(press, mirrored && middle);
                alone = alone && middle;
            }
        }
        return alone;
    }

    private void addOverall(boolean middle) {
        double a = panel.width();
        double b = panel.length();
        stations.add(new Station("in the middle", a / 2, b / 2));
        stations.add(new Station("at the left edge", 0, b / 2));
        stations.add(new Station("at the front edge", a / 2, 0));
        if (!middle) {
            stations.add(new Station("at the right edge", a, b / 2));
            stations.add(new Station("at the rear edge", a / 2, b));
        }
        // A panel loaded in its middle does the same in all four quarters.
        double part = middle ? 0.5 : 1;
        for (int i = 0; i < GRID; i++) {
            for (int j = 0; j < GRID; j++) {
                double x = a * part * (i + 0.5) / GRID;
                double y = b * part * (j + 0.5) / GRID;
                stations.add(new Station(Surroundings.tape(x, y), x, y));
            }
        }
    }

    private void addPatch(Load.Press press, boolean symmetric) {
        String name = load.name();
        double hx = Patches.halfX(press.patch());
        double hy = Patches.halfY(press.patch());
        double x = press.x();
        double y = press.y();
        double thickness = panel.laminateAt(x, y).thickness();
        add("under the " + name, x, y);
        for (int side = symmetric ? 1 : -1; side <= 1; side += 2) {
            // Skin stress peaks within the patch, foam shear just outside it.
            for (double share : UNDER) {
                add("under the " + name, x + side * share * hx, y);
                add("under the " + name, x, y + side * share * hy);
            }
            add("at the edge of the " + name, x + side * hx, y);
            add("at the edge of the " + name, x, y + side * hy);
            for (double share : BESIDE) {
                String words = (share < 0.5 ? "at the edge of the " : "beside the ") + name;
                double off = share * thickness;
                add(words, x + side * (hx + off), y);
                add(words, x, y + side * (hy + off));
            }
        }
    }

    private void add(String words, double x, double y) {
        if (x >= 0
                && x <= panel.width()
                && y >= 0
                && y <= panel.length()
                && panel.hasMaterialAt(x, y)) {
            stations.add(new Station(words, x, y));
        }
    }
}
